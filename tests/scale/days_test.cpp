// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/summary.h"
#include "support/hive_log.h"

#include <gmock/gmock.h>

namespace winterlarder::scale::days_test {
namespace {

using namespace winterlarder::testing;

Date day(int year, int month, int of) { return *Date::of(year, month, of); }

const DayWeight* dayIn(const Summary& summary, Date date) {
    for (const DayWeight& one : summary.days)
        if (one.date == date) return &one;
    return nullptr;
}

Reading at(std::int64_t local, double kg) { return {local, kilograms(kg), 0, 0}; }

// The median of 48 readings of 0.02 kg noise has a standard error of 1.2533 x 0.02 / sqrt(48) = 0.0036 kg; the mean of 365 such
// differences 0.0002 kg. The colony is straight between midnight and 4 h, so the estimator has no bias of its own; the digits of
// 0.01 kg add none. Four standard errors.
TEST(NightWeight, HasNoBias) {
    HiveLog log(21);
    const Summary summary = summarise(log.draw().readings(), Times::WallClock);
    ASSERT_EQ(summary.days.size(), 365u);
    double sum = 0, most = 0;
    for (const DayWeight& one : summary.days) {
        const double error =
            one.weight.value() - log.colonyKg(static_cast<std::int64_t>(dayOf(one.date)) * secondsADay + 2 * 3600);
        sum += error;
        most = std::max(most, std::abs(error));
        EXPECT_EQ(one.basis, Basis::Night);
        EXPECT_EQ(one.readings, 48);
    }
    EXPECT_NEAR(sum / 365, 0, 4 * 0.0002);
    EXPECT_LT(most, 5 * 0.0036) << "largest of 365";
}

TEST(NightWeight, FallsBackAsStated) {
    const std::int64_t d = secondsOf(2018, 10, 5);
    const auto one = dayWeights({at(d + 3600, 40), at(d + 2 * 3600, 41), at(d + 12 * 3600, 50)}, {});
    ASSERT_EQ(one.size(), 1u);
    EXPECT_EQ(one[0].basis, Basis::Night);
    EXPECT_DOUBLE_EQ(one[0].weight.value(), 40.5);
    const auto near = dayWeights({at(d - 2 * 3600, 40), at(d + 5 * 3600, 42), at(d + 12 * 3600, 50)}, {});
    ASSERT_EQ(near.size(), 2u);
    EXPECT_EQ(near[0].basis, Basis::Day) << "the evening alone belongs to the night that follows";
    EXPECT_EQ(near[1].basis, Basis::NearNight);
    EXPECT_DOUBLE_EQ(near[1].weight.value(), 41);
    const auto byDay = dayWeights({at(d + 8 * 3600, 40), at(d + 12 * 3600, 42), at(d + 16 * 3600, 47)}, {});
    ASSERT_EQ(byDay.size(), 1u);
    EXPECT_EQ(byDay[0].basis, Basis::Day);
    EXPECT_DOUBLE_EQ(byDay[0].weight.value(), 42);
}

TEST(NightWeight, IsNeverMadeUp) {
    HiveLog log(22);
    auto readings = log.draw().readings();
    std::erase_if(readings, [](const Reading& one) {
        return one.moment >= secondsOf(2018, 9, 28) && one.moment < secondsOf(2018, 10, 3);
    });
    const Summary summary = summarise(readings, Times::WallClock);
    EXPECT_EQ(summary.days.size(), 360u);
    EXPECT_EQ(dayIn(summary, day(2018, 9, 30)), nullptr);
    EXPECT_FALSE(dayIn(summary, day(2018, 9, 27))->change) << "the next day has no reading";
    const MonthChange& september = summary.months[8];
    EXPECT_FALSE(september.change);
    EXPECT_EQ(september.ends, MonthEnd::LastMissing);
    EXPECT_EQ(september.unknownDays, 4);
    EXPECT_EQ(summary.months[9].ends, MonthEnd::FirstMissing);
    EXPECT_EQ(summary.months[11].ends, MonthEnd::LastMissing) << "1 January is not in the log";
    EXPECT_TRUE(summary.months[7].change);
}

// Each end has a standard error of 0.0036 kg; each jump adds one of about 0.03 kg (tests/scale/steps_test.cpp: 0.18 kg at most).
TEST(Months, ReturnTheTruthWithStepsTakenOut) {
    for (std::uint32_t seed = 31; seed < 36; ++seed) {
        HiveLog log(seed);
        log.end = secondsOf(2019, 1, 2);
        log.steps = {{secondsOf(2018, 4, 28, 15.4), 6.3},
                     {secondsOf(2018, 7, 24, 10.0), -19.5},
                     {secondsOf(2018, 8, 20, 18.6), 7.4}};
        const Summary summary = summarise(log.draw().readings(), Times::WallClock);
        ASSERT_EQ(summary.months.size(), 13u);
        for (int month = 1; month <= 12; ++month) {
            const MonthChange& found = summary.months[static_cast<std::size_t>(month) - 1];
            const Date first = day(2018, month, 1), next = month == 12 ? day(2019, 1, 1) : day(2018, month + 1, 1);
            const bool step = month == 4 || month == 7 || month == 8;
            ASSERT_TRUE(found.change) << month;
            EXPECT_NEAR(found.change->value(), log.changeBetween(first, next), step ? 0.18 : 5 * 0.0036 * std::sqrt(2))
                << month;
            EXPECT_EQ(found.unknownDays, 0);
            EXPECT_EQ(found.nectarDays + found.eatingDays + found.wetDays, next.daysSince(first));
            EXPECT_NEAR((found.nectar - found.eaten).value(), found.change->value(), 1e-9)
                << "no wet days: the days add up";
        }
    }
}

TEST(Days, OfAFlowBringNectarAndTheOthersEat) {
    HiveLog log(41);
    const Summary summary = summarise(log.draw().readings(), Times::WallClock);
    int wrong = 0, nectar = 0;
    for (const DayWeight& one : summary.days) {
        if (!one.change) continue;
        const double truth = log.changeBetween(one.date, one.date.plusDays(1));
        nectar += *one.kind == DayKind::Nectar;
        // Nights differ by 0.005 kg (standard error): nearer the limit than four of it, a day may go either way.
        if (std::abs(truth - nectarDayKg) > 0.02) wrong += (*one.kind == DayKind::Nectar) != (truth > nectarDayKg);
    }
    EXPECT_EQ(wrong, 0);
    EXPECT_GT(nectar, 40);
    EXPECT_EQ(summary.months[0].nectarDays, 0);
    EXPECT_EQ(summary.months[11].eatingDays, 30);
}

TEST(Days, WithWaterOnTheHiveAreNoNectarDays) {
    HiveLog log(42);
    log.showers = {{secondsOf(2018, 11, 8, 23.5), 0.4}};
    const Summary summary = summarise(log.draw().readings(), Times::WallClock);
    const DayWeight* wet = dayIn(summary, day(2018, 11, 9));
    ASSERT_NE(wet, nullptr);
    EXPECT_TRUE(wet->wet);
    EXPECT_EQ(dayIn(summary, day(2018, 11, 8))->kind, DayKind::Wet);
    EXPECT_EQ(summary.months[10].nectarDays, 0);
}

// From the last hours of the evening to the last of the night the hive grows heavier while everybody is at home: from 0.15 kg on it is water.
TEST(Days, ANightIsWetFromFifteenHundredthsOn) {
    const auto wetWith = [](double heavierKg) {
        std::vector<Reading> readings;
        const std::int64_t midnight = secondsOf(2018, 10, 5);
        for (int hour = -4; hour <= 6; ++hour)
            readings.push_back(at(midnight + hour * 3600, 40 + (hour < 1 ? 0 : heavierKg)));
        const auto days = dayWeights(readings, {});
        return days.back().wet;
    };
    for (const double dry : {-0.3, 0.0, 0.1, 0.14}) EXPECT_FALSE(wetWith(dry)) << dry;
    for (const double wet : {0.16, 0.18, 0.25, 1.5}) EXPECT_TRUE(wetWith(wet)) << wet;
}

TEST(Days, AStepInTheMiddleOfTheNightDoesNotTurnItsMedian) {
    HiveLog log(43);
    log.steps = {{secondsOf(2018, 10, 10, 1.6), 10}};
    const Summary summary = summarise(log.draw().readings(), Times::WallClock);
    ASSERT_EQ(summary.steps.size(), 1u);
    const DayWeight* night = dayIn(summary, day(2018, 10, 10));
    EXPECT_NEAR(night->weight.value(), log.colonyKg(secondsOf(2018, 10, 10, 2)) + 10, 0.15);
    EXPECT_NEAR(summary.months[9].change->value(), log.changeBetween(day(2018, 10, 1), day(2018, 11, 1)), 0.18);
}

} // namespace
} // namespace winterlarder::scale::days_test
