// SPDX-License-Identifier: GPL-3.0-or-later
#include "waits.h"

#include "app/buttons.h"
#include "combs/comb_drawing.h"
#include "desk/colony_view.h"
#include "pages/look_page.h"
#include "pages/picture_panel.h"
#include "pages/what_if_page.h"

#include <QLabel>
#include <QSpinBox>
#include <QTabWidget>
#include <QTest>
#include <functional>
#include <qcustomplot.h>

namespace winterlarder::bench {

using namespace desk;

namespace {

//! Notes when the picture was painted as it was plotted once something had come about.
class Painted : public QObject {
public:
    explicit Painted(QCustomPlot* plot) : plot_(plot) {
        plot_->installEventFilter(this);
        connect(plot_, &QCustomPlot::beforeReplot, this, [this] { plotted_ = plotted_ || cameAbout_(); });
    }
    void await(std::function<bool()> cameAbout) {
        cameAbout_ = std::move(cameAbout);
        plotted_ = painted_ = false;
    }
    bool done() const { return painted_; }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint && plotted_) painted_ = true;
        return false;
    }

private:
    QCustomPlot* plot_;
    std::function<bool()> cameAbout_ = [] { return true; };
    bool plotted_ = false, painted_ = false;
};

QCustomPlot* plotOf(MainWindow& window) { return window.colonyView()->picture()->plot()->findChild<QCustomPlot*>(); }

void showTimes(const std::string& what, const std::vector<double>& times, double aim) {
    show(what + ", median", median(times), "ms", aim);
    show(what + ", longest of " + std::to_string(times.size()), quantile(times, 1), "ms");
}

void settle(Keeper& keeper) {
    keeper.application().waitFor([&] { return keeper.window().settled() && keeper.window().colonyView()->idle(); });
    keeper.pause(200);
}

//! A comb written with one key, until the answer is there and its picture painted.
void showEdit(Keeper& keeper) {
    auto& window = keeper.window();
    window.colonyView()->showPage(ColonyPage::Hive);
    auto* drawing = window.colonyView()->look()->drawing();
    keeper.focus(drawing);
    Painted painted(plotOf(window));
    std::vector<double> times;
    for (int time = 0; time < 20; ++time) {
        settle(keeper);
        const auto start = Clock::now();
        painted.await([&] { return !window.yard()->find(window.colonyView()->colony())->pending; });
        QTest::keyClick(drawing, time % 2 ? Qt::Key_2 : Qt::Key_1);
        keeper.application().waitFor([&] { return painted.done(); });
        times.push_back(millisecondsSince(start));
    }
    showTimes("a comb written, to the full answer and its picture", times, 250);
}

//! A demand tried out, until the first sight over few winters is painted, and the full answer.
void showDemand(Keeper& keeper) {
    auto& window = keeper.window();
    window.colonyView()->showPage(ColonyPage::WhatIf);
    auto* page = window.colonyView()->whatIf();
    QLabel* state = nullptr;
    for (auto* each : page->findChildren<QLabel*>())
        if (each->accessibleDescription() == QStringLiteral("State of the reckoning")) state = each;
    Painted painted(plotOf(window));
    std::vector<double> first, full;
    for (int time = 0; time < 20; ++time) {
        settle(keeper);
        const auto start = Clock::now();
        painted.await([&] { return !state->text().startsWith(QStringLiteral("Simulating")); });
        page->bees()->setValue(time % 2 ? 3 : 5);
        keeper.application().waitFor([&] { return painted.done(); });
        first.push_back(millisecondsSince(start));
        painted.await([&] { return state->text().isEmpty(); });
        keeper.application().waitFor([&] { return painted.done(); });
        full.push_back(millisecondsSince(start));
    }
    button(page, "Back to what is")->click();
    showTimes("bees tried out, to the first sight over 500 winters", first, 50);
    showTimes("bees tried out, to the full answer", full, 250);
}

void showAmounts(Keeper& keeper) {
    auto& window = keeper.window();
    auto* page = window.colonyView()->whatIf();
    Painted painted(plotOf(window));
    for (auto* field : {page->take(), page->sugar()}) {
        settle(keeper);
        std::vector<double> times;
        for (int time = 1; time <= 40; ++time) {
            painted.await([] { return true; });
            const auto start = Clock::now();
            field->setValue(0.2 * time);
            keeper.application().waitFor([&] { return painted.done(); });
            times.push_back(millisecondsSince(start));
            keeper.pause(30);
        }
        button(page, "Back to what is")->click();
        showTimes(field == page->take() ? "slider 'take off now', to the picture painted"
                                        : "slider 'feed sugar', to the picture painted",
                  times, 16);
    }
}

} // namespace

void showWaits(Keeper& keeper) {
    auto& window = keeper.window();
    window.choose(window.yard()->colonies().front().id);
    settle(keeper);
    showEdit(keeper);
    showDemand(keeper);
    showAmounts(keeper);
}

} // namespace winterlarder::bench
