// SPDX-License-Identifier: GPL-3.0-or-later
// What is told beside the verdict: target, need, expectation, next look, weights, question, cautions.
#include "advice/colonies.h"
#include "advice/remarks/five_cautions.h"
#include "advice/target.h"

#include <set>

namespace winterlarder::advice::told_test {

TEST(Target, MissingIsTheTargetLessWhatWillBeThere) {
    const auto a = adviceFor(colony({.capped = 0.5}));
    EXPECT_NEAR(
        a.missing->typical.value(),
        (a.target->stores - a.estimate->mean + a.untilTarget->eaten.typical - a.untilTarget->found.typical).value(),
        0.6);
    EXPECT_LE(a.missing->low, a.missing->typical);
    EXPECT_LE(a.missing->typical, a.missing->high);
}

TEST(Target, TheNeedsPartsAddUp) {
    const auto a = adviceFor(colony({.capped = 0.5}));
    EXPECT_NEAR((a.needParts->typicalUse + a.needParts->harderWinter + a.needParts->reserve).value(), a.need->value(),
                1e-9);
    EXPECT_GT(a.needParts->harderWinter, kilograms(0));
}

TEST(Target, AVaguerLookRaisesNoAmount) {
    auto sure = colony({.asOf = "2026-10-01", .capped = 0.4});
    auto vague = sure;
    for (std::size_t i = 1; i < vague.combs.size(); ++i) vague.combs[i].facesSeen = 0;
    const auto a = adviceFor(sure), b = adviceFor(vague);
    EXPECT_NEAR(a.target->stores.value(), b.target->stores.value(), 1e-9);
    EXPECT_NEAR(a.missing->typical.value(), b.missing->typical.value(), 0.3);
    EXPECT_GE(b.deadBand, a.deadBand);
    EXPECT_GT(b.missing->high, a.missing->high);
}

TEST(Target, ACountsOwnDoubtChangesNoAmountEither) {
    auto counted = colony({.capped = 0.4});
    counted.beesLogSd = 0.05;
    auto seams = counted;
    seams.beesLogSd = 0.21;
    const auto a = adviceFor(counted), b = adviceFor(seams);
    EXPECT_EQ(a.target->stores, b.target->stores);
    EXPECT_EQ(a.missing->typical, b.missing->typical);
    EXPECT_LT(b.bees->low, a.bees->low);
    EXPECT_GT(b.missing->high, a.missing->high);
}

TEST(DeadBand, IsTheWidestOfThreeAndFourKilogramsAtMost) {
    const auto& rules = shipped().decisions;
    const auto of = [&](double target, double band) {
        return deadBand(kilograms(target), {kilograms(0), kilograms(band / 2), kilograms(band)}, rules).value();
    };
    EXPECT_NEAR(of(5, 1), 1, 1e-9);
    EXPECT_NEAR(of(20, 1), 2, 1e-9);
    EXPECT_NEAR(of(20, 12), 3, 1e-9);
    EXPECT_NEAR(of(20, 40), 4, 1e-9);
}

TEST(DeadBand, InsideItNothingIsFedOrTaken) {
    bool found = false;
    for (double capped = 0.4; capped < 0.9; capped += 0.02) {
        const auto a =
            adviceFor(colony({.station = "gb-london", .asOf = "2026-09-26", .capped = capped, .covered = 6}));
        if (std::abs(a.missing->typical.value()) >= a.deadBand.value()) continue;
        found = true;
        EXPECT_EQ(a.verdict, Verdict::Leave) << capped;
        EXPECT_FALSE(a.feed || a.harvest) << capped;
    }
    EXPECT_TRUE(found);
}

TEST(NoBroodSeen, IsTakenForNotSeenUntilSomebodyKnows) {
    auto q = colony({.asOf = "2026-09-05"});
    const auto unknown = adviceFor(q);
    ASSERT_TRUE(unknown.needIfStopped);
    EXPECT_LT(*unknown.needIfStopped, *unknown.need - kilograms(1));
    ASSERT_TRUE(unknown.ask);
    EXPECT_EQ(unknown.ask->kind, AskKind::Queen);
    auto unsaid = q;
    unsaid.brood.reset();
    EXPECT_NEAR(unknown.need->value(), adviceFor(unsaid).need->value(), 1e-9);
    q.queenSeen = true;
    const auto known = adviceFor(q);
    EXPECT_FALSE(known.needIfStopped);
    EXPECT_LT(*known.need, *unknown.need);
}

TEST(WeighLine, IsOfTheFirstOfEachMonthUntilForage) {
    const auto a = adviceFor(colony({.capped = 0.9}));
    ASSERT_GE(a.weighLine.size(), 6u);
    for (const auto& point : a.weighLine) {
        EXPECT_EQ(point.date.day(), 1);
        EXPECT_LT(point.gross.low, point.gross.high);
        EXPECT_GT(point.date, a.asOf);
    }
    EXPECT_GT(a.weighLine.front().gross.typical, a.weighLine.back().gross.typical);
}

TEST(WeighLine, CountsTheFeedOnItsDates) {
    auto q = colony({.asOf = "2026-09-20", .capped = 0.3});
    const auto a = adviceFor(q);
    ASSERT_TRUE(a.feed);
    EXPECT_GT(a.weighLine[1].gross.typical, q.tare + a.estimate->mean) << "what was fed by then is in it";
}

TEST(ExpectedLater, IsNothingWhereNothingWillBeWanted) {
    EXPECT_FALSE(adviceFor(colony({.asOf = "2026-12-01", .capped = 0.95, .combs = 20})).expectedLater);
    const auto little = adviceFor(colony({.asOf = "2026-12-01", .capped = 0.35}));
    ASSERT_TRUE(little.expectedLater);
    EXPECT_GT(little.expectedLater->fondant.high.value(), 0.5);
    EXPECT_GE(little.expectedLater->from, little.asOf);
    EXPECT_LE(little.expectedLater->from, little.expectedLater->until);
}

TEST(Ask, WhomASuperIsForWhereThatMovesMuch) {
    auto q = colony({.capped = 0.6, .combs = 20});
    q.queenSeen = true;
    for (std::size_t i = 10; i < 20; ++i) q.combs[i].inSuper = true;
    ASSERT_TRUE(adviceFor(q).ask);
    EXPECT_EQ(adviceFor(q).ask->kind, AskKind::SuperFor);
    q.answers.supersFor = SupersFor::Bees;
    const auto asked = adviceFor(q).ask;
    EXPECT_TRUE(!asked || asked->kind != AskKind::SuperFor);
}

TEST(Ask, WhatFlowsUntilTheLastIncomeAndNoLonger) {
    auto q = colony({.asOf = "2026-09-05", .capped = 0.6, .brood = 0.1});
    q.lateFlowNear = true;
    q.queenSeen = true;
    q.answers.mitesCounted = true;
    q.answers.visitsInWinter = true;
    q.answers.foodBeside = true;
    q.answers.fedOrTreated = false;
    q.answers.supersFor = SupersFor::Bees;
    q.answers.fullCombs = 0;
    q.season.lastIncome->day = q.asOf + 30;
    ASSERT_TRUE(adviceFor(q).ask);
    EXPECT_EQ(adviceFor(q).ask->kind, AskKind::FlowToCome);
    q.lateFlows = {"ivy"};
    EXPECT_EQ(adviceFor(q).ask->flows, q.lateFlows);
    q.decisions.flowFair = 5; // so strong that what some winters have of it after that day would be worth asking
    q.season.lastIncome->day = q.asOf;
    EXPECT_FALSE(adviceFor(q).ask);
}

TEST(Told, OfASuperThatStaysWithTheBeesNothingIsTakenOff) {
    auto q = colony({.asOf = "2026-09-05", .capped = 0.3, .brood = 0.1, .combs = 20});
    q.queenSeen = true;
    q.boxUses = {{false, {}}, {true, {}}};
    for (std::size_t i = 10; i < 20; ++i) q.combs[i].inSuper = true, q.combs[i].brood = 0;
    const auto everything = [](const Advice& a) {
        auto said = a.cautions;
        said.insert(said.end(), a.goodPractice.begin(), a.goodPractice.end());
        return said;
    };
    q.answers.supersFor = SupersFor::People;
    ASSERT_TRUE(adviceFor(q).feed);
    EXPECT_TRUE(says(everything(adviceFor(q)), "no-supers-while-feeding"));
    q.answers.supersFor = SupersFor::Bees;
    ASSERT_TRUE(adviceFor(q).feed);
    EXPECT_FALSE(says(everything(adviceFor(q)), "no-supers-while-feeding"));
    q.asOf = {-150};
    q.lookedOn = q.asOf;
    for (const auto& each : everything(adviceFor(q)))
        if (each.id == "varroa-first") EXPECT_EQ(std::get<std::string>(each.details.at("class")), "summer-bees");
}

TEST(Told, NoBoxIsLiftedWhereThereAreNone) {
    auto q = colony({.asOf = "2026-09-26", .capped = 0.9, .combs = 20, .covered = 7});
    ASSERT_TRUE(adviceFor(q).harvest);
    EXPECT_TRUE(says(adviceFor(q).cautions, "lifting") || says(adviceFor(q).goodPractice, "lifting"));
    for (auto& box : q.boxes) box.id = "topbar-straight-440";
    EXPECT_FALSE(says(adviceFor(q).cautions, "lifting") || says(adviceFor(q).goodPractice, "lifting"));
}

TEST(Ask, NothingThatWasAnswered) {
    auto q = colony({.capped = 0.6, .brood = 0.1});
    std::set<AskKind> kinds;
    for (int i = 0; i < 12; ++i) {
        const auto ask = adviceFor(q).ask;
        if (!ask) break;
        EXPECT_TRUE(kinds.insert(ask->kind).second) << "asked twice";
        switch (ask->kind) {
        case AskKind::Queen: q.queenSeen = true; break;
        case AskKind::Mites: q.answers.mitesCounted = true; break;
        case AskKind::FedOrTreated: q.answers.fedOrTreated = false; break;
        case AskKind::SuperFor: q.answers.supersFor = SupersFor::Bees; break;
        case AskKind::Tare: q.tareSd = kilograms(0); break;
        case AskKind::FlowToCome: q.answers.autumnFlow = 0; break;
        case AskKind::FullCombs: q.answers.fullCombs = 0; break;
        case AskKind::WinterVisits: q.answers.visitsInWinter = true; break;
        case AskKind::FoodBesideBees: q.answers.foodBeside = true; break;
        }
    }
    EXPECT_FALSE(adviceFor(q).ask);
    EXPECT_GE(kinds.size(), 2u);
}

TEST(UsualHere, WhatKeepersSayIsNotToldToHoldHoneyBack) {
    auto q = colony({});
    const auto classOf = [&](char quality, double lowKg) {
        q.usual = UsualHere{kilograms(lowKg), kilograms(lowKg + 10), "judgement", "Here", quality};
        for (const auto& reason : adviceFor(q).reasons)
            if (reason.id == "usual-here") return std::get<std::string>(reason.details.at("class"));
        return std::string();
    };
    EXPECT_EQ(classOf('B', 60), "differs");
    EXPECT_EQ(classOf('C', 60), "differs-by-hearsay");
    EXPECT_EQ(classOf('C', 20), "agrees");
}

TEST(FiveCautions, AreFiveAtMostEachOnceTheRestGoodPractice) {
    std::vector<Remark> all;
    for (const char* id : {"stings", "moisture", "moisture", "emergency", "cluster-gap", "check-comb",
                           "robbing-and-wasps", "next-look", "varroa-first", "lifting", "infants"})
        all.push_back({id, {}});
    Advice advice;
    advice.phase = Phase::Closing;
    const auto said = fiveCautions(all, advice);
    ASSERT_EQ(said.cautions.size(), 5u);
    EXPECT_EQ(said.cautions[0].id, "emergency");
    EXPECT_EQ(said.cautions[4].id, "next-look");
    EXPECT_EQ(said.goodPractice.size(), 5u) << "the doubled one is said once";
    advice.phase = Phase::Summer;
    EXPECT_EQ(fiveCautions(all, advice).cautions.front().id, "varroa-first");
}

} // namespace winterlarder::advice::told_test
