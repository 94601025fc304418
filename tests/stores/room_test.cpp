// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/room.h"

#include "stores/sample_combs.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::room_test {
namespace {

using namespace samples;

constexpr double fullDeep = sealedPerArea * 8.774; // kg

TEST(FreeRoom, EmptyCellsAndUnripeStoresLeaveRoom) {
    const std::vector<Comb> combs{comb(deep(), 0, 0.5, 0.2)}; // 0.3 empty
    EXPECT_NEAR(freeRoom({combs, 0, 0.65, 30})->value(), fullDeep * (0.3 + 0.35 * 0.2), 1e-5);
    EXPECT_NEAR(freeRoom({combs, 0, 0.25, 30})->value(), fullDeep * (0.3 + 0.75 * 0.2), 1e-5);
}

TEST(FreeRoom, BroodHatchesBeforeTheDeadlineOrDoesNot) {
    std::vector<Comb> combs{comb(deep(), 0, 0.5)};
    combs.front().brood = 0.5;
    EXPECT_NEAR(freeRoom({combs, 0, 0.65, 7})->value(), fullDeep * 0.5 / 3, 1e-5);
    EXPECT_NEAR(freeRoom({combs, 0, 0.65, 42})->value(), fullDeep * 0.5, 1e-5);
    EXPECT_NEAR(freeRoom({combs, 0, 0.65, std::nullopt})->value(), fullDeep * 0.5, 1e-5) << "syrup all winter";
    EXPECT_EQ(freeRoom({combs, 0, 0.65, -5}), kilograms(0)) << "deadline passed";
}

TEST(FreeRoom, TheClusterKeepsAFifthOfItsCombs) {
    const std::vector<Comb> combs{comb(deep(), 0, 0), comb(deep(), 1, 0)};
    EXPECT_NEAR(freeRoom({combs, 2, 0.65, 30})->value(), fullDeep * (2 - 0.4), 1e-5);
}

TEST(FreeRoom, PollenKeepsItsPlace) {
    std::vector<Comb> combs{comb(deep(), 0, 0)};
    combs.front().pollen = 0.4;
    EXPECT_NEAR(freeRoom({combs, 0, 0.65, 30})->value(), fullDeep * 0.6, 1e-5);
}

TEST(FreeRoom, UnseenCombsTakeMeanShares) {
    const std::vector<Comb> combs{comb(deep(), 0, 0.5), unseen(deep(), 1)};
    EXPECT_NEAR(freeRoom({combs, 0, 0.65, 30})->value(), fullDeep, 1e-5);
    const std::vector<Comb> noneSeen{unseen(deep(), 0)};
    EXPECT_FALSE(freeRoom({noneSeen, 0, 0.65, 30}));
}

RC_GTEST_PROP(FreeRoomProperty, IsNeverNegative, ()) {
    const auto combs = anyCombs();
    const double covered = *rc::gen::inRange(0, 200) / 10.0;
    const std::optional<int> days = *rc::gen::inRange(-30, 120);
    RC_ASSERT(*freeRoom({combs, covered, 0.65, days}) >= kilograms(0));
}

RC_GTEST_PROP(FreeRoomProperty, FilledCellsNeverAddRoom, ()) {
    auto combs = anyCombs();
    const Mass before = *freeRoom({combs, 0, 0.65, 30});
    combs.front().capped += std::max(0.0, combs.front().empty());
    RC_ASSERT(*freeRoom({combs, 0, 0.65, 30}) <= before + kilograms(1e-9));
}

RC_GTEST_PROP(FreeRoomProperty, RoomAndStoresFillTheCombs, ()) {
    auto combs = anyCombs();
    Mass capacity{0}, pollen{0}, stores{0};
    const auto filled = withUnseenFilled(combs);
    for (const Comb& comb : *filled) {
        capacity += capacityOf(comb);
        pollen += capacityOf(comb) * comb.pollen;
    }
    const auto held = storesOfCombs(combs, 0.65);
    for (const CombStores& comb : *held) stores += comb.total();
    const Mass room = *freeRoom({combs, 0, 0.65, std::nullopt});
    RC_ASSERT(std::abs((room + stores + pollen - capacity).value()) < 1e-9);
}

} // namespace
} // namespace winterlarder::stores::room_test
