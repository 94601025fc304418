// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_edits.h"

#include "app/invented.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::desk {

TEST(CombEdits, EmptyCellsGiveWayFirst) {
    const auto comb = withShare(invented::comb(0.5, 0.1, 0, 0.1), Zone::Capped, 0.8);
    EXPECT_DOUBLE_EQ(shareOf(comb, Zone::Capped), 0.8);
    EXPECT_DOUBLE_EQ(shareOf(comb, Zone::Open), 0.1);
    EXPECT_DOUBLE_EQ(emptyShare(comb), 0);
}

TEST(CombEdits, BeyondEmptyCellsOpenNectarGivesWayBeforeBeeBreadAndBrood) {
    const auto comb = withShare(invented::comb(0.5, 0.1, 0.2, 0.1), Zone::Capped, 0.75);
    EXPECT_NEAR(shareOf(comb, Zone::Open), 0, 1e-9);
    EXPECT_NEAR(shareOf(comb, Zone::BeeBread), 0.05, 1e-9);
    EXPECT_NEAR(shareOf(comb, Zone::Brood), 0.2, 1e-9);
}

TEST(CombEdits, WhatWasNotSaidStaysUnsaid) {
    book::CombRecord comb;
    comb.capped = 0.4;
    EXPECT_FALSE(withShare(comb, Zone::Open, 0.3).brood.has_value());
}

RC_GTEST_PROP(CombEdits, SharesNeverSumToMoreThanOneAndTheTouchedOneIsKept, ()) {
    const auto tenth = [] { return *rc::gen::inRange(0, 11) / 10.0; };
    book::CombRecord comb;
    for (int i = 0; i < 8; ++i) {
        const auto zone = allZones[*rc::gen::inRange(0, 4)];
        const double share = tenth();
        comb = withShare(comb, zone, share);
        double sum = 0;
        for (const auto each : allZones) {
            RC_ASSERT(shareOf(comb, each) >= 0);
            sum += shareOf(comb, each);
        }
        RC_ASSERT(sum <= 1 + 1e-9);
        RC_ASSERT(std::abs(shareOf(comb, zone) - share) < 1e-9);
    }
}

} // namespace winterlarder::desk
