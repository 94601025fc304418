// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/history_dialog.h"

#include "app/window_desk.h"

#include <QTableView>

//! The steps of the book as a list one can go back in.
namespace winterlarder::desk::history_test {

using invented::colony;

class History : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple")});
        for (const char* on : {"2026-09-10", "2026-09-11", "2026-09-13"}) {
            window.yard()->apply(
                book::SingleEdit(book::AddLook{{.colony = entry().id, .date = invented::day(on), .note = "seen"}}));
            settle();
        }
    }
    HistoryDialog* opened() {
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window, Qt::Key_H, Qt::ControlModifier);
        auto* dialog = window.findChild<HistoryDialog*>();
        EXPECT_NE(dialog, nullptr);
        settle();
        return dialog;
    }
    std::size_t notes() { return records().looks.size() - 1; }
};

TEST_F(History, AllDownToTheChosenStepIsTakenBackAndDoneAgain) {
    auto* dialog = opened();
    ASSERT_EQ(dialog->steps()->rowCount(), 4) << "three notes, and the yard before them";
    EXPECT_FALSE(dialog->goButton()->isEnabled()) << "nothing is chosen";
    dialog->table()->selectRow(1);
    EXPECT_EQ(dialog->said()->text().toStdString(), "2 steps would be taken back.");
    dialog->goButton()->click();
    settle();
    EXPECT_EQ(notes(), 1U);
    ASSERT_EQ(dialog->steps()->steps()[0].state, book::StepState::Undone);
    dialog->table()->selectRow(2);
    EXPECT_EQ(dialog->said()->text().toStdString(), "One step would be taken back.");
    dialog->table()->selectRow(0);
    EXPECT_EQ(dialog->said()->text().toStdString(), "2 steps would be done again.");
    dialog->table()->selectRow(1);
    EXPECT_EQ(dialog->said()->text().toStdString(), "One step would be done again.");
    dialog->goButton()->click();
    settle();
    EXPECT_EQ(notes(), 2U);
}

TEST_F(History, TheListIsEnteredWithoutAStepChosen) {
    auto* dialog = opened();
    ASSERT_EQ(dialog->steps()->rowCount(), 4);
    EXPECT_TRUE(QTest::qWaitForWindowActive(dialog));
    dialog->table()->clearFocus();
    dialog->table()->setFocus();
    ASSERT_TRUE(dialog->table()->hasFocus());
    EXPECT_FALSE(dialog->goButton()->isEnabled()) << "a step that nobody chose and that does not look chosen";
    QTest::keyClick(dialog->table(), Qt::Key_Down);
    EXPECT_TRUE(dialog->goButton()->isEnabled()) << "chosen with the keyboard";
}

TEST_F(History, WhatIsTakenBackForGoodIsNotTurned) {
    undo();
    window.yard()->apply(
        book::SingleEdit(book::AddLook{{.colony = entry().id, .date = invented::day("2026-09-09"), .note = "seen"}}));
    settle();
    auto* dialog = opened();
    ASSERT_EQ(dialog->steps()->steps()[1].state, book::StepState::Abandoned);
    dialog->table()->selectRow(1);
    EXPECT_FALSE(dialog->goButton()->isEnabled());
    dialog->table()->selectRow(2);
    EXPECT_EQ(dialog->said()->text().toStdString(), "2 steps would be taken back.") << "that one not among them";
    dialog->goButton()->click();
    settle();
    EXPECT_EQ(notes(), 1U);
}

} // namespace winterlarder::desk::history_test
