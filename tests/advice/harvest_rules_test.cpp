// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/harvest_rules.h"

#include "advice/colonies.h"

#include <gmock/gmock.h>

namespace winterlarder::advice::harvest_rules_test {

namespace {

//! Two full deeps, a colony that wants about two thirds of it.
ColonyQuestion rich() {
    return colony({.station = "gb-london", .asOf = "2026-09-26", .capped = 0.9, .combs = 20, .covered = 7});
}

//! The same with its second box a super.
ColonyQuestion withSuper() {
    auto q = rich();
    q.boxUses = {{false, {}}, {true, {}}};
    for (std::size_t i = 0; i < 10; ++i) q.combs[i].capped = 0.75;
    for (std::size_t i = 10; i < 20; ++i) q.combs[i].inSuper = true;
    return q;
}

double honeyOf(const ColonyQuestion& q, const HarvestAdvice& harvest) {
    double sum = 0;
    for (const int position : harvest.combs) {
        const auto& comb = q.combs[static_cast<std::size_t>(position)];
        sum += comb.capped * stores::capacityOf(comb).value(); // nothing open is on these combs
    }
    return sum;
}

bool offersHoney(const Advice& advice) {
    return advice.harvest || option(advice, OptionKind::TakeNow) || option(advice, OptionKind::TakeInSpring);
}

} // namespace

TEST(HarvestRules, TheAmountIsWhatTheNamedCombsHoldEverywhere) {
    const auto q = rich();
    const auto advice = adviceFor(q);
    ASSERT_EQ(advice.verdict, Verdict::Harvest);
    EXPECT_NEAR(advice.harvest->upTo.value(), honeyOf(q, *advice.harvest), 1e-9);
    EXPECT_EQ(advice.harvest->upTo, advice.harvest->combsHold);
    EXPECT_EQ(option(advice, OptionKind::TakeNow)->amount, advice.harvest->upTo);
    EXPECT_GE(advice.harvest->upTo.value(), 3);
}

TEST(HarvestRules, WhatStaysIsNotBelowTheTargetNorTheUsual) {
    auto q = rich();
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.harvest);
    EXPECT_GE(advice.estimate->mean - advice.harvest->upTo, advice.target->stores);
    q.usual = UsualHere{advice.estimate->mean - kilograms(5), advice.estimate->mean, "here", "Here", 'B'};
    const auto held = adviceFor(q);
    if (held.harvest) EXPECT_GE(held.estimate->mean - held.harvest->upTo, q.usual->low);
    EXPECT_LT(held.toSpare.value(), advice.toSpare.value());
    q.usual->quality = 'C';
    EXPECT_EQ(adviceFor(q).toSpare, advice.toSpare) << "common practice is shown, and holds nothing back";
}

TEST(HarvestRules, WhereOnlyTheUsualHoldsHoneyBackTheReasonSaysSo) {
    auto q = colony({.capped = 0.8, .combs = 20, .covered = 7});
    const auto taken = adviceFor(q);
    ASSERT_TRUE(taken.harvest);
    q.usual = UsualHere{taken.estimate->mean, taken.estimate->mean + kilograms(2), "here", "Here", 'B'};
    const auto left = adviceFor(q);
    ASSERT_FALSE(left.harvest);
    const auto said = std::find_if(left.reasons.begin(), left.reasons.end(),
                                   [](const Remark& reason) { return reason.id == "enough"; });
    ASSERT_NE(said, left.reasons.end());
    EXPECT_EQ(std::get<std::string>(said->details.at("class")), "usual");
}

TEST(HarvestRules, OnlyOuterCombsOfTheTopBoxBesideNoBees) {
    auto q = rich();
    for (std::size_t i = 3; i < 7; ++i) q.combs[i].brood = 0.05, q.combs[i].capped = 0.8;
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.harvest);
    for (const int position : advice.harvest->combs) EXPECT_GE(position, 10);
    for (auto& comb : q.combs) comb.capped = comb.box == 1 ? 0.75 : 0.98;
    const auto thin = adviceFor(q);
    EXPECT_FALSE(thin.harvest) << "no comb of the top box is four fifths full";
}

TEST(HarvestRules, SupersComeFirstAndWhole) {
    const auto q = withSuper();
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.harvest);
    for (const int position : advice.harvest->combs) EXPECT_GE(position, 10);
}

TEST(HarvestRules, ASuperForTheBeesStaysOn) {
    auto q = withSuper();
    q.answers.supersFor = SupersFor::Bees;
    const auto advice = adviceFor(q);
    if (advice.harvest)
        for (const int position : advice.harvest->combs) EXPECT_LT(position, 10);
}

