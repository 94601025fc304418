// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_state.h"

#include "app/invented.h"
#include "book/case_of.h"

#include <gmock/gmock.h>

namespace winterlarder::desk {

using invented::answered;
using invented::colony;
using invented::day;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Pair;

namespace {

constexpr ColonyId one{1}, two{2}, all{};

YardReading readingOf(std::vector<std::pair<ColonyId, Outcome<book::ColonyCase>>> colonies, bool whole = true) {
    return {.whole = whole,
            .day = day("2026-09-14"),
            .yards = {},
            .shown = {},
            .colonies = std::move(colonies),
            .visits = {},
            .open = {},
            .problems = {}};
}

} // namespace

TEST(YardState, AReadingSaysWhatChangedByIt) {
    YardState state;
    EXPECT_THAT(state.take(readingOf({{one, colony("A")}, {two, colony("B")}})),
                ElementsAre(Pair(YardChange::Colonies, all), Pair(YardChange::Record, one),
                            Pair(YardChange::Record, two), Pair(YardChange::Read, one), Pair(YardChange::Read, two)));
    EXPECT_THAT(state.take(readingOf({{two, colony("B")}}, false)), ElementsAre(Pair(YardChange::Read, two)))
        << "as it was";
    auto other = colony("B");
    other.bees.coveredCombs = 3;
    EXPECT_THAT(state.take(readingOf({{two, other}}, false)),
                ElementsAre(Pair(YardChange::Record, two), Pair(YardChange::Read, two)));
    EXPECT_EQ(state.find(two)->record.bees.coveredCombs, 3);
    EXPECT_THAT(state.take(readingOf({{ColonyId{3}, colony("C")}}, false)), IsEmpty()) << "it does not stand here";
    EXPECT_EQ(state.colonies.size(), 2U);
}

TEST(YardState, AnAnswerCountsForTheRecordItWasMadeOf) {
    YardState state;
    (void)state.take(readingOf({{one, colony("A")}}));
    const auto answer = answered(colony("A"));
    EXPECT_THAT(state.takeAnswer(one, answer), ElementsAre(Pair(YardChange::Answer, one)));
    EXPECT_FALSE(state.find(one)->pending);
    auto other = colony("A");
    other.bees.coveredCombs = 3;
    (void)state.take(readingOf({{one, other}}, false));
    EXPECT_TRUE(state.find(one)->pending);
    EXPECT_THAT(state.takeAnswer(one, answer), IsEmpty());
    EXPECT_THAT(state.takeProblems(one, colony("A"), {inputProblem("of before", "")}), IsEmpty());
    EXPECT_THAT(state.find(one)->problems, IsEmpty());
}

TEST(YardState, OnlyTheHistoryOfTheColonyLookedAtIsHeld) {
    YardState state;
    state.look(two);
    auto reading = readingOf({{one, colony("A")}, {two, colony("B")}});
    reading.open = book::ColonyHistory{.colony = {.id = one}};
    (void)state.take(reading);
    EXPECT_EQ(state.historyOf(one), nullptr);
    reading.open->colony.id = two;
    EXPECT_THAT(state.take(reading), testing::Contains(Pair(YardChange::History, two)));
    ASSERT_NE(state.historyOf(two), nullptr);
    state.look(one);
    EXPECT_EQ(state.historyOf(one), nullptr) << "it is still to be read";
}

TEST(YardState, TheCaseShownFollowsFromTheHistory) {
    YardState state;
    state.look(one);
    book::ColonyHistory history{.colony = {.id = one, .name = "A"}};
    history.colony.hive.boxes = {book::BoxRecord{std::string("langstroth-deep"), {}, false}};
    state.yards = {book::Yard{.name = "Orchard", .site = {.where = std::string("ca-halifax")}}};
    const auto record = book::caseOf(history, state.yards, *invented::shipped(), day("2026-09-14"));
    auto reading = readingOf({{one, record}});
    reading.yards = state.yards;
    reading.open = history;
    (void)state.take(reading);
    EXPECT_THAT(state.showHistory(history, *invented::shipped()), IsEmpty());
    history.weighings = {
        {.id = {-1}, .colony = one, .weighing = {day("2026-09-13"), book::ScaleReading{kilograms(41)}}}};
    EXPECT_THAT(state.showHistory(history, *invented::shipped()), ElementsAre(Pair(YardChange::Record, one)));
    EXPECT_EQ(state.find(one)->record.weighings.size(), 1U);
    EXPECT_EQ(state.historyOf(one)->weighings.size(), 1U);
    history.colony.id = two;
    EXPECT_THAT(state.showHistory(history, *invented::shipped()), IsEmpty()) << "not looked at";
}

TEST(YardState, AnotherDayForgetsWhatWasFollowedAndAnotherWinterWhatWasLearned) {
    YardState state;
    (void)state.take(readingOf({{one, colony("A")}}));
    const auto past = std::make_shared<PastLearned>();
    past->asOf = day("2026-09-14");
    (void)state.takePast(past);
    state.followed[one] = nullptr;
    EXPECT_THAT(state.showDay(day("2026-09-14")), IsEmpty());
    EXPECT_THAT(state.showDay(day("2026-09-20")), ElementsAre(Pair(YardChange::Followed, one)));
    EXPECT_THAT(state.showDay(day("2027-09-20")), ElementsAre(Pair(YardChange::Past, all)));
    EXPECT_EQ(state.past, nullptr);
}

TEST(YardState, ThatNothingWasLearnedHoldsUntilSomethingIs) {
    YardState state;
    EXPECT_THAT(state.takePastFailure(), ElementsAre(Pair(YardChange::Past, all)));
    EXPECT_TRUE(state.pastFailed);
    EXPECT_THAT(state.takePast(std::make_shared<PastLearned>()), ElementsAre(Pair(YardChange::Past, all)));
    EXPECT_FALSE(state.pastFailed);
    (void)state.takePastFailure();
    state.forgetBook();
    EXPECT_FALSE(state.pastFailed);
}

TEST(YardState, AnotherBookLeavesNothingButTheDay) {
    YardState state;
    state.look(one);
    (void)state.take(readingOf({{one, colony("A")}}));
    state.awaited.insert(one);
    state.forgetBook();
    EXPECT_TRUE(state.colonies.empty() && state.awaited.empty() && state.open == all);
    EXPECT_EQ(state.day, day("2026-09-14"));
}

} // namespace winterlarder::desk
