// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/find_dialog.h"

#include "app/window_desk.h"
#include "dialogs/help_window.h"
#include "fields/place_field.h"
#include "forms/record_list.h"
#include "guide/guide_window.h"
#include "pages/place_page.h"
#include "pages/story_page.h"
#include "pages/yard_view.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QTabWidget>
#include <QTextBrowser>

//! Finding colonies, entries, places and sources by their words.
namespace winterlarder::desk::find_test {

using invented::colony;

class Find : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        auto pear = colony("P\u00e9ar"), far = colony("Quince");
        pear.weighings = {{invented::day("2026-09-12"), book::ScaleReading{kilograms(41.5)}}};
        far.yard = "Far away";
        open({colony("Apple"), pear, far});
    }
    FindDialog* opened() {
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window, Qt::Key_F, Qt::ControlModifier);
        auto* dialog = window.findChild<FindDialog*>();
        EXPECT_NE(dialog, nullptr);
        settle(); // the book is read
        return dialog;
    }
    //! Types the words and shows the first of what is found.
    void show(const char* words, const char* first) {
        auto* dialog = opened();
        dialog->line()->insert(QString::fromUtf8(words));
        ASSERT_GT(dialog->found()->count(), 0) << words;
        EXPECT_TRUE(dialog->found()->item(0)->text().startsWith(QString::fromUtf8(first)))
            << dialog->found()->item(0)->text().toStdString();
        QTest::keyClick(dialog->line(), Qt::Key_Return);
        QTest::qWait(5); // the dialog goes
        settle();
    }
    std::string shownColony() { return entry().record.colony.value_or(""); }
};

TEST_F(Find, AColonyByPlainLettersAlsoOfAnotherYard) {
    show("colony pear", "colony: P\u00e9ar");
    EXPECT_EQ(shownColony(), "P\u00e9ar");
    EXPECT_TRUE(window.colonyView()->isVisible());
    show("quince", "colony: Quince \u2013 Far away");
    EXPECT_EQ(window.yard()->shownYard()->name, "Far away");
    EXPECT_EQ(shownColony(), "Quince");
}

TEST_F(Find, AnEntryIsShownInTheStory) {
    show("weighing 41.5", "weighing");
    EXPECT_EQ(shownColony(), "P\u00e9ar");
    auto* story = window.colonyView()->story();
    EXPECT_EQ(window.colonyView()->pages()->currentWidget(), story);
    const int row = story->records()->table()->currentIndex().row();
    ASSERT_GE(row, 0);
    EXPECT_EQ(story->records()->model()->rows().at(static_cast<std::size_t>(row)).kind, book::Kind::Weighing);
}

TEST_F(Find, ANoteOfAYard) {
    auto yard = *window.yard()->shownYard();
    yard.forageNotes = "Goldenrod along the dyke";
    window.yard()->writeYard(yard);
    settle();
    show("dyke goldenrod", "note of the yard");
    EXPECT_TRUE(window.yardView()->place()->isVisible());
    EXPECT_EQ(window.yardView()->place()->notes()->toPlainText(), QStringLiteral("Goldenrod along the dyke"));
}

TEST_F(Find, AStationIsOfferedToTheYardAndNotTaken) {
    const auto where = window.yard()->shownYard()->site;
    const auto& station = invented::shipped()->stations.back();
    show(("climate station " + station.place).c_str(), "climate station");
    EXPECT_EQ(window.yardView()->place()->place()->search()->text().toStdString(), station.place);
    EXPECT_EQ(window.yard()->shownYard()->site, where) << "only the keeper says that the yard lies there";
}

TEST_F(Find, ASourceWithWhatItIsUsedIn) {
    const auto& source = invented::shipped()->sources.front();
    show(("source " + source.citation.substr(0, 25)).c_str(), "source");
    auto* sources = window.findChild<HelpWindow*>();
    ASSERT_NE(sources, nullptr);
    EXPECT_TRUE(sources->isVisible());
    EXPECT_TRUE(sources->text().contains(QString::fromStdString(source.citation)));
    sources->close();
}

TEST_F(Find, APageOfTheGuide) {
    show("guide", "guide");
    auto* guide = window.findChild<GuideWindow*>();
    ASSERT_NE(guide, nullptr);
    EXPECT_TRUE(guide->isVisible());
    guide->close();
}

TEST_F(Find, SaysWhereNothingIsFoundAndArrowsMoveInTheList) {
    auto* dialog = opened();
    QTest::keyClicks(dialog->line(), QStringLiteral("xyzzy"));
    EXPECT_EQ(dialog->found()->count(), 0);
    EXPECT_EQ(dialog->said()->text().toStdString(), "Nothing holds these letters.");
    QTest::keyClick(dialog->line(), Qt::Key_Return);
    EXPECT_TRUE(dialog->isVisible()) << "nothing to show, nothing happens";
    type(dialog->line(), "colony");
    ASSERT_GT(dialog->found()->count(), 2);
    QTest::keyClick(dialog->line(), Qt::Key_Down);
    EXPECT_EQ(dialog->found()->currentRow(), 1);
    EXPECT_TRUE(dialog->line()->hasFocus());
}

TEST_F(Find, AColonyThatIsGoneIsSaid) {
    const auto apple = window.yard()->colonies().front().id;
    window.yard()->apply(book::SingleEdit(
        book::AddFate{{.colony = apple, .date = invented::day("2026-09-13"), .fate = book::FateKind::Dead}}));
    settle();
    ASSERT_EQ(window.yard()->find(apple), nullptr);
    show("colony apple", "colony: Apple");
    EXPECT_TRUE(window.banner()->said(QStringLiteral("notices")).contains(QStringLiteral("Apple is not among")));
}

} // namespace winterlarder::desk::find_test
