// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "desk/undo_keys.h"
#include "fields/fields.h"
#include "fields/place_field.h"
#include "fields/quantity_field.h"
#include "forms/boxes_field.h"
#include "forms/entry_forms.h"
#include "models/record_list_model.h"
#include "models/step_list_model.h"
#include "models/words.h"
#include "text/choice_words.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QKeyEvent>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <set>

namespace winterlarder::desk {

using invented::BookDesk;
using Kind = QuantityField::Kind;

namespace {

std::optional<double> typed(Kind kind, const char* field, const char* text) {
    QuantityField widget(nullptr, QStringLiteral("amount"), kind, invented::shipped()->field(field));
    widget.setText(QString::fromUtf8(text));
    return widget.fault().isEmpty() ? widget.value() : std::nullopt;
}

} // namespace

TEST(QuantityField, TakesWhatPeopleType) {
    EXPECT_EQ(typed(Kind::Mass, "feeds.sugar_kg", "1,5 kg"), 1.5);
    EXPECT_EQ(typed(Kind::Mass, "feeds.sugar_kg", "750 g"), 0.75);
    EXPECT_NEAR(typed(Kind::Mass, "feeds.sugar_kg", "3 lb 4 oz").value_or(0), 1.474, 0.001) << "pound and ounce, 1959";
    EXPECT_NEAR(typed(Kind::Volume, "feeds.syrup_l", "2 US gal").value_or(0), 7.571, 0.001);
    EXPECT_EQ(typed(Kind::Whole, "harvests.combs", "3"), 3);
    EXPECT_EQ(typed(Kind::Mass, "feeds.sugar_kg", ""), std::nullopt);
}

TEST(QuantityField, WhatCannotBeIsSaidAndStays) {
    QuantityField field(nullptr, QStringLiteral("weight"), Kind::Mass,
                        invented::shipped()->field("weighings.gross_kg"));
    for (const char* wrong : {"heavy", "-3", "5 miles", "1 2 3", "100000 kg"}) {
        field.setText(QString::fromUtf8(wrong));
        EXPECT_FALSE(field.fault().isEmpty()) << wrong;
        EXPECT_EQ(field.text(), QString::fromUtf8(wrong));
        EXPECT_EQ(field.accessibleDescription(), field.fault()) << "a screen reader hears it too";
    }
    EXPECT_EQ(typed(Kind::Whole, "harvests.combs", "2.5"), std::nullopt);
    field.clear();
    EXPECT_TRUE(field.fault().isEmpty());
    field.require(true);
    EXPECT_FALSE(field.fault().isEmpty());
}

TEST(QuantityField, ShowsTheUnitsChosen) {
    words::useUnits(UnitSystem::Imperial);
    QuantityField field(nullptr, QStringLiteral("weight"), Kind::Mass,
                        invented::shipped()->field("weighings.gross_kg"));
    field.show(10);
    EXPECT_EQ(field.text().toStdString(), "22.0 lb");
    EXPECT_EQ(words::spread({kilograms(20), kilograms(25), kilograms(30)}).toStdString(), "55 lb (44\u201366)");
    words::useUnits(UnitSystem::Metric);
    field.show(10);
    EXPECT_EQ(field.text().toStdString(), "10.0 kg");
}

TEST(QuantityField, InchesStandAsARuleHasThem) {
    words::useUnits(UnitSystem::UnitedStates);
    QuantityField field(nullptr, QStringLiteral("bar"), Kind::Length, invented::shipped()->field("combs.width_mm"));
    field.show(35);
    EXPECT_EQ(field.text().toStdString(), "1 3/8 in");
    EXPECT_EQ(field.value(), 35) << "shown to a sixteenth, kept as it was";
    field.setText(QStringLiteral("1 1/2"));
    EXPECT_NEAR(field.value().value_or(0), 38.1, 1e-9);
    words::useUnits(UnitSystem::Metric);
    field.show(34.5);
    EXPECT_EQ(field.text().toStdString(), "34.5 mm");
}

// What the arrow keys only pass by is not written down, and the keys stay where they are.
TEST(WeighingField, WhatIsSteppedThroughIsMeantOnceItIsLeft) {
    WeighingField field;
    field.show(std::nullopt, invented::day("2026-09-14"));
    field.setVisible(true);
    field.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&field));
    QSignalSpy told(&field, &WeighingField::weighed);
    field.kind()->setFocus();
    for (int step = 0; step < 4; ++step) QTest::keyClick(field.kind(), Qt::Key_Down);
    EXPECT_EQ(field.kind()->currentData().toInt(), static_cast<int>(WeighedBy::Heft));
    EXPECT_TRUE(field.kind()->hasFocus());
    QTest::keyClick(field.kind(), Qt::Key_Tab);
    EXPECT_EQ(told.count(), 0) << "nobody said how heavy it felt";
    auto* felt = qobject_cast<QComboBox*>(QApplication::focusWidget());
    ASSERT_NE(felt, nullptr);
    EXPECT_EQ(felt->accessibleName().toStdString(), "How heavy it felt");
    QTest::keyClick(felt, Qt::Key_Down);
    QTest::keyClick(felt, Qt::Key_Down);
    EXPECT_EQ(told.count(), 0);
    QTest::keyClick(felt, Qt::Key_Return);
    ASSERT_EQ(told.count(), 1);
    const auto weighing = told[0][0].value<std::optional<book::WeighingRecord>>();
    ASSERT_TRUE(weighing);
    EXPECT_EQ(std::get<book::HeftWord>(weighing->reading), book::HeftWord::Fair);
}

