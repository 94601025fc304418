// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "pages/look_page.h"
#include "pages/place_page.h"
#include "pages/story_page.h"
#include "pages/yard_view.h"

#include <QComboBox>
#include <QListView>
#include <QPlainTextEdit>
#include <QTabWidget>

//! Keys of the colony's menu, which are letters alone, and those that go from colony to colony.
namespace winterlarder::desk::letter_keys_test {

using invented::colony;

class LetterKeysOfTheWindow : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple"), colony("Pear")});
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        window.yardPane()->setFocus();
    }
    EntryForm* shownForm() {
        for (auto* each : window.findChildren<EntryForm*>())
            if (each->isVisible()) return each;
        return nullptr;
    }
    void expectForm(Qt::Key key, const char* name) {
        QTest::keyClick(window.yardPane(), key);
        auto* form = shownForm();
        ASSERT_NE(form, nullptr) << name;
        field<QWidget>(form, name);
        delete form;
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        window.yardPane()->setFocus();
    }
};

TEST_F(LetterKeysOfTheWindow, WriteDownALookAWeightAndAFeed) {
    expectForm(Qt::Key_W, "Whole hive");
    expectForm(Qt::Key_F, "Sugar in it");
    const auto looks = records().looks.size();
    window.colonyView()->showPage(ColonyPage::Story);
    QTest::keyClick(window.yardPane(), Qt::Key_L);
    settle();
    EXPECT_EQ(records().looks.size(), looks + 1);
    EXPECT_EQ(window.colonyView()->pages()->currentIndex(), static_cast<int>(ColonyPage::Hive));
}

TEST_F(LetterKeysOfTheWindow, AreLettersWhereOneTypes) {
    window.choose({});
    window.yardView()->showPage(YardPage::Place);
    settle();
    look(0);
    window.choose({});
    auto* name = window.yardView()->place()->name();
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("wlf"));
    EXPECT_TRUE(name->text().endsWith(QStringLiteral("wlf"))) << name->text().toStdString();
    auto* notes = window.yardView()->place()->notes();
    notes->setFocus();
    QTest::keyClicks(notes, QStringLiteral("wlf"));
    EXPECT_TRUE(notes->toPlainText().endsWith(QStringLiteral("wlf")));
    EXPECT_EQ(shownForm(), nullptr);
    look(0);
    window.colonyView()->showPage(ColonyPage::Story);
    auto* which = window.colonyView()->story()->which();
    which->setFocus();
    QTest::keyClick(which, Qt::Key_F);
    EXPECT_EQ(shownForm(), nullptr) << "a choice looks for what begins so";
}

TEST_F(LetterKeysOfTheWindow, DoNothingWhereNoColonyIsLookedAt) {
    window.choose({});
    for (const auto key : {Qt::Key_W, Qt::Key_F, Qt::Key_L}) QTest::keyClick(window.yardPane(), key);
    EXPECT_EQ(shownForm(), nullptr);
}

TEST_F(LetterKeysOfTheWindow, NextAndPreviousColonyStopAtTheEnds) {
    window.choose({});
    const auto at = [this] { return window.yardPane()->currentIndex().row(); };
    const auto next = [this] { QTest::keyClick(window.yardPane(), Qt::Key_PageDown, Qt::ControlModifier); };
    const auto previous = [this] { QTest::keyClick(window.yardPane(), Qt::Key_PageUp, Qt::ControlModifier); };
    next();
    EXPECT_EQ(at(), 1);
    next();
    EXPECT_EQ(at(), 2);
    next();
    EXPECT_EQ(at(), 2);
    previous();
    EXPECT_EQ(at(), 1);
    previous();
    EXPECT_EQ(at(), 1) << "the yard is no colony";
}

} // namespace winterlarder::desk::letter_keys_test
