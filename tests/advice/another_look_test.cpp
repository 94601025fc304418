// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/looking/another_look.h"

#include "advice/colonies.h"

#include <algorithm>

namespace winterlarder::advice::another_look_test {

namespace {

ColonyQuestion roughlySeen() {
    auto q = colony({.asOf = "2026-10-01", .capped = 0.4});
    for (std::size_t i = 1; i < q.combs.size(); ++i) q.combs[i].facesSeen = 0;
    return q;
}

} // namespace

TEST(AnotherLook, AWideBandWantsAWeighing) {
    const auto look = adviceFor(roughlySeen()).anotherLook;
    EXPECT_TRUE(look.worthIt);
    EXPECT_EQ(look.which, LookKind::Weigh);
    EXPECT_LT(look.narrowsToKg, look.narrowsFromKg);
    EXPECT_EQ(look.about, LookAbout::Stores);
}

TEST(AnotherLook, IsWorthItFromTheShippedBandAndGainOnAndNotBelow) {
    auto q = roughlySeen();
    const auto wide = adviceFor(q);
    ASSERT_EQ(wide.anotherLook.which, LookKind::Weigh);
    const double gain = wide.anotherLook.narrowsFromKg - wide.anotherLook.narrowsToKg;
    const double band = std::min((wide.missing->high - wide.missing->low).value(), wide.anotherLook.narrowsFromKg);
    const auto worth = [&](double worthBand, double worthGain) {
        auto asked = q;
        asked.decisions.worthLookingBand = worthBand;
        asked.decisions.worthLookingGain = worthGain;
        const auto look = adviceFor(asked).anotherLook;
        return look.worthIt && look.about == LookAbout::Stores;
    };
    EXPECT_TRUE(worth(0.999 * band, 1));
    EXPECT_FALSE(worth(1.001 * band, 1));
    EXPECT_TRUE(worth(3, 0.999 * gain));
    EXPECT_FALSE(worth(3, 1.001 * gain)) << "what is gained by a count of combs is another matter: " << gain;
}

TEST(AnotherLook, ALiftIsNeverTheNextStep) {
    for (double capped = 0.1; capped < 1; capped += 0.1) {
        auto q = colony({.asOf = "2026-10-01", .capped = capped, .combs = 20, .covered = 9});
        const auto look = adviceFor(q).anotherLook;
        EXPECT_NE(look.which, LookKind::Heft) << capped;
        EXPECT_TRUE(!look.worthIt || look.narrowsFromKg - look.narrowsToKg >= 1)
            << "nobody looks again for half a kilogram: " << capped;
    }
}

TEST(AnotherLook, ANarrowBandWantsNone) {
    auto q = colony({.asOf = "2026-10-05", .covered = 6});
    q.combs.clear();
    q.tareSd = kilograms(0);
    q.weighings.push_back(onScale(q, kilograms(32)));
    const auto advice = adviceFor(q);
    EXPECT_FALSE(advice.anotherLook.worthIt) << (advice.missing->high - advice.missing->low).value();
}

TEST(AnotherLook, BeesCountedBySeamsAreKnownAsWellAsSeamsTellThem) {
    auto q = colony({.asOf = "2026-10-05", .covered = 6});
    q.combs.clear();
    q.tareSd = kilograms(0);
    q.weighings.push_back(onScale(q, kilograms(32)));
    q.beesLogSd = 0.8;
    const auto look = adviceFor(q).anotherLook;
    ASSERT_EQ(look.which, LookKind::CountSeams);
    EXPECT_NEAR(look.narrowsToKg / look.narrowsFromKg, constants().beesSeamsSd / 0.8, 1e-9);
    q.beesLogSd = constants().beesSeamsSd;
    EXPECT_NE(adviceFor(q).anotherLook.which, LookKind::CountSeams) << "counted so already";
}

TEST(AnotherLook, AfterAWeighingCombsAreCounted) {
    auto q = colony({.asOf = "2026-09-20", .covered = 8});
    q.combs.clear();
    q.tareSd = kilograms(3);
    q.weighings.push_back(onScale(q, kilograms(32)));
    q.weighings.front().kind = stores::WeighingKind::OneSidedLift;
    EXPECT_EQ(adviceFor(q).anotherLook.which, LookKind::Weigh);
    q.weighings.front().kind = stores::WeighingKind::Scale;
    const auto look = adviceFor(q).anotherLook;
    EXPECT_EQ(look.which, LookKind::CountCombs);
}

TEST(AnotherLook, NoneWhereNothingHangsOnIt) {
    auto full = colony({.asOf = "2026-12-20", .capped = 0.95, .combs = 20, .covered = 9});
    EXPECT_FALSE(adviceFor(full).anotherLook.worthIt) << "plenty, and nothing is taken in winter";
    auto sick = roughlySeen();
    sick.trouble = true;
    EXPECT_FALSE(adviceFor(sick).anotherLook.worthIt);
}

TEST(AnotherLook, WhatWasSetAsideIsSettledFirst) {
    auto q = colony({.capped = 0.6});
    q.setAside.push_back({"doubt-brood", {}});
    EXPECT_EQ(adviceFor(q).anotherLook.which, LookKind::Open);
    q.setAside.front().id = "doubt-heavy";
    EXPECT_EQ(adviceFor(q).anotherLook.which, LookKind::Weigh);
}

} // namespace winterlarder::advice::another_look_test
