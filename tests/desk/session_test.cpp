// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "pages/picture_panel.h"

#include <QMenu>
#include <QSplitter>
#include <QTabWidget>

//! How the window is found again, and what books it remembers.
namespace winterlarder::desk::session_test {

using invented::colony;

class SessionOfTheWindow : public invented::WindowDesk {
protected:
    ~SessionOfTheWindow() override {
        settings::keepSession({});
        settings::forgetRecentBook(file());
    }
    QAction* action(MainWindow& of, const char* words) {
        for (auto* each : of.findChildren<QAction*>())
            if (each->text().remove(QLatin1Char('&')) == QString::fromUtf8(words)) return each;
        ADD_FAILURE() << words;
        return nullptr;
    }
};

TEST_F(SessionOfTheWindow, YardColonyPagesAndRoomAreFoundAgain) {
    answerReally();
    auto far = colony("Quince"), farther = colony("Plum");
    far.yard = farther.yard = "Far away";
    open({colony("Apple"), far, farther});
    window.yard()->showYard(window.yard()->yards().at(1).id);
    settle();
    const auto plum = window.yard()->colonies().at(1).id;
    window.choose(plum);
    settle();
    window.colonyView()->showPage(ColonyPage::Feeding);
    window.colonyView()->halves()->setSizes({200, 500});
    const auto sizes = window.colonyView()->halves()->sizes();
    action(window, "By name")->trigger();
    auto* plot = window.colonyView()->picture()->plot();
    ASSERT_NE(plot->picture(), nullptr);
    plot->seeFewerDays();
    const auto seen = plot->seen();
    ASSERT_TRUE(seen);
    window.keepSession();
    window.book()->close();
    settle();

    Arguments sameDay;
    sameDay.day = invented::day("2026-09-14");
    MainWindow again(sameDay, invented::scribe());
    again.resize(window.size());
    again.show();
    again.begin();
    ASSERT_TRUE(invented::waitFor([&] { return again.settled() && again.colonyView()->colony() == plum; }));
    EXPECT_EQ(again.yard()->shownYard()->name, "Far away");
    EXPECT_TRUE(again.colonyView()->isVisible());
    EXPECT_EQ(again.colonyView()->pages()->currentIndex(), static_cast<int>(ColonyPage::Feeding));
    EXPECT_EQ(again.yardList()->order(), YardOrder::Name);
    EXPECT_EQ(again.colonyView()->picture()->plot()->seen(), seen);
    EXPECT_NEAR(again.colonyView()->halves()->sizes().front(), sizes.front(), 3);
}

TEST_F(SessionOfTheWindow, IsThatOfItsBookAlone) {
    answerSlowly();
    open({colony("Apple")});
    window.colonyView()->showPage(ColonyPage::Scale);
    window.keepSession();
    auto kept = settings::session();
    EXPECT_EQ(kept.book, file());
    kept.book = folder.filePath(QStringLiteral("another.larder"));
    settings::keepSession(kept);
    window.book()->close();
    settle();
    MainWindow again({}, invented::scribe());
    again.show();
    again.begin();
    ASSERT_TRUE(invented::waitFor([&] { return again.settled() && again.book()->isOpen(); }));
    EXPECT_EQ(again.book()->state()->file, file());
    EXPECT_EQ(again.colonyView()->pages()->currentIndex(), static_cast<int>(ColonyPage::Hive));
}

TEST_F(SessionOfTheWindow, RecentBooksAreNamedByTheirYards) {
    answerSlowly();
    auto far = colony("Quince");
    far.yard = "Far & away";
    open({colony("Apple"), far});
    QMenu* recent = nullptr;
    for (auto* each : window.findChildren<QMenu*>())
        if (each->title() == QStringLiteral("Open &recent")) recent = each;
    ASSERT_NE(recent, nullptr);
    ASSERT_FALSE(recent->isEmpty());
    EXPECT_EQ(recent->actions().front()->text().toStdString(),
              "Test orchard, Far && away \u2013 yard.larder in " + folder.path().toStdString());
}

} // namespace winterlarder::desk::session_test
