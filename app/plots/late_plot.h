// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <functional>

class QCustomPlot;
class QWidget;

namespace winterlarder::desk {

//! Has a plot filled and drawn once for all that changes in a turn of the event loop, and not at all while its owner is not seen.
//! Tested: tests/app/winter_plot_test.cpp.
class LatePlot : public QObject {
public:
    LatePlot(QCustomPlot* plot, QWidget* owner, std::function<void()> fill);

    void change();  //!< what is on the plot is no longer what is to be shown
    void fillNow(); //!< before it is saved

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QCustomPlot* plot_;
    QWidget* owner_;
    std::function<void()> fill_;
    bool stale_ = true;
    bool soon_ = false; //!< it will be drawn in this turn
};

} // namespace winterlarder::desk
