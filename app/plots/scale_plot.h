// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plots/small_plot.h"
#include "series/scale_series.h"
#include "theme/colours.h"

namespace winterlarder::desk {

//! The model against what was weighed and seen: the band of eighty in a hundred winters, measurements as points with error bars.
class ScalePlot : public SmallPlot {
    Q_OBJECT

public:
    explicit ScalePlot(QWidget* parent = nullptr);
    void show(const ScaleSeries& series, const Winter& winter);
    void clear();
    QSize sizeHint() const override { return {420, 220}; }
    QSize minimumSizeHint() const override { return {240, 150}; }

private:
    bool any() const override { return any_; }
    void draw() override;
    void drawBand();
    void drawMeasured();

    ScaleSeries series_;
    Winter winter_{Hemisphere::North, 2000};
    bool any_ = false;
};

} // namespace winterlarder::desk
