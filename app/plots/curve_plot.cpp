// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve_plot.h"

#include "models/words.h"
#include "plots/figures.h"
#include "plots/month_ticks.h"
#include "plots/unit_ticks.h"
#include "theme/colours.h"

#include <qcustomplot.h>

namespace winterlarder::desk {

CurvePlot::CurvePlot(QWidget* parent) : SmallPlot(tr("Temperatures of the year at this place"), parent) {}

void CurvePlot::show(const climate::ClimateCurve& curve, const Winter& winter) {
    curve_ = curve;
    winter_ = winter;
    setAccessibleDescription(
        tr("coldest day of the year %1 on average").arg(words::temperature(curve.coldestNormal(), 1)));
    redraw();
}

void CurvePlot::clear() {
    curve_.reset();
    redraw();
}

void CurvePlot::draw() {
    const auto& colours = coloursOf(*this);
    QVector<double> days, normal, low, high;
    for (int day = firstSeasonDay.w; day <= lastSeasonDay.w; ++day) {
        const double mean = curve_->normal({day}).value(), sd = curve_->dailySd({day}).value();
        days.append(day);
        normal.append(mean);
        low.append(mean - 2 * sd);
        high.append(mean + 2 * sd);
    }
    auto* bottom = plot_->addGraph();
    auto* top = plot_->addGraph();
    auto* middle = plot_->addGraph();
    bottom->setData(days, low, true);
    top->setData(days, high, true);
    middle->setData(days, normal, true);
    QColor fill = colours.winter;
    fill.setAlphaF(0.18F);
    top->setBrush(fill);
    top->setChannelFillGraph(bottom);
    for (auto* edge : {bottom, top}) edge->setPen(Qt::NoPen);
    middle->setPen(QPen(colours.winter, 2));
    showDays(*plot_->xAxis, monthTicks(winter_, firstSeasonDay.w, lastSeasonDay.w, true));
    plot_->xAxis->setRange(firstSeasonDay.w, lastSeasonDay.w);
    plot_->yAxis->rescale();
    showAir(*plot_->yAxis);
}

} // namespace winterlarder::desk
