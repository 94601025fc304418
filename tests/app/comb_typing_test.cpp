// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_typing.h"

#include "app/invented.h"

#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

// Types into one comb as the drawing would.
class Typist {
public:
    explicit Typist(book::CombRecord begun) : comb(std::move(begun)) {}
    Typist& type(const char* keys, bool shift = false) {
        for (const QChar key : QString::fromLatin1(keys)) {
            const auto typed = typing.type(QString(key), shift, 0, comb);
            taken = typed.taken;
            if (typed.edit) comb = typed.edit->record;
        }
        return *this;
    }
    double percent(Zone zone) const { return 100 * shareOf(comb, zone); }

    book::CombRecord comb;
    CombTyping typing;
    bool taken = false;
};

} // namespace

TEST(CombTyping, ALetterPicksAndADigitSetsTenths) {
    Typist typist({});
    typist.type("o2");
    EXPECT_NEAR(typist.percent(Zone::Open), 20, 1e-9);
    typist.type("C7");
    EXPECT_NEAR(typist.percent(Zone::Capped), 70, 1e-9);
    EXPECT_NEAR(typist.percent(Zone::Open), 20, 1e-9);
}

TEST(CombTyping, ASecondDigitRefinesAndAThirdBeginsAnew) {
    Typist typist({});
    typist.type("c75");
    EXPECT_NEAR(typist.percent(Zone::Capped), 75, 1e-9);
    typist.type("3");
    EXPECT_NEAR(typist.percent(Zone::Capped), 30, 1e-9);
    typist.type("c05");
    EXPECT_NEAR(typist.percent(Zone::Capped), 5, 1e-9);
}

TEST(CombTyping, AMistypedDigitCostsTheOtherZonesNothing) {
    Typist typist(invented::comb(0.2, 0.1, 0.4, 0.1));
    typist.type("c9"); // a slip: brood and bread gave way
    EXPECT_LT(typist.percent(Zone::Brood), 40);
    typist.type("03"); // 90 %, then 30 %: from the comb as it was
    EXPECT_NEAR(typist.percent(Zone::Capped), 30, 1e-9);
    EXPECT_NEAR(typist.percent(Zone::Brood), 40, 1e-9);
    EXPECT_NEAR(typist.percent(Zone::Open), 10, 1e-9);
}

TEST(CombTyping, WhatChangedMeanwhileIsNotTypedOver) {
    Typist typist(invented::comb(0.2, 0.1, 0.4, 0.1));
    typist.type("c3");
    typist.comb = withShare(typist.comb, Zone::Brood, 0.1); // undone, or edited elsewhere
    typist.type("4");
    EXPECT_NEAR(typist.percent(Zone::Brood), 10, 1e-9);
    EXPECT_NEAR(typist.percent(Zone::Capped), 40, 1e-9) << "not 34: the digit before belonged to another comb";
}

TEST(CombTyping, ShiftGivesAllEmptyCells) {
    Typist typist(invented::comb(0.2, 0.1, 0.4, 0.1));
    typist.type("C", true);
    EXPECT_NEAR(typist.percent(Zone::Capped), 40, 1e-9);
    EXPECT_NEAR(typist.percent(Zone::Brood), 40, 1e-9);
    EXPECT_NEAR(emptyShare(typist.comb), 0, 1e-9);
}

TEST(CombTyping, PlusAndMinusGoByFiveAndStopAtTheEnds) {
    Typist typist(invented::comb(0.95, 0, 0, 0));
    typist.type("c+++");
    EXPECT_NEAR(typist.percent(Zone::Capped), 100, 1e-9);
    typist.type("-");
    EXPECT_NEAR(typist.percent(Zone::Capped), 95, 1e-9);
}

TEST(CombTyping, FacesAndWindow) {
    Typist typist(invented::comb(0.5, 0, 0, 0));
    typist.type("f");
    EXPECT_EQ(typist.comb.facesSeen, 1);
    typist.type("f");
    EXPECT_EQ(typist.comb.facesSeen, 0);
    typist.type("fw");
    EXPECT_TRUE(typist.comb.throughWindow);
    EXPECT_EQ(seenOf(typist.comb), Seen::ThroughWindow);
    typist.type("w");
    EXPECT_EQ(seenOf(typist.comb), Seen::BothFaces);
}

TEST(CombTyping, ATypedShareMeansItWasLookedAtAndNotMeasured) {
    book::CombRecord comb;
    comb.facesSeen = 0;
    comb.measured = true;
    Typist typist(comb);
    typist.type("c4");
    EXPECT_EQ(typist.comb.facesSeen, 2);
    EXPECT_FALSE(typist.comb.measured);
    EXPECT_FALSE(typist.comb.brood.has_value()) << "what was not said stays unsaid";
}

TEST(CombTyping, BuiltIsTypedToo) {
    Typist typist(invented::comb(0.5, 0.1, 0, 0));
    typist.type("u6");
    EXPECT_NEAR(typist.comb.built, 0.6, 1e-9);
    EXPECT_NEAR(typist.percent(Zone::Capped), 50, 1e-9) << "shares are of what is built";
}

TEST(CombTyping, RepeatingKeepsWhatIsTheCombsOwn) {
    Typist typist(invented::comb(0.5, 0.1, 0, 0));
    typist.type("c8");
    book::CombRecord next;
    next.width = millimetres(38);
    next.oldNest = true;
    next.facesSeen = 0;
    const auto typed = typist.typing.repeat(1, next, nullptr);
    ASSERT_TRUE(typed.edit);
    EXPECT_NEAR(shareOf(typed.edit->record, Zone::Capped), 0.8, 1e-9);
    EXPECT_EQ(typed.edit->record.facesSeen, 2);
    EXPECT_EQ(typed.edit->record.width, millimetres(38));
    EXPECT_TRUE(typed.edit->record.oldNest);
}

TEST(CombTyping, WithNothingEnteredTheCombBeforeIsRepeatedAndNothingOnTheFirst) {
    CombTyping typing;
    const auto before = invented::comb(0.4, 0, 0, 0);
    EXPECT_FALSE(typing.repeat(0, {}, nullptr).edit);
    EXPECT_NEAR(shareOf(typing.repeat(1, {}, &before).edit->record, Zone::Capped), 0.4, 1e-9);
}

TEST(CombTyping, OtherKeysAreLeftToOthers) {
    Typist typist({});
    typist.type("x");
    EXPECT_FALSE(typist.taken);
}

} // namespace winterlarder::desk
