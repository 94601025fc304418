// SPDX-License-Identifier: GPL-3.0-or-later
#include "session.h"

#include "app/buttons.h"
#include "combs/comb_drawing.h"
#include "desk/colony_view.h"
#include "fields/day_field.h"
#include "fields/fields.h"
#include "forms/record_list.h"
#include "pages/comb_table_page.h"
#include "pages/look_page.h"
#include "pages/picture_panel.h"
#include "pages/place_page.h"
#include "pages/story_page.h"
#include "pages/what_if_page.h"
#include "pages/yard_view.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QMenuBar>
#include <QPushButton>
#include <QSlider>
#include <QTabWidget>
#include <QTableView>
#include <utility>

namespace winterlarder::bench {

using namespace desk;

namespace {

enum Page { InTheHive, CombByComb, Feeding, OnTheScale, Story, WhatIf };

QAction* action(MainWindow& window, const QString& words) {
    for (auto* each : window.findChildren<QAction*>())
        if (each->text() == words) return each;
    qFatal("there is no action called %s", qPrintable(words));
}

QSlider* slider(MainWindow& window, const QString& of) {
    for (auto* each : window.colonyView()->whatIf()->findChildren<QSlider*>())
        if (each->accessibleName() == QStringLiteral("Slider: ") + of) return each;
    qFatal("there is no slider for %s", qPrintable(of));
}

void walkTheList(Keeper& keeper) {
    keeper.begin("walking the yard list");
    keeper.focus(keeper.window().yardPane());
    keeper.keys(Qt::Key_Down, 20, 450);
    keeper.keys(Qt::Key_PageDown, 4, 600);
    keeper.key(Qt::Key_End, {}, 500);
    keeper.key(Qt::Key_Home, {}, 500);
    keeper.turnWheel(keeper.window().yardPane(), 15);
    keeper.turnWheel(keeper.window().yardPane(), -15);
    keeper.begin("finding a colony by its name");
    keeper.key(Qt::Key_F, Qt::ControlModifier, 600);
    keeper.type(QStringLiteral("Row 7 hive 1"));
    keeper.key(Qt::Key_Return, {}, 1500);
    QApplication::setActiveWindow(&keeper.window()); // where there is no window manager nobody else does
}

void sortTheList(Keeper& keeper) {
    keeper.begin("sorting the list");
    for (const char* order : {"By &name", "Most &urgent first", "By &name"}) {
        keeper.application().act([&] { action(keeper.window(), QString::fromLatin1(order))->trigger(); });
        keeper.pause(1500);
    }
}

void turnThePages(Keeper& keeper) {
    keeper.begin("turning the colony's pages");
    auto* pages = keeper.window().colonyView()->pages();
    for (const int page :
         {CombByComb, Feeding, OnTheScale, Story, WhatIf, InTheHive, OnTheScale, Story, Feeding, InTheHive})
        keeper.clickTab(pages, page);
    keeper.begin("walking the list with the page 'On the scale' open");
    keeper.clickTab(pages, OnTheScale);
    keeper.focus(keeper.window().yardPane());
    keeper.keys(Qt::Key_Down, 8, 500);
    keeper.begin("walking the list with the page 'Story' open");
    keeper.clickTab(pages, Story);
    keeper.focus(keeper.window().yardPane());
    keeper.keys(Qt::Key_Down, 8, 500);
    keeper.clickTab(pages, InTheHive);
}

void readThePicture(Keeper& keeper) {
    keeper.begin("reading days out of the picture");
    auto* plot = keeper.window().colonyView()->picture()->plot()->findChild<QWidget*>();
    keeper.move(plot, {80, plot->height() / 3}, {plot->width() - 80, plot->height() / 2}, 2500);
    keeper.begin("laying options over the picture");
    for (auto* chip : keeper.window().colonyView()->picture()->findChildren<QPushButton*>())
        if (chip->isVisible() && chip->isCheckable()) keeper.click(chip);
}

void enterCombs(Keeper& keeper) {
    auto* look = keeper.window().colonyView()->look();
    keeper.begin("a new look");
    keeper.click(look->newLookButton());
    keeper.pause(300);
    keeper.begin("entering combs with the keys");
    keeper.focus(look->drawing());
    for (const char* comb : {"9", "7o2", "c4b3p1", "c2b5p1", "c2b6p1", "", "c2b5p1", "c4b3p1", "c7p1", "c9"}) {
        for (const char* key = comb; *key; ++key)
            keeper.key(static_cast<Qt::Key>(QChar::fromLatin1(*key).toUpper().unicode()));
        keeper.key(*comb ? Qt::Key_Right : Qt::Key_Space);
    }
    keeper.begin("dragging edges of combs");
    for (const int comb : {11, 13, 15}) {
        const auto face = look->drawing()->faceOf(comb).toRect();
        const QPoint from(face.center().x(), face.top() + face.height() / 3);
        keeper.move(look->drawing(), from, from + QPoint(0, face.height() / 3), 900, true);
    }
}

void typeNumbers(Keeper& keeper) {
    auto* look = keeper.window().colonyView()->look();
    keeper.begin("typing bees and a weight");
    keeper.focus(look->bees()->number());
    keeper.key(Qt::Key_A, Qt::ControlModifier);
    keeper.type(QStringLiteral("11"));
    keeper.key(Qt::Key_Tab);
    keeper.focus(look->weighing()->gross());
    keeper.key(Qt::Key_A, Qt::ControlModifier);
    keeper.type(QStringLiteral("52"));
    keeper.key(Qt::Key_Tab);
    keeper.pause(600);
}

void takeBack(Keeper& keeper) {
    keeper.begin("undo and redo");
    keeper.focus(keeper.window().yardPane());
    const auto trigger = [&](QAction* action) {
        keeper.application().act([action] { action->trigger(); });
        keeper.pause(600);
    };
    for (int time = 0; time < 5; ++time) trigger(keeper.window().undoAction());
    for (int time = 0; time < 5; ++time) trigger(keeper.window().redoAction());
}

void tryOut(Keeper& keeper) {
    auto& window = keeper.window();
    keeper.clickTab(window.colonyView()->pages(), WhatIf);
    keeper.begin("sliders of amounts");
    for (const char* of : {"take off now", "feed sugar"}) {
        auto* hand = slider(window, QString::fromLatin1(of));
        keeper.focus(hand);
        keeper.keys(Qt::Key_Right, 45, 33);
        keeper.pause(1000);
    }
    keeper.begin("sliders of bees and forage");
    for (const char* of : {"more or fewer bees", "forage comes later by"}) {
        auto* hand = slider(window, QString::fromLatin1(of));
        keeper.focus(hand);
        keeper.keys(Qt::Key_Right, 10, 100);
        keeper.pause(1000);
    }
    keeper.click(button(window.colonyView()->whatIf(), "Back to what is"));
}

void readTheStory(Keeper& keeper) {
    auto* story = keeper.window().colonyView()->story();
    keeper.clickTab(keeper.window().colonyView()->pages(), Story);
    for (const int what : {1, 2, 0}) {
        keeper.begin(what == 1 ? "the history of the book" : what == 2 ? "past forecasts" : "the colony's records");
        keeper.application().act([&] { story->which()->setCurrentIndex(what); });
        keeper.pause(1500);
        if (what == 1) keeper.turnWheel(story->steps(), 8);
    }
    keeper.clickTab(keeper.window().colonyView()->pages(), InTheHive);
}

void lookAtTheYard(Keeper& keeper) {
    auto* yard = keeper.window().yardView();
    keeper.begin("the yard's plan");
    keeper.focus(keeper.window().yardPane());
    keeper.key(Qt::Key_0, Qt::ControlModifier, 800);
    keeper.turnWheel(yard->table(), 20);
    keeper.begin("the yard's place");
    keeper.clickTab(yard->pages(), 1);
    keeper.begin("searching a place");
    keeper.focus(yard->place()->place()->search());
    keeper.type(QStringLiteral("halif"));
    keeper.key(Qt::Key_Escape);
    keeper.begin("the yard's reserve changed: all answers anew");
    keeper.focus(yard->place()->reserve());
    keeper.key(Qt::Key_A, Qt::ControlModifier);
    keeper.type(QStringLiteral("5"));
    keeper.key(Qt::Key_Tab, {}, 3000);
    keeper.begin("the plan while answers come");
    keeper.clickTab(yard->pages(), 0);
    keeper.turnWheel(yard->table(), 20);
    keeper.pause(4000);
}

void anotherDay(Keeper& keeper) {
    keeper.begin("another day: everything anew");
    keeper.focus(keeper.window().dayField()->line());
    keeper.key(Qt::Key_Up, {}, 4000);
    keeper.focus(keeper.window().yardPane());
    keeper.keys(Qt::Key_Down, 6, 400);
}

void resizeTheWindow(Keeper& keeper) {
    keeper.begin("resizing the window");
    const QSize size = keeper.window().size();
    for (int place = 1; place <= 15; ++place) {
        keeper.application().act([&] { keeper.window().resize(size - QSize(12, 6) * place); });
        keeper.pause(33);
    }
    keeper.window().resize(size);
}

// A time of every turn, shortest first or not.
std::vector<double> timesOf(const std::vector<WatchedApplication::Turn>& turns, double WatchedApplication::Turn::*time,
                            const QString& step = {}) {
    std::vector<double> times;
    for (const auto& turn : turns)
        if (step.isEmpty() || turn.step == step) times.push_back(turn.*time);
    return times;
}

const WatchedApplication::Turn& longestOf(const std::vector<WatchedApplication::Turn>& turns, const QString& step) {
    return *std::max_element(turns.begin(), turns.end(), [&step](const auto& a, const auto& b) {
        return std::pair(a.step == step, a.milliseconds) < std::pair(b.step == step, b.milliseconds);
    });
}

void showSteps(const std::vector<WatchedApplication::Turn>& turns) {
    std::vector<QString> steps;
    for (const auto& turn : turns)
        if (std::find(steps.begin(), steps.end(), turn.step) == steps.end()) steps.push_back(turn.step);
    std::printf("\n%-50s %6s %7s %7s %8s %10s   %s\n", "step", "turns", "median", "99 %", "longest", "(computed)",
                "its longest event");
    for (const auto& step : steps) {
        const auto times = timesOf(turns, &WatchedApplication::Turn::milliseconds, step);
        const auto& longest = longestOf(turns, step);
        std::printf("%-50s %6zu %7.1f %7.1f %8.1f %10.1f   %s\n", qPrintable(step), times.size(), median(times),
                    quantile(times, 0.99), longest.milliseconds, longest.computed, qPrintable(longest.longest));
    }
    std::printf("\n");
}

void showTurns(const std::vector<WatchedApplication::Turn>& turns) {
    const auto times = timesOf(turns, &WatchedApplication::Turn::milliseconds);
    const auto computed = timesOf(turns, &WatchedApplication::Turn::computed);
    show("session: turns of the interface thread", static_cast<double>(times.size()), "");
    show("session: a turn, median", median(times), "ms");
    show("session: a turn, 99 of 100 within", quantile(times, 0.99), "ms", 16);
    show("session: the longest turn", quantile(times, 1), "ms", 50);
    show("session: a turn, 99 of 100 computed within", quantile(computed, 0.99), "ms", 16);
    show("session: the turn that computed longest", quantile(computed, 1), "ms", 50);
}

// The longest first, whatever step they belong to; by what the thread computed, which other programs change least.
void showLongest(std::vector<WatchedApplication::Turn> turns) {
    constexpr std::size_t shown = 10;
    std::sort(turns.begin(), turns.end(), [](const auto& a, const auto& b) { return a.computed > b.computed; });
    turns.resize(std::min(turns.size(), shown));
    std::printf("\nthe ten turns that computed longest\n%8s %10s   %-50s %s\n", "computed", "(took)", "in which step",
                "its longest event");
    for (const auto& turn : turns)
        std::printf("%8.1f %10.1f   %-50s %s\n", turn.computed, turn.milliseconds, qPrintable(turn.step),
                    qPrintable(turn.longest));
    std::printf("\n");
}

} // namespace

void showSession(Keeper& keeper) {
    const auto start = Clock::now();
    walkTheList(keeper);
    sortTheList(keeper);
    turnThePages(keeper);
    readThePicture(keeper);
    enterCombs(keeper);
    typeNumbers(keeper);
    takeBack(keeper);
    tryOut(keeper);
    readTheStory(keeper);
    lookAtTheYard(keeper);
    anotherDay(keeper);
    resizeTheWindow(keeper);
    showSteps(keeper.application().turns());
    show("session: how long it was", millisecondsSince(start) / 1000, "s");
    showTurns(keeper.application().turns());
    showLongest(keeper.application().turns());
}

} // namespace winterlarder::bench
