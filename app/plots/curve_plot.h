// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "climate/climate_curve.h"
#include "plots/small_plot.h"

#include <optional>

namespace winterlarder::desk {

//! The year's temperatures at a place: the normal of every day and two standard deviations of single days round it.
class CurvePlot : public SmallPlot {
    Q_OBJECT

public:
    explicit CurvePlot(QWidget* parent = nullptr);
    void show(const climate::ClimateCurve& curve, const Winter& winter);
    void clear();
    QSize sizeHint() const override { return {420, 200}; }
    QSize minimumSizeHint() const override { return {240, 140}; }

private:
    bool any() const override { return curve_.has_value(); }
    void draw() override;
    std::optional<climate::ClimateCurve> curve_;
    Winter winter_{Hemisphere::North, 2000};
};

} // namespace winterlarder::desk
