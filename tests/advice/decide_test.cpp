// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/decided.h"

#include "advice/colonies.h"

#include <gmock/gmock.h>

namespace winterlarder::advice::decide_test {

namespace {

bool offers(const Advice& advice, OptionKind kind) { return option(advice, kind) != nullptr; }

} // namespace

// Disease ---------------------------------------------------------------------------------------------------------------

TEST(Decide, DiseaseStopsEverythingElse) {
    auto q = colony({.capped = 0.95, .combs = 20});
    q.trouble = true;
    const auto sick = adviceFor(q);
    EXPECT_EQ(sick.decidedBy, DecidedBy::Disease);
    EXPECT_EQ(sick.verdict, Verdict::Leave);
    EXPECT_FALSE(sick.harvest);
    EXPECT_EQ(sick.options.size(), 1u);
    EXPECT_FALSE(sick.anotherLook.worthIt) << "the hive stays closed";
    EXPECT_FALSE(sick.ask);
    q.trouble = false;
    EXPECT_NE(adviceFor(q).decidedBy, DecidedBy::Disease);
}

TEST(Decide, ASickColonyIsFedThreeWeeksAtMost) {
    auto q = colony({.capped = 0.03});
    q.trouble = true;
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.feed);
    EXPECT_LE(advice.feed->syrup.sugar.value(), 3);
    EXPECT_FALSE(offers(advice, OptionKind::Unite));
}

// Queen -----------------------------------------------------------------------------------------------------------------

TEST(Decide, NoQueenBeforeTheLastDayForSyrupMeansUnite) {
    auto q = colony({.capped = 0.6});
    q.queenSeen = q.eggsSeen = false;
    q.brood = BeeCount{0};
    const auto advice = adviceFor(q);
    EXPECT_EQ(advice.verdict, Verdict::Unite);
    EXPECT_EQ(advice.decidedBy, DecidedBy::NoQueen);
    EXPECT_FALSE(advice.feed) << "there is food for three weeks";
    EXPECT_TRUE(offers(advice, OptionKind::Unite));
    EXPECT_FALSE(offers(advice, OptionKind::TakeNow));
    q.eggsSeen = true;
    EXPECT_NE(adviceFor(q).decidedBy, DecidedBy::NoQueen) << "somebody lays";
    q.eggsSeen.reset();
    EXPECT_NE(adviceFor(q).decidedBy, DecidedBy::NoQueen) << "not said is not no";
}

TEST(Decide, NoEggsInWinterAreNormal) {
    auto q = colony({.asOf = "2026-12-01", .capped = 0.6});
    q.queenSeen = q.eggsSeen = false;
    const auto advice = adviceFor(q);
    EXPECT_NE(advice.verdict, Verdict::Unite);
    EXPECT_TRUE(says(advice.reasons, "no-eggs-normal"));
}

// Too few bees ----------------------------------------------------------------------------------------------------------

TEST(Decide, AWeakColonyIsUnitedWhileItIsWarmEnough) {
    const auto weak = [](const char* asOf) {
        auto q = colony({.asOf = asOf, .capped = 0.2, .covered = 2.5});
        q.queenSeen = true;
        return q;
    };
    const auto advice = adviceFor(weak("2026-09-14"));
    EXPECT_EQ(advice.verdict, Verdict::Unite);
    EXPECT_EQ(advice.decidedBy, DecidedBy::Weak);
    ASSERT_TRUE(advice.unite);
    EXPECT_GT(advice.unite->by, *Date::parse("2026-09-14"));
    if (advice.feed) EXPECT_LE(advice.feed->syrup.sugar.value(), 3) << "three weeks of food, no winter plan";
    const auto late = adviceFor(weak("2026-11-20"));
    EXPECT_NE(late.verdict, Verdict::Unite);
    EXPECT_TRUE(says(late.cautions, "weak-too-late") || says(late.goodPractice, "weak-too-late"));
}

