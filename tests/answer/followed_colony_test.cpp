// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_book.h"

#include "answer/learned_book.h"
#include "answer/question_of_case.h"
#include "book/case_of.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace winterlarder::answer::followed_colony_test {
namespace {

TEST_F(FollowedColonyTest, FollowsFromTheAutumnsLookAndItsEstimate) {
    const auto followed = on("2027-01-15");
    ASSERT_TRUE(followed.question);
    const auto& q = *followed.question;
    EXPECT_EQ(q.year.date(q.decided), day("2026-09-20"));
    EXPECT_EQ(q.year.date(q.today), day("2027-01-15"));
    EXPECT_EQ(q.stores.mean, followed.advice.estimate->mean);
    EXPECT_EQ(q.stores.sd, followed.advice.storesSd);
    EXPECT_EQ(q.stores.weighedShare, 0);
    EXPECT_EQ(q.tare.mass.value(), 24);
    EXPECT_TRUE(q.observations.empty());
}

TEST_F(FollowedColonyTest, AllPastWintersComeOfOneHistoryEachAsItWasKnownAtItsEnd) {
    edit(book, book::AddWeatherLog{
                   {.yard = {1}, .origin = "own", .days = {{day("2026-12-01"), -3}, {day("2028-01-01"), -5}}}});
    look("2027-09-20");
    edit(book, book::AddTreatment{{.colony = colony, .date = day("2027-08-20"), .what = "formic acid"}});
    const auto past = must(readPast(book, day("2028-10-01")));
    ASSERT_EQ(past.winters.size(), 2U);
    for (const auto& winter : past.winters)
        EXPECT_EQ(winter.reading, must(readToFollow(book, colony, winter.reading.asOf, nullptr))) << winter.autumn;
    const auto& first = past.winters[0].reading;
    EXPECT_EQ(past.winters[0].autumn, 2026);
    EXPECT_EQ(first.asOf.year(), 2027);
    EXPECT_EQ(first.records.looks.size(), 1U) << "the look of 2027 was not made yet";
    EXPECT_TRUE(first.records.treatments.empty());
    EXPECT_EQ(first.weather.size(), 1U);
    EXPECT_EQ(past.winters[1].reading.weather.size(), 2U);
    EXPECT_FALSE(past.winters[1].reading.autumn.treatments.empty());
}

// What was worked out of one reading is used again for an equal one: nothing it rests on may be left out.
TEST_F(FollowedColonyTest, ReadingsThatDifferInAnythingAreNotEqual) {
    const auto reading = must(readToFollow(book, colony, day("2027-01-15"), nullptr));
    const auto changed = [&](auto change) {
        auto other = reading;
        change(other);
        return !(other == reading);
    };
    EXPECT_EQ(reading, FollowReading(reading));
    EXPECT_TRUE(changed([](FollowReading& each) { each.winter = Winter(Hemisphere::North, 2025); }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.records.colony.name = "Plum"; }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.yard = {2}; }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.weather.push_back({each.asOf, -2}); }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.asOf = each.asOf.plusDays(1); }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.decided = each.decided.plusDays(1); }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.now.yard = "Elsewhere"; }));
    EXPECT_TRUE(changed([](FollowReading& each) { each.autumn.yard = "Elsewhere"; }));
}

TEST_F(FollowedColonyTest, AWinterOnBothHalvesOfTheEarthIsRefused) {
    auto south = orchard();
    south.name = "South";
    south.site.where = std::string("nz-christchurch");
    const auto yard = *edit(book, book::AddYard{south}).added<book::Yard>();
    edit(book, book::AddMove{book::Move{.colony = colony, .date = day("2026-11-01"), .yard = yard}});
    const auto followed = followedColony(book, colony, day("2026-12-20"), nullptr, few, 2);
    ASSERT_FALSE(followed);
    EXPECT_THAT(followed.problems().front().detail,
                ::testing::HasSubstr("the other half of the earth after 2026-09-20"));
}

