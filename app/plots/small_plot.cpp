// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/small_plot.h"

#include "plots/spoken_plot.h"
#include "widgets/colours.h"

#include <QEvent>
#include <QVBoxLayout>
#include <qcustomplot.h>
#include <utility>

namespace winterlarder::desk {

namespace {

void makeFresh(QCustomPlot& plot, const Colours& colours, bool axes) {
    plot.clearPlottables();
    plot.setBackground(colours.card);
    for (auto* axis : {plot.xAxis, plot.yAxis}) {
        axis->setBasePen(QPen(colours.mark));
        axis->setTickPen(QPen(colours.mark));
        axis->setSubTicks(false);
        axis->setTickLabelColor(colours.quietText);
        axis->setLabelColor(colours.quietText);
        axis->grid()->setPen(QPen(colours.grid));
        axis->setVisible(axes);
    }
}

} // namespace

SmallPlot::SmallPlot(const QString& accessibleName, QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)) {
    speakAsChart(*this);
    setAccessibleName(accessibleName);
    plot_->setFocusPolicy(Qt::NoFocus);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(plot_);
    plot_->setPlottingHint(QCP::phImmediateRefresh, false); // painted with the rest of the window, once
    connect(plot_, &QCustomPlot::beforeReplot, this, &SmallPlot::fill);
}

void SmallPlot::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::LocaleChange) redraw();
}

void SmallPlot::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) redraw();
}

void SmallPlot::redraw() {
    stale_ = true;
    if (isVisible() || isWindow()) plot_->replot(QCustomPlot::rpQueuedReplot);
}

void SmallPlot::fill() {
    if (!std::exchange(stale_, false)) return;
    makeFresh(*plot_, coloursOf(*this), any());
    if (any()) draw();
}

} // namespace winterlarder::desk