TEST(Decide, AWeakColonyIsUnitedUntilTheLastDayThatIsWarmEnough) {
    auto q = colony({.asOf = "2026-09-14", .capped = 0.2, .covered = 2.5});
    q.queenSeen = true;
    const double coldest = q.decisions.uniteColdest = 12; // reached before late autumn ends there
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.unite);
    ASSERT_TRUE(q.site);
    const auto warmth = [&](int days) {
        return q.site->curve.normal(q.winter.seasonDay(advice.unite->by) + days).value();
    };
    EXPECT_GE(warmth(0), coldest);
    EXPECT_LT(warmth(1), coldest);
    q.asOf = q.winter.seasonDay(advice.unite->by);
    EXPECT_EQ(adviceFor(q).verdict, Verdict::Unite) << "on that day still";
    q.asOf = q.asOf + 1;
    EXPECT_NE(adviceFor(q).verdict, Verdict::Unite) << "on the next no longer";
}

TEST(Decide, FewerBeesThanHaveEverBeenMeasuredAreSaidToBeLessSure) {
    auto q = colony({.capped = 0.5, .covered = 8});
    q.queenSeen = true;
    EXPECT_FALSE(says(adviceFor(q).reasons, "small-colony"));
    q.decisions.fewestMeasuredBees = 60000;
    EXPECT_TRUE(says(adviceFor(q).reasons, "small-colony"));
}

// Too few in winter, enough today: until mid September the bees of winter may still come, from that day on they do not.
TEST(Decide, EnoughBeesAreNotCalledWeakBeforeMidSeptember) {
    auto q = colony({.capped = 0.5, .covered = 8});
    q.queenSeen = true;
    q.decisions.strongEnoughBees = 5000;
    q.decisions.weakBees = 60000;
    q.decisions.strongUntilDay = q.asOf.w + 1;
    EXPECT_NE(adviceFor(q).decidedBy, DecidedBy::Weak) << "the day before";
    q.decisions.strongUntilDay = q.asOf.w;
    EXPECT_EQ(adviceFor(q).decidedBy, DecidedBy::Weak) << "on the day";
    q.decisions.strongUntilDay = q.asOf.w + 1;
    q.decisions.strongEnoughBees = 60000;
    EXPECT_EQ(adviceFor(q).decidedBy, DecidedBy::Weak) << "and only where there are enough today";
}

TEST(Decide, ANucleusAndABigColonyAreNotWeak) {
    auto q = colony({.capped = 0.2, .covered = 2.5});
    q.queenSeen = true;
    q.nucleus = true;
    EXPECT_NE(adviceFor(q).verdict, Verdict::Unite);
    auto strong = colony({.capped = 0.2, .covered = 8});
    strong.queenSeen = true;
    EXPECT_NE(adviceFor(strong).verdict, Verdict::Unite);
}

TEST(Decide, InDearthClimatesNobodyIsUnited) {
    auto q = colony({.station = "pt-lisbon", .asOf = "2026-10-05", .capped = 0.2, .covered = 3});
    q.queenSeen = true;
    const auto advice = adviceFor(q);
    EXPECT_NE(advice.verdict, Verdict::Unite);
    EXPECT_TRUE(says(advice.reasons, "dearth-climate"));
}

// Evidence --------------------------------------------------------------------------------------------------------------

TEST(Decide, ContradictingEvidenceGivesNoAmount) {
    auto q = colony({.capped = 0.9, .combs = 20, .covered = 9});
    q.weighings.push_back(onScale(q, kilograms(32)));
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.estimate->contradictory);
    EXPECT_EQ(advice.decidedBy, DecidedBy::Contradiction);
    EXPECT_EQ(advice.verdict, Verdict::Leave);
    EXPECT_FALSE(advice.harvest);
    EXPECT_FALSE(advice.feed) << "the combs say that there is plenty";
    EXPECT_EQ(advice.anotherLook.which, LookKind::Weigh);
    EXPECT_TRUE(says(advice.reasons, "contradiction"));
}

