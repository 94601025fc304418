// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/bees.h"

#include "stores/sample_combs.h"
#include "support/shipped.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::bees_test {
namespace {

using namespace samples;

std::vector<Comb> boxOf(const hive::CombFormat& format, int count, bool inSuper = false) {
    std::vector<Comb> combs;
    for (int place = 0; place < count; ++place) {
        combs.push_back(comb(format, place, 0.5));
        combs.back().inSuper = inSuper;
    }
    return combs;
}

TEST(Bees, ACoveredCombIsTwoFaces) {
    EXPECT_NEAR(beesOnCombs(8.5, {}, deep()).count, 8.5 * 2 * 1100, 1e-9);
    EXPECT_NEAR(beesOnCombs(8.5, boxOf(deep(), 10), deep()).count, 8.5 * 2 * 1100, 1e-9);
}

TEST(Bees, ASeamIsOneFaceOfEachNeighbour) {
    EXPECT_EQ(beesFrom(BeesSeen::Seams, 6, {}, deep()), beesFrom(BeesSeen::CoveredCombs, 6, {}, deep()));
    EXPECT_EQ(beesFrom(BeesSeen::Counted, 12345, {}, deep()).count, 12345);
}

TEST(Bees, MixedBroodBoxesCountWithTheirMean) {
    auto combs = boxOf(deep(), 10);
    for (const Comb& above : boxOf(medium(), 10)) combs.push_back(above);
    EXPECT_NEAR(beesOnCombs(8, combs, deep()).count, 8 * (1100 + 754), 1e-9);
}

TEST(Bees, FillTheBroodBoxBeforeTheSuper) {
    auto combs = boxOf(deep(), 10);
    for (const Comb& above : boxOf(medium(), 10, true)) combs.push_back(above);
    EXPECT_NEAR(beesOnCombs(8, combs, deep()).count, 8 * 2 * 1100, 1e-9);
    EXPECT_NEAR(beesOnCombs(12, combs, deep()).count, 10 * 2 * 1100 + 2 * 2 * 754, 1e-9);
    EXPECT_NEAR(coveredCombsOf({10 * 2 * 1100 + 2 * 2 * 754}, combs, deep()), 12, 1e-9);
}

TEST(Bees, HalfBuiltCombsCarryHalf) {
    auto combs = boxOf(deep(), 1);
    combs.front().built = 0.5;
    EXPECT_NEAR(beesOnCombs(1, combs, deep()).count, 1100, 1e-9);
}

TEST(Bees, BareBarsTakeNoneOfThem) {
    auto combs = boxOf(deep(), 24);
    for (std::size_t bar = 12; bar < 24; ++bar) combs[bar].built = 0;
    EXPECT_NEAR(beesOnCombs(8, combs, deep()).count, 8 * 2 * 1100, 1e-9)
        << "eight combs are covered, whatever else is not built";
    for (std::size_t bar = 12; bar < 24; ++bar) combs[bar].built = 0.01;
    EXPECT_NEAR(beesOnCombs(8, combs, deep()).count, 8 * 2 * 1100, 0.011 * 8 * 2 * 1100);
    for (auto& comb : combs) comb.built = 0;
    EXPECT_NEAR(beesOnCombs(8, combs, deep()).count, 8 * 2 * 1100, 1e-9)
        << "nothing is built as listed; the bees were seen all the same";
}

TEST(Bees, SpreadDependsOnHowTheyWereCounted) {
    EXPECT_EQ(defaultLogSd(BeesSeen::Counted, shipped().constants), 0.05);
    EXPECT_EQ(defaultLogSd(BeesSeen::CoveredCombs, shipped().constants), 0.15);
    EXPECT_EQ(defaultLogSd(BeesSeen::Seams, shipped().constants), 0.21);
    const Spread<BeeCount> spread = spreadOf({10000}, 0.15);
    EXPECT_NEAR(spread.low.count, 10000 * std::exp(-1.2816 * 0.15), 1e-6);
    EXPECT_NEAR(spread.high.count, 10000 * std::exp(1.2816 * 0.15), 1e-6);
    EXPECT_EQ(spread.typical.count, 10000);
}

TEST(Brood, IsShareTimesAreaTimesCells) {
    auto combs = boxOf(deep(), 2);
    combs.front().brood = 0.3;
    combs.front().broodSaid = true;
    EXPECT_NEAR(broodOnCombs(combs)->count, 0.3 * 8.774 * 2 * 400, 1e-6);
}

TEST(Brood, SaidToBeNoneIsNone) {
    auto combs = boxOf(deep(), 2);
    combs.front().broodSaid = true;
    EXPECT_EQ(broodOnCombs(combs)->count, 0);
}

TEST(Brood, NotSaidIsNotZero) { EXPECT_FALSE(broodOnCombs(boxOf(deep(), 10))); }

TEST(Brood, UnseenCombsTakeTheMean) {
    auto combs = boxOf(deep(), 2);
    combs.front().brood = 0.3;
    combs.front().broodSaid = true;
    combs.push_back(unseen(deep(), 2));
    EXPECT_NEAR(broodOnCombs(combs)->count, (0.3 + 0.15) * 8.774 * 2 * 400, 1e-6);
}

namespace {

std::vector<Comb> emptyBox() {
    auto combs = boxOf(deep(), 10);
    for (auto& comb : combs) comb.capped = comb.open = comb.brood = comb.pollen = 0;
    return combs;
}

} // namespace

TEST(NestWidth, MoreThanThreeCombsToSpareIsTooWide) {
    EXPECT_FALSE(nestTooWide(emptyBox(), 7));
    EXPECT_TRUE(nestTooWide(emptyBox(), 6.9));
}

TEST(NestWidth, CombsOfHoneyAreNotToSpare) {
    auto combs = emptyBox();
    for (std::size_t i = 0; i < 7; ++i) combs[i].capped = 0.8;
    EXPECT_EQ(emptyCombs(combs), 3);
    EXPECT_FALSE(nestTooWide(combs, 4));
    combs[6].capped = 0.09;
    EXPECT_TRUE(nestTooWide(combs, 4));
    combs[6].facesSeen = 0;
    EXPECT_EQ(emptyCombs(combs), 3) << "not looked at is not empty";
}

TEST(NestWidth, AHalfBuiltCombIsEmptyByWhatLiesOnItsWholeFace) {
    auto combs = emptyBox();
    combs[0].built = 0.5;
    combs[0].capped = 0.18;
    EXPECT_EQ(emptyCombs(combs), 10) << "nine parts of a hundred of the face";
    combs[0].capped = 0.22;
    EXPECT_EQ(emptyCombs(combs), 9);
}

RC_GTEST_PROP(BeesProperty, CoveredCombsAndBeesAreInverse, ()) {
    const auto combs = anyCombs();
    const double covered = *rc::gen::inRange(0, 200) / 10.0;
    RC_ASSERT(std::abs(coveredCombsOf(beesOnCombs(covered, combs, deep()), combs, deep()) - covered) < 1e-9);
}

} // namespace
} // namespace winterlarder::stores::bees_test
