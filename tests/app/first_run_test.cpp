// SPDX-License-Identifier: GPL-3.0-or-later
// The first quarter of an hour: where, which hive, which colonies, and what is to be entered next.
#include "app/window_desk.h"
#include "dialogs/grounds_popup.h"
#include "fields/askable_label.h"
#include "fields/fields.h"
#include "fields/place_field.h"
#include "fields/quantity_field.h"
#include "forms/format_field.h"
#include "pages/answer_panel.h"
#include "pages/ask_row.h"
#include "pages/next_entry.h"
#include "pages/picture_panel.h"
#include "text/place_words.h"

#include <QDoubleSpinBox>
#include <QListWidget>
#include <QRadioButton>
#include <QSignalSpy>
#include <QSpinBox>

namespace winterlarder::desk {

using invented::colony;
using invented::day;
using invented::WindowDesk;

namespace {

QString weather(double latitude, double longitude, std::optional<double> heightM) {
    const auto site = climate::siteNear(*invented::shipped(), latitude, longitude, heightM);
    return text::weatherOf(site.value(), *invented::shipped(), heightM, words::style());
}

} // namespace

// ---- the place -------------------------------------------------------------------------------------------------------

// ca-halifax lies 145 m above the sea: 100 m lower is 0.65 K warmer.
TEST(PlaceWords, SayWhoseWeatherAndWhatTheHeightDoes) {
    const auto& station = *invented::shipped()->station("ca-halifax");
    const auto at = [&](double heightM) { return weather(station.latitude, station.longitude, heightM).toStdString(); };
    EXPECT_EQ(at(station.elevationM - 100),
              "weather of Halifax, under 1 km away, 100 m higher: here it is 0.7 \u00b0C warmer");
    EXPECT_EQ(at(station.elevationM + 200),
              "weather of Halifax, under 1 km away, 200 m lower: here it is 1.3 \u00b0C colder");
    EXPECT_EQ(at(station.elevationM + 3), "weather of Halifax, under 1 km away, about as high");
    EXPECT_EQ(weather(station.latitude, station.longitude, {}).toStdString(),
              "weather of Halifax, under 1 km away, at its height");
    EXPECT_TRUE(weather(-23.55, -46.63, 760).contains(QStringLiteral("no weather station is near enough")));
}

class PlaceSearch : public testing::Test {
protected:
    PlaceSearch() {
        field.useReference(invented::shipped());
        field.usePlaces(invented::shippedPlaces());
        field.resize(600, 300);
        field.setVisible(true);
    }
    void type(const char* text) {
        field.search()->selectAll();
        field.search()->insert(QString::fromUtf8(text)); // key events of a test know ASCII alone
    }
    PlaceField field;
};

TEST_F(PlaceSearch, ATownIsFoundAndItsWeatherTold) {
    QSignalSpy chosen(&field, &PlaceField::chosen);
    type("new glasgow");
    ASSERT_GT(field.found()->count(), 0);
    EXPECT_EQ(field.found()->item(0)->text(), QStringLiteral("New Glasgow, Nova Scotia, Canada"));
    EXPECT_TRUE(chosen.isEmpty()) << "nothing is chosen while it is typed";
    QTest::keyClick(field.search(), Qt::Key_Return);
    ASSERT_EQ(chosen.size(), 1);
    const auto at = std::get<book::Coordinates>(*field.place());
    EXPECT_NEAR(at.latitude, 45.58, 0.01);
    EXPECT_EQ(field.heightM(), 11) << "the height goes with the place";
    EXPECT_EQ(field.country(), "CA");
    EXPECT_TRUE(field.said().startsWith(QStringLiteral("New Glasgow, Nova Scotia, Canada: weather of ")))
        << field.said().toStdString();
    EXPECT_TRUE(field.found()->isHidden());
}

TEST_F(PlaceSearch, TheNameThatWasTypedStandsBeside) {
    type("M\u00fcnch");
    EXPECT_EQ(field.found()->item(0)->text(), QStringLiteral("Munich, Bavaria, Germany (M\u00fcnchen)"));
    type("Muenchen");
    EXPECT_EQ(field.found()->item(0)->text(), QStringLiteral("Munich, Bavaria, Germany (M\u00fcnchen)"));
}

TEST_F(PlaceSearch, CoordinatesAreTakenAsTheyAreTyped) {
    type("45.1, -64.5");
    ASSERT_TRUE(field.place());
    EXPECT_EQ(std::get<book::Coordinates>(*field.place()), (book::Coordinates{45.1, -64.5}));
    EXPECT_FALSE(field.heightM());
    EXPECT_TRUE(field.said().startsWith(QStringLiteral("45.10, -64.50: weather of "))) << field.said().toStdString();
}

TEST_F(PlaceSearch, WhatIsNotFoundIsSaidAndNearSpellingsAreOffered) {
    type("Halifaks");
    ASSERT_GT(field.found()->count(), 0);
    EXPECT_TRUE(field.found()->item(0)->text().startsWith(QStringLiteral("Halifax")));
    EXPECT_TRUE(field.said().contains(QStringLiteral("Do you mean")));
    type("xyzzyplugh");
    EXPECT_EQ(field.found()->count(), 0);
    EXPECT_TRUE(field.said().contains(QStringLiteral("latitude and longitude")));
    EXPECT_FALSE(field.place());
}

// ---- the hive --------------------------------------------------------------------------------------------------------

TEST(FormatSearch, AnyWordFindsFormats) {
    const auto named = [](const char* text) {
        std::vector<std::string> ids;
        for (const auto* format : formatsNamed(*invented::shipped(), QString::fromUtf8(text)))
            ids.push_back(format->id);
        return ids;
    };
    EXPECT_EQ(named("Top").size(), 4U);
    for (const auto& id : named("Top")) EXPECT_TRUE(id.starts_with("topbar")) << id;
    EXPECT_EQ(named("national"), (std::vector<std::string>{"national-deep", "national-shallow"}));
    EXPECT_EQ(named("deep lang"), (std::vector<std::string>{"langstroth-deep", "langstroth-deep-8"}));
    EXPECT_TRUE(named("no such hive").empty());
    EXPECT_EQ(named("").size(), invented::shipped()->formats.size());
}

TEST(FormatSearch, WhatIsUsualInTheCountryIsProposedUntilOneIsChosen) {
    FormatField field;
    field.useReference(invented::shipped());
    EXPECT_EQ(field.format()->id, "langstroth-deep");
    field.suggest("GB", QStringLiteral("United Kingdom"));
    EXPECT_EQ(field.format()->id, "national-deep");
    EXPECT_EQ(field.list()->item(0)->text(), QStringLiteral("Usual in United Kingdom"));
    EXPECT_FALSE(field.list()->item(1)->icon().isNull()) << "each has its outline";
    EXPECT_TRUE(field.list()->item(1)->text().contains(QStringLiteral("comb 341 mm by 190 mm, 11 in a box")))
        << field.list()->item(1)->text().toStdString();
    QTest::keyClicks(field.search(), QStringLiteral("top"));
    QTest::keyClick(field.search(), Qt::Key_Return);
    EXPECT_TRUE(field.format()->isOneRoom());
    const auto chosen = field.format()->id;
    field.suggest("DE", QStringLiteral("Germany"));
    EXPECT_EQ(field.format()->id, chosen) << "what was chosen by hand stays";
}

// ---- the first page --------------------------------------------------------------------------------------------------

class FirstRun : public WindowDesk {
protected:
    FirstRun() { window.usePlaces(invented::shippedPlaces()); }
    StartPage* start() { return window.startPage(); }
    void chooseTown(const char* text) {
        start()->place()->search()->selectAll();
        QTest::keyClicks(start()->place()->search(), QString::fromUtf8(text));
        QTest::keyClick(start()->place()->search(), Qt::Key_Return);
    }
    //! Begins a book in New Glasgow and looks at it in mid September, with answers.
    NextEntry* nextOfANewBook() {
        answerReally();
        chooseTown("New Glasgow");
        QTest::mouseClick(button(start(), "Begin the book"), Qt::LeftButton);
        settle();
        window.yard()->showDay(day("2026-09-14"));
        settle();
        return window.colonyView()->next();
    }
};

TEST_F(FirstRun, ThePlaceProposesHiveBoxesAndUnits) {
    chooseTown("portland, oregon");
    EXPECT_EQ(start()->format()->format()->id, "langstroth-deep");
    EXPECT_EQ(start()->colonies()->boxes(0)->value(), 2);
    EXPECT_TRUE(start()->unitsButton(UnitSystem::UnitedStates)->isChecked());
    EXPECT_TRUE(start()->place()->said().contains(QStringLiteral(" mi"))) << start()->place()->said().toStdString();
    EXPECT_TRUE(start()->format()->list()->currentItem()->text().contains(QStringLiteral(" in by ")))
        << start()->format()->list()->currentItem()->text().toStdString();
    chooseTown("York, England");
    EXPECT_TRUE(start()->place()->said().contains(QStringLiteral(" km"))) << start()->place()->said().toStdString();
    EXPECT_EQ(start()->format()->format()->id, "national-deep");
    EXPECT_EQ(start()->colonies()->boxes(0)->value(), 1);
    EXPECT_TRUE(start()->unitsButton(UnitSystem::Metric)->isChecked());
    start()->unitsButton(UnitSystem::Imperial)->click();
    chooseTown("Augsburg");
    EXPECT_TRUE(start()->unitsButton(UnitSystem::Imperial)->isChecked()) << "chosen by hand";
    start()->format()->choose("topbar-sloping-440");
    EXPECT_TRUE(start()->colonies()->boxes(0)->isHidden()) << "top bars have no storeys";
}

TEST_F(FirstRun, SeveralColoniesAreBegunAtOnceAndTheFirstIsLookedAt) {
    answerReally();
    QTest::mouseClick(button(start(), "Begin the book"), Qt::LeftButton);
    EXPECT_TRUE(start()->fault().contains(QStringLiteral("where the bees are")));
    chooseTown("New Glasgow");
    type(start()->yard(), "Orchard");
    start()->colonies()->number()->setValue(3);
    type(start()->colonies()->name(1), "Colony 1");
    QTest::mouseClick(button(start(), "Begin the book"), Qt::LeftButton);
    EXPECT_TRUE(start()->fault().contains(QStringLiteral("Two colonies are called Colony 1")))
        << start()->fault().toStdString();
    type(start()->colonies()->name(1), "Russet");
    start()->colonies()->boxes(2)->setValue(1);
    QTest::mouseClick(button(start(), "Begin the book"), Qt::LeftButton);
    settle();
    window.yard()->showDay(day("2026-09-14"));
    settle();
    ASSERT_EQ(window.yard()->colonies().size(), 3U);
    const auto& site = window.yard()->shownYard()->site;
    EXPECT_EQ(site.elevationM, 11);
    EXPECT_FALSE(site.autumnFlow) << "not said, so it is asked";
    EXPECT_EQ(window.yard()->records(window.yard()->colonies()[0].id)->colony.hive.boxes.size(), 2U);
    EXPECT_TRUE(window.colonyView()->isVisible());
    EXPECT_EQ(window.colonyView()->colony(), window.yard()->colonies().front().id);
    EXPECT_EQ(window.focusWidget(), window.colonyView()->next()->bees()->number())
        << "the hand is where the first entry is made";
}

TEST_F(FirstRun, BeforeThereIsAnAnswerTheFieldsStandWhereThePictureWillBe) {
    auto* next = nextOfANewBook();
    ASSERT_TRUE(next->isVisible());
    EXPECT_FALSE(window.colonyView()->picture()->isVisible()) << "no empty frame";
    auto* bees = next->bees()->number();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    bees->setFocus();
    QTest::keyClick(bees, Qt::Key_Up);
    settle();
    EXPECT_EQ(entry().record.bees.coveredCombs, 0.5);
    ASSERT_TRUE(bees->hasFocus()) << "it is known now, and still under the hand";
    for (int more = 0; more < 15; ++more) QTest::keyClick(bees, Qt::Key_Up);
    settle();
    EXPECT_EQ(entry().record.bees.coveredCombs, 8);
    QTest::keyClick(bees, Qt::Key_Return);
    EXPECT_EQ(window.focusWidget(), next->combsButton()) << "to what is still missing";
    window.yardPane()->setFocus();
    EXPECT_TRUE(invented::waitFor([&] { return !bees->isVisible(); })) << "the keeper went on";
    ASSERT_FALSE(next->flow()->answers().empty());
    QTest::mouseClick(next->flow()->answers()[1], Qt::LeftButton);
    settle();
    EXPECT_EQ(window.yard()->shownYard()->site.autumnFlow, book::FlowStrength::Trickle);
    QTest::mouseClick(next->combsButton(), Qt::LeftButton);
    settle();
    EXPECT_FALSE(next->isVisible()) << "nothing is missing any more";
    EXPECT_TRUE(std::holds_alternative<std::vector<book::CombRecord>>(entry().record.combs));
}

TEST_F(FirstRun, AnOpenBookStaysOpenUntilAnotherIsBegun) {
    answerSlowly();
    open({colony("A")});
    const QString before = window.book()->state()->file;
    window.askForNewBook();
    ASSERT_TRUE(start()->isVisible());
    EXPECT_TRUE(window.book()->isOpen());
    EXPECT_TRUE(button(start(), "Back (Esc)")->isVisible()) << "and the page says so";
    settle();
    EXPECT_TRUE(start()->isVisible());
    QTest::keyClick(start()->yard(), Qt::Key_Escape);
    EXPECT_FALSE(start()->isVisible()) << "Escape goes back";
    EXPECT_EQ(window.book()->state()->file, before);
    window.askForNewBook();
    chooseTown("New Glasgow");
    QTest::mouseClick(button(start(), "Begin the book"), Qt::LeftButton);
    settle();
    EXPECT_FALSE(start()->isVisible());
    EXPECT_NE(window.book()->state()->file, before);
}

TEST_F(FirstRun, WhatIsEnteredNextHasTheLimitsOfTheDictionary) {
    auto* next = nextOfANewBook();
    ASSERT_TRUE(next->isVisible());
    EXPECT_EQ(next->bees()->number()->maximum(), invented::shipped()->range("bees.covered_combs").most);
    auto* weighing = next->weighing();
    weighing->kind()->setCurrentIndex(weighing->kind()->findData(static_cast<int>(WeighedBy::Scale)));
    emit weighing->kind()->activated(weighing->kind()->currentIndex());
    weighing->gross()->setText(QStringLiteral("90000"));
    EXPECT_FALSE(weighing->gross()->fault().isEmpty()) << "no hive weighs that";
}

// ---- a note about a number -------------------------------------------------------------------------------------------

TEST_F(FirstRun, TheFirstNoteHasTheSizeOfTheSecond) {
    answerReally();
    open({colony("A")});
    auto* sentence = answerLabel();
    ASSERT_NE(sentence, nullptr);
    emit sentence->numberClicked(text::AskedNumber::Stores, QPoint(300, 300));
    auto* grounds = window.colonyView()->grounds();
    ASSERT_NE(grounds, nullptr);
    const QSize first = grounds->size();
    grounds->hide();
    emit sentence->numberClicked(text::AskedNumber::Stores, QPoint(300, 300));
    EXPECT_EQ(grounds->size(), first);
    EXPECT_GT(first.width(), grounds->fontMetrics().averageCharWidth() * 40);
}

} // namespace winterlarder::desk