TEST(Decide, WhereAllEvidenceSaysShortAFirstVisitDoesNoHarm) {
    auto q = colony({.capped = 0.35});
    q.weighings.push_back(onScale(q, kilograms(23)));
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.estimate->contradictory);
    EXPECT_EQ(advice.verdict, Verdict::Leave);
    ASSERT_TRUE(advice.feed);
    EXPECT_NEAR(advice.feed->syrup.sugar.value(), 4, 1e-9);
}

TEST(Decide, AHeftAloneDecidesNoAmount) {
    for (const char* day : {"2026-09-20", "2026-12-01"}) {
        const auto heavy = adviceFor(hefted(day, stores::HeftWord::Heavy)),
                   fair = adviceFor(hefted(day, stores::HeftWord::Fair));
        EXPECT_EQ(heavy.verdict, Verdict::Leave);
        EXPECT_EQ(fair.verdict, Verdict::Leave);
        EXPECT_FALSE(heavy.harvest || heavy.feed || fair.feed);
        EXPECT_EQ(fair.anotherLook.which, LookKind::Weigh);
        EXPECT_GT(heavy.estimate->mean, fair.estimate->mean);
    }
    const auto light = adviceFor(hefted("2026-09-20", stores::HeftWord::Light));
    ASSERT_TRUE(light.feed);
    EXPECT_EQ(light.verdict, Verdict::Feed);
    EXPECT_NEAR(light.feed->syrup.sugar.value(), 5, 1e-9);
    const auto winter = adviceFor(hefted("2027-02-10", stores::HeftWord::Light));
    ASSERT_TRUE(winter.feed);
    EXPECT_EQ(winter.feed->visits.size(), 1u);
    EXPECT_LE(winter.feed->fondant.value(), 2.5);
}

TEST(Decide, AHeftStandsForLessInMarchThanInSeptember) {
    EXPECT_LT(adviceFor(hefted("2027-03-20", stores::HeftWord::Heavy)).estimate->mean,
              adviceFor(hefted("2026-09-20", stores::HeftWord::Heavy)).estimate->mean);
}

// The time of year ------------------------------------------------------------------------------------------------------

TEST(Decide, InSummerNothingIsOrderedForWinter) {
    const auto advice = adviceFor(colony({.asOf = "2026-08-03", .capped = 0.5, .brood = 0.3}));
    EXPECT_EQ(advice.phase, Phase::Summer);
    EXPECT_EQ(advice.verdict, Verdict::Leave);
    EXPECT_FALSE(advice.feed);
    EXPECT_TRUE(advice.expectedLater);
    EXPECT_GT(advice.missing->typical, kilograms(3)) << "though much will be missing";
    ASSERT_TRUE(advice.nextLook);
    EXPECT_GE(advice.nextLook->date, *Date::parse("2026-08-10"));
    const std::string day = advice.nextLook->date.iso();
    const auto then = colony({.asOf = day.c_str(), .capped = 0.5, .brood = 0.3});
    EXPECT_EQ(adviceFor(then).phase, Phase::Closing) << "who comes on the day named is told what winter wants";
    EXPECT_EQ(advice.cautions.front().id, "varroa-first");
}

TEST(Decide, BelowTheSafetyAmountAPortionIsGivenNow) {
    const auto advice = adviceFor(colony({.asOf = "2026-08-03", .capped = 0.04, .brood = 0.3}));
    EXPECT_EQ(advice.decidedBy, DecidedBy::SummerPortion);
    ASSERT_TRUE(advice.feed);
    EXPECT_GE(advice.feed->syrup.sugar.value(), 2);
    EXPECT_EQ(advice.feed->fondant, kilograms(0));
    EXPECT_LT(advice.feed->stores, advice.missing->typical) << "not the winter's amount";
}

TEST(Decide, ClosingFeedsUpToTheTarget) {
    const auto advice = adviceFor(colony({.capped = 0.3, .brood = 0.05, .combs = 20}));
    ASSERT_EQ(advice.decidedBy, DecidedBy::Feed);
    EXPECT_GE(advice.feed->stores, advice.missing->typical - kilograms(0.01));
    EXPECT_LT(advice.feed->stores, advice.missing->typical + kilograms(1.3)) << "in whole kilograms of sugar";
    EXPECT_EQ(advice.feed->fondant, kilograms(0));
}

