// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plots/scale_series.h"
#include "widgets/colours.h"

#include <QWidget>

class QCustomPlot;

namespace winterlarder::desk {

//! The model against what was weighed and seen: the band of eighty in a hundred winters, measurements as points with error bars.
class ScalePlot : public QWidget {
    Q_OBJECT

public:
    explicit ScalePlot(QWidget* parent = nullptr);
    void show(const ScaleSeries& series, const Winter& winter);
    void clear();
    QSize sizeHint() const override { return {420, 220}; }
    QSize minimumSizeHint() const override { return {240, 150}; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void redraw();
    void drawBand();
    void drawMeasured();

    QCustomPlot* plot_;
    ScaleSeries series_;
    Winter winter_{Hemisphere::North, 2000};
    bool any_ = false;
};

} // namespace winterlarder::desk