TEST_F(FollowedColonyTest, ALookInSpringIsEvidenceNotTheStart) {
    look("2027-03-20");
    const auto q = questionOn("2027-03-25");
    EXPECT_EQ(q.year.date(q.decided), day("2026-09-20"));
    ASSERT_EQ(q.observations.size(), 2u);
    EXPECT_TRUE(std::holds_alternative<tracking::StoresSeen>(q.observations[0].what));
    EXPECT_TRUE(std::holds_alternative<tracking::BeesSeen>(q.observations[1].what));
}

TEST_F(FollowedColonyTest, AdviceActedOnIsTheStartAndItsVisitsThePlan) {
    book::ActedAdvice advice{.colony = colony,
                             .date = day("2026-09-22"),
                             .verdict = "feed",
                             .inputs = "{}",
                             .answer = "{}",
                             .seed = 1,
                             .winters = 300};
    book::PlannedVisit visit{
        .colony = colony, .date = day("2026-09-24"), .what = book::VisitKind::Syrup, .sugar = kilograms(3)};
    edit(book, book::AcceptAdvice{advice, {visit}});
    const auto q = questionOn("2026-12-01");
    EXPECT_EQ(q.year.date(q.decided), day("2026-09-22"));
    ASSERT_EQ(q.planned.size(), 1u);
    EXPECT_NEAR(q.planned[0].change.value(), 3 * 1.045, 0.02); // stores of 3:2 syrup a kg of sugar
}

TEST_F(FollowedColonyTest, FeedsHarvestsAndEquipmentAreSteps) {
    edit(book,
         book::AddFeed{{.colony = colony,
                        .feed = {day("2026-09-15"), book::FeedKind::Fondant, {}, {}, {}, kilograms(1)}}}); // before
    edit(book, book::AddFeed{
                   {.colony = colony, .feed = {day("2026-09-25"), book::FeedKind::Fondant, {}, {}, {}, kilograms(2)}}});
    edit(book, book::AddHarvest{{.colony = colony, .harvest = {day("2026-09-26"), kilograms(1.5)}}});
    edit(book, book::AddManipulation{{.colony = colony,
                                      .date = day("2026-09-27"),
                                      .what = book::ManipulationKind::BoxesRemoved,
                                      .weightChange = kilograms(-7)}});
    edit(book,
         book::AddManipulation{
             {.colony = colony, .date = day("2026-09-28"), .what = book::ManipulationKind::CombsMoved}}); // not weighed
    const auto steps = questionOn("2026-12-01").steps;
    ASSERT_EQ(steps.size(), 3u);
    EXPECT_NEAR(steps[0].change.value(), 0.85 * 2, 1e-9);
    EXPECT_EQ(steps[1].kind, tracking::KnownStep::Kind::Equipment);
    EXPECT_EQ(steps[1].change.value(), -7);
    EXPECT_EQ(steps[2].kind, tracking::KnownStep::Kind::Harvest);
    EXPECT_EQ(steps[2].change.value(), -1.5);
    EXPECT_TRUE(questionOn("2026-09-21").steps.empty()) << "later records do not exist yet";
}

TEST_F(FollowedColonyTest, WithoutAPlanWhatWasFedInAutumnIsOne) {
    edit(book, book::AddFeed{
                   {.colony = colony, .feed = {day("2026-09-25"), book::FeedKind::Fondant, {}, {}, {}, kilograms(2)}}});
    edit(book, book::AddFeed{
                   {.colony = colony, .feed = {day("2027-02-25"), book::FeedKind::Fondant, {}, {}, {}, kilograms(2)}}});
    const auto q = questionOn("2027-03-01");
    ASSERT_EQ(q.planned.size(), 1u);
    EXPECT_NEAR(q.planned[0].change.value(), 0.85 * 2, 1e-9);
    EXPECT_EQ(q.steps.size(), 2u);
}

