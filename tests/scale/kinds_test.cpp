// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/proposals.h"
#include "support/hive_log.h"

#include <gmock/gmock.h>

namespace winterlarder::scale::kinds_test {
namespace {

using namespace winterlarder::testing;

Date day(int year, int month, int of) { return *Date::of(year, month, of); }

Summary yearWith(std::vector<TrueStep> steps, std::uint32_t seed = 61) {
    HiveLog log(seed);
    log.steps = std::move(steps);
    return summarise(log.draw().readings(), Times::WallClock);
}

void expectKinds(const Summary& summary, const std::vector<std::pair<StepKind, StepRule>>& expected) {
    ASSERT_EQ(summary.steps.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(summary.steps[i].kind, expected[i].first) << summary.steps[i].date.iso();
        EXPECT_EQ(summary.steps[i].rule, expected[i].second) << summary.steps[i].date.iso();
    }
}

TEST(Kinds, OfAYearsWork) {
    expectKinds(yearWith({{secondsOf(2018, 5, 2, 15), 7.1},     // a super in the spring flow
                          {secondsOf(2018, 7, 24, 10), -22},    // full ones off
                          {secondsOf(2018, 8, 20, 18), 7.4},    // syrup
                          {secondsOf(2018, 9, 5, 12), -1.5},    // the feeder
                          {secondsOf(2018, 12, 20, 14), 2.5}}), // fondant
                {{StepKind::Equipment, StepRule::RoomInAFlow},
                 {StepKind::Harvest, StepRule::TookWhatCameIn},
                 {StepKind::Feed, StepRule::NothingComesIn},
                 {StepKind::Equipment, StepRule::AfterFeed},
                 {StepKind::Feed, StepRule::NothingComesIn}});
}

TEST(Kinds, AFeedThatShrinksAsSyrupDoesIsKnownByIt) {
    HiveLog log(62);
    log.steps = {{secondsOf(2018, 8, 28, 18), 8}};
    // Of 8 kg of syrup 3:2 a quarter is water that goes within ten days.
    for (int hour = 0; hour < 240; ++hour) log.steps.push_back({secondsOf(2018, 8, 28, 19) + hour * 3600, -2.0 / 240});
    const auto summary = summarise(log.draw().readings(), Times::WallClock);
    ASSERT_EQ(summary.steps.size(), 1u);
    EXPECT_EQ(summary.steps[0].rule, StepRule::ShrankLikeSyrup);
    EXPECT_EQ(summary.steps[0].kind, StepKind::Feed);
}

TEST(Kinds, WhatCameAndWentIsEquipment) {
    expectKinds(yearWith({{secondsOf(2018, 8, 1, 10), 12.2}, {secondsOf(2018, 8, 30, 16), -12.3}}),
                {{StepKind::Equipment, StepRule::CameAndWent}, {StepKind::Equipment, StepRule::CameAndWent}});
}

TEST(Kinds, WhatWasTakenOffAndPutBackIsEquipment) {
    expectKinds(yearWith({{secondsOf(2018, 9, 3, 10), -31}, {secondsOf(2018, 9, 4, 16), 31.1}}),
                {{StepKind::Equipment, StepRule::CameAndWent}, {StepKind::Equipment, StepRule::CameAndWent}});
}

TEST(Kinds, ASuperThatComesOffAsHeavyAsItWentOnAfterAFlowIsAHarvestUnlessItIsTheSameToAQuarterKilogram) {
    expectKinds(yearWith({{secondsOf(2018, 6, 14, 10), 7}, {secondsOf(2018, 7, 24, 10), -7.6}}),
                {{StepKind::Equipment, StepRule::RoomInAFlow}, {StepKind::Harvest, StepRule::TookWhatCameIn}});
}

TEST(Kinds, MoreThanAFeederHoldsIsEquipment) {
    expectKinds(yearWith({{secondsOf(2018, 9, 1, 10), 19}}), {{StepKind::Equipment, StepRule::TooMuchForFood}});
}

TEST(Kinds, WhatNothingTellsIsUnknown) {
    expectKinds(yearWith({{secondsOf(2018, 2, 10, 12), -5}}), {{StepKind::Unknown, StepRule::NoRule}});
    expectKinds(yearWith({{secondsOf(2018, 5, 12, 13), -2.4}}), {{StepKind::Unknown, StepRule::LikeASwarm}});
}

TEST(Kinds, AHarvestNeedsNectarBeforeIt) {
    expectKinds(yearWith({{secondsOf(2018, 4, 12, 12), -9}}), {{StepKind::Unknown, StepRule::NoRule}});
}

TEST(Proposals, KeepFirstsAndTheDaysRoundASteps) {
    const auto summary = yearWith({{secondsOf(2018, 7, 24, 10), -22}, {secondsOf(2018, 8, 20, 18), 7.4}});
    const auto proposals = propose(summary);
    std::vector<Date> dates;
    for (const ProposedWeighing& one : proposals.weighings) dates.push_back(one.date);
    std::vector<Date> expected;
    for (int month = 1; month <= 12; ++month) expected.push_back(day(2018, month, 1));
    for (const Date date : {day(2018, 7, 24), day(2018, 7, 25), day(2018, 8, 20), day(2018, 8, 21), day(2018, 12, 31)})
        expected.push_back(date);
    std::sort(expected.begin(), expected.end());
    EXPECT_EQ(dates, expected);
    EXPECT_EQ(proposals.weighings.front().why, KeepWhy::First);
    EXPECT_EQ(proposals.weighings.back().why, KeepWhy::Last);
    ASSERT_EQ(proposals.records.size(), 2u);
    EXPECT_EQ(proposals.records[0].sort, ProposedRecord::Sort::Harvest);
    EXPECT_EQ(proposals.records[1].sort, ProposedRecord::Sort::Feed);
    EXPECT_TRUE(proposals.records[1].certain);
    const auto weightOn = [&](Date date) {
        for (const ProposedWeighing& one : proposals.weighings)
            if (one.date == date) return one.gross.value();
        return 0.0;
    };
    EXPECT_NEAR(weightOn(day(2018, 7, 25)) - weightOn(day(2018, 7, 24)), -22, 0.5)
        << "the step stands between them, and a day's eating";
}

TEST(Proposals, LeaveOutWhatStoodOnTheHiveForADayAndWeighingsByDay) {
    const auto passing = propose(yearWith({{secondsOf(2018, 9, 10, 10), 12.2}, {secondsOf(2018, 9, 11, 16), -12.2}}));
    EXPECT_TRUE(passing.records.empty());
    EXPECT_TRUE(propose(Summary{}).weighings.empty());
    HiveLog log(63);
    auto readings = log.draw().readings();
    std::erase_if(readings, [](const Reading& one) {
        return dayNumber(one.local()) == dayOf(day(2018, 3, 1)) && secondOfDay(one.local()) < 8 * 3600;
    });
    std::erase_if(readings, [](const Reading& one) {
        return dayNumber(one.local()) == dayOf(day(2018, 2, 28)) && secondOfDay(one.local()) > 20 * 3600;
    });
    for (const ProposedWeighing& one : propose(summarise(readings, Times::WallClock)).weighings)
        EXPECT_NE(one.date, day(2018, 3, 1)) << "foragers were out";
}

} // namespace
} // namespace winterlarder::scale::kinds_test
