// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/yards.h"

#include <gmock/gmock.h>
#include <set>

namespace winterlarder::advice::yard_plan_test {

namespace {

Mass sum(const std::vector<CombGift>& gifts) {
    Mass all{0};
    for (const CombGift& gift : gifts) all += gift.honey;
    return all;
}

// Givers with more or less to spare, takers that miss more or less, one that is fine.
TestYard mixedYard() {
    TestYard yard;
    yard.add("Ash", heavy());
    auto lesser = heavy();
    for (auto& comb : lesser.combs)
        if (comb.box == 1) comb.capped = 0.5;
    yard.add("Oak", lesser);
    yard.add("Beech", light());
    auto poorer = light();
    for (auto& comb : poorer.combs) comb.capped = 0.1;
    yard.add("Elm", poorer);
    yard.add("Fir", queenright({.capped = 0.75, .covered = 8}));
    yard.plan();
    return yard;
}

} // namespace

TEST(YardPlan, WhatGiversGiveIsWhatTakersGet) {
    const auto yard = mixedYard();
    Mass given{0}, received{0}, brought{0};
    for (std::size_t i = 0; i < yard.size(); ++i) {
        given += sum(yard.part(i).given), received += sum(yard.part(i).received), brought += yard.part(i).brought();
        EXPECT_TRUE(yard.part(i).given.empty() || yard.part(i).received.empty()) << "nobody does both: " << i;
    }
    EXPECT_GT(given.value(), 5);
    EXPECT_NEAR(given.value(), received.value(), 1e-9);
    EXPECT_NEAR(brought.value(), 0, 1e-9);
}

TEST(YardPlan, NoCombGoesTwoWays) {
    const auto yard = mixedYard();
    for (std::size_t i = 0; i < yard.size(); ++i) {
        std::multiset<int> gone, back;
        for (const auto& gift : yard.part(i).given) gone.insert(gift.combs.begin(), gift.combs.end());
        for (const auto& gift : yard.part(i).received) back.insert(gift.back.begin(), gift.back.end());
        if (yard.planned(i).harvest)
            gone.insert(yard.planned(i).harvest->combs.begin(), yard.planned(i).harvest->combs.end());
        for (const int comb : gone) EXPECT_EQ(gone.count(comb), 1u);
        for (const int comb : back) EXPECT_EQ(back.count(comb), 1u);
    }
}

TEST(YardPlan, NobodyFallsBelowItsTargetByGiving) {
    const auto yard = mixedYard();
    int givers = 0;
    for (std::size_t i = 0; i < yard.size(); ++i) {
        if (yard.part(i).given.empty()) continue;
        ++givers;
        const Advice& planned = yard.planned(i);
        EXPECT_LE(planned.missing->typical.value(), 1e-9) << i;
        EXPECT_FALSE(planned.feed) << i;
        EXPECT_NEAR((*planned.toSpare + sum(yard.part(i).given)).value(), yard.alone(i).toSpare->value(), 1e-6);
    }
    EXPECT_EQ(givers, 2);
}

// Three neighbours want more than it has to spare, and its top box holds more than that too: not a comb goes beyond.
TEST(YardPlan, NoGiverGivesMoreThanItCanSpare) {
    for (const double below : {0.3, 0.4, 0.5}) {
        TestYard yard;
        auto giver = heavy();
        for (auto& comb : giver.combs)
            if (comb.box == 1) comb.capped = below;
        yard.add("Ash", giver);
        for (const char* name : {"Beech", "Elm", "Fir"}) {
            auto poor = light();
            for (auto& comb : poor.combs) comb.capped = 0.1;
            yard.add(name, poor);
        }
        yard.plan();
        const Mass spare = *yard.alone(0).toSpare, given = sum(yard.part(0).given);
        EXPECT_GT(given.value(), 0) << below;
        EXPECT_LE(given.value(), spare.value() + 1e-9) << below;
        EXPECT_GE(yard.planned(0).toSpare->value(), -1e-9) << below;
        EXPECT_GT(given.value(), spare.value() - 3) << below << ": all but less than a comb";
        EXPECT_TRUE(yard.planned(1).feed || yard.planned(2).feed || yard.planned(3).feed)
            << below << ": they would take more";
    }
}

TEST(YardPlan, AGiverKeepsWhatIsUsualHere) {
    const auto usual = [](char quality) {
        TestYard yard;
        auto rich = heavy();
        rich.usual = UsualHere{kilograms(70), kilograms(80), "judgement", "Here", quality};
        yard.add("Ash", rich);
        yard.add("Beech", light());
        yard.plan();
        return yard.part(1).brought();
    };
    EXPECT_EQ(usual('B'), kilograms(0));
    EXPECT_GT(usual('C'), kilograms(2)) << "common practice alone holds nothing back";
}

TEST(YardPlan, TheSumOfSugarFalls) {
    const auto yard = mixedYard();
    Mass alone{0}, together{0};
    for (std::size_t i = 0; i < yard.size(); ++i) {
        alone += sugarOf(yard.alone(i)), together += sugarOf(yard.planned(i));
        EXPECT_LE(sugarOf(yard.planned(i)), sugarOf(yard.alone(i)));
    }
    EXPECT_LT(together, alone - kilograms(3));
}

TEST(YardPlan, TheTakersAnswerIsForWhatIsStillMissing) {
    const auto yard = mixedYard();
    const Advice &alone = yard.alone(2), &planned = yard.planned(2);
    const Mass brought = yard.part(2).brought();
    ASSERT_GT(brought, kilograms(0));
    EXPECT_NEAR((alone.missing->typical - planned.missing->typical).value(), brought.value(), 1e-9);
    ASSERT_TRUE(planned.feed);
    EXPECT_LE(planned.feed->stores.value(), planned.missing->typical.value() + 1)
        << "no more than a step of sugar over it";
    const Option* feed = option(planned, OptionKind::Feed);
    EXPECT_NEAR(feed->storesAfter.value(), (planned.estimate->mean + brought + planned.feed->stores).value(), 1e-9);
}

TEST(YardPlan, OnlyWhatIsLeftOverIsHarvested) {
    const auto yard = mixedYard();
    ASSERT_TRUE(yard.alone(0).harvest);
    const auto& left = yard.planned(0).harvest;
    const Mass taken = left ? left->upTo : kilograms(0);
    EXPECT_LE(taken + sum(yard.part(0).given), *yard.alone(0).toSpare + kilograms(1e-9));
    EXPECT_LT(taken, yard.alone(0).harvest->upTo);
}

TEST(YardPlan, NothingMovesInAYardWithSignsOfDisease) {
    TestYard yard;
    yard.add("Ash", heavy());
    yard.add("Beech", light());
    auto weak = queenright({.capped = 0.3, .covered = 3});
    yard.add("Larch", weak);
    auto sick = colony({});
    sick.trouble = true;
    yard.add("Sick", sick);
    yard.plan();
    for (std::size_t i = 0; i < yard.size(); ++i) EXPECT_EQ(yard.part(i), PartInYard{}) << i;
    EXPECT_EQ(sugarOf(yard.planned(1)), sugarOf(yard.alone(1)));
    ASSERT_EQ(yard.planned(2).verdict, Verdict::Unite);
    EXPECT_EQ(yard.planned(2).unite->partner, "");
}

TEST(YardPlan, CombsStayWhereTheKeeperWantsIt) {
    auto yard = mixedYard();
    yard.plan(MovingCombs::Not);
    for (std::size_t i = 0; i < yard.size(); ++i) {
        EXPECT_EQ(yard.part(i).brought(), kilograms(0));
        EXPECT_EQ(sugarOf(yard.planned(i)), sugarOf(yard.alone(i)));
        EXPECT_TRUE(yard.planned(i).plan) << "it is a plan all the same";
    }
}

TEST(YardPlan, TheOrderOfColoniesDoesNotMatter) {
    TestYard one, other;
    one.add("Ash", heavy()), one.add("Beech", light());
    other.add("Beech", light()), other.add("Ash", heavy());
    one.plan(), other.plan();
    EXPECT_EQ(one.part(0), other.part(1));
    EXPECT_EQ(sugarOf(one.planned(1)), sugarOf(other.planned(0)));
}

} // namespace winterlarder::advice::yard_plan_test
