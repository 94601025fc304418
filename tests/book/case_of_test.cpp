// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/book_folder.h"

#include "book/case_of.h"
#include "book/form/entry_rows.h"

#include <gmock/gmock.h>

namespace winterlarder::book::case_of_test {
namespace {

using namespace support;

class CaseOf : public testing::Test {
protected:
    BookFolder folder;
    Book book = newBook(folder / "a.larder");
    ColonyId colony;

    void SetUp() override {
        auto yard = orchard();
        yard.season.forage = DayOfYear{5, 19};
        yard.season.broodStop = DayOfYear{10, 7};
        yard.wish.shortRisk = 0.1;
        edit(book, AddYard{yard});
        auto kept = colonyIn({1}, "Row 2 east");
        kept.beeKind = BeeKind::Carniolan;
        kept.feeder = FeederRecord{FeederKind::Top, litres(8)};
        colony = edit(book, AddColony{kept}).added<Colony>().value();
    }
    ColonyCase on(const char* date) { return must(caseOf(book, colony, day(date))); }
};

// As it lies in a book of another release or comes out of a document.
template <class Entry> void put(Book& book, const Entry& entry) {
    must(book.apply(PutEntries{"import document", {{kindOf<Entry>, entry.id.number, rowOf(entry)}}}, morning, "Ada"));
}

TEST_F(CaseOf, SignsOfDiseaseCountWhateverElseWasLookedAt) {
    edit(book, AddLook{lookAt(colony, day("2026-09-10"))});
    auto glance = lookAt(colony, day("2026-09-15"));
    glance.combs = {};
    glance.bees.trouble = true;
    edit(book, AddLook{glance});
    EXPECT_FALSE(on("2026-09-14").bees.trouble);
    EXPECT_TRUE(on("2026-09-15").bees.trouble);
    EXPECT_EQ(on("2026-09-15").lookedOn, day("2026-09-10"));
    edit(book, AddLook{lookAt(colony, day("2026-09-20"))});
    EXPECT_FALSE(on("2026-09-21").bees.trouble) << "until the next whole look";
}

TEST_F(CaseOf, TakesTheLatestLookOnOrBeforeTheDayAndWhatCameSince) {
    edit(book, AddLook{lookAt(colony, day("2026-08-20"))});
    auto second = lookAt(colony, day("2026-09-10"));
    second.bees.coveredCombs = 7;
    second.moisturePercent = 17.5;
    edit(book, AddLook{second});
    edit(book, AddLook{lookAt(colony, day("2026-09-20"))});
    edit(book, AddWeighing{weighingOf(colony, day("2026-09-08"), 54.5)});
    edit(book, AddWeighing{weighingOf(colony, day("2026-09-11"), 55)});
    edit(book, AddWeighing{weighingOf(colony, day("2026-09-13"), 56)});
    edit(book, AddFeed{{.colony = colony,
                        .feed = {day("2026-09-11"), FeedKind::Syrup, kilograms(3), litres(3.2), "3:2", {}}}});
    edit(book, AddHarvest{{.colony = colony, .harvest = {day("2026-09-01"), kilograms(9)}}});
    const auto record = on("2026-09-12");
    EXPECT_EQ(record.colony, "Row 2 east");
    EXPECT_EQ(record.yard, "Orchard");
    EXPECT_EQ(record.lookedOn, day("2026-09-10"));
    EXPECT_EQ(record.bees.coveredCombs, 7);
    EXPECT_EQ(record.bees.kind, BeeKind::Carniolan);
    EXPECT_EQ(record.moisturePercent, 17.5);
    EXPECT_EQ(record.combs, second.combs);
    ASSERT_EQ(record.weighings.size(), 1u);
    EXPECT_EQ(record.weighings[0].date, day("2026-09-11"));
    ASSERT_EQ(record.feeds.size(), 1u);
    EXPECT_EQ(record.feeds[0].sugar, kilograms(3));
    EXPECT_FALSE(record.feeds[0].syrup) << "a case says one amount";
    EXPECT_TRUE(record.harvests.empty()) << "taken before the look";
    EXPECT_EQ(record.wish.shortRisk, 0.1);
    EXPECT_EQ(record.feeder, (FeederRecord{FeederKind::Top, litres(8)}));
    EXPECT_EQ(record.season.broodStop, day("2026-10-07"));
    EXPECT_EQ(record.season.forage, day("2027-05-19"));
    EXPECT_EQ(on("2027-02-01").season.broodStop, day("2026-10-07")) << "the same winter, asked later";
    EXPECT_EQ(on("2027-08-02").season.forage, day("2028-05-19")) << "the next winter";
}

TEST_F(CaseOf, WhatIsWrittenDownAfterTheLookOfTheDayCameAfterIt) {
    const Feed feed{.colony = colony, .feed = {day("2026-09-12"), FeedKind::Syrup, kilograms(1), {}, "3:2", {}}};
    const Harvest harvest{.colony = colony, .harvest = {day("2026-09-12"), kilograms(2)}};
    edit(book, AddFeed{feed});
    edit(book, AddHarvest{harvest});
    const auto other = edit(book, AddColony{colonyIn({1}, "Row 2 west")}).added<Colony>().value();
    edit(book, AddLook{lookAt(other, day("2026-09-12"))});
    edit(book, AddLook{lookAt(colony, day("2026-09-12"))});
    edit(book, AddFeed{feed});
    edit(book, AddHarvest{harvest});
    auto seen = feed;
    seen.feed.afterLook = false; // the keeper says so
    edit(book, AddFeed{seen});
    const auto record = on("2026-09-12");
    ASSERT_EQ(record.feeds.size(), 3u);
    EXPECT_EQ(record.feeds[0].afterLook, false) << "it was there when the hive was looked at";
    EXPECT_EQ(record.feeds[1].afterLook, true);
    EXPECT_EQ(record.feeds[2].afterLook, false);
    ASSERT_EQ(record.harvests.size(), 2u);
    EXPECT_EQ(record.harvests[0].afterLook, false);
    EXPECT_EQ(record.harvests[1].afterLook, true);
}

TEST_F(CaseOf, AFeedingVisitMarkedDoneAfterTheLookCameAfterIt) {
    edit(book, AddLook{lookAt(colony, day("2026-09-12"))});
    edit(book, AddPlannedVisit{
                   {.colony = colony, .date = day("2026-09-12"), .what = VisitKind::Syrup, .sugar = kilograms(3)}});
    edit(book, MarkVisitDone{{1}, day("2026-09-12"), "3:2"});
    ASSERT_EQ(on("2026-09-12").feeds.size(), 1u);
    EXPECT_EQ(on("2026-09-12").feeds[0].afterLook, true);
}

TEST_F(CaseOf, FeedsSinceThisHoneyWasBegunAreToldAndHarvestsSinceTheLook) {
    const auto feed = [&](const char* date) {
        edit(book, AddFeed{{.colony = colony, .feed = {day(date), FeedKind::Syrup, kilograms(1), {}, "1:1", {}}}});
        edit(book, AddHarvest{{.colony = colony, .harvest = {day(date), kilograms(1)}}});
    };
    feed("2026-03-31");
    feed("2026-04-01");
    edit(book, AddLook{lookAt(colony, day("2026-09-10"))});
    feed("2026-09-11");
    const auto record = on("2026-09-12");
    ASSERT_EQ(record.feeds.size(), 2u);
    EXPECT_EQ(record.feeds[0].date, day("2026-04-01"));
    ASSERT_EQ(record.harvests.size(), 1u);
    EXPECT_EQ(record.harvests[0].date, day("2026-09-11"));
}

TEST_F(CaseOf, WhatTheYardAndTheLookAnswerIsInTheCase) {
    EXPECT_FALSE(on("2026-09-12").fullCombs || on("2026-09-12").units || on("2026-09-12").honeyKind ||
                 on("2026-09-12").fedOrTreated);
    auto yard = *must(book.find(YardId{1}));
    yard.fullCombs = 6;
    yard.units = UnitSystem::Imperial;
    yard.wish.visitsInWinter = false;
    edit(book, ChangeYard{yard});
    auto look = lookAt(colony, day("2026-09-10"));
    look.honeyKind = HoneyKind::Heather;
    look.fedOrTreated = false;
    look.bees.mitesTreated = true;
    edit(book, AddLook{look});
    const auto record = on("2026-09-12");
    EXPECT_EQ(record.fullCombs, 6);
    EXPECT_EQ(record.units, UnitSystem::Imperial);
    EXPECT_EQ(record.wish.visitsInWinter, false);
    EXPECT_EQ(record.honeyKind, HoneyKind::Heather);
    EXPECT_EQ(record.fedOrTreated, false);
    EXPECT_EQ(record.bees.mitesTreated, true);
}

TEST_F(CaseOf, OldBooksKeepThatAFeedOfTheDayOfTheLookCameInTheEvening) {
    edit(book, AddLook{lookAt(colony, day("2026-09-12"))});
    put(book,
        Feed{.id = {1}, .colony = colony, .feed = {day("2026-09-12"), FeedKind::Syrup, kilograms(3), {}, "3:2", {}}});
    put(book, Harvest{.id = {1}, .colony = colony, .harvest = {day("2026-09-12"), kilograms(3)}});
    ASSERT_FALSE(must(book.all<Feed>())[0].feed.afterLook) << "nobody said";
    EXPECT_EQ(on("2026-09-12").feeds[0].afterLook, true);
    EXPECT_EQ(on("2026-09-15").feeds[0].afterLook, true) << "asked days later";
    EXPECT_FALSE(on("2026-09-12").harvests[0].afterLook) << "what was taken was gone when it was looked at";
}

TEST_F(CaseOf, OldObservationsSayNothing) {
    edit(book, AddLook{lookAt(colony, day("2026-07-13"))});
    EXPECT_FALSE(on("2026-09-12").lookedOn) << "61 days old";
    EXPECT_FALSE(on("2026-09-12").bees.known());
    EXPECT_EQ(on("2026-09-11").lookedOn, day("2026-07-13")) << "60 days old";
    edit(book, AddWeighing{weighingOf(colony, day("2026-09-01"), 50)});
    EXPECT_EQ(on("2026-09-12").weighings.size(), 1u) << "a weighing without a look";
}

TEST_F(CaseOf, ALookAtBothIsPreferredToALaterGlance) {
    edit(book, AddLook{lookAt(colony, day("2026-09-10"))});
    Look glance{.colony = colony, .date = day("2026-09-11")};
    glance.bees.seams = 6;
    edit(book, AddLook{glance});
    EXPECT_EQ(on("2026-09-12").lookedOn, day("2026-09-10"));
    EXPECT_EQ(on("2026-11-10").lookedOn, day("2026-09-11")) << "the full look is too old by then";
}

TEST_F(CaseOf, MedicineWithinAYearMarksTheHoney) {
    EXPECT_TRUE(on("2026-09-12").treatments.empty());
    edit(book, AddTreatment{
                   {.colony = colony, .date = day("2026-08-01"), .until = day("2026-08-20"), .what = "formic acid"}});
    EXPECT_TRUE(on("2026-07-31").treatments.empty()) << "not yet given";
    ASSERT_EQ(on("2026-09-12").treatments.size(), 1u);
    EXPECT_EQ(on("2026-09-12").treatments[0], (TreatmentRecord{day("2026-08-01"), day("2026-08-20"), "formic acid"}));
    EXPECT_FALSE(on("2027-07-31").treatments.empty()) << "the honey of 2026 may still be there";
    EXPECT_TRUE(on("2027-08-01").treatments.empty()) << "now the honey of 2027 is asked about";
    EXPECT_EQ(honeySince(day("2026-09-12"), Hemisphere::North), day("2026-04-01"));
}

TEST_F(CaseOf, HiveAndYardAreThoseOfTheDay) {
    auto other = orchard();
    other.name = "Shore";
    edit(book, AddYard{other});
    edit(book, AddMove{{.colony = colony, .date = day("2026-09-05"), .yard = {2}}});
    auto three = twoDeeps();
    three.boxes.push_back(three.boxes[0]);
    edit(book, AddHousing{{.colony = colony, .date = day("2026-09-11"), .hive = three}});
    EXPECT_EQ(on("2026-09-04").yard, "Orchard");
    EXPECT_EQ(on("2026-09-12").yard, "Shore");
    EXPECT_EQ(on("2026-09-12").hive.boxes.size(), 3u);
    edit(book, AddLook{lookAt(colony, day("2026-09-10"))});
    EXPECT_EQ(on("2026-09-12").hive.boxes.size(), 2u) << "combs were counted in the hive of that day";
}

TEST_F(CaseOf, DeadColoniesAreNotLiving) {
    edit(book, AddColony{colonyIn({1}, "Two")});
    edit(book, AddFate{{.colony = colony, .date = day("2026-09-10"), .fate = FateKind::Dead, .cause = "starved"}});
    EXPECT_EQ(must(livingOn(book, day("2026-09-09"))).size(), 2u);
    ASSERT_EQ(must(livingOn(book, day("2026-09-10"))).size(), 1u);
    EXPECT_EQ(must(livingOn(book, day("2026-09-10")))[0].name, "Two");
    EXPECT_FALSE(caseOf(book, {99}, day("2026-09-10")));
}

TEST_F(CaseOf, AColonyThatDiedInWinterIsNotAskedAboutInTheNextAutumn) {
    edit(book, AddWinterOutcome{{.colony = {1}, .date = day("2027-04-20"), .alive = false}});
    EXPECT_EQ(must(livingOn(book, day("2027-04-25"))).size(), 1U) << "for a month it stands there as dead";
    EXPECT_TRUE(must(livingOn(book, day("2027-09-01"))).empty());
    edit(book, AddLook{lookAt({1}, day("2027-06-10"))});
    EXPECT_EQ(must(livingOn(book, day("2027-09-01"))).size(), 1U) << "the hive is lived in again";
}

TEST(SeasonIn, TheSouthTurnsItsYearInJanuary) {
    YardSeason season;
    season.broodStop = DayOfYear{5, 10};
    season.forage = DayOfYear{9, 20};
    const auto dates = seasonIn(season, Hemisphere::South, day("2026-03-15"));
    EXPECT_EQ(dates.broodStop, day("2026-05-10"));
    EXPECT_EQ(dates.forage, day("2026-09-20"));
}

} // namespace
} // namespace winterlarder::book::case_of_test
