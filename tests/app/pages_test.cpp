// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/buttons.h"
#include "app/window_desk.h"
#include "forms/record_list.h"
#include "pages/answer_panel.h"
#include "pages/comb_table_page.h"
#include "pages/feeding_page.h"
#include "pages/look_page.h"
#include "pages/place_page.h"
#include "pages/scale_page.h"
#include "pages/start_page.h"
#include "pages/story_page.h"
#include "pages/weather_part.h"
#include "pages/what_if_page.h"
#include "pages/yard_view.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QSpinBox>
#include <QTabWidget>

namespace winterlarder::desk {

using invented::colony;
using invented::day;
using invented::WindowDesk;

TEST_F(WindowDesk, FromNothingToAnAnswer) {
    answerReally();
    auto* start = window.startPage();
    ASSERT_TRUE(start->isVisible());
    QTest::mouseClick(button(start, "Begin the book"), Qt::LeftButton);
    EXPECT_FALSE(start->fault().isEmpty()) << "it says what is missing";
    QTest::keyClicks(start->place()->search(), QStringLiteral("halif"));
    ASSERT_GT(start->place()->found()->count(), 0) << start->place()->search()->text().toStdString();
    QTest::keyClick(start->place()->search(), Qt::Key_Return);
    type(start->yard(), "Below the hill");
    QTest::mouseClick(button(start, "Begin the book"), Qt::LeftButton);
    window.yard()->showDay(invented::day("2026-09-14"));
    settle();
    ASSERT_TRUE(window.book()->isOpen());
    EXPECT_EQ(window.yard()->title(), QStringLiteral("Below the hill"));
    EXPECT_EQ(window.book()->state()->file, folder.filePath(QStringLiteral("Below the hill.larder")));
    ASSERT_EQ(window.yard()->colonies().size(), 1U) << "the colony entered with the book";
    EXPECT_EQ(window.colonyView()->colony(), window.yard()->colonies().front().id) << "its first look is next";
    window.choose({});
    settle();
    window.newColony();
    auto* form = this->form();
    QTest::mouseClick(button(form, "Write down"), Qt::LeftButton);
    EXPECT_FALSE(form->fault().isEmpty()) << "a colony needs a name";
    type(field<QLineEdit>(form, "Name"), "Apple");
    write(form);
    ASSERT_EQ(window.yard()->colonies().size(), 2U);
    EXPECT_EQ(window.colonyView()->colony(), window.yard()->colonies()[1].id) << "the new one is chosen";
    look(1);
    QTest::mouseClick(window.colonyView()->look()->newLookButton(), Qt::LeftButton);
    settle();
    ASSERT_EQ(records().looks.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<std::vector<book::CombRecord>>(entry().record.combs))
        << "the combs of an empty hive hang there";
    window.colonyView()->look()->drawing();
    for (std::size_t comb = 0; comb < 10; ++comb) {
        auto record = std::get<std::vector<book::CombRecord>>(entry().record.combs)[comb];
        record.capped = 0.7;
        window.yard()->changeComb(entry().id, comb, record);
    }
    auto look = window.yard()->lookToEdit(entry().id);
    look.bees.coveredCombs = 8;
    window.yard()->writeLook(look);
    settle();
    ASSERT_TRUE(entry().answered);
    EXPECT_NE(entry().answered->answer.advice.verdict, advice::Verdict::CannotSay);
}

TEST_F(WindowDesk, AWeightIsTypedAsPeopleTypeIt) {
    answerSlowly();
    open({colony("A")});
    auto* scale = window.colonyView()->scale();
    window.colonyView()->showPage(ColonyPage::Scale);
    QTest::mouseClick(button(scale->weighings(), "Weigh\u2026"), Qt::LeftButton);
    auto* form = this->form();
    auto* gross = field<QuantityField>(form, "Whole hive");
    type(gross, "about forty");
    QTest::mouseClick(button(form, "Write down"), Qt::LeftButton);
    EXPECT_FALSE(form->fault().isEmpty());
    EXPECT_EQ(gross->text(), QStringLiteral("about forty")) << "nothing typed is lost";
    type(gross, "900 kg");
    EXPECT_FALSE(gross->fault().isEmpty()) << "outside the limits";
    type(gross, "88 lb 3 oz");
    write(form);
    ASSERT_EQ(records().weighings.size(), 1U);
    EXPECT_NEAR(std::get<book::ScaleReading>(records().weighings[0].weighing.reading).gross.value(), 40.0, 0.01);
    EXPECT_EQ(scale->weighings()->model()->rowCount(), 1);
    EXPECT_EQ(entry().record.weighings.size(), 1U);
    undo();
    EXPECT_TRUE(records().weighings.empty());
}

TEST_F(WindowDesk, TheStoryIsReadAddedToChangedAndTakenBack) {
    answerSlowly();
    open({colony("A")});
    auto* story = window.colonyView()->story();
    window.colonyView()->pages()->setCurrentWidget(story);
    ASSERT_EQ(story->records()->model()->rowCount(), 1);
    QTest::mouseClick(button(story->records(), "Note\u2026"), Qt::LeftButton);
    auto* form = this->form();
    field<QPlainTextEdit>(form, "Note")->setPlainText(QStringLiteral("Wasps at the entrance"));
    write(form);
    ASSERT_EQ(story->records()->model()->rowCount(), 2);
    EXPECT_TRUE(story->records()
                    ->model()
                    ->index(0, RecordListModel::DetailsColumn)
                    .data()
                    .toString()
                    .contains(QStringLiteral("Wasps")))
        << "newest first";
    auto* table = story->records()->table();
    table->setCurrentIndex(story->records()->model()->index(0, 0));
    table->setFocus();
    QTest::keyClick(table, Qt::Key_Return);
    form = this->form();
    field<QPlainTextEdit>(form, "Note")->setPlainText(QStringLiteral("Hornets at the entrance"));
    write(form);
    EXPECT_TRUE(story->records()
                    ->model()
                    ->index(0, RecordListModel::DetailsColumn)
                    .data()
                    .toString()
                    .contains(QStringLiteral("Hornets")));
    QTest::keyClick(table, Qt::Key_Delete);
    settle();
    EXPECT_EQ(story->records()->model()->rowCount(), 1);
    undo();
    EXPECT_EQ(story->records()->model()->rowCount(), 2);
    story->which()->setCurrentIndex(1);
    settle();
    EXPECT_GE(story->steps()->model()->rowCount(), 4) << "every step is in the history";
}

TEST_F(WindowDesk, TheAdviceBecomesThePlanAndItsVisitsAreTickedOff) {
    answerSlowly();
    open({colony("A")});
    auto* plan = window.colonyView()->answer()->planButton();
    ASSERT_TRUE(plan->isVisible());
    QTest::mouseClick(plan, Qt::LeftButton);
    settle();
    ASSERT_EQ(records().advices.size(), 1U) << window.banner()->said(QStringLiteral("refused")).toStdString();
    ASSERT_EQ(records().visits.size(), 2U);
    EXPECT_TRUE(window.banner()->said(QStringLiteral("notices")).contains(QStringLiteral("the plan now")))
        << "it says that it was done";
    EXPECT_EQ(plan->text().toStdString(), "\u2713 It is the plan");
    EXPECT_FALSE(plan->isEnabled()) << "what is done is not offered again";
    QTest::mouseClick(plan, Qt::LeftButton);
    settle();
    ASSERT_EQ(records().visits.size(), 2U);
    undo();
    EXPECT_TRUE(records().visits.empty());
    EXPECT_TRUE(plan->isEnabled()) << "taken back it may be made the plan once more";
    EXPECT_EQ(plan->text().toStdString(), "Make it the &plan");
    QTest::mouseClick(plan, Qt::LeftButton);
    settle();
    ASSERT_EQ(records().visits.size(), 2U);
    look(0);
    EXPECT_FALSE(plan->isEnabled()) << "looked at again it is still the plan";
    window.choose({});
    settle();
    auto* yardView = window.findChild<YardView*>();
    ASSERT_EQ(yardView->model()->rowCount(), 2)
        << "the yard's plan holds what was made the plan, not that and the advice";
    EXPECT_TRUE(yardView->model()->jobs()[0].visit);
    EXPECT_FALSE(button(yardView, "Visit made")->isEnabled());
    yardView->table()->setCurrentIndex(yardView->model()->index(0, 0));
    ASSERT_TRUE(button(yardView, "Visit made")->isEnabled());
    QTest::mouseClick(button(yardView, "Visit made"), Qt::LeftButton);
    settle();
    const auto planned = [&] {
        return std::count_if(yardView->model()->jobs().begin(), yardView->model()->jobs().end(),
                             [](const auto& job) { return job.visit.has_value(); });
    };
    EXPECT_TRUE(invented::waitFor([&] { return planned() == 1; })) << "ticked off from the yard's plan";
    undo();
    look(0);
    const Date between = std::min(records().visits[0].date, records().visits[1].date).plusDays(1);
    window.yard()->showDay(between);
    settle();
    EXPECT_TRUE(small("One planned visit is past")) << between.iso();
    EXPECT_TRUE(small("One visit of your plan is still to come")) << "one reminder does not hide the other";
    const Date firstDay = std::min(records().visits[0].date, records().visits[1].date);
    window.yard()->showDay(day("2026-10-30"));
    settle();
    EXPECT_TRUE(small("2 planned visits are past")) << "what was not ticked off is named";
    auto* feeding = window.colonyView()->feeding();
    window.colonyView()->showPage(ColonyPage::Feeding);
    ASSERT_EQ(feeding->given()->model()->rowCount(), 2);
    feeding->given()->table()->setCurrentIndex(feeding->given()->model()->index(1, 0));
    ASSERT_TRUE(feeding->doneButton()->isEnabled());
    QTest::mouseClick(feeding->doneButton(), Qt::LeftButton);
    settle();
    ASSERT_EQ(records().feeds.size(), 1U) << "a feeding visit made is a feed";
    EXPECT_EQ(records().feeds[0].feed.sugar, kilograms(3));
    EXPECT_EQ(records().feeds[0].feed.date, firstDay) << "made when it was planned, unless said otherwise";
    EXPECT_TRUE(small("One planned visit is past"));
    undo();
    undo();
    EXPECT_TRUE(records().visits.empty());
    EXPECT_TRUE(records().advices.empty());
}

TEST_F(WindowDesk, WhatIsTriedOutFollowsTheHandAndStaysUnwritten) {
    answerReally();
    { const auto made = invented::bookOf(file(), invented::demoYard()); }
    openFile();
    auto* page = window.colonyView()->whatIf();
    window.colonyView()->showPage(ColonyPage::WhatIf);
    const auto before = records();
    const QString alone = page->said();
    page->take()->setValue(8);
    EXPECT_NE(page->said(), alone);
    EXPECT_EQ(page->whatIf().take, kilograms(8));
    EXPECT_TRUE(page->planButton()->isEnabled());
    const QString taken = page->said();
    page->bees()->setValue(10);
    EXPECT_FALSE(page->planButton()->isEnabled()) << "not before the full answer is there";
    page->bees()->setValue(-10);
    settle();
    EXPECT_TRUE(page->planButton()->isEnabled());
    EXPECT_NE(page->said(), taken);
    EXPECT_EQ(window.undoAction()->text(), QStringLiteral("&Undo: case files opened")) << "nothing was written";
    QTest::mouseClick(button(page, "Back to what is"), Qt::LeftButton);
    EXPECT_EQ(page->said(), alone);
    page->take()->setValue(3);
    QTest::mouseClick(page->planButton(), Qt::LeftButton);
    settle();
    ASSERT_EQ(records().advices.size(), before.advices.size() + 1);
    EXPECT_EQ(records().advices.back().verdict, "harvest");
}

TEST_F(WindowDesk, WhatCouldBeTriedOutFollowsTheRecordsAlsoWhileNobodyLooks) {
    answerReally();
    { const auto made = invented::bookOf(file(), invented::demoYard()); }
    openFile();
    auto* view = window.colonyView();
    auto* page = view->whatIf();
    view->showPage(ColonyPage::WhatIf);
    const QString first = page->said();
    view->showPage(ColonyPage::Hive);
    look(1);
    view->showPage(ColonyPage::WhatIf);
    const QString second = page->said();
    EXPECT_NE(second, first) << "another colony";
    page->take()->setValue(2);
    const QString taken = page->said();
    view->showPage(ColonyPage::Hive);
    auto changed = window.yard()->lookToEdit(entry().id);
    changed.bees.coveredCombs = 4;
    window.yard()->writeLook(changed);
    settle();
    EXPECT_EQ(page->take()->value(), 2);
    EXPECT_NE(page->said(), taken) << "what is tried goes on over the new answer";
    look(0);
    EXPECT_EQ(page->take()->value(), 0) << "of another colony nothing is tried";
    page->take()->setValue(2);
    EXPECT_NE(page->said(), first);
    QTest::mouseClick(button(page, "Back to what is"), Qt::LeftButton);
    view->showPage(ColonyPage::WhatIf);
    EXPECT_EQ(page->said(), first);
}

TEST_F(WindowDesk, ThePlaceIsChangedFieldByField) {
    answerSlowly();
    open({colony("A")});
    window.choose({});
    window.yardView()->showPage(YardPage::Place);
    settle();
    auto* place = window.yardView()->place();
    type(place->reserve(), "12 ounces of gold");
    QTest::keyClick(place->reserve(), Qt::Key_Return);
    EXPECT_FALSE(place->reserve()->fault().isEmpty());
    EXPECT_FALSE(entry().record.wish.reserve) << "nothing was wished";
    type(place->reserve(), "5,5");
    QTest::keyClick(place->reserve(), Qt::Key_Return);
    settle();
    EXPECT_EQ(window.yard()->colonies()[0].record.wish.reserve, kilograms(5.5));
    type(place->elevation(), "200");
    QTest::keyClick(place->elevation(), Qt::Key_Return);
    settle();
    EXPECT_EQ(window.yard()->colonies()[0].record.site.elevationM, 200);
    undo();
    undo();
    EXPECT_FALSE(window.yard()->colonies()[0].record.wish.reserve);
    EXPECT_EQ(place->reserve()->text(), QString());
}

TEST_F(WindowDesk, TheTableOfCombsWeighsInTheUnitsOfTheKeeper) {
    answerReally();
    open({colony("Apple")});
    const auto honey = [this] {
        return window.colonyView()->combTable()->model()->index(0, CombTableModel::HoneyColumn).data().toString();
    };
    EXPECT_TRUE(honey().contains(QStringLiteral(" kg ("))) << honey().toStdString();
    window.useUnits(UnitSystem::UnitedStates);
    EXPECT_TRUE(honey().contains(QStringLiteral(" lb ("))) << honey().toStdString();
    window.useUnits(UnitSystem::Metric);
}

TEST_F(WindowDesk, AYardTriedOutIsKeptAsABookWhileAColonyIsLookedAt) {
    answerSlowly();
    window.books()->openCases({colony("Apple"), colony("Pear")});
    settle();
    look(1);
    ASSERT_TRUE(window.books()->isTemporary());
    ASSERT_NE(window.yard()->records(entry().id), nullptr);
    window.books()->copyTo(file());
    settle();
    ASSERT_FALSE(window.books()->isTemporary());
    EXPECT_EQ(window.book()->state()->file, file());
    EXPECT_TRUE(window.banner()->said(QStringLiteral("notices")).contains(file())) << "it says where the book is";
    ASSERT_NE(window.yard()->records(entry().id), nullptr) << "the same colony is read from the other book";
    EXPECT_TRUE(window.colonyView()->look()->newLookButton()->isEnabled());
}

TEST_F(WindowDesk, AYardTriedOutIsNotGivenUpForABookThatIsThere) {
    { const auto made = invented::bookOf(file(), {colony("Another")}); }
    answerSlowly();
    window.books()->openCases({colony("Apple"), colony("Pear")});
    settle();
    window.books()->copyTo(file());
    settle();
    EXPECT_TRUE(window.books()->isTemporary());
    EXPECT_EQ(window.yard()->colonies().size(), 2U);
    EXPECT_FALSE(window.banner()->said(QStringLiteral("refused")).isEmpty());
    const QString elsewhere = folder.filePath(QStringLiteral("elsewhere.larder"));
    window.books()->copyTo(elsewhere);
    settle();
    EXPECT_EQ(window.book()->state()->file, elsewhere);
}

TEST_F(WindowDesk, ThePlaceFitsANarrowWindow) {
    answerSlowly();
    open({colony("Apple")});
    window.choose({});
    window.yardView()->showPage(YardPage::Place);
    settle();
    auto* place = window.yardView()->place();
    const auto seen = [place] { return place->parentWidget()->width(); };
    EXPECT_EQ(place->width(), seen());
    const int beside = place->weather()->mapTo(place, QPoint()).x();
    EXPECT_GT(beside, place->width() / 3) << "two columns where there is room";
    window.resize(1024, 700);
    QTest::qWait(50);
    EXPECT_EQ(place->width(), seen()) << "nothing is out of sight at the side";
    EXPECT_LT(place->weather()->mapTo(place, QPoint()).x(), place->width() / 3) << "one below the other";
    window.resize(1360, 900);
    QTest::qWait(50);
    EXPECT_EQ(place->weather()->mapTo(place, QPoint()).x(), beside);
}

TEST_F(WindowDesk, ABookOpenElsewhereSaysSoAndTakesNoEdits) {
    answerSlowly();
    const auto other = invented::bookOf(file(), {colony("A")});
    openFile();
    EXPECT_TRUE(window.banner()->said(QStringLiteral("access")).contains(QStringLiteral("keeper")))
        << window.banner()->said(QStringLiteral("access")).toStdString();
    EXPECT_FALSE(window.undoAction()->isEnabled());
    EXPECT_FALSE(window.colonyView()->look()->newLookButton()->isEnabled());
    EXPECT_FALSE(window.colonyView()->answer()->planButton()->isVisible());
    EXPECT_FALSE(window.colonyView()->look()->share(Zone::Capped)->isEnabled());
}

TEST_F(WindowDesk, ADamagedBookIsSalvagedIntoANewOne) {
    answerSlowly();
    { const auto made = invented::bookOf(file(), {colony("A"), colony("B")}); }
    QFile damaged(file());
    ASSERT_TRUE(damaged.open(QIODevice::ReadWrite));
    damaged.write("no longer a header");
    damaged.close();
    window.books()->open(file());
    settle();
    EXPECT_FALSE(window.book()->isOpen());
    EXPECT_FALSE(window.banner()->said(QStringLiteral("problems")).isEmpty());
    const QString saved = folder.filePath(QStringLiteral("saved.larder"));
    window.books()->salvage(file(), saved);
    settle();
    ASSERT_TRUE(window.book()->isOpen());
    EXPECT_EQ(window.yard()->colonies().size(), 2U);
    EXPECT_FALSE(window.banner()->said(QStringLiteral("salvage")).isEmpty());
}

TEST_F(WindowDesk, EveryPageNamesWhatTakesTheFocus) {
    answerSlowly();
    const auto walk = [this](const char* page) {
        for (auto* widget : window.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || widget->focusProxy() ||
                widget->objectName().startsWith(QStringLiteral("qt_")))
                continue;
            auto* spoken = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(spoken, nullptr) << widget->metaObject()->className();
            EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty())
                << widget->metaObject()->className() << " in " << widget->parentWidget()->metaObject()->className()
                << " on " << page;
        }
    };
    walk("the first page");
    open({colony("A")});
    for (int page = 0; page < window.colonyView()->pages()->count(); ++page) {
        window.colonyView()->pages()->setCurrentIndex(page);
        QTest::qWait(5);
        walk(window.colonyView()->pages()->tabText(page).toUtf8().constData());
    }
    window.choose({});
    for (const int page : {0, 1}) {
        window.yardView()->pages()->setCurrentIndex(page);
        QTest::qWait(5);
        walk("the yard");
    }
}

TEST_F(WindowDesk, LongAndRightToLeftNamesKeepTheWindowInShape) {
    answerSlowly();
    const std::string longName =
        "The very long name of a colony that somebody once gave it in a moment of great joy and never shortened again";
    open({colony(longName.c_str()), colony("\u05DB\u05D5\u05D5\u05E8\u05EA \u05D4\u05EA\u05E4\u05D5\u05D7")});
    window.resize(1024, 700);
    settle();
    EXPECT_LE(window.minimumSizeHint().width(), 1024);
    EXPECT_LE(window.minimumSizeHint().height(), 700);
    look(1);
    EXPECT_EQ(entry().record.colony, "\u05DB\u05D5\u05D5\u05E8\u05EA \u05D4\u05EA\u05E4\u05D5\u05D7");
}

} // namespace winterlarder::desk
