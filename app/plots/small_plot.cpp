// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/small_plot.h"

#include "plots/figures.h"
#include "plots/late_plot.h"
#include "plots/spoken_plot.h"
#include "theme/colours.h"

#include <QEvent>
#include <QVBoxLayout>
#include <qcustomplot.h>

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
        axis->grid()->setZeroLinePen(QPen(colours.grid)); // the first of January is a day like others
        axis->setVisible(axes);
    }
}

} // namespace

SmallPlot::SmallPlot(const QString& accessibleName, QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)) {
    speakAsChart(*this);
    setAccessibleName(accessibleName);
    plot_->setFocusPolicy(Qt::NoFocus);
    plot_->setAttribute(
        Qt::WA_TransparentForMouseEvents); // there is nothing to do with it, and the page is scrolled under it
    keepFiguresApart(*plot_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(plot_);
    late_ = new LatePlot(plot_, this, [this] { fill(); });
}

void SmallPlot::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::LocaleChange) redraw();
}

void SmallPlot::redraw() { late_->change(); }

void SmallPlot::fill() {
    makeFresh(*plot_, coloursOf(*this), any());
    if (any()) draw();
}

} // namespace winterlarder::desk