TEST(Decide, LateAutumnAllowsSmallPortionsOnly) {
    auto q = colony({.station = "gb-london", .asOf = "2026-10-05", .capped = 0.3});
    const auto days = phaseDays(q.season, q.decisions);
    q.asOf = q.lookedOn = days.closing + 1;
    const auto advice = adviceFor(q);
    EXPECT_EQ(advice.phase, Phase::Late);
    EXPECT_FALSE(advice.harvest);
    ASSERT_TRUE(advice.feed);
    for (const auto& visit : advice.feed->visits) EXPECT_LE(visit.syrup.value(), 1 + 1e-9);
    EXPECT_EQ(advice.feed->fondant, kilograms(0));
}

TEST(Decide, InWinterOneVisitAtATime) {
    const auto low = adviceFor(weighedAt("2027-01-20", 20 + 1.4 + 0.7 + 4));
    EXPECT_EQ(low.verdict, Verdict::Feed);
    ASSERT_TRUE(low.feed);
    ASSERT_EQ(low.feed->visits.size(), 1u);
    EXPECT_LE(low.feed->fondant.value(), 2.5);
    EXPECT_EQ(low.feed->visits.front().date, low.asOf);
    const auto well = adviceFor(weighedAt("2027-01-20", 20 + 1.4 + 0.7 + 25));
    EXPECT_EQ(well.verdict, Verdict::Leave);
    EXPECT_FALSE(well.feed || well.harvest);
}

TEST(Decide, NothingIsFedWithinAFortnightOfForageUnlessTheyWouldStarve) {
    const auto before = [](double kg) {
        auto q = weighedAt("2027-01-20", 20 + 1.4 + 0.7 + kg);
        q.asOf = q.lookedOn = q.weighings.front().day = phaseDays(q.season, q.decisions).forage - 8;
        q.weighings.front().date = q.winter.date(q.asOf);
        return adviceFor(q);
    };
    EXPECT_FALSE(before(12).feed);
    const auto starving = before(0.3);
    EXPECT_EQ(starving.decidedBy, DecidedBy::ActNow);
    EXPECT_TRUE(says(starving.cautions, "no-super-yet") || says(starving.goodPractice, "no-super-yet"));
}

TEST(Decide, FoodTheBeesCannotReachIsNoFood) {
    auto q = colony({.asOf = "2026-12-01", .capped = 0, .covered = 3});
    for (std::size_t i = 0; i < 3; ++i) q.combs[i].capped = 0.9;
    q.combs[8].brood = 0.05;
    const auto gap = adviceFor(q);
    EXPECT_EQ(gap.decidedBy, DecidedBy::NoFoodInReach);
    ASSERT_TRUE(gap.feed);
    EXPECT_GT(gap.feed->fondant, kilograms(0));
    for (auto& comb : q.combs) comb.capped = 0.5;
    EXPECT_NE(adviceFor(q).decidedBy, DecidedBy::NoFoodInReach);
}

TEST(Decide, AFullHiveIsFedNothing) {
    const auto advice = adviceFor(colony({.station = "ca-winnipeg", .asOf = "2026-09-12", .capped = 0.97}));
    EXPECT_GT(advice.missing->typical, advice.deadBand) << "though more would be wanted";
    EXPECT_EQ(advice.decidedBy, DecidedBy::Full);
    EXPECT_FALSE(advice.feed);
}

TEST(Decide, WhatTheHiveCannotHoldIsNotFed) {
    const auto advice = adviceFor(colony({.station = "ca-winnipeg", .asOf = "2026-09-01", .capped = 0.6}));
    ASSERT_TRUE(advice.feed);
    EXPECT_LE(advice.feed->stores, *advice.room + kilograms(1e-6));
    EXPECT_TRUE(says(advice.reasons, "more-than-it-holds"));
}

} // namespace winterlarder::advice::decide_test