TEST(BeesField, WhatWasCountedIsMeantOnceItIsLeft) {
    BeesField field;
    field.useLimits(*invented::shipped());
    book::BeesRecord bees;
    bees.coveredCombs = 6;
    field.show(bees);
    field.setVisible(true);
    field.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&field));
    QSignalSpy told(&field, &BeesField::valueEntered);
    field.kind()->setFocus();
    QTest::keyClick(field.kind(), Qt::Key_Down);
    EXPECT_TRUE(field.kind()->hasFocus());
    EXPECT_EQ(told.count(), 0);
    field.show(bees); // an answer came meanwhile
    EXPECT_EQ(field.kind()->currentData().toInt(), static_cast<int>(BeesToldBy::Seams)) << "the hand is on it";
    QTest::keyClick(field.kind(), Qt::Key_Backtab);
    ASSERT_EQ(told.count(), 1);
    EXPECT_EQ(told[0][0].value<BeesToldBy>(), BeesToldBy::Seams);
    EXPECT_EQ(told[0][1].toDouble(), 6);
}

TEST(PlaceField, ReadsCoordinatesAsPeopleWriteThem) {
    const auto is = [](const char* text, double latitude, double longitude) {
        const auto read = readCoordinates(QString::fromUtf8(text));
        return read && std::abs(read->latitude - latitude) < 1e-9 && std::abs(read->longitude - longitude) < 1e-9;
    };
    EXPECT_TRUE(is("45.1, -64.5", 45.1, -64.5));
    EXPECT_TRUE(is("45.1 N 64.5 W", 45.1, -64.5));
    EXPECT_TRUE(is("45,1 -64,5", 45.1, -64.5));
    EXPECT_TRUE(is("33.9\u00b0 S, 18.4\u00b0 E", -33.9, 18.4));
    for (const char* none : {"Halifax", "45", "95, 10", "45, 190", ""})
        EXPECT_FALSE(readCoordinates(QString::fromUtf8(none))) << none;
}

TEST(PlaceField, FindsStationsByTheirBeginningFirst) {
    const auto found = stationsNamed(*invented::shipped(), QStringLiteral("hal"), 6);
    ASSERT_FALSE(found.empty());
    EXPECT_TRUE(QString::fromStdString(found.front()->id).contains(QStringLiteral("-hal"))) << found.front()->id;
    EXPECT_TRUE(stationsNamed(*invented::shipped(), QStringLiteral("no such place"), 6).empty());
    EXPECT_TRUE(placeWords(book::Coordinates{44.6, -63.6}, *invented::shipped()).contains(QStringLiteral("Halifax")));
}

TEST(BoxesField, GivesBackTheBoxesItShows) {
    BoxesField field(nullptr, *invented::shipped());
    const std::vector<book::BoxRecord> boxes{
        {std::string("langstroth-deep"), 10, false},
        {std::string("langstroth-medium"), std::nullopt, true},
        {book::OwnFormat{millimetres(300), millimetres(250), millimetres(200), 12, millimetres(36)}, std::nullopt,
         false}};
    field.show(boxes);
    EXPECT_EQ(field.boxes(), boxes);
    QTest::mouseClick(field.addButton(), Qt::LeftButton);
    ASSERT_EQ(field.boxes().size(), 4U);
    EXPECT_EQ(field.boxes()[3], field.boxes()[2]) << "one more like the topmost";
}

