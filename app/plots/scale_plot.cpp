// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/scale_plot.h"

#include "plots/figures.h"
#include "plots/month_ticks.h"
#include "plots/unit_ticks.h"

#include <qcustomplot.h>

namespace winterlarder::desk {

ScalePlot::ScalePlot(QWidget* parent) : SmallPlot(tr("Model against measurement"), parent) {}

void ScalePlot::show(const ScaleSeries& series, const Winter& winter) {
    series_ = series;
    winter_ = winter;
    any_ = true;
    setAccessibleDescription(tr("%n measurements", nullptr, static_cast<int>(series.measured.size())));
    redraw();
}

void ScalePlot::clear() {
    any_ = false;
    setAccessibleDescription({});
    redraw();
}

void ScalePlot::drawBand() {
    if (series_.expected.empty()) return;
    const auto& colours = coloursOf(*this);
    QVector<double> days, low, high;
    for (const auto& day : series_.expected) {
        days.append(day.day);
        low.append(day.low);
        high.append(day.high);
    }
    auto* bottom = plot_->addGraph();
    auto* top = plot_->addGraph();
    bottom->setData(days, low);
    top->setData(days, high);
    QColor fill = colours.winter;
    fill.setAlphaF(0.22F);
    top->setBrush(fill);
    top->setChannelFillGraph(bottom);
    for (auto* edge : {bottom, top}) edge->setPen(QPen(colours.winter, 1.2));
}

void ScalePlot::drawMeasured() {
    const auto& colours = coloursOf(*this);
    QVector<double> days, kg, down, up;
    for (const auto& point : series_.measured) {
        days.append(point.day.w);
        kg.append(point.stores.typical.value());
        down.append((point.stores.typical - point.stores.low).value());
        up.append((point.stores.high - point.stores.typical).value());
    }
    auto* points = plot_->addGraph();
    points->setData(days, kg);
    points->setLineStyle(QCPGraph::lsNone);
    points->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, colours.error, colours.error, 7));
    auto* bars = new QCPErrorBars(plot_->xAxis, plot_->yAxis);
    bars->setDataPlottable(points);
    bars->setData(down, up);
    bars->setPen(QPen(colours.error, 1.4));
}

void ScalePlot::draw() {
    drawBand();
    drawMeasured();
    showDays(*plot_->xAxis, monthTicks(winter_, series_.first - 5, series_.last + 5, true));
    plot_->xAxis->setRange(series_.first - 5, series_.last + 5);
    plot_->yAxis->setRange(0, series_.mostKg * 1.08);
    showStores(*plot_->yAxis);
}

} // namespace winterlarder::desk
