// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plots/follow_series.h"
#include "plots/small_plot.h"

namespace winterlarder::desk {

//! A followed winter: the autumn's forecast in broken lines, the forecast of now as a band, what was weighed as points with error bars,
//! the reserve as a line, today and first forage marked.
class FollowPlot : public SmallPlot {
    Q_OBJECT

public:
    explicit FollowPlot(QWidget* parent = nullptr);
    void show(const FollowSeries& series, const Winter& winter);
    void clear();
    QSize sizeHint() const override { return {460, 260}; }
    QSize minimumSizeHint() const override { return {260, 190}; }

private:
    bool any() const override { return any_; }
    void draw() override;
    void drawAutumn();
    void drawNow();
    void drawSeen();
    void drawMarks();

    FollowSeries series_;
    Winter winter_{Hemisphere::North, 2000};
    bool any_ = false;
};

} // namespace winterlarder::desk