TEST_F(FollowedColonyTest, OfManyWeighingsOneInTenDaysCounts) {
    for (int i = 1; i <= 25; ++i)
        edit(book, book::AddWeighing{weighingOf(colony, day("2026-12-01").plusDays(i), 50 - 0.1 * i)});
    const auto seen = questionOn("2027-01-15").observations;
    ASSERT_EQ(seen.size(), 3u);
    EXPECT_EQ(seen[0].date, day("2026-12-11"));
    EXPECT_EQ(seen[2].date, day("2026-12-26"));
}

TEST_F(FollowedColonyTest, WeighingsKeepTheirKindAndTheWet) {
    book::Weighing lift{.colony = colony, .weighing = {day("2026-12-01"), book::LiftReading{{kilograms(20)}}}};
    lift.wet = true;
    edit(book, book::AddWeighing{lift});
    edit(book, book::AddWeighing{{.colony = colony, .weighing = {day("2026-12-02"), book::HeftWord::Light}}});
    const auto seen = questionOn("2027-01-15").observations;
    ASSERT_EQ(seen.size(), 2u);
    const auto& weight = std::get<tracking::WeightSeen>(seen[0].what);
    EXPECT_EQ(weight.kind, stores::WeighingKind::OneSidedLift);
    EXPECT_EQ(weight.reading.value(), 40);
    EXPECT_TRUE(seen[0].wet);
    EXPECT_GT(std::get<tracking::HeftSeen>(seen[1].what).standsFor.value(), 5);
}

TEST_F(FollowedColonyTest, AFairHeftHardlyMovesWhatAScaleToldAWeekBefore) {
    const auto storesNow = [&] {
        return tracking::follow(questionOn("2027-01-18"), shipped().constants, few, 2)->now.today.typical.value();
    };
    edit(book, book::AddWeighing{weighingOf(colony, day("2027-01-10"), 49)});
    const double weighed = storesNow();
    const auto lifted = [&](book::HeftWord word) {
        const auto added = edit(book, book::AddWeighing{{.colony = colony, .weighing = {day("2027-01-17"), word}}});
        const double kg = storesNow();
        edit(book, book::RemoveWeighing{*added.added<book::Weighing>()});
        return kg;
    };
    EXPECT_GT(weighed, 20) << "more than is wanted";
    EXPECT_NEAR(lifted(book::HeftWord::Fair), weighed, 1);
    EXPECT_NEAR(lifted(book::HeftWord::Heavy), weighed, 1);
    const double light = lifted(book::HeftWord::Light);
    EXPECT_LT(light, weighed - 0.5);
    EXPECT_GT(light, weighed - 4) << "no word outdoes a scale";
}

TEST_F(FollowedColonyTest, StoresWeighedInAutumnShareTheirTare) {
    edit(book, book::AddWeighing{weighingOf(colony, day("2026-09-20"), 50)});
    EXPECT_GT(questionOn("2027-01-15").stores.weighedShare, 0.3);
}

TEST_F(FollowedColonyTest, TheYardsTemperaturesAreMeasuredDays) {
    book::WeatherLog first{.yard = {1}}, second{.yard = {1}};
    first.days = {{day("2026-11-01"), 5}, {day("2026-11-02"), 6}};
    second.days = {{day("2026-11-02"), 7}, {day("2027-05-01"), 9}};
    edit(book, book::AddWeatherLog{first});
    edit(book, book::AddWeatherLog{second});
    const auto days = questionOn("2026-12-01").winter.weatherSoFar;
    ASSERT_EQ(days.size(), 2u);
    EXPECT_EQ(days[1].meanC, 7) << "the later log counts; a day after the asking day does not exist yet";
}

TEST_F(FollowedColonyTest, AnOutcomeIsSeenAndCanBeLeftOut) {
    edit(book, book::AddWinterOutcome{{.colony = colony,
                                       .date = day("2027-04-10"),
                                       .alive = true,
                                       .coveredCombs = 6,
                                       .storesLeft = kilograms(9)}});
    const auto with = on("2027-04-20"), without = on("2027-04-20", EndOfWinter::LeftOut);
    EXPECT_EQ(with.question->observations.size(), 2u);
    EXPECT_TRUE(without.question->observations.empty());
    ASSERT_TRUE(without.end);
    EXPECT_TRUE(without.end->alive);
    EXPECT_GT(without.end->bees->count, 5000);
    EXPECT_EQ(without.end->storesLeft->value(), 9);
    EXPECT_FALSE(on("2027-04-09").end);
}