TEST(HarvestRules, ASuperForPeopleIsNotCountedWithTheStores) {
    auto q = withSuper();
    const auto counted = adviceFor(q);
    q.answers.supersFor = SupersFor::People;
    const auto apart = adviceFor(q);
    EXPECT_LT(apart.estimate->mean, counted.estimate->mean - kilograms(15));
    EXPECT_LT(*apart.capacity, *counted.capacity);
}

TEST(HarvestRules, HoneyThatWasNotCountedLeavesTheStoresAsTheyAre) {
    auto q = withSuper();
    q.answers.supersFor = SupersFor::People;
    for (const char* day : {"2026-08-20", "2026-09-26"}) {
        q.asOf = q.lookedOn = q.winter.seasonDay(*Date::parse(day));
        const auto advice = adviceFor(q);
        ASSERT_TRUE(advice.harvest) << day;
        EXPECT_EQ(advice.harvest->wholeSupers, 1);
        EXPECT_GT(advice.harvest->upTo.value(), 15);
        EXPECT_EQ(advice.harvest->fromStores, kilograms(0));
        const auto *leave = option(advice, OptionKind::Leave), *take = option(advice, OptionKind::TakeNow);
        EXPECT_EQ(take->amount, advice.harvest->upTo) << "all of it is taken";
        EXPECT_EQ(take->storesAfter, leave->storesAfter);
        EXPECT_EQ(take->runOut, leave->runOut);
        EXPECT_EQ(take->touchReserve, leave->touchReserve);
        EXPECT_TRUE(says(advice.reasons, "super-apart"));
        EXPECT_FALSE(says(advice.reasons, "surplus")) << "what the brood box has to spare is not what is taken";
        EXPECT_FALSE(says(advice.reasons, "summer-harvest"));
    }
}

TEST(HarvestRules, HoneyThatWasCountedLeavesTheStores) {
    const auto advice = adviceFor(withSuper());
    ASSERT_TRUE(advice.harvest);
    EXPECT_EQ(advice.harvest->fromStores, advice.harvest->upTo);
    EXPECT_LT(option(advice, OptionKind::TakeNow)->storesAfter, option(advice, OptionKind::Leave)->storesAfter);
}

TEST(HarvestRules, TheWeighLineIsWithoutASuperThatComesOff) {
    auto q = withSuper();
    q.answers.supersFor = SupersFor::People;
    const auto on = adviceFor(q);
    q.supersTare = kilograms(7);
    const auto off = adviceFor(q);
    ASSERT_EQ(on.harvest->wholeSupers, 1);
    ASSERT_FALSE(on.weighLine.empty());
    EXPECT_NEAR((on.weighLine.front().gross.typical - off.weighLine.front().gross.typical).value(), 7, 1e-9);
    EXPECT_NEAR((on.target->gross - off.target->gross).value(), 7, 1e-9);
}

TEST(HarvestRules, SugarSinceSpringMakesAllOfItTheBees) {
    auto q = rich();
    q.feeds.push_back({q.lookedOn - 20, kilograms(3), true, q.winter.date(q.lookedOn - 20)});
    const auto fed = adviceFor(q);
    EXPECT_EQ(fed.verdict, Verdict::Leave);
    EXPECT_FALSE(offersHoney(fed)) << "nor in spring";
    EXPECT_TRUE(says(fed.reasons, "fed-combs"));
    q.feeds.front().date = q.winter.date(q.lookedOn).plusDays(-500);
    EXPECT_TRUE(offersHoney(adviceFor(q))) << "that was before last spring's forage";
    q.feeds.clear();
    q.combs[3].fed = true;
    EXPECT_FALSE(offersHoney(adviceFor(q))) << "syrup went through the whole hive";
}

TEST(HarvestRules, ABoxPutOnAfterTheLastFeedIsFree) {
    auto q = withSuper();
    const Date fed = q.winter.date(q.lookedOn - 40);
    q.feeds.push_back({q.lookedOn - 40, kilograms(3), true, fed});
    EXPECT_FALSE(offersHoney(adviceFor(q)));
    q.boxUses[1].putOn = fed.plusDays(-1);
    EXPECT_FALSE(offersHoney(adviceFor(q)));
    q.boxUses[1].putOn = fed.plusDays(3);
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.harvest);
    for (const int position : advice.harvest->combs) EXPECT_GE(position, 10);
}

