// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/days.h"
#include "scale/side.h"
#include "support/hive_log.h"

#include <gtest/gtest.h>

namespace winterlarder::scale::side_test {
namespace {

using namespace winterlarder::testing;

std::vector<Reading> readingsOf(const std::function<double(double)>& kgAtHour, double noise, std::uint32_t seed,
                                std::int64_t interval = 300) {
    std::mt19937 random(seed);
    std::normal_distribution<double> normal; // of deviation 1: one of 0 is not allowed
    std::vector<Reading> readings;
    for (std::int64_t at = 0; at <= 24 * 3600; at += interval)
        readings.push_back({at, kilograms(kgAtHour(static_cast<double>(at) / 3600) + noise * normal(random)), 0, 0});
    return readings;
}

double told(const std::vector<Reading>& readings, std::int64_t carriedTo) {
    return weightToldBy(readings, {readings.size() - 1, 0}, carriedTo, 300, Carry::On).weight.value();
}

// The line of one hour alone, 13 readings, has at its end a standard error of 1.2533 x 0.1 x sqrt(1/13 + 0.54^2 / 1.26) = 0.070 kg. The root
// mean square of 200 draws is known to one part in 20, four of which are taken off.
TEST(Side, OfAQuietNightIsAveragedOverHours) {
    double squares = 0;
    for (std::uint32_t seed = 1; seed <= 200; ++seed) {
        const auto readings = readingsOf([](double) { return 40; }, 0.1, seed);
        const double error = told(readings, 24 * 3600 + 150) - 40;
        squares += error * error;
    }
    EXPECT_LT(std::sqrt(squares / 200), 0.070 * (1 - 4.0 / 20));
}

TEST(Side, OfForagersComingHomeFollowsThem) {
    const auto homing = [](double hour) { return 40 + 0.4 * std::max(0.0, hour - 23); };
    for (std::uint32_t seed = 1; seed <= 20; ++seed)
        EXPECT_NEAR(told(readingsOf(homing, 0.01, seed), 24 * 3600), 40.4, 0.04)
            << "four standard errors of the end of an hour's line";
}

TEST(Side, IsExactWithoutScatter) {
    const auto rising = readingsOf([](double hour) { return 40 + 0.1 * hour; }, 0, 1);
    EXPECT_NEAR(told(rising, 24 * 3600 + 600), 40 + 0.1 * (24 + 1.0 / 6), 1e-9);
    EXPECT_NEAR(weightToldBy(rising, {0, 100}, -600, 300, Carry::On).weight.value(), 40 - 0.1 / 6, 1e-9)
        << "the side after it";
    EXPECT_NEAR(weightToldBy(rising, {0, 100}, -600, 300, Carry::Not).weight.value(), 40, 1e-9) << "not carried on";
}

TEST(Side, OfOneReadingIsThatReading) {
    const auto readings = readingsOf([](double hour) { return 40 + hour; }, 0, 1);
    EXPECT_DOUBLE_EQ(weightToldBy(readings, {7, 7}, 0, 300, Carry::On).weight.value(), readings[7].weight.value());
}

// Twelve quiet days of 0.04 kg each; the sixth has a step of 5 kg that the readings round it tell as 5.05.
struct Quiet {
    std::vector<Reading> readings;
    Jumps found;
    Quiet() {
        for (std::int64_t at = 0; at < 12 * secondsADay; at += 900) {
            const double days = static_cast<double>(at) / secondsADay;
            readings.push_back({at, kilograms(40 - 0.04 * days + (days > 5.5 ? 5 : 0)), 0, 0});
        }
        const std::int64_t noon = 5 * secondsADay + secondsADay / 2;
        found.jumps = {{noon, noon + 900, kilograms(5.05), kilograms(0.03)}};
    }
};

TEST(Sharpening, LetsQuietDaysTellTheJump) {
    Quiet quiet;
    sharpen(quiet.found, dayWeights(quiet.readings, quiet.found), quiet.readings);
    // Days scatter by nothing, so by the least of 0.005 kg: of the 0.05 kg, 0.005^2 / (0.005^2 + 0.03^2) stays.
    EXPECT_NEAR(quiet.found.jumps[0].change.value(), 5 + 0.05 * 0.000025 / 0.000925, 1e-6);
    EXPECT_LT(quiet.found.jumps[0].error, kilograms(0.006));
}

TEST(Sharpening, LeavesADayAloneThatIsLikeNoOther) {
    Quiet quiet;
    quiet.found.jumps[0].change = kilograms(4.7); // 0.3 kg of syrup's water went that day
    sharpen(quiet.found, dayWeights(quiet.readings, quiet.found), quiet.readings);
    EXPECT_DOUBLE_EQ(quiet.found.jumps[0].change.value(), 4.7);
}

TEST(Sharpening, NeedsDaysToCompareWith) {
    Quiet quiet;
    std::erase_if(quiet.readings,
                  [](const Reading& one) { return one.moment < 4 * secondsADay || one.moment > 7 * secondsADay; });
    sharpen(quiet.found, dayWeights(quiet.readings, quiet.found), quiet.readings);
    EXPECT_DOUBLE_EQ(quiet.found.jumps[0].change.value(), 5.05);
}

} // namespace
} // namespace winterlarder::scale::side_test