TEST_F(FollowedColonyTest, ADeathIsSeen) {
    edit(book, book::AddFate{{.colony = colony, .date = day("2027-02-01"), .fate = book::FateKind::Dead}});
    const auto followed = on("2027-02-10");
    EXPECT_TRUE(
        std::any_of(followed.question->observations.begin(), followed.question->observations.end(), tracking::isDead));
    EXPECT_FALSE(followed.end->alive);
}

TEST_F(FollowedColonyTest, WithoutALookItCannotBeFollowed) {
    const ColonyId other = *edit(book, book::AddColony{colonyIn({1}, "Quince")}).added<book::Colony>();
    const auto followed = must(followedColony(book, other, day("2027-01-15"), nullptr, few, 2));
    EXPECT_FALSE(followed.question);
    EXPECT_FALSE(followed.advice.reasons.empty());
}

class LearnedBookTest : public FollowedColonyTest {
protected:
    std::vector<PastColonyWinter> pastOn(const char* date) { return must(learnOf(book, day(date), few, 2)).winters; }
    void outcome(const char* date, double kg) {
        edit(book,
             book::AddWinterOutcome{
                 {.colony = colony, .date = day(date), .alive = true, .coveredCombs = 7, .storesLeft = kilograms(kg)}});
    }
};

TEST_F(LearnedBookTest, OnlyWintersThatArePastAndSayAnything) {
    EXPECT_TRUE(pastOn("2027-10-01").empty()) << "nothing was seen after the decision";
    outcome("2027-04-10", 14);
    EXPECT_TRUE(pastOn("2027-04-20").empty()) << "this winter is not over";
    const auto past = pastOn("2027-10-01");
    ASSERT_EQ(past.size(), 1u);
    EXPECT_EQ(past[0].autumn, 2026);
    EXPECT_EQ(past[0].name, "Pear");
}

TEST_F(LearnedBookTest, MuchLeftMeansLittleEaten) {
    outcome("2027-04-10", 18);
    look("2027-09-20");
    const auto learned = must(learnOf(book, day("2027-10-01"), few, 2)).learned;
    EXPECT_EQ(learned.bees.winters, 1);
    EXPECT_LT(learned.bees.colonies.at(static_cast<std::uint64_t>(colony.number)).use.logMean, 0);
    const auto followed = must(followedColony(book, colony, day("2027-12-01"), &learned, few, 2));
    ASSERT_TRUE(followed.question->winter.learned);
    EXPECT_LT(followed.question->winter.learned->use, 1);
}

// Another program takes a table of the open book away.
TEST_F(LearnedBookTest, AColonyWhoseRecordsCannotBeReadIsToldAndLeftOut) {
    SQLite::Database(book.file().string(), SQLite::OPEN_READWRITE).exec("DROP TABLE winter_outcomes");
    const auto learned = learnOf(book, day("2027-10-01"), few, 1);
    ASSERT_TRUE(learned);
    EXPECT_TRUE(learned->winters.empty());
    ASSERT_EQ(learned->problems.size(), 1U);
    EXPECT_NE(learned->problems[0].detail.find("winter_outcomes"), std::string::npos) << learned->problems[0].detail;
}

TEST_F(LearnedBookTest, AYardCanBeSwitchedOffAndBegunAnew) {
    outcome("2027-04-10", 14);
    auto yard = *must(book.find(book::YardId{1}));
    yard.learn = false;
    edit(book, book::ChangeYard{yard});
    EXPECT_TRUE(pastOn("2027-10-01").empty());
    yard.learn = true;
    yard.learnSince = day("2027-01-01");
    edit(book, book::ChangeYard{yard});
    EXPECT_TRUE(pastOn("2027-10-01").empty());
    yard.learnSince = day("2026-01-01");
    edit(book, book::ChangeYard{yard});
    EXPECT_EQ(pastOn("2027-10-01").size(), 1u);
}

