// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "forms/record_list.h"
#include "pages/feeding_page.h"
#include "pages/story_page.h"
#include "pages/yard_view.h"

#include <QTabWidget>

//! What changes or removes an entry wants a row that was chosen: the focus alone stands on one and chooses nothing.
namespace winterlarder::desk::chosen_row_test {

using invented::colony;

class ChosenRow : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple")});
        window.yard()->apply(book::SingleEdit(book::AddPlannedVisit{
            {.colony = window.colonyView()->colony(), .date = invented::day("2026-09-16"), .sugar = kilograms(2)}}));
        settle();
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    //! The Tab key comes to the table: none of these buttons may be pressed, and all of them once an arrow key chose its first row.
    void expectLiveOnceChosen(QTableView* table, const std::vector<QAbstractButton*>& buttons) {
        table->setFocus(Qt::TabFocusReason);
        QTest::qWait(5);
        ASSERT_TRUE(table->currentIndex().isValid()) << "the focus stands on a row";
        for (auto* each : buttons) EXPECT_FALSE(each->isEnabled()) << each->text().toStdString();
        QTest::keyClick(table, Qt::Key_Down);
        EXPECT_EQ(table->currentIndex().row(), 0);
        // The first of a plan may be what is only advised, which nobody ticks off.
        for (int row = 1; row < table->model()->rowCount() && !buttons.front()->isEnabled(); ++row)
            QTest::keyClick(table, Qt::Key_Down);
        for (auto* each : buttons) EXPECT_TRUE(each->isEnabled()) << each->text().toStdString();
    }
};

TEST_F(ChosenRow, OfTheStoryIsNeededToChangeOrRemove) {
    auto* story = window.colonyView()->story();
    window.colonyView()->showPage(ColonyPage::Story);
    auto* records = story->records();
    records->table()->setFocus(Qt::TabFocusReason);
    const int rows = records->model()->rowCount();
    QTest::keyClick(records->table(), Qt::Key_Delete);
    settle();
    EXPECT_EQ(records->model()->rowCount(), rows) << "nothing was chosen to be removed";
    expectLiveOnceChosen(records->table(), {button(records, "Change\u2026"), button(records, "Remove")});
}

TEST_F(ChosenRow, OfAPlannedVisitIsNeededToTickItOff) {
    window.colonyView()->showPage(ColonyPage::Feeding);
    auto* feeding = window.colonyView()->feeding();
    auto* table = feeding->findChild<RecordList*>()->table();
    expectLiveOnceChosen(table, {button(feeding, "Visit made"), button(feeding, "Skip the visit")});
}

TEST_F(ChosenRow, OfTheYardsPlanIsNeededToTickItOff) {
    window.choose({});
    settle();
    auto* yard = window.yardView();
    yard->pages()->setCurrentIndex(0);
    ASSERT_GT(yard->table()->model()->rowCount(), 0);
    expectLiveOnceChosen(yard->table(), {button(yard, "Visit made"), button(yard, "Skip the visit")});
}

} // namespace winterlarder::desk::chosen_row_test