TEST(HarvestRules, MedicineBarsWhatWasOnTheHive) {
    auto q = withSuper();
    const Date given = q.winter.date(q.lookedOn - 40);
    q.treated = true;
    q.treatments.push_back({given, given.plusDays(20)});
    EXPECT_FALSE(offersHoney(adviceFor(q)));
    q.boxUses[1].putOn = given.plusDays(10);
    EXPECT_FALSE(offersHoney(adviceFor(q))) << "the label's time was not over";
    q.boxUses[1].putOn = given.plusDays(21);
    EXPECT_TRUE(offersHoney(adviceFor(q)));
    q.treatments.clear();
    q.treatedWithoutDay = true;
    EXPECT_FALSE(offersHoney(adviceFor(q))) << "nobody says when";
}

TEST(HarvestRules, WetHoneyStays) {
    auto q = rich();
    q.moisturePercent = 20.5;
    EXPECT_FALSE(offersHoney(adviceFor(q)));
    EXPECT_TRUE(says(adviceFor(q).reasons, "moist-honey"));
    q.answers.honeyKind = HoneyKind::Heather;
    EXPECT_TRUE(offersHoney(adviceFor(q))) << "heather honey may hold 23 %";
    q.answers.honeyKind.reset();
    q.moisturePercent = 19;
    EXPECT_TRUE(offersHoney(adviceFor(q)));
    EXPECT_TRUE(says(adviceFor(q).reasons, "wettish-honey"));
}

TEST(HarvestRules, NothingAfterClosing) {
    auto q = rich();
    const auto days = phaseDays(q.season, q.decisions);
    for (const SeasonDay day : {days.closing + 1, days.late + 20, days.winter + 10}) {
        q.asOf = q.lookedOn = day;
        const auto advice = adviceFor(q);
        EXPECT_FALSE(advice.harvest) << day.w;
        EXPECT_FALSE(option(advice, OptionKind::TakeNow)) << day.w;
    }
}

TEST(HarvestRules, NeverOnAccountOfAFlowStillToCome) {
    auto q = rich();
    const auto without = adviceFor(q);
    q.flowStrength = 0.3;
    EXPECT_EQ(adviceFor(q).harvest->upTo, without.harvest->upTo);
}

TEST(HarvestRules, InSummerWholeSupersOnly) {
    auto q = withSuper();
    q.asOf = q.lookedOn = phaseDays(q.season, q.decisions).summer - 5;
    const auto advice = adviceFor(q);
    ASSERT_EQ(advice.decidedBy, DecidedBy::SummerHarvest);
    EXPECT_EQ(advice.harvest->combs.size(), 10u);
    EXPECT_TRUE(advice.expectedLater) << "what comes off now is fed later";
    q.combs[12].open = 0.6, q.combs[12].capped = 0.2;
    for (std::size_t i = 13; i < 18; ++i) q.combs[i].open = 0.6, q.combs[i].capped = 0.2;
    EXPECT_FALSE(adviceFor(q).harvest) << "the super is not ripe";
}

TEST(HarvestRules, EvidenceInDoubtBarsHoney) {
    auto q = rich();
    q.setAside.push_back({"doubt-heavy", {}});
    EXPECT_FALSE(adviceFor(q).harvest);
}

// What the table of options shows, with all doubt of the look, is what honey is decided by.
TEST(HarvestRules, NoHoneyThatTheTableShowsBeyondTheRisk) {
    bool taken = false, left = false;
    for (double full = 8; full <= 18; full += 1) {
        auto q = colony({.station = "us-or-eugene", .asOf = "2026-10-01", .combs = 20, .covered = 7});
        q.combs.clear();
        q.quickFullComb = kilograms(2);
        q.quick = stores::QuickCount{full, 0, 0.9};
        const auto a = adviceFor(q);
        if (const auto* take = option(a, OptionKind::TakeNow)) {
            EXPECT_LE(take->touchReserve.share, a.shortRisk + 1e-9) << full;
            EXPECT_LE(a.harvest->upTo, *a.toSpare) << full;
            taken = true;
        } else if (a.toSpare && *a.toSpare >= std::max(kilograms(3), a.deadBand)) {
            EXPECT_TRUE(says(a.reasons, "spare-not-sure")) << full;
            left = true;
        }
    }
    EXPECT_TRUE(taken && left);
}

TEST(HarvestRules, CountedCombsAreRipeFromTwoThirdsOn) {
    auto q = rich();
    q.combs.clear();
    q.quickFullComb = kilograms(2.3);
    q.quick = stores::QuickCount{18, 0, 0.9};
    ASSERT_TRUE(adviceFor(q).harvest);
    q.quick->cappedShare = 0.6;
    const auto unripe = adviceFor(q);
    EXPECT_FALSE(unripe.harvest);
    EXPECT_TRUE(says(unripe.reasons, "too-little-capped"));
    EXPECT_FALSE(says(unripe.reasons, "quick-form-no-combs"));
}

} // namespace winterlarder::advice::harvest_rules_test
