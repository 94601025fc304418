// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/another_look.h"

#include "advice/colonies.h"
#include "advice/verdict.h"

namespace winterlarder::advice::another_look_test {

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

namespace {

// A colony known by weighings of a hive whose empty weight is known: no look tells much more.
Advice weighedAt(double grossKg) {
    auto q = colony({.asOf = "2026-10-05", .covered = 9});
    q.combs.clear();
    for (int times = 0; times < 3; ++times) q.weighings.push_back({WeighedHive::Kind::Scale, q.asOf, q.winter.date(q.asOf), kilograms(grossKg)});
    return adviceFor(q);
}

} // namespace

// Where the verdict turns within what is not known of the stores, the look that tells most is named, however little that is.
TEST(AnotherLook, LittleToBeGainedIsBetterThanNothing) {
    int edges = 0;
    auto before = weighedAt(25);
    for (double gross = 25.5; gross < 60; gross += 0.5) {
        auto here = weighedAt(gross);
        if (here.verdict != before.verdict) {
            ++edges;
            for (const auto* each : {&before, &here}) {
                const auto& look = each->anotherLook;
                EXPECT_TRUE(look.worthIt && look.which) << gross;
                EXPECT_EQ(look.about, "stores") << gross;
                EXPECT_LT(look.narrowsToKg, look.narrowsFromKg) << gross;
                EXPECT_GT(look.narrowsToKg, 0.85 * look.narrowsFromKg) << gross << ": here no look tells much";
            }
        }
        before = std::move(here);
    }
    EXPECT_GE(edges, 2) << "from feeding to leaving to harvest";
}

namespace {

// Whether the coming flow is what an answer turns on at some level of stores that is known to the gram.
bool turnsOnTheFlow(const SeasonDay asOf) {
    auto q = colony({.station = "us-ga-atlanta", .asOf = "2026-10-05", .covered = 9});
    q.asOf = q.lookedOn = asOf;
    q.beesLogSd = 0;
    q.flowStrength = 0.3;
    const auto ensemble = winter::simulate(winterQuestion(q), constants(), quick, 2);
    Reckoning r{q, constants(), *ensemble, autumnFlow(q, {}), {}, {}, {}, {}, {}, {}, {}, {}, {}, true};
    r.withFlow = winter::lossesFrom(*ensemble, asOf, r.flow);
    r.withoutFlow = winter::lossesFrom(*ensemble, asOf, {});
    for (double kg = 5; kg < 35; kg += 0.1) {
        r.estimate.mean = kilograms(kg);
        r.wish = {kilograms(kg), kilograms(0), q.shortRisk, q.reserve};
        const Amounts amounts{spareOf(r.withoutFlow.largest, r.wish), missingOf(r.withFlow.largest, r.wish)};
        if (anotherLook(r, verdictFor(r, amounts, q.bees->count)).about == "flow") return true;
    }
    return false;
}

} // namespace

TEST(AnotherLook, AFlowThatIsOverSettlesNothing) {
    const SeasonDay last = colony({.station = "us-ga-atlanta"}).season.lastIncome->day;
    EXPECT_TRUE(turnsOnTheFlow(last - 20));
    for (const int past : {0, 1, 3, 5}) EXPECT_FALSE(turnsOnTheFlow(last + past)) << past << " days after the last income";
}

} // namespace winterlarder::advice::another_look_test
