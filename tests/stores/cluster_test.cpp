// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/cluster.h"

#include "stores/sample_combs.h"
#include "support/require.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::cluster_test {
namespace {

using namespace samples;

constexpr double fullDeep = sealedPerArea * 8.774;

std::vector<Comb> combsOf(const hive::CombFormat& format, const std::vector<double>& capped, int box = 0) {
    std::vector<Comb> combs;
    for (const double share : capped) {
        combs.push_back(comb(format, static_cast<int>(combs.size()), share));
        combs.back().box = box;
    }
    return combs;
}

TEST(Cluster, SitsWhereTheBroodIs) {
    auto combs = combsOf(deep(), std::vector<double>(10, 0.5));
    combs[6].brood = combs[7].brood = combs[8].brood = 0.3;
    const Cluster cluster = findCluster(combs, {deep()}, 4);
    EXPECT_TRUE(cluster.seen);
    EXPECT_NEAR(cluster.middle, 7 - 4.5, 1e-12);
    EXPECT_EQ(cluster.width, 4);
}

TEST(Cluster, WithoutBroodInTheMiddleOfTheBox) {
    const Cluster cluster = findCluster(combsOf(deep(), std::vector<double>(10, 0.5)), {deep()}, 8);
    EXPECT_FALSE(cluster.seen);
    EXPECT_EQ(cluster.middle, 0);
}

TEST(Cluster, WithoutBroodFromTheEntranceEndOfALongHive) {
    const Cluster cluster = findCluster(combsOf(longHive(), std::vector<double>(12, 0.5)), {longHive()}, 8);
    EXPECT_NEAR(cluster.middle, 3.5 - 11.5, 1e-12); // covers places 0..7 of 24
}

TEST(Cluster, SpreadsOverItsBoxes) {
    auto combs = combsOf(deep(), std::vector<double>(10, 0.5));
    for (const Comb& above : combsOf(deep(), std::vector<double>(10, 0.8), 1)) combs.push_back(above);
    EXPECT_EQ(findCluster(combs, {deep(), deep()}, 8).width, 4);
    combs[4].brood = 0.2;
    EXPECT_EQ(findCluster(combs, {deep(), deep()}, 8).width, 8) << "brood in one box only";
    for (auto i = 10U; i < 20; ++i) combs[i].inSuper = true;
    combs[4].brood = 0;
    EXPECT_EQ(findCluster(combs, {deep(), deep()}, 8).width, 8) << "a super is not its home";
}

TEST(Cluster, StaysInsideTheWalls) {
    auto combs = combsOf(deep(), std::vector<double>(10, 0.5));
    combs[9].brood = 0.3;
    EXPECT_NEAR(findCluster(combs, {deep()}, 4).middle, 3, 1e-12); // 4 combs wide, 5 to the wall
}

TEST(Cluster, CombsOutsideTheBoxesAreRefused) {
    EXPECT_THROW(fromMiddle(comb(deep(), 10, 0.5), {deep()}), ContractViolation);
    Comb above = comb(deep(), 0, 0.5);
    above.box = 1;
    EXPECT_THROW(fromMiddle(above, {deep()}), ContractViolation);
}

TEST(Reach, IsTheClustersCombsAndTwoBeyondOnTheRicherSide) {
    // Cluster on places 3..6; left of it 0.5 0.5 0.5, right 1 1 1.
    const auto combs = combsOf(deep(), {0.5, 0.5, 0.5, 0.2, 0.2, 0.2, 0.2, 1, 1, 1});
    const auto reach = clusterReach(combs, {deep()}, 4, 0.65);
    EXPECT_NEAR(reach->within.value(), fullDeep * (0.8 + 2), 1e-4);
    EXPECT_NEAR(reach->beyond.value(), fullDeep * (1.5 + 1), 1e-4);
    EXPECT_FALSE(reach->gap);
    EXPECT_FALSE(reach->bothSides) << "only asked of long hives";
}

TEST(Reach, GoesUpButNotDown) {
    auto combs = combsOf(deep(), std::vector<double>(10, 1.0));
    for (const Comb& above : combsOf(deep(), std::vector<double>(10, 0.0), 1)) combs.push_back(above);
    combs[14].brood = combs[15].brood = 0.5;
    EXPECT_EQ(clusterReach(combs, {deep(), deep()}, 4, 0.65)->within, kilograms(0)) << "stores below";
    combs[14].brood = combs[15].brood = 0;
    combs[4].capped = combs[5].capped = 0;
    combs[4].brood = combs[5].brood = 0.5;
    for (auto i = 10U; i < 20; ++i) combs[i].capped = 1;
    // Places 3..6 of both boxes and two more on one side: 2 + 2 combs below, 4 + 2 above.
    EXPECT_NEAR(clusterReach(combs, {deep(), deep()}, 4, 0.65)->within.value(), fullDeep * 10, 1e-4);
}

TEST(Reach, SeesGapsInLongHives) {
    auto combs = combsOf(longHive(), {0.3, 0.3, 0.3, 0.3, 0.8, 0.8, 0.8});
    EXPECT_FALSE(clusterReach(combs, {longHive()}, 4, 0.65)->gap);
    combs[4].capped = 0.05;
    EXPECT_TRUE(clusterReach(combs, {longHive()}, 4, 0.65)->gap) << "an empty comb";
    combs[4].pollen = 0.5;
    EXPECT_FALSE(clusterReach(combs, {longHive()}, 4, 0.65)->gap) << "a comb of bee bread is no gap";
    combs.erase(combs.begin() + 4);
    EXPECT_TRUE(clusterReach(combs, {longHive()}, 4, 0.65)->gap) << "no comb in place 4";
}

TEST(Reach, EmptyCombsBehindTheStoresAreNoGap) {
    const auto combs = combsOf(longHive(), {0.3, 0.3, 0.3, 0.3, 0.8, 0.8, 0, 0, 0});
    EXPECT_FALSE(clusterReach(combs, {longHive()}, 4, 0.65)->gap);
}

TEST(Reach, SeesStoresOnBothSidesOfLongHives) {
    auto combs = combsOf(longHive(), std::vector<double>(12, 0.8));
    EXPECT_FALSE(clusterReach(combs, {longHive()}, 4, 0.65)->bothSides) << "cluster at the entrance end";
    combs[5].brood = combs[6].brood = 0.2;
    EXPECT_TRUE(clusterReach(combs, {longHive()}, 4, 0.65)->bothSides);
}

TEST(Reach, NothingSeenIsNothingKnown) { EXPECT_FALSE(clusterReach({unseen(deep(), 0)}, {deep()}, 4, 0.65)); }

RC_GTEST_PROP(ReachProperty, WithinAndBeyondAreAll, ()) {
    const auto combs = anyCombs();
    const double covered = *rc::gen::inRange(1, 120) / 10.0;
    Mass all{0};
    const auto stores = storesOfCombs(combs, 0.65);
    for (const CombStores& each : *stores) all += each.total();
    const auto reach = clusterReach(combs, {deep()}, covered, 0.65);
    RC_ASSERT(std::abs((reach->within + reach->beyond - all).value()) < 1e-9);
    RC_ASSERT(reach->within >= kilograms(0));
    RC_ASSERT(reach->beyond >= kilograms(-1e-9));
}

} // namespace
} // namespace winterlarder::stores::cluster_test
