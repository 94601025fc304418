// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/follow_plot.h"

#include "numerics/normal_law.h"
#include "plots/figures.h"
#include "plots/month_ticks.h"
#include "plots/unit_ticks.h"
#include "theme/colours.h"

#include <qcustomplot.h>

namespace winterlarder::desk {

FollowPlot::FollowPlot(QWidget* parent)
    : SmallPlot(tr("Forecast of autumn, forecast of now, and what was weighed"), parent) {}

void FollowPlot::show(const FollowSeries& series, const Winter& winter) {
    series_ = series;
    winter_ = winter;
    any_ = !series.now.empty();
    setAccessibleDescription(tr("Points: %1").arg(series.seen.size()));
    redraw();
}

void FollowPlot::clear() {
    any_ = false;
    setAccessibleDescription({});
    redraw();
}

namespace {

struct Edges {
    QVector<double> days, low, middle, high;
};

Edges edgesOf(const std::vector<StoresBand>& bands) {
    Edges edges;
    for (const auto& band : bands) {
        edges.days.append(band.day);
        edges.low.append(band.low);
        edges.middle.append(band.middle);
        edges.high.append(band.high);
    }
    return edges;
}

void addLine(QCustomPlot& plot, const QVector<double>& days, const QVector<double>& kg, const QPen& pen) {
    auto* line = plot.addGraph();
    line->setData(days, kg, true);
    line->setPen(pen);
}

} // namespace

void FollowPlot::drawAutumn() {
    const Edges edges = edgesOf(series_.autumn);
    const QPen pen(coloursOf(*this).quietText, 1.3, Qt::DashLine);
    addLine(*plot_, edges.days, edges.low, pen);
    addLine(*plot_, edges.days, edges.high, pen);
}

void FollowPlot::drawNow() {
    const auto& colours = coloursOf(*this);
    const Edges edges = edgesOf(series_.now);
    auto* bottom = plot_->addGraph();
    auto* top = plot_->addGraph();
    bottom->setData(edges.days, edges.low, true);
    top->setData(edges.days, edges.high, true);
    QColor fill = colours.winter;
    fill.setAlphaF(0.28F);
    top->setBrush(fill);
    top->setChannelFillGraph(bottom);
    for (auto* edge : {bottom, top}) edge->setPen(QPen(colours.winter, 1.4));
}

void FollowPlot::drawSeen() {
    const auto& colours = coloursOf(*this);
    QVector<double> days, kg, sd;
    for (const auto& point : series_.seen) {
        days.append(point.day);
        kg.append(point.kg);
        sd.append(tenthPercentile * point.sd); // eighty in a hundred, as the bands
    }
    auto* points = plot_->addGraph();
    points->setData(days, kg);
    points->setLineStyle(QCPGraph::lsNone);
    points->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, colours.error, colours.error, 8));
    auto* bars = new QCPErrorBars(plot_->xAxis, plot_->yAxis);
    bars->setDataPlottable(points);
    bars->setData(sd);
    bars->setPen(QPen(colours.error, 1.5));
}

void FollowPlot::drawMarks() {
    const auto& colours = coloursOf(*this);
    const double first = series_.first - 4, last = series_.last + 4;
    addLine(*plot_, {first, last}, {series_.reserveKg, series_.reserveKg}, QPen(colours.reserve, 1.4, Qt::DotLine));
    const double top = series_.mostKg * 1.08;
    addLine(*plot_, {double(series_.today), double(series_.today)}, {0, top}, QPen(colours.text, 1));
    addLine(*plot_, {double(series_.forage), double(series_.forage)}, {0, top},
            QPen(colours.mark, 1.2, Qt::DashDotLine));
}

void FollowPlot::draw() {
    drawAutumn();
    drawNow();
    drawMarks();
    drawSeen();
    showDays(*plot_->xAxis, monthTicks(winter_, series_.first - 4, series_.last + 4, true));
    plot_->xAxis->setRange(series_.first - 4, series_.last + 4);
    plot_->yAxis->setRange(0, series_.mostKg * 1.08);
    showStores(*plot_->yAxis);
}

} // namespace winterlarder::desk
