// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "desk/undo_keys.h"
#include "fields/day_field.h"
#include "fields/fields.h"
#include "forms/entry_forms.h"
#include "pages/look_page.h"
#include "pages/place_page.h"
#include "pages/yard_view.h"

#include <QCalendarWidget>
#include <QCheckBox>
#include <QComboBox>
#include <QPlainTextEdit>
#include <QScreen>
#include <QTabWidget>
#include <QToolButton>

namespace winterlarder::desk {

using invented::colony;
using invented::day;

class Days : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple")});
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    //! Types over the whole field, as a keeper does.
    static void typeDay(DayField* field, const char* text) {
        field->setFocus();
        QTest::keyClick(field->line(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(field->line(), QString::fromUtf8(text));
    }
    static QLabel* words(DayField* field) { return field->findChild<QLabel*>(); }
    static QWidget* popup() { return QApplication::activePopupWidget(); }
    std::string asOf() { return window.yard()->asOf()->iso(); }
};

TEST_F(Days, AreTypedAsAWhole) {
    auto* field = window.dayField();
    typeDay(field, "5 September 2026");
    EXPECT_EQ(asOf(), "2026-09-14") << "not before it is entered";
    QTest::keyClick(field->line(), Qt::Key_Return);
    EXPECT_EQ(asOf(), "2026-09-05");
    settle();
    EXPECT_EQ(field->line()->text().toStdString(), "5 September 2026");
    typeDay(field, "2026-08-30");
    QTest::keyClick(field->line(), Qt::Key_Tab);
    EXPECT_EQ(asOf(), "2026-08-30") << "leaving the field enters it too";
}

TEST_F(Days, WhatIsNotUnderstoodStaysAndIsSaid) {
    auto* field = window.dayField();
    EXPECT_TRUE(words(field)->isHidden());
    const int low = field->height();
    typeDay(field, "soon");
    QTest::keyClick(field->line(), Qt::Key_Return);
    settle();
    EXPECT_EQ(asOf(), "2026-09-14") << "the day before stands";
    EXPECT_EQ(field->line()->text().toStdString(), "soon");
    ASSERT_TRUE(words(field)->isVisible());
    EXPECT_EQ(words(field)->text().left(34).toStdString(), "This cannot be read as a day. Type");
    EXPECT_GT(field->height(), low) << "there is room for the words";
    EXPECT_EQ(field->line()->accessibleDescription(), words(field)->text()) << "a screen reader hears it too";
    EXPECT_TRUE(field->line()->property("faulty").toBool());
    emit window.yard()->changed(YardChange::Colonies, {});
    EXPECT_EQ(field->line()->text().toStdString(), "soon") << "what the window shows anew does not wipe it away";
    typeDay(field, "5 Sep 2026");
    EXPECT_TRUE(words(field)->isHidden()) << "right again, before it is entered";
    QTest::keyClick(field->line(), Qt::Key_Return);
    EXPECT_EQ(asOf(), "2026-09-05");
    EXPECT_FALSE(field->line()->property("faulty").toBool());
}

TEST_F(Days, ADayTooLateIsRefusedInWords) {
    auto* weighing = window.colonyView()->look()->weighing();
    const auto before = records().weighings;
    auto* kind = weighing->kind();
    kind->setCurrentIndex(kind->findData(static_cast<int>(WeighedBy::Heft)));
    emit kind->activated(kind->currentIndex());
    auto* felt = this->field<QComboBox>(weighing, "How heavy it felt");
    felt->setCurrentIndex(0);
    emit felt->activated(0);
    settle();
    const auto weighed = records().weighings;
    ASSERT_FALSE(weighed.empty());
    auto* on = weighing->day();
    ASSERT_TRUE(on->isVisible());
    typeDay(on, "6 October 2026");
    QTest::keyClick(on->line(), Qt::Key_Return);
    settle();
    EXPECT_EQ(words(on)->text().toStdString(),
              "6 October 2026 is too late here. Type a day from 16 July 2026 to 14 September 2026.");
    EXPECT_TRUE(words(on)->isVisible());
    EXPECT_EQ(records().weighings, weighed);
    EXPECT_EQ(on->day(), day("2026-09-14"));
    typeDay(on, "6 Sep");
    QTest::keyClick(on->line(), Qt::Key_Return);
    settle();
    EXPECT_EQ(records().weighings.back().weighing.date, day("2026-09-06"));
}

TEST_F(Days, UpAndDownGoByDaysAndPagesByMonths) {
    auto* line = window.dayField()->line();
    line->setFocus();
    QTest::keyClick(line, Qt::Key_Up);
    EXPECT_EQ(asOf(), "2026-09-15");
    QTest::keyClick(line, Qt::Key_Down);
    QTest::keyClick(line, Qt::Key_Down);
    EXPECT_EQ(asOf(), "2026-09-13");
    QTest::keyClick(line, Qt::Key_PageUp);
    EXPECT_EQ(asOf(), "2026-10-13");
    QTest::keyClick(line, Qt::Key_PageUp);
    EXPECT_EQ(asOf(), "2026-11-13");
    for (int months = 3; months > 0; --months) QTest::keyClick(line, Qt::Key_PageDown);
    EXPECT_EQ(asOf(), "2026-08-13");
    typeDay(window.dayField(), "31 Aug 2026");
    QTest::keyClick(line, Qt::Key_PageUp);
    EXPECT_EQ(asOf(), "2026-09-30") << "from what is typed, and to the end of a shorter month";
}

TEST_F(Days, TheCalendarIsWhollyOnTheScreenAndGivesTheDayChosen) {
    auto* field = window.dayField();
    const QRect room = window.screen()->availableGeometry();
    for (const QPoint corner : {room.topLeft(), room.bottomRight() - QPoint(120, 100)}) {
        window.move(corner);
        QTest::mouseClick(field->calendarButton(), Qt::LeftButton);
        ASSERT_NE(popup(), nullptr);
        EXPECT_TRUE(room.contains(popup()->geometry()))
            << popup()->x() << ", " << popup()->y() << ", " << popup()->width() << " x " << popup()->height() << " of "
            << room.right() << ", " << room.bottom();
        popup()->close();
    }
    field->setFocus();
    QTest::keyClick(field->line(), Qt::Key_Down, Qt::AltModifier);
    ASSERT_NE(popup(), nullptr) << "by the keyboard too";
    auto* calendar = popup()->findChild<QCalendarWidget*>();
    EXPECT_EQ(calendar->selectedDate(), QDate(2026, 9, 14));
    auto* table = calendar->findChild<QWidget*>(QStringLiteral("qt_calendar_calendarview"));
    QTest::keyClick(table, Qt::Key_Right);
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(popup(), nullptr);
    EXPECT_EQ(asOf(), "2026-09-15");
    EXPECT_EQ(QApplication::focusWidget(), field->line());
    QTest::keyClick(field->line(), Qt::Key_Down, Qt::AltModifier);
    ASSERT_NE(popup(), nullptr);
    QTest::keyClick(popup()->findChild<QWidget*>(QStringLiteral("qt_calendar_calendarview")), Qt::Key_Escape);
    EXPECT_EQ(popup(), nullptr);
    EXPECT_EQ(asOf(), "2026-09-15") << "left without choosing";
}

TEST_F(Days, AFormIsNotWrittenWithADayThatIsNone) {
    auto* form = askForNote(&window, window.yard(), {.colony = entry().id, .date = day("2026-09-14")});
    auto* field = form->findChild<DayField*>();
    EXPECT_EQ(field->line()->selectedText().toStdString(), "14 Sept 2026")
        << "where the form opens with it, it is typed over";
    const auto looks = records().looks.size();
    QTest::keyClicks(form->findChild<QPlainTextEdit*>(), QStringLiteral("wasps"));
    typeDay(field, "31 June");
    write(form);
    EXPECT_TRUE(form->isVisible());
    EXPECT_EQ(form->fault().toStdString(), "Day: There is no day 31 in June; it ends with day 30.");
    EXPECT_EQ(form->focusWidget(), field->line());
    EXPECT_EQ(records().looks.size(), looks);
    typeDay(field, "5 Sep 2026");
    write(form); // nothing but the button was pressed, and the day counts
    EXPECT_EQ(records().looks.size(), looks + 1);
    EXPECT_EQ(records().looks.front().note == "wasps" ? records().looks.front().date : records().looks.back().date,
              day("2026-09-05"));
}

TEST_F(Days, OfTheSeasonHaveNoYear) {
    window.choose({});
    auto* page = window.yardView()->place();
    window.yardView()->showPage(YardPage::Place);
    settle();
    auto* field = this->field<DayField>(page, "Day: spring forage starts");
    ASSERT_NE(field, nullptr);
    for (auto* own : page->findChildren<QCheckBox*>())
        if (own->text() == QStringLiteral("spring forage starts")) own->click();
    settle();
    typeDay(field, "12 may");
    QTest::keyClick(field->line(), Qt::Key_Return);
    settle();
    EXPECT_EQ(window.yard()->shownYard()->season.forage, book::DayOfYear::of(5, 12));
    EXPECT_EQ(field->line()->text().toStdString(), "12 May");
}

TEST_F(Days, UndoTakesLettersBackOnlyWhileTheyAreNotEntered) {
    UndoKeys keys;
    QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    auto* field = window.dayField();
    EXPECT_TRUE(keys.eventFilter(field->line(), &undo)) << "the book's";
    typeDay(field, "5 Sep 2026");
    EXPECT_FALSE(keys.eventFilter(field->line(), &undo)) << "typed, not entered";
    QTest::keyClick(field->line(), Qt::Key_Return);
    EXPECT_TRUE(keys.eventFilter(field->line(), &undo));
}

} // namespace winterlarder::desk
