// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/late_plot.h"

#include <QEvent>
#include <qcustomplot.h>
#include <utility>

namespace winterlarder::desk {

LatePlot::LatePlot(QCustomPlot* plot, QWidget* owner, std::function<void()> fill)
    : QObject(owner), plot_(plot), owner_(owner), fill_(std::move(fill)) {
    plot_->setPlottingHint(QCP::phImmediateRefresh, false); // painted with the rest of the window, once
    connect(plot_, &QCustomPlot::beforeReplot, this, &LatePlot::fillNow);
    owner_->installEventFilter(this);
}

void LatePlot::change() {
    stale_ = true;
    if (soon_ || !(owner_->isVisible() || owner_->isWindow())) return;
    soon_ = true;
    QMetaObject::invokeMethod(
        this,
        [this] {
            soon_ = false;
            if (stale_) plot_->replot(); // else a new size had it drawn meanwhile
        },
        Qt::QueuedConnection);
}

void LatePlot::fillNow() {
    if (std::exchange(stale_, false)) fill_();
}

bool LatePlot::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Show && stale_) change();
    return QObject::eventFilter(watched, event);
}

} // namespace winterlarder::desk
