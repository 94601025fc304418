// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QCustomPlot;

namespace winterlarder::desk {

class LatePlot;

//! A small plot of one pair of axes: ground, axes and grid in the window's colours, drawn anew when those or the units change, blank
//! where there is nothing to draw.
class SmallPlot : public QWidget {
protected:
    SmallPlot(const QString& accessibleName, QWidget* parent);
    void changeEvent(QEvent* event) override;

    virtual bool any() const = 0; //!< whether there is something to draw
    virtual void draw() = 0;      //!< onto the empty plot
    void redraw();

    QCustomPlot* plot_;

private:
    void fill();

    LatePlot* late_;
};

} // namespace winterlarder::desk
