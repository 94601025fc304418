// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/order.h"
#include "scale/summary.h"
#include "support/hive_log.h"

#include <gmock/gmock.h>
#include <numeric>

namespace winterlarder::scale::order_test {
namespace {

using namespace winterlarder::testing;
using ::testing::ElementsAre;

std::vector<Reading> everyTenMinutes(std::int64_t from, int count, std::int32_t firstLine = 2) {
    std::vector<Reading> readings;
    for (int i = 0; i < count; ++i) readings.push_back({from + i * 600, kilograms(50 + 0.01 * i), 0, firstLine + i});
    return readings;
}
void append(std::vector<Reading>& to, const std::vector<Reading>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

bool rises(const std::vector<Reading>& readings) {
    for (std::size_t i = 1; i < readings.size(); ++i)
        if (readings[i].moment <= readings[i - 1].moment) return false;
    return true;
}

TEST(Order, OfNothingIsNothing) {
    EXPECT_TRUE(inOrder({}, Times::WallClock).readings.empty());
    EXPECT_EQ(inOrder(everyTenMinutes(0, 1), Times::WallClock).readings.size(), 1u);
    EXPECT_EQ(inOrder(everyTenMinutes(0, 1), Times::WallClock).interval, 0);
}

TEST(Order, NewestFirstIsTurnedRound) {
    auto readings = everyTenMinutes(secondsOf(2018, 5, 1), 200);
    const auto straight = inOrder(readings, Times::WallClock).readings;
    std::reverse(readings.begin(), readings.end());
    const auto turned = inOrder(readings, Times::WallClock);
    EXPECT_EQ(turned.order, RowOrder::NewestFirst);
    EXPECT_EQ(turned.readings, straight);
}

TEST(Order, RowsInNoOrderAreSorted) {
    auto readings = everyTenMinutes(secondsOf(2018, 5, 1), 200);
    const auto straight = inOrder(readings, Times::WallClock).readings;
    std::shuffle(readings.begin(), readings.end(), std::mt19937(5));
    const auto sorted = inOrder(readings, Times::WallClock);
    EXPECT_EQ(sorted.order, RowOrder::Mixed);
    EXPECT_EQ(sorted.readings, straight);
    EXPECT_TRUE(sorted.leftOut.empty());
}

TEST(Order, PartsOfAFileInTheWrongOrderLoseNothing) {
    auto readings = everyTenMinutes(secondsOf(2018, 6, 1), 300, 2);
    append(readings, everyTenMinutes(secondsOf(2018, 5, 1), 300, 302));
    const auto ordered = inOrder(readings, Times::WallClock);
    EXPECT_EQ(ordered.readings.size(), 600u);
    EXPECT_TRUE(rises(ordered.readings));
    EXPECT_TRUE(ordered.leftOut.empty());
    EXPECT_TRUE(ordered.jumps.empty());
}

TEST(Order, AClockPutBackRepeatsNothing) {
    auto readings = everyTenMinutes(secondsOf(2018, 5, 8), 300, 2);
    append(readings, everyTenMinutes(readings.back().moment - 5 * 3600, 300, 302));
    const auto ordered = inOrder(readings, Times::WallClock);
    EXPECT_TRUE(rises(ordered.readings));
    EXPECT_EQ(ordered.readings.size(), 600u - 31) << "five hours of ten minutes, both ends";
    EXPECT_EQ(ordered.leftOut.size(), 31u);
    ASSERT_EQ(ordered.jumps.size(), 1u);
    EXPECT_EQ(ordered.jumps[0].kind, ClockJump::Kind::Back);
    EXPECT_EQ(ordered.jumps[0].seconds, -5 * 3600);
    EXPECT_EQ(ordered.jumps[0].line, 302);
}

TEST(Order, AClockThatFellBackToItsFirstDayLosesThatPartOnly) {
    auto readings = everyTenMinutes(secondsOf(2018, 5, 8), 400, 2);
    append(readings, everyTenMinutes(secondsOf(2000, 1, 1), 50, 402));
    append(readings, everyTenMinutes(secondsOf(2018, 5, 20), 400, 452));
    const auto ordered = inOrder(readings, Times::WallClock);
    EXPECT_EQ(ordered.readings.size(), 800u);
    ASSERT_EQ(ordered.leftOut.size(), 50u);
    EXPECT_EQ(ordered.leftOut.front(), (LeftOut{402, LeftOutWhy::ClockBack, 0}));
}

TEST(Order, AClockThatRanAheadForOneRowLosesThatRowOnly) {
    auto readings = everyTenMinutes(secondsOf(2018, 5, 8), 400, 2);
    readings[150].moment = secondsOf(2050, 1, 1);
    const auto ordered = inOrder(readings, Times::WallClock);
    EXPECT_EQ(ordered.readings.size(), 399u);
    EXPECT_THAT(ordered.leftOut, ElementsAre(LeftOut{152, LeftOutWhy::ClockBack, 0}));
}

TEST(Order, OfSeveralRowsOfOneTimeTheFirstIsKept) {
    auto readings = everyTenMinutes(secondsOf(2018, 5, 8), 100, 2);
    Reading again = readings[40];
    again.weight = kilograms(99);
    again.line = 500;
    readings.insert(readings.begin() + 41, again);
    const auto ordered = inOrder(readings, Times::WallClock);
    EXPECT_EQ(ordered.readings.size(), 100u);
    EXPECT_EQ(ordered.readings[40].weight, readings[40].weight);
    EXPECT_THAT(ordered.leftOut, ElementsAre(LeftOut{500, LeftOutWhy::SameTime, 42}));
}

TEST(Order, CoarseTimesAreTakenTogether) {
    std::vector<Reading> readings;
    for (int minute = 0; minute < 60; ++minute)
        for (int third = 0; third < 3; ++third)
            readings.push_back(
                {secondsOf(2018, 5, 8) + minute * 60, kilograms(50 + third * third), 0, 2 + minute * 3 + third});
    const auto ordered = inOrder(readings, Times::WallClock);
    EXPECT_EQ(ordered.readings.size(), 60u);
    EXPECT_DOUBLE_EQ(ordered.readings[7].weight.value(), 51) << "the median of 50, 51, 54";
    EXPECT_EQ(ordered.merged, 180u);
    EXPECT_TRUE(ordered.leftOut.empty());
}

// Europe 2018: clocks forward at 2 h on 25 March, back at 3 h on 28 October.
std::int64_t wall(std::int64_t even) {
    const bool summer = even >= secondsOf(2018, 3, 25, 2) && even < secondsOf(2018, 10, 28, 2);
    return even + (summer ? 3600 : 0);
}

TEST(Order, DaylightSavingIsSeenBothWaysAndTheTimeRunsOn) {
    for (const std::int64_t interval : {60, 300, 900, 1800, 3600}) {
        std::vector<Reading> readings;
        for (std::int64_t at = secondsOf(2018, 3, 1); at < secondsOf(2018, 11, 20); at += interval)
            readings.push_back({wall(at), kilograms(50), 0, 0});
        const auto count = readings.size();
        const auto ordered = inOrder(readings, Times::WallClock);
        EXPECT_EQ(ordered.readings.size(), count) << interval;
        EXPECT_TRUE(ordered.leftOut.empty()) << interval;
        ASSERT_EQ(ordered.jumps.size(), 2u) << interval;
        EXPECT_EQ(ordered.jumps[0].seconds, 3600);
        EXPECT_EQ(ordered.jumps[1].seconds, -3600);
        EXPECT_EQ(ordered.jumps[1].kind, ClockJump::Kind::DaylightSaving);
        for (std::size_t i = 1; i < ordered.readings.size(); ++i)
            ASSERT_EQ(ordered.readings[i].moment - ordered.readings[i - 1].moment, interval);
        EXPECT_EQ(ordered.readings.back().local(), readings.back().moment) << "the wall still shows the same";
    }
}

TEST(Order, AnHourPutBackOnAWeekdayIsNoDaylightSaving) {
    auto readings = everyTenMinutes(secondsOf(2018, 10, 24), 100, 2);
    append(readings, everyTenMinutes(readings.back().moment + 600 - 3600, 100, 102));
    const auto ordered = inOrder(readings, Times::WallClock);
    ASSERT_EQ(ordered.jumps.size(), 1u);
    EXPECT_EQ(ordered.jumps[0].kind, ClockJump::Kind::Back);
    EXPECT_EQ(ordered.leftOut.size(), 6u);
}

TEST(Order, DaylightSavingChangesNoMonth) {
    HiveLog log(51);
    log.noiseKg = 0;
    auto even = log.draw().readings();
    auto summer = even;
    for (Reading& reading : summer) reading.moment = wall(reading.moment);
    const auto plain = summarise(even, Times::WallClock), shifted = summarise(summer, Times::WallClock);
    ASSERT_EQ(plain.months.size(), shifted.months.size());
    // The night's median lies an hour earlier in summer: what is eaten in an hour, 0.3 kg a day at most.
    for (std::size_t i = 0; i < plain.months.size(); ++i)
        if (plain.months[i].change)
            EXPECT_NEAR(plain.months[i].change->value(), shifted.months[i].change->value(), 0.3 / 24 + 0.01) << i;
    EXPECT_TRUE(shifted.steps.empty());
    EXPECT_TRUE(shifted.leftOut.empty());
}

} // namespace
} // namespace winterlarder::scale::order_test
