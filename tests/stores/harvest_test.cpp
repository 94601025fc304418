// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/harvest.h"

#include "stores/cluster.h"
#include "stores/sample_combs.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::harvest_test {
namespace {

using namespace samples;
using testing::ElementsAre;
using testing::IsEmpty;

Comb broodless(const hive::CombFormat& format, int place, double capped, double open = 0) {
    Comb made = comb(format, place, capped, open);
    made.broodSaid = true;
    return made;
}

std::vector<int> positions(const std::vector<HarvestComb>& combs) {
    std::vector<int> found;
    for (const HarvestComb& each : combs) found.push_back(each.position);
    return found;
}

std::vector<HarvestComb> orderOf(const Comb& one) { return harvestOrder({one}, {deep()}, 6, 0.65); }

TEST(Harvest, TakesSealedCombWithoutBrood) {
    const auto order = orderOf(broodless(deep(), 0, 0.9));
    ASSERT_EQ(order.size(), 1U);
    EXPECT_NEAR(order.front().honey.value(), 0.9 * sealedPerArea * 8.774, 1e-4);
    EXPECT_FALSE(order.front().checkComb);
    EXPECT_FALSE(order.front().lowCapped);
}

TEST(Harvest, WantsTwoThirdsSealedAndWarnsBelowEightyPercent) {
    EXPECT_EQ(orderOf(broodless(deep(), 0, 0.5, 0.25)).size(), 1U) << "exactly two thirds";
    EXPECT_TRUE(orderOf(broodless(deep(), 0, 0.5, 0.25)).front().lowCapped);
    EXPECT_THAT(orderOf(broodless(deep(), 0, 0.5, 0.26)), IsEmpty());
    EXPECT_FALSE(orderOf(broodless(deep(), 0, 0.8, 0.2)).front().lowCapped) << "exactly 80 %";
    EXPECT_TRUE(orderOf(broodless(deep(), 0, 0.79, 0.21)).front().lowCapped);
}

TEST(Harvest, LeavesBroodFedAndOldNestCombs) {
    Comb brood = broodless(deep(), 0, 0.5), fed = broodless(deep(), 0, 0.9), old = fed, blind = fed, bare = fed;
    brood.brood = 0.1;
    fed.fed = true;
    old.oldNest = true;
    blind.facesSeen = 0;
    bare.built = 0;
    for (const Comb& each : {brood, fed, old, blind, bare, broodless(deep(), 0, 0)})
        EXPECT_THAT(orderOf(each), IsEmpty());
    brood.inSuper = true;
    EXPECT_THAT(orderOf(brood), IsEmpty()) << "brood in a super is brood";
}

TEST(Harvest, BroodNotSpokenOfMustBeLookedForOutsideSupers) {
    Comb silent = comb(deep(), 0, 0.9);
    EXPECT_TRUE(orderOf(silent).front().checkComb);
    silent.inSuper = true;
    EXPECT_FALSE(orderOf(silent).front().checkComb);
}

TEST(Harvest, FarthestFromTheBroodFirst) {
    std::vector<Comb> combs;
    for (int place = 0; place < 10; ++place) combs.push_back(broodless(deep(), place, 0.8));
    combs[2].brood = combs[3].brood = 0.1; // middle 2.5
    EXPECT_THAT(positions(harvestOrder(combs, {deep()}, 6, 0.65)), ElementsAre(9, 8, 7, 6, 5, 0, 4, 1));
}

TEST(Harvest, LongHivesFromTheFarEnd) {
    std::vector<Comb> combs;
    for (int place = 0; place < 5; ++place) combs.push_back(broodless(longHive(), place, 0.8));
    EXPECT_THAT(positions(harvestOrder(combs, {longHive()}, 1, 0.65)), ElementsAre(4, 3, 2, 1, 0));
}

TEST(Harvest, SupersFirstAndUpperBoxesBeforeLower) {
    std::vector<Comb> combs;
    for (int box = 0; box < 3; ++box) {
        for (const int place : {0, 4}) {
            combs.push_back(broodless(deep(), place, 0.8));
            combs.back().box = box;
            combs.back().inSuper = box == 2;
        }
    }
    EXPECT_THAT(positions(harvestOrder(combs, {deep(), deep(), deep()}, 6, 0.65)), ElementsAre(4, 5, 2, 0, 3, 1));
}

TEST(Harvest, TakesAsManyAsFit) {
    const std::vector<HarvestComb> order{
        {3, kilograms(2.5)}, {1, kilograms(2.4)}, {0, kilograms(1.0)}, {2, kilograms(0.4)}};
    EXPECT_THAT(positions(takeUpTo(order, kilograms(4))), ElementsAre(3, 0, 2)) << "the second does not fit any more";
    EXPECT_THAT(positions(takeUpTo(order, kilograms(2.5))), ElementsAre(3));
    EXPECT_THAT(takeUpTo(order, kilograms(0.3)), IsEmpty());
}

RC_GTEST_PROP(HarvestProperty, OrderHoldsOnlyCombsThatMayBeTaken, ()) {
    const auto combs = anyCombs();
    const auto order = harvestOrder(combs, {deep()}, 6, 0.65);
    for (const HarvestComb& each : order) {
        const Comb& comb = combs[static_cast<std::size_t>(each.position)];
        RC_ASSERT(comb.lookedAt() && comb.brood == 0);
        RC_ASSERT(comb.capped * 3 >= (comb.capped + comb.open) * 2 - 1e-6);
        RC_ASSERT(each.honey > kilograms(0));
    }
    RC_ASSERT(std::is_partitioned(order.begin(), order.end(), [](const HarvestComb& each) { return each.inSuper; }));
}

RC_GTEST_PROP(HarvestProperty, NeverTakesMoreThanAllowed, ()) {
    const Mass limit = kilograms(*rc::gen::inRange(0, 200) / 10.0);
    Mass sum{0};
    for (const HarvestComb& each : takeUpTo(harvestOrder(anyCombs(), {deep()}, 6, 0.65), limit)) sum += each.honey;
    RC_ASSERT(sum <= limit + kilograms(1e-6));
}

} // namespace
} // namespace winterlarder::stores::harvest_test
