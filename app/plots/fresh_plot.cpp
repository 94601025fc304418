// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/fresh_plot.h"

#include "widgets/colours.h"

#include <qcustomplot.h>

namespace winterlarder::desk {

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

} // namespace winterlarder::desk
