// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/yards.h"

#include <gmock/gmock.h>
#include <set>

namespace winterlarder::advice::share_combs_test {

namespace {

struct RichAndPoor : TestYard {
    explicit RichAndPoor(ColonyQuestion rich = heavy(), ColonyQuestion poor = light()) {
        add("Rich", std::move(rich));
        add("Poor", std::move(poor));
        plan();
    }
    bool moved() const { return !part(1).received.empty(); }
};

} // namespace

TEST(ShareCombs, StoresGoFromTheRichToThePoorBeforeSugarIsBought) {
    const RichAndPoor yard;
    ASSERT_EQ(yard.alone(1).verdict, Verdict::Feed);
    ASSERT_EQ(yard.part(1).received.size(), 1u);
    const CombGift& gift = yard.part(1).received.front();
    EXPECT_EQ(yard.part(0).given, yard.part(1).received) << "both sides tell of the same combs";
    EXPECT_EQ(gift.from, "Rich");
    EXPECT_EQ(gift.to, "Poor");
    EXPECT_TRUE(says(yard.planned(1).reasons, "move-combs-first"));
    EXPECT_TRUE(says(yard.planned(0).reasons, "combs-given"));
    for (const std::size_t i : {0u, 1u}) EXPECT_TRUE(says(yard.planned(i).cautions, "move-combs")) << i;
    const Option* moved = option(yard.planned(1), OptionKind::MoveCombs);
    ASSERT_NE(moved, nullptr);
    EXPECT_EQ(moved->amount, gift.honey);
    EXPECT_EQ(moved->storesAfter, yard.alone(1).estimate->mean + gift.honey);
    EXPECT_LT(moved->runOut.share, yard.planned(1).runOut->share);
}

TEST(ShareCombs, WhatIsLeftAsItIsStaysAsItWas) {
    const RichAndPoor yard;
    for (const std::size_t i : {0u, 1u}) {
        EXPECT_EQ(option(yard.planned(i), OptionKind::Leave)->storesAfter,
                  option(yard.alone(i), OptionKind::Leave)->storesAfter);
        EXPECT_EQ(yard.planned(i).runOut->share, yard.alone(i).runOut->share);
        EXPECT_EQ(yard.planned(i).estimate->mean, yard.alone(i).estimate->mean) << "what is there today";
        EXPECT_EQ(yard.planned(i).target->stores, yard.alone(i).target->stores);
    }
}

TEST(ShareCombs, OnlyFullOuterCombsOfTheTopBoxGoTheOutermostFirst) {
    const RichAndPoor yard;
    const CombGift& gift = yard.part(0).given.front();
    EXPECT_THAT(gift.combs, testing::Each(testing::Ge(20)));
    ASSERT_GE(gift.combs.size(), 2u);
    EXPECT_EQ(std::set<int>({gift.combs[0], gift.combs[1]}), std::set<int>({20, 29}));
    EXPECT_EQ(gift.places.front().box, 2);
    EXPECT_EQ(gift.boxes, 3);
    auto halfFull = heavy();
    for (auto& comb : halfFull.combs)
        if (comb.box == 2) comb.capped = 0.75;
    EXPECT_FALSE(RichAndPoor(halfFull).moved());
}

TEST(ShareCombs, CombsOverTheBroodStay) {
    auto two = queenright({.combs = 20, .covered = 8});
    for (auto& comb : two.combs)
        comb.capped = comb.box == 0 ? 0.6 : 0.95,
        comb.brood = comb.box == 0 && comb.place > 2 && comb.place < 7 ? 0.2 : 0;
    auto empty = light();
    for (auto& comb : empty.combs) comb.capped = 0.1;
    const RichAndPoor yard(two, empty);
    ASSERT_TRUE(yard.moved());
    EXPECT_THAT(yard.part(0).given.front().combs,
                testing::Each(testing::AnyOf(testing::AllOf(testing::Ge(10), testing::Le(12)), testing::Ge(17))));
    EXPECT_GE(yard.part(0).given.front().combs.size(), 3u);
}

TEST(ShareCombs, CombsThatWereFedMayGoToBees) {
    auto fed = heavy();
    for (auto& comb : fed.combs) comb.fed = true;
    const RichAndPoor yard(fed);
    EXPECT_TRUE(yard.moved());
    EXPECT_FALSE(yard.planned(0).harvest) << "but not to people";
}

TEST(ShareCombs, SupersKeptForPeopleStay) {
    auto q = heavy();
    for (auto& comb : q.combs) comb.inSuper = comb.box == 2;
    q.boxUses = {{}, {}, {true, {}}};
    EXPECT_TRUE(RichAndPoor(q).moved());
    q.answers.supersFor = SupersFor::People;
    EXPECT_FALSE(RichAndPoor(q).moved());
}

TEST(ShareCombs, TheEmptiestOuterCombsGoBackAndAreCounted) {
    const RichAndPoor yard;
    const CombGift& gift = yard.part(1).received.front();
    const auto giver = *stores::storesOfCombs(heavy().combs, stores::openFactor(false)),
               taker = *stores::storesOfCombs(light().combs, stores::openFactor(false));
    ASSERT_EQ(gift.back.size(), gift.combs.size());
    Mass net{0};
    for (const int comb : gift.combs) net += giver[static_cast<std::size_t>(comb)].total();
    for (const int comb : gift.back) net -= taker[static_cast<std::size_t>(comb)].total();
    EXPECT_NEAR(gift.honey.value(), net.value(), 1e-9);
    EXPECT_THAT(gift.back, testing::Each(testing::AnyOf(testing::Le(2), testing::Ge(7)))) << "none out of the nest";
}

TEST(ShareCombs, AFreePlaceIsFilledBeforeAnyCombGoesBack) {
    auto roomy = light();
    roomy.combs.resize(8);
    const RichAndPoor yard(heavy(), roomy);
    const CombGift& gift = yard.part(1).received.front();
    ASSERT_GE(gift.combs.size(), 2u);
    EXPECT_EQ(gift.back.size(), gift.combs.size() - 2);
}

TEST(ShareCombs, ACombThatBringsLittleMoreThanTheOneItReplacesStays) {
    auto even = light();
    for (auto& comb : even.combs)
        if (comb.brood <= 0) comb.capped = 0.65;
        else comb.capped = 0.05;
    const RichAndPoor yard(heavy(), even);
    ASSERT_EQ(yard.alone(1).verdict, Verdict::Feed);
    EXPECT_FALSE(yard.moved());
}

TEST(ShareCombs, CombsMustFitTheReceiver) {
    auto other = light();
    for (auto& box : other.boxes) box.outline.height = millimetres(135);
    for (auto& comb : other.combs) comb.format = other.boxes.front();
    EXPECT_FALSE(RichAndPoor(heavy(), other).moved());
}

TEST(ShareCombs, NeitherSideIsInDoubt) {
    auto doubtful = heavy();
    doubtful.setAside = {{"doubt-weight", {{"record", std::string("weighing")}}}};
    EXPECT_FALSE(RichAndPoor(doubtful).moved());
    auto contradicted = light();
    contradicted.weighings.push_back(onScale(contradicted, kilograms(75)));
    const RichAndPoor yard(heavy(), contradicted);
    ASSERT_TRUE(yard.alone(1).estimate->contradictory);
    EXPECT_FALSE(yard.moved());
}

TEST(ShareCombs, NothingIsOpenedInWinter) {
    const auto on = [](ColonyQuestion q, const char* day) {
        auto later = colony({.asOf = day});
        q.winter = later.winter, q.asOf = later.asOf, q.lookedOn = later.lookedOn;
        q.brood.reset();
        for (auto& comb : q.combs) comb.brood = 0, comb.broodSaid = false;
        return q;
    };
    EXPECT_FALSE(RichAndPoor(on(heavy(), "2027-01-20"), on(light(), "2027-01-20")).moved());
    EXPECT_TRUE(RichAndPoor(on(heavy(), "2026-09-25"), on(light(), "2026-09-25")).moved());
}

TEST(ShareCombs, AMemberWithoutAnAnswerIsPassedOver) {
    TestYard yard;
    auto unknown = heavy();
    unknown.bees.reset();
    yard.add("Silent", unknown);
    yard.add("Rich", heavy());
    yard.add("Poor", light());
    yard.plan();
    EXPECT_EQ(yard.part(0), PartInYard{});
    EXPECT_FALSE(yard.part(2).received.empty());
}

TEST(ShareCombs, WhyNothingIsGivenIsSaid) {
    auto counted = heavy();
    counted.quick = stores::QuickCount{24, 2, 1};
    counted.quickFullComb = stores::quickFullComb(counted.boxes.front());
    counted.combs.clear();
    const RichAndPoor unlisted(counted);
    ASSERT_FALSE(unlisted.moved());
    EXPECT_TRUE(says(unlisted.planned(0).reasons, "gives-none-unlisted"));
    EXPECT_FALSE(says(unlisted.planned(1).reasons, "gives-none-unlisted"));
    auto nested = heavy();
    for (auto& comb : nested.combs) comb.brood = 0.02, comb.broodSaid = true;
    const RichAndPoor brood(nested);
    ASSERT_FALSE(brood.moved());
    EXPECT_TRUE(says(brood.planned(0).reasons, "gives-none-combs"));
    auto usual = heavy();
    usual.usual = UsualHere{kilograms(70), kilograms(80), "judgement", "Here", 'B'};
    const RichAndPoor held(usual);
    ASSERT_FALSE(held.moved());
    EXPECT_TRUE(says(held.planned(0).reasons, "gives-none-usual"));
    EXPECT_FALSE(says(RichAndPoor().planned(0).reasons, "gives-none-unlisted")) << "it gives";
    auto ample = heavy();
    const RichAndPoor both(counted, ample);
    EXPECT_FALSE(says(both.planned(0).reasons, "gives-none-unlisted")) << "nobody is short";
}

} // namespace winterlarder::advice::share_combs_test