TEST(ChoiceWords, EveryChoiceHasWordsOfItsOwn) {
    const auto hold = [](const auto& choices) {
        std::set<QString> seen;
        for (const auto& [words, each] : choices) {
            EXPECT_FALSE(words.isEmpty());
            EXPECT_TRUE(seen.insert(words).second) << words.toStdString();
        }
    };
    hold(text::choices<book::Shell>());
    hold(text::choices<book::FeederKind>());
    hold(text::choices<book::FeedKind>());
    hold(text::choices<book::FateKind>());
    hold(text::choices<book::ManipulationKind>());
    hold(text::choices<book::SightingKind>());
    hold(text::choices<book::Temper>());
    hold(text::choices<book::QueenColour>());
}

TEST_F(BookDesk, TheStoryAndTheHistoryAreTablesQtAgreesWith) {
    open({invented::colony("A")});
    RecordListModel records;
    const QAbstractItemModelTester tester(&records, QAbstractItemModelTester::FailureReportingMode::Fatal);
    StepListModel steps(&book);
    const QAbstractItemModelTester stepTester(&steps, QAbstractItemModelTester::FailureReportingMode::Fatal);
    yard.apply(book::SingleEdit(
        book::AddFeed{{.colony = first().id,
                       .feed = {invented::day("2026-09-13"), book::FeedKind::Syrup, kilograms(2), {}, {}, {}}}}));
    settle();
    records.show(recordRows(*yard.records(first().id)));
    ASSERT_EQ(records.rowCount(), 2);
    EXPECT_EQ(records.index(0, RecordListModel::DetailsColumn).data().toString().toStdString(),
              "syrup, 2.0 kg of sugar");
    EXPECT_EQ(records.rows()[0].date, invented::day("2026-09-13"));
    steps.refresh();
    settle();
    ASSERT_EQ(steps.rowCount(), 2);
    EXPECT_EQ(steps.index(0, StepListModel::WhatColumn).data().toString().toStdString(), "feed added");
    EXPECT_EQ(steps.index(0, StepListModel::WhomColumn).data().toString().toStdString(), "A");
    const auto fed = yard.records(first().id)->feeds.at(0).id;
    yard.apply(book::SingleEdit(book::RemoveFeed{fed}));
    settle();
    steps.refresh();
    settle();
    EXPECT_EQ(steps.index(0, StepListModel::WhomColumn).data().toString().toStdString(), "A")
        << "what is gone was still somebody's";
    yard.apply(book::SingleEdit(
        book::AddFeed{{.colony = first().id,
                       .feed = {invented::day("2026-09-13"), book::FeedKind::Syrup, kilograms(2), {}, {}, {}}}}));
    settle();
    steps.refresh();
    settle();
    EXPECT_EQ(steps.index(0, StepListModel::WhoColumn).data().toString().toStdString(), "keeper");
}

TEST(NewLook, BeginsAsTheCombsWereSeenLatelyAndNeverAsLastYear) {
    book::ColonyHistory records{.colony = {.id = {1}},
                                .looks = {{.id = {1},
                                           .colony = {1},
                                           .date = invented::day("2026-08-01"),
                                           .combs = std::vector{invented::comb(0.8, 0, 0, 0)}}}};
    EXPECT_EQ(newLook(records, invented::day("2026-09-30")).combs, records.looks[0].combs) << "sixty days ago";
    EXPECT_TRUE(std::holds_alternative<std::monostate>(newLook(records, invented::day("2026-10-01")).combs))
        << "what was seen longer ago is no evidence of today";
}

// Whether a field is left out when the key for undo comes, so that the book takes a step back.
bool goesToTheBook(QWidget* field) {
    UndoKeys keys;
    QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    return keys.eventFilter(field, &undo);
}

TEST(UndoKeys, TakeLettersBackOnlyWhileTheyAreNotEntered) {
    QWidget parent;
    auto* field = numberField(&parent, QStringLiteral("share"), 0, 100, 5, 0, QStringLiteral("%"));
    EXPECT_TRUE(goesToTheBook(field));
    field->selectAll();
    QTest::keyClicks(field, QStringLiteral("43"));
    EXPECT_FALSE(goesToTheBook(field)) << "typed, not entered";
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(field->value(), 43);
    EXPECT_TRUE(goesToTheBook(field));
    QLineEdit line(&parent);
    QTest::keyClicks(&line, QStringLiteral("a name"));
    EXPECT_FALSE(goesToTheBook(&line));
    QKeyEvent other(QEvent::ShortcutOverride, Qt::Key_Q, Qt::ControlModifier);
    EXPECT_FALSE(UndoKeys().eventFilter(field, &other));
}

} // namespace winterlarder::desk
