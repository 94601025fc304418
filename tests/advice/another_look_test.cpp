// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/colonies.h"

namespace winterlarder::advice {

TEST(AnotherLook, AColonyWithPlentyCanBeLeftAlone) {
    const auto advice = adviceFor(colony({.capped = 0.95, .combs = 30, .covered = 9}));
    ASSERT_EQ(advice.verdict, Verdict::Harvest);
    EXPECT_FALSE(advice.anotherLook.worthIt);
    EXPECT_FALSE(advice.anotherLook.which);
}

TEST(AnotherLook, OnTheEdgeOneObservationIsNamedAndNarrows) {
    int worth = 0;
    for (double capped = 0.4; capped < 0.95; capped += 0.05) {
        const auto look = adviceFor(colony({.asOf = "2026-10-05", .capped = capped, .combs = 11, .covered = 9})).anotherLook;
        if (!look.worthIt) continue;
        ++worth;
        EXPECT_TRUE(look.which);
        EXPECT_FALSE(look.about.empty());
        EXPECT_LT(look.narrowsToKg, look.narrowsFromKg);
    }
    EXPECT_GT(worth, 0);
}

TEST(AnotherLook, WeighedStoresNeedNoSecondWeighing) {
    auto q = colony({.asOf = "2026-10-05", .capped = 0.75, .combs = 10, .covered = 9});
    const double before = adviceFor(q).estimate->sd.value();
    q.weighings.push_back({WeighedHive::Kind::Scale, q.asOf, q.winter.date(q.asOf), kilograms(20 + 20 + 1.5 + 0.7)});
    const auto after = adviceFor(q);
    EXPECT_FALSE(after.estimate->contradictory);
    EXPECT_LT(after.estimate->sd.value(), before);
}

} // namespace winterlarder::advice