TEST_F(LearnedBookTest, ForecastsAreScored) {
    outcome("2027-04-10", 14);
    const auto past = pastOn("2027-10-01");
    const auto scored = scoredFrom(past, book.reference(), few, 2).winters;
    ASSERT_EQ(scored.size(), 1u);
    EXPECT_EQ(scored[0].score.observed, 14);
    EXPECT_LT(scored[0].score.low, scored[0].score.high);
}

TEST_F(LearnedBookTest, AWinterThatBreaksIsNamedAndTheOthersAreLearnedFrom) {
    outcome("2027-04-10", 14);
    auto past = must(readPast(book, day("2027-10-01")));
    ASSERT_EQ(past.winters.size(), 1u);
    const auto sound = must(toldWinter(past.winters[0], book.reference(), few, 2, Score::Told, "a.larder"));
    ASSERT_TRUE(sound);
    EXPECT_TRUE(sound->told.score);
    past.winters[0].reading.winter = Winter(Hemisphere::North, 1990); // its days are of no such winter
    const auto broken = toldWinter(past.winters[0], book.reference(), few, 2, Score::Told, "a.larder");
    ASSERT_FALSE(broken.ok());
    EXPECT_EQ(broken.problems().front().kind, ProblemKind::Internal);
    EXPECT_THAT(describe(broken.problems().front()), ::testing::StartsWith("a.larder: the winter of 2026 of"));
}

// One way from the book to a question: what was learned is in the case, and the case alone says it.
TEST_F(LearnedBookTest, WhatWasLearnedGoesIntoTheCase) {
    outcome("2027-04-10", 18);
    look("2027-09-20");
    const auto learned = must(learnOf(book, day("2027-10-01"), few, 2)).learned;
    const auto record = must(learnedCase(book, colony, day("2027-10-01"), &learned));
    ASSERT_TRUE(record.learned);
    EXPECT_EQ(record.learned->winters, 1);
    EXPECT_LT(record.learned->use, 1);
    const auto question = must(questionOf(record, {}, book.reference(), 0));
    ASSERT_TRUE(question.learned);
    EXPECT_EQ(question.learned->use, record.learned->use);
    EXPECT_EQ(question.learnedFrom.winters, 1);
    EXPECT_EQ(must(learnedCase(book, colony, day("2027-10-01"), nullptr)),
              must(book::caseOf(book, colony, day("2027-10-01"))));

    auto yard = *must(book.find(book::YardId{1}));
    yard.learn = false;
    edit(book, book::ChangeYard{yard});
    const auto off = must(learnOf(book, day("2027-10-01"), few, 2)).learned;
    EXPECT_FALSE(must(learnedCase(book, colony, day("2027-10-01"), &off)).learned) << "switched off";
    BookLearned elsewhere = learned;
    elsewhere.yards = {2};
    EXPECT_FALSE(learnedOf(elsewhere, {1}, colony))
        << "what was learned in other yards is not used in one that does not learn";
}

TEST_F(LearnedBookTest, AShiftOfForageMovesTheSeason) {
    auto record = must(book::caseOf(book, colony, day("2026-10-01")));
    const auto plain = must(questionOf(record, {}, book.reference(), 0));
    record.learned = book::LearnedRecord{.forageYears = 3, .forageShiftDays = 6.2, .forageShiftSdDays = 2};
    const auto shifted = must(questionOf(record, {}, book.reference(), 0));
    EXPECT_EQ(shifted.season.forage->day - plain.season.forage->day, 6);
    EXPECT_FALSE(shifted.learned) << "no winter told of the bees";
    EXPECT_EQ(shifted.learnedFrom.forageYears, 3);
    record.season.forage = plain.winter.date(plain.season.forage->day);
    EXPECT_EQ(must(questionOf(record, {}, book.reference(), 0)).season.forage->day, plain.season.forage->day)
        << "a day the keeper gave stays";
}

} // namespace
} // namespace winterlarder::answer::followed_colony_test
