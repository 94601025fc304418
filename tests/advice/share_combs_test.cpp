// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/colonies.h"

#include <gmock/gmock.h>
#include <set>

namespace winterlarder::advice {

namespace {

YardMember member(ColonyQuestion q, const char* name) {
    q.colony = name;
    q.yard = "Yard";
    q.stream = winter::colonyStream(name);
    return yardMember(q, *weigh(q, constants(), quick, 2));
}

struct Yard {
    YardMember rich = member(colony({.capped = 0.9, .combs = 20, .covered = 9}), "Rich");
    YardMember poor = member(colony({.capped = 0.35}), "Poor");
    void share() {
        std::vector<YardMember*> members{&rich, &poor};
        shareCombs(members);
    }
};

} // namespace

TEST(ShareCombs, StoresGoFromTheRichToThePoorBeforeSugarIsBought) {
    Yard yard;
    ASSERT_EQ(yard.rich.advice.verdict, Verdict::Harvest);
    ASSERT_EQ(yard.poor.advice.verdict, Verdict::Feed);
    yard.share();
    ASSERT_EQ(yard.poor.advice.gifts.size(), 1u);
    const CombGift& gift = yard.poor.advice.gifts.front();
    EXPECT_EQ(gift.from, "Rich");
    EXPECT_EQ(gift.to, "Poor");
    EXPECT_TRUE(says(yard.poor.advice.reasons, "move-combs-first"));
    EXPECT_TRUE(says(yard.poor.advice.cautions, "move-combs"));
    const Option* moved = option(yard.poor.advice, OptionKind::MoveCombs);
    ASSERT_NE(moved, nullptr);
    EXPECT_EQ(moved->amount, gift.honey);
    EXPECT_LT(moved->runOut.share, yard.poor.advice.runOut->share);
}

TEST(ShareCombs, TheDonorKeepsItsOwnNeed) {
    Yard yard;
    const Mass spare = *yard.rich.advice.toSpare;
    yard.share();
    const Mass given = yard.poor.advice.gifts.front().honey;
    EXPECT_LE(given, spare);
    if (!yard.rich.advice.harvest) {
        EXPECT_EQ(yard.rich.advice.verdict, Verdict::Leave);
        EXPECT_EQ(option(yard.rich.advice, OptionKind::TakeNow), nullptr);
    } else {
        EXPECT_GE(yard.rich.advice.harvest->upTo, kilograms(3)) << "less is not worth taking";
        EXPECT_LE(yard.rich.advice.harvest->upTo, spare - given + kilograms(1e-9));
        for (const int comb : yard.rich.advice.harvest->combs)
            EXPECT_THAT(yard.poor.advice.gifts.front().combs, testing::Not(testing::Contains(comb))) << "no comb goes two ways";
    }
    const std::set<int> combs(yard.poor.advice.gifts.front().combs.begin(), yard.poor.advice.gifts.front().combs.end());
    EXPECT_EQ(combs.size(), yard.poor.advice.gifts.front().combs.size());
}

namespace {

Mass givenBy(const YardMember& donor) {
    Mass sum{0};
    for (const CombGift& gift : donor.advice.gifts)
        if (gift.from == donor.question.colony) sum += gift.honey;
    return sum;
}

// Share of the donor's winters, without autumn flow, that would touch its reserve once so much was given.
double touchingWithout(const YardMember& donor, Mass given) {
    const auto& advice = donor.advice;
    return winter::shareShort(donor.lossesWithoutFlow, advice.estimate->mean - given, advice.storesSd, donor.question.reserve, true).share;
}

} // namespace

// Whole combs only, and however much the neighbours lack: what a donor keeps is enough for its own wish.
TEST(ShareCombs, NoDonorGivesBeyondWhatItCanSpare) {
    int gave = 0, keptCombsBack = 0;
    for (const double capped : {0.55, 0.6, 0.65, 0.7, 0.8, 0.9}) {
        YardMember donor = member(colony({.capped = capped, .combs = 20, .covered = 9}), "Donor");
        YardMember first = member(colony({.capped = 0.1}), "First"), second = member(colony({.capped = 0.15}), "Second");
        std::vector<YardMember*> members{&donor, &first, &second};
        shareCombs(members);
        const Mass given = givenBy(donor);
        if (given.value() <= 0) continue;
        ++gave;
        EXPECT_LE(touchingWithout(donor, given), donor.question.shortRisk) << capped;
        std::size_t combs = 0;
        for (const CombGift& gift : donor.advice.gifts) combs += gift.combs.size();
        keptCombsBack += combs < donor.question.combs.size();
    }
    EXPECT_GT(gave, 1) << "donors that can spare something";
    EXPECT_EQ(keptCombsBack, gave) << "the neighbours lack more than any of them has";
}

TEST(ShareCombs, NothingMovesInAYardWithSignsOfDisease) {
    Yard yard;
    yard.rich.question.trouble = true;
    yard.share();
    EXPECT_TRUE(yard.poor.advice.gifts.empty());
    EXPECT_EQ(option(yard.poor.advice, OptionKind::MoveCombs), nullptr);
}

TEST(ShareCombs, CombsMustFitTheReceiver) {
    Yard yard;
    for (auto& box : yard.poor.question.boxes) box.outline.height = millimetres(135);
    yard.share();
    EXPECT_TRUE(yard.poor.advice.gifts.empty());
}

TEST(ShareCombs, AMemberWithoutAnAnswerIsPassedOver) {
    Yard yard;
    auto unknown = colony({});
    unknown.bees.reset();
    YardMember silent = member(unknown, "Silent");
    std::vector<YardMember*> members{&yard.rich, &silent, &yard.poor};
    shareCombs(members);
    EXPECT_TRUE(silent.advice.gifts.empty());
    EXPECT_FALSE(yard.poor.advice.gifts.empty());
}

} // namespace winterlarder::advice
