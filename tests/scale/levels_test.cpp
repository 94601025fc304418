// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/median.h"
#include "scale/levels.h"
#include "support/hive_log.h"
#include "support/require.h"

#include <gtest/gtest.h>

namespace winterlarder::scale::levels_test {
namespace {

using namespace winterlarder::testing;

TEST(Levels, AreMediansOfAQuarterOfAnHour) {
    std::vector<Reading> readings;
    for (int minute = 0; minute < 30; ++minute)
        readings.push_back({minute * 60, kilograms(minute == 4 ? 99 : 40 + minute / 15), 0, 0});
    const auto levels = levelsOf(readings);
    ASSERT_EQ(levels.size(), 2u);
    EXPECT_DOUBLE_EQ(levels[0].kg, 40) << "a minute of 99 kg is gone";
    EXPECT_DOUBLE_EQ(levels[1].kg, 41);
    EXPECT_EQ(levels[0].moment, 7 * 60);
    EXPECT_EQ(levels[1].first, 15u);
    EXPECT_EQ(levels[1].end, 30u);
    EXPECT_EQ(usualInterval(levels), 900);
}

TEST(Levels, OfASparseLogAreItsReadings) {
    const auto levels = levelsOf({{-5000, kilograms(1), 0, 0}, {0, kilograms(2), 0, 0}, {7200, kilograms(4), 0, 0}});
    ASSERT_EQ(levels.size(), 3u);
    EXPECT_EQ(levels[0].moment, -5000);
    EXPECT_DOUBLE_EQ(levels[2].kg, 4);
}

// Days change by at most 0.1 kg a quarter of an hour; one day has a step of 10 kg, which must not count for itself.
TEST(UsualChanges, OfADayAreThoseOfTheOthers) {
    std::vector<Level> levels;
    for (std::int64_t at = 0; at < 10 * secondsADay; at += 900) {
        const double wave = (at / 900) % 2 == 0 ? 0.1 : 0;
        levels.push_back({at, 40 + wave + (at > 4 * secondsADay + 40000 ? 10 : 0), 0, 0});
    }
    const UsualChange usual(levels, 900);
    for (int day = 0; day < 10; ++day) EXPECT_NEAR(usual.at(day * secondsADay + 500), 0.1, 1e-9) << day;
    EXPECT_DOUBLE_EQ(usual.at(-secondsADay), 0) << "before the log";
    EXPECT_DOUBLE_EQ(UsualChange({}, 0).at(0), 0);
}

TEST(Medians, AreTheMiddle) {
    std::vector<double> odd{5, 1, 9}, even{4, 1, 9, 2}, one{7};
    EXPECT_DOUBLE_EQ(numerics::median(odd), 5);
    EXPECT_DOUBLE_EQ(numerics::median(even), 3);
    EXPECT_DOUBLE_EQ(numerics::lowerMedian(even), 2);
    EXPECT_DOUBLE_EQ(numerics::median(one), 7);
    std::vector<double> none;
    EXPECT_THROW(numerics::median(none), ContractViolation);
}

TEST(RobustLines, AreNotTurnedByAWildPoint) {
    const numerics::Line line = numerics::robustLine({0, 1, 2, 3, 4, 5, 6}, {1, 3, 5, 700, 9, 11, 13}, 10);
    EXPECT_DOUBLE_EQ(line.slope, 2);
    EXPECT_DOUBLE_EQ(line.at(10), 21);
    EXPECT_DOUBLE_EQ(numerics::robustLine({3}, {8}, 10).at(99), 8);
    EXPECT_DOUBLE_EQ(numerics::robustLine({0, 1}, {0, 50}, 1).slope, 1) << "bounded";
    EXPECT_DOUBLE_EQ(numerics::robustLine({0, 1, 2, 3}, {0, 0.5, -0.5, 0.1}, 10).slope, 0) << "lost in the scatter";
}

} // namespace
} // namespace winterlarder::scale::levels_test
