// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/feeding_cases.h"
#include "support/require.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::feeding::uptake_test {
namespace {

const Feeder round6;
const Feeder atTheCluster{litres(2.8), false, true, false};
const Feeder contact{litres(2.8), false, true, true};

double taken(double bees, double maximum, const Feeder& feeder = round6) {
    return uptakePerDay(BeeCount{bees}, celsius(maximum), feeder).value();
}

// Common practice: litres a day on warm days.
TEST(Uptake, OfWarmDaysByTheNumberOfBees) {
    EXPECT_DOUBLE_EQ(taken(2000, 18), 0.1);
    EXPECT_DOUBLE_EQ(taken(5000, 18), 0.3);
    EXPECT_DOUBLE_EQ(taken(10000, 18), 2);
    EXPECT_DOUBLE_EQ(taken(20000, 18), 4);
    EXPECT_DOUBLE_EQ(taken(15000, 18), 3);
    EXPECT_DOUBLE_EQ(taken(3500, 18), 0.2);
    EXPECT_DOUBLE_EQ(taken(1000, 18), 0.05);
    EXPECT_DOUBLE_EQ(taken(60000, 18), 4);
    EXPECT_EQ(taken(0, 30), 0);
}

TEST(Uptake, EndsWhereBeesNoLongerReachTheFeeder) {
    EXPECT_EQ(taken(20000, 13), 0);
    EXPECT_DOUBLE_EQ(taken(20000, 15.5), 2);
    EXPECT_DOUBLE_EQ(taken(20000, 40), 4);
    EXPECT_EQ(taken(20000, 10, atTheCluster), 0);
    EXPECT_DOUBLE_EQ(taken(20000, 14, atTheCluster), 2);
    EXPECT_DOUBLE_EQ(taken(20000, 18, contact), 2);
}

// Published by associations and common practice: no liquid feed is taken below a daily maximum of 10 C (United States,
// Japan), 12-13 C (France), 13 C (Ontario beekeeping checklist), 14 C (Wisconsin). Both limits used lie within that
// range.
TEST(Uptake, LimitsLieWithinThePublishedOnes) {
    for (const Feeder& feeder : {round6, atTheCluster}) {
        EXPECT_EQ(taken(20000, 10, feeder), 0);
        EXPECT_GT(taken(20000, 14, feeder), 0);
    }
}

// A full colony in warm weather, L a day: 2.3 (Ireland), 3.8 (United States), 4 (Bavaria), 6.7 (Canada): common
// practice.
TEST(Uptake, OfAFullColonyLiesWithinThePublishedRange) {
    EXPECT_GE(taken(20000, 20), 2.3);
    EXPECT_LE(taken(20000, 20), 6.7);
}

RC_GTEST_PROP(Uptake, MoreBeesAndWarmerDaysNeverTakeLess, ()) {
    const double bees = *rc::gen::inRange(0, 60000);
    const double maximum = *rc::gen::inRange(-100, 400) / 10.0;
    RC_ASSERT(taken(bees + 100, maximum) >= taken(bees, maximum));
    RC_ASSERT(taken(bees, maximum + 0.5) >= taken(bees, maximum));
    RC_ASSERT(taken(bees, maximum, atTheCluster) >= taken(bees, maximum));
    RC_ASSERT(taken(bees, maximum, contact) * 2 == taken(bees, maximum, atTheCluster));
}

TEST(Uptake, OfFewerThanNoBeesIsABrokenPromise) {
    EXPECT_THROW(taken(-1, 20), ContractViolation);
    EXPECT_THROW(taken(std::nan(""), 20), ContractViolation);
}

// ---- which ratio ----------------------------------------------------------------------------------------------------

TEST(RatioAdvice, ThinWhileFiveWarmWeeksRemain) {
    const auto warm = everyDay(11.5); // daily maximum 15.5
    const SeasonDay today{-120};
    const RatioAdvice five = adviseRatio(warm, today, today + 34, kelvins(4));
    EXPECT_EQ(five.warmDaysLeft, 35);
    EXPECT_TRUE(five.thin);
    EXPECT_EQ(five.ratio.printed, "3:2");
    EXPECT_DOUBLE_EQ(five.ratio.sugarPerWater, 1.5);
}

TEST(RatioAdvice, ThickWhenFewerRemain) {
    const RatioAdvice late = adviseRatio(everyDay(11.5), SeasonDay{-120}, SeasonDay{-87}, kelvins(4));
    EXPECT_EQ(late.warmDaysLeft, 34);
    EXPECT_FALSE(late.thin);
    EXPECT_EQ(late.ratio.printed, "2:1");
    EXPECT_DOUBLE_EQ(late.ratio.sugarPerWater, 2);
}

TEST(RatioAdvice, ADayAtFifteenDegreesIsNotAboveThem) {
    EXPECT_EQ(adviseRatio(everyDay(11), SeasonDay{-120}, SeasonDay{-60}, kelvins(4)).warmDaysLeft, 0);
    EXPECT_EQ(adviseRatio(everyDay(11), SeasonDay{-120}, SeasonDay{-60}, kelvins(5)).warmDaysLeft, 61);
}

TEST(RatioAdvice, ThickOnceTheLastDayIsPast) {
    const RatioAdvice past = adviseRatio(everyDay(20), SeasonDay{-60}, SeasonDay{-61}, kelvins(4));
    EXPECT_EQ(past.warmDaysLeft, 0);
    EXPECT_FALSE(past.thin);
}

TEST(RatioAdvice, ThinWhereSyrupIsTakenAllWinterLong) {
    const RatioAdvice always = adviseRatio(everyDay(16), SeasonDay{150}, std::nullopt, kelvins(4));
    EXPECT_EQ(always.warmDaysLeft, 365);
    EXPECT_TRUE(always.thin);
}

} // namespace
} // namespace winterlarder::feeding::uptake_test
