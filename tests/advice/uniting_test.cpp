// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/yards.h"

#include <gmock/gmock.h>

namespace winterlarder::advice::uniting_test {

namespace {

ColonyQuestion weak(double covered = 3) { return queenright({.capped = 0.3, .covered = covered}); }
ColonyQuestion strong(double covered = 8) { return queenright({.capped = 0.6, .covered = covered}); }

ColonyQuestion queenless(double covered = 8) {
    auto q = colony({.capped = 0.5, .covered = covered});
    q.queenSeen = q.eggsSeen = false;
    q.brood.reset();
    return q;
}

std::string partnerOf(const TestYard& yard, std::size_t i) {
    return yard.planned(i).unite ? yard.planned(i).unite->partner : "";
}

} // namespace

TEST(Uniting, TheWeakGoesOntoAHealthyQueenrightNeighbour) {
    TestYard yard;
    yard.add("Larch", weak());
    yard.add("Birch", strong());
    yard.plan();
    ASSERT_EQ(yard.planned(0).verdict, Verdict::Unite);
    EXPECT_EQ(partnerOf(yard, 0), "Birch");
    EXPECT_EQ(yard.part(0).uniteWith, "Birch");
    EXPECT_EQ(yard.part(1).uniteWith, "Larch");
    EXPECT_EQ(yard.part(1).uniteBy, yard.planned(0).unite->by);
    EXPECT_TRUE(says(yard.planned(1).reasons, "united-here"));
}

TEST(Uniting, APartnerMustBeKnownToHaveAQueen) {
    const auto partner = [](ColonyQuestion neighbour) {
        TestYard yard;
        yard.add("Larch", weak());
        yard.add("Birch", std::move(neighbour));
        yard.plan();
        return partnerOf(yard, 0);
    };
    auto unasked = strong();
    unasked.queenSeen.reset();
    unasked.brood.reset();
    EXPECT_EQ(partner(unasked), "") << "not known is not yes";
    auto laying = unasked;
    laying.brood = BeeCount{6000};
    EXPECT_EQ(partner(laying), "Birch");
    laying.queenSeen = laying.eggsSeen = false;
    EXPECT_EQ(partner(laying), "") << "brood of a queen that is gone";
    auto nucleus = strong();
    nucleus.nucleus = true;
    EXPECT_EQ(partner(nucleus), "");
    auto otherHive = strong();
    for (auto& box : otherHive.boxes) box.outline.height = millimetres(135);
    EXPECT_EQ(partner(otherHive), "") << "its box does not go on top";
}

TEST(Uniting, NobodyHasTwoPartners) {
    TestYard yard;
    yard.add("Larch", weak(2));
    yard.add("Alder", weak(2));
    yard.add("Birch", strong());
    ASSERT_LT(yard.alone(0).strength->bees.count + yard.alone(1).strength->bees.count, shipped().decisions.unitedBees);
    yard.plan();
    EXPECT_EQ((partnerOf(yard, 0) == "Birch") + (partnerOf(yard, 1) == "Birch"), 1);
    EXPECT_EQ(yard.whole().pairs.size(), 1u);
}

TEST(Uniting, WhereTheStrongAreTooFewTwoWeakOnesGoTogether) {
    TestYard yard;
    yard.add("Larch", weak(3.5));
    yard.add("Alder", weak(3));
    yard.add("Birch", strong());
    yard.plan();
    EXPECT_EQ(partnerOf(yard, 1), "Larch") << "else one of them would be left over";
    EXPECT_EQ(yard.part(2), PartInYard{});
}

TEST(Uniting, TheWeakerOfTheStrongGainsMost) {
    TestYard yard;
    yard.add("Larch", weak());
    yard.add("Birch", strong(9.5));
    yard.add("Maple", strong(7.5));
    yard.plan();
    EXPECT_EQ(partnerOf(yard, 0), "Maple");
}

TEST(Uniting, TwoWeakOnesGoTogetherOnlyIfTheyMakeAColony) {
    const auto united = [](double first, double second) {
        TestYard yard;
        yard.add("Larch", weak(first));
        yard.add("Alder", weak(second));
        EXPECT_EQ(yard.alone(0).verdict, Verdict::Unite);
        EXPECT_EQ(yard.alone(1).verdict, Verdict::Unite);
        const double together = yard.alone(0).strength->bees.count + yard.alone(1).strength->bees.count;
        yard.plan();
        EXPECT_EQ(!yard.whole().pairs.empty(), together > shipped().decisions.unitedBees) << together;
        return yard;
    };
    EXPECT_TRUE(united(2, 2).whole().pairs.empty());
    const auto both = united(3.5, 3);
    ASSERT_EQ(both.whole().pairs.size(), 1u);
    EXPECT_EQ(both.whole().pairs.front(), (UnitedPair{1, 0})) << "the one with more bees stays";
    EXPECT_NE(both.planned(0).verdict, Verdict::Unite) << "together they are strong enough";
    EXPECT_EQ(both.planned(1).verdict, Verdict::Unite);
}

TEST(Uniting, AQueenlessColonyGoesOntoAQueenrightOne) {
    TestYard yard;
    yard.add("Larch", queenless());
    yard.add("Birch", strong());
    yard.plan();
    ASSERT_EQ(yard.alone(0).decidedBy, DecidedBy::NoQueen);
    EXPECT_EQ(partnerOf(yard, 0), "Birch");
}

TEST(Uniting, UntilItIsSeenThatThereIsNoQueenThePartnerIsFedAlone) {
    TestYard yard;
    yard.add("Larch", queenless());
    yard.add("Birch", strong());
    yard.plan();
    EXPECT_TRUE(yard.planned(0).unite->queenless);
    EXPECT_EQ(yard.planned(1).estimate->mean, yard.alone(1).estimate->mean);
    EXPECT_FALSE(yard.planned(1).alone);
    EXPECT_TRUE(says(yard.planned(1).reasons, "may-be-united"));
    EXPECT_FALSE(says(yard.planned(1).reasons, "united-here"));
}

TEST(Uniting, TheBoxesOfTwoAreTakenDownAgain) {
    TestYard yard;
    yard.add("Larch", weak());
    yard.add("Birch", strong());
    yard.plan();
    EXPECT_TRUE(says(yard.planned(1).reasons, "united-sort"));
}

TEST(Uniting, AQueenlessAndAWeakColonyMakeOneWithTheQueenOfTheWeak) {
    TestYard yard;
    yard.add("Larch", queenless());
    yard.add("Alder", weak());
    yard.plan();
    EXPECT_EQ(partnerOf(yard, 0), "Alder");
    EXPECT_NE(yard.planned(1).verdict, Verdict::Unite);
}

TEST(Uniting, TheReceiverIsAnsweredForBothTogether) {
    TestYard yard;
    yard.add("Larch", weak());
    yard.add("Birch", strong());
    yard.plan();
    const Advice &larch = yard.alone(0), &alone = yard.alone(1), &both = yard.planned(1);
    EXPECT_NEAR(both.estimate->mean.value(), (larch.estimate->mean + alone.estimate->mean).value(), 1e-9);
    EXPECT_NEAR(both.bees->typical.count, larch.bees->typical.count + alone.bees->typical.count,
                0.03 * both.bees->typical.count);
    EXPECT_NEAR(both.capacity->value(), (*larch.capacity + *alone.capacity).value(), 1.5);
    EXPECT_GT(both.target->stores, alone.target->stores) << "more bees eat more";
    EXPECT_NE(yard.inPlanOf(1).question.stream, yard.question(1).stream) << "winters of its own";
    EXPECT_EQ(*yard.inPlanOf(1).question.brood == BeeCount{0},
              yard.question(1).brood->count + yard.question(0).brood->count == 0);
}

TEST(Uniting, AUnitedPairMovesNoCombsAndGivesNoHoney) {
    TestYard yard;
    yard.add("Larch", weak());
    yard.add("Ash", heavy());
    yard.add("Beech", light());
    yard.plan();
    std::size_t onto = 1;
    while (onto < 3 && yard.part(onto).uniteWith != "Larch") ++onto;
    ASSERT_LT(onto, 3u);
    for (const std::size_t i : {std::size_t{0}, onto}) {
        EXPECT_TRUE(yard.planned(i).gifts.empty());
        EXPECT_FALSE(yard.planned(i).harvest);
    }
}

TEST(Uniting, TheWeakOneHasThreeWeeksOfFoodAndNoWinterPlan) {
    TestYard yard;
    auto starving = weak();
    for (auto& comb : starving.combs) comb.capped = 0.03;
    yard.add("Larch", starving);
    yard.add("Birch", strong());
    yard.plan();
    const Advice& larch = yard.planned(0);
    EXPECT_FALSE(larch.expectedLater);
    EXPECT_TRUE(larch.weighLine.empty());
    if (larch.feed) EXPECT_LE(larch.feed->syrup.sugar, kilograms(3));
    EXPECT_FALSE(yard.alone(0).weighLine.empty()) << "alone it has one";
}

TEST(Uniting, WhereNobodyIsToBeUnitedNobodyHasAPartner) {
    TestYard yard;
    yard.add("Birch", strong());
    yard.add("Maple", strong(7.5));
    yard.plan();
    EXPECT_TRUE(yard.whole().pairs.empty());
    for (const std::size_t i : {0u, 1u}) EXPECT_EQ(yard.planned(i).estimate->mean, yard.alone(i).estimate->mean);
}

} // namespace winterlarder::advice::uniting_test
