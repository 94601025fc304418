// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/locked_in.h"

#include "climate/site.h"
#include "support/shipped.h"

#include <gtest/gtest.h>

namespace winterlarder::winter::locked_in_test {

namespace {

double lockedAt(const char* station, int winters = 200) {
    const auto site = climate::siteAtStation(*shipped().station(station), std::nullopt).value();
    return longestLockedIn(site.curve, climate::deriveSeason(site.curve, shipped().constants), shipped().constants,
                           {1, winters});
}

} // namespace

TEST(LockedIn, IsLongInTheNorthAndShortWhereBeesFly) {
    EXPECT_GT(lockedAt("ca-winnipeg"), 60);
    EXPECT_LT(lockedAt("gb-london"), 50);
    EXPECT_LT(lockedAt("pt-lisbon"), 10);
}

TEST(LockedIn, IsThePlacesAlone) { EXPECT_EQ(lockedAt("ca-halifax"), lockedAt("ca-halifax")); }

TEST(LockedIn, AFewWintersDoNotEndInTheMiddleOfABlock) { EXPECT_GT(lockedAt("ca-winnipeg", 5), 30); }

// Below the locked-in limit on every day the bees never fly until forage.
TEST(LockedIn, ConstantColdLocksInUntilForage) {
    const auto& k = shipped().constants;
    const auto curve = climate::ClimateCurve::constant(celsius(k.lockedInBelow - k.diurnalHalfRange - 5), 45, {});
    auto season =
        climate::deriveSeason(climate::siteAtStation(*shipped().station("ca-halifax"), std::nullopt).value().curve, k);
    season.forage->exact = true;
    EXPECT_NEAR(longestLockedIn(curve, season, k, {1, 32}), season.forage->day - firstSeasonDay, 1e-9);
}

} // namespace winterlarder::winter::locked_in_test
