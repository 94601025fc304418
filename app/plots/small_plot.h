// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QCustomPlot;

namespace winterlarder::desk {

//! A small plot of one pair of axes: ground, axes and grid in the window's colours, drawn anew when those or the units change, blank
//! where there is nothing to draw.
class SmallPlot : public QWidget {
protected:
    SmallPlot(const QString& accessibleName, QWidget* parent);
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

    virtual bool any() const = 0; //!< whether there is something to draw
    virtual void draw() = 0;      //!< onto the empty plot
    void redraw(); //!< once for all that changes in a turn; while it is not seen, not at all

    QCustomPlot* plot_;

private:
    void fill();

    bool stale_ = true; //!< what is on the plot is not what is to be shown
};

} // namespace winterlarder::desk
