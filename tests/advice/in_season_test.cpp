// SPDX-License-Identifier: GPL-3.0-or-later
// What is said fits the day, the colony and everything else that is said: each rule and its opposite.
#include "advice/colonies.h"

#include <algorithm>

namespace winterlarder::advice::in_season_test {

namespace {

//! Two boxes, the upper one full, the lower one as given.
ColonyQuestion twoBoxes(const char* asOf, double below, double above) {
    auto q = colony({.asOf = asOf, .capped = below, .combs = 20});
    for (auto& comb : q.combs)
        if (comb.box == 1) comb.capped = above;
    return q;
}

std::string classOf(const std::vector<Remark>& remarks, std::string_view id) {
    for (const auto& remark : remarks)
        if (remark.id == id)
            if (const auto found = remark.details.find("class"); found != remark.details.end())
                return std::get<std::string>(found->second);
    return {};
}

std::string cautionClass(const Advice& advice, std::string_view id) {
    const std::string told = classOf(advice.cautions, id);
    return told.empty() ? classOf(advice.goodPractice, id) : told;
}

int days(const Advice& advice, Date day) { return static_cast<int>(day.daysSince(*advice.asOf)); }

} // namespace

// Honey -----------------------------------------------------------------------------------------------------------------

TEST(InSeason, WhereStoresAreKnownToAWideBandALookComesBeforeTheHarvest) {
    auto wide = colony({.asOf = "2026-09-20", .capped = 0.95, .combs = 20, .covered = 6});
    const auto rough = adviceFor(wide);
    ASSERT_EQ(rough.decidedBy, DecidedBy::Harvest);
    EXPECT_TRUE(rough.anotherLook.worthIt);
    EXPECT_TRUE(rough.lookFirst);
    auto weighed = wide;
    weighed.tareSd = kilograms(0);
    weighed.weighings.push_back(onScale(wide, rough.estimate->mean + kilograms(24)));
    const auto sure = adviceFor(weighed);
    ASSERT_EQ(sure.decidedBy, DecidedBy::Harvest);
    EXPECT_FALSE(sure.lookFirst) << "both were done";
}

TEST(InSeason, InSummerASuperWaitsForNoWeighingWhereTheSafetyAmountStaysAnyhow) {
    auto q = colony(
        {.station = "us-vt-burlington", .asOf = "2026-08-08", .capped = 0.5, .brood = 0.2, .combs = 20, .covered = 9});
    for (auto& comb : q.combs)
        if (comb.box == 1) comb.inSuper = true, comb.brood = 0, comb.capped = 0.8;
    const auto rich = adviceFor(q);
    ASSERT_EQ(rich.decidedBy, DecidedBy::SummerHarvest);
    EXPECT_TRUE(rich.anotherLook.worthIt);
    EXPECT_FALSE(rich.lookFirst);
    EXPECT_EQ(rich.harvest->wholeSupers, 1);
    for (auto& comb : q.combs)
        if (comb.box == 0) comb.capped = 0.28;
    const auto bare = adviceFor(q);
    ASSERT_EQ(bare.decidedBy, DecidedBy::SummerHarvest);
    EXPECT_TRUE(bare.lookFirst) << "at the low end less than the safety amount would stay";
}

TEST(InSeason, CombsBesideTheNestAreNoSuper) {
    const auto a = adviceFor(colony({.asOf = "2026-09-20", .capped = 0.95, .combs = 20, .covered = 6}));
    ASSERT_TRUE(a.harvest);
    EXPECT_EQ(a.harvest->wholeSupers, 0);
}

TEST(InSeason, AKeepersSuperComesOffBeforeSyrupGoesOn) {
    auto q = twoBoxes("2026-09-10", 0.1, 0.3);
    for (auto& comb : q.combs) comb.inSuper = comb.box == 1;
    q.answers.supersFor = SupersFor::People;
    const auto people = adviceFor(q);
    ASSERT_TRUE(people.feed);
    EXPECT_TRUE(people.superOffFirst);
    q.answers.supersFor = SupersFor::Bees;
    const auto bees = adviceFor(q);
    ASSERT_TRUE(bees.feed);
    EXPECT_FALSE(bees.superOffFirst);
}

TEST(InSeason, TheSurplusNamesWhatIsUsualOnlyWhereThatHeldHoneyBack) {
    auto q = colony({.asOf = "2026-09-20", .capped = 0.95, .combs = 20, .covered = 6});
    q.usual = UsualHere{kilograms(5), kilograms(6), "capa-quoted", "here", 'B'};
    EXPECT_EQ(classOf(adviceFor(q).reasons, "surplus"), "usual");
    q.usual->quality = 'C';
    EXPECT_EQ(classOf(adviceFor(q).reasons, "surplus"), "alone");
    q.usual.reset();
    EXPECT_EQ(classOf(adviceFor(q).reasons, "surplus"), "alone");
}

TEST(InSeason, TheSourceOfWhatIsUsualIsItsOwnRows) {
    auto q = colony({.capped = 0.5});
    q.usual = UsualHere{kilograms(5), kilograms(6), "capa-quoted", "here", 'B'};
    const auto a = adviceFor(q);
    const auto found =
        std::find_if(a.reasons.begin(), a.reasons.end(), [](const Remark& each) { return each.id == "usual-here"; });
    ASSERT_NE(found, a.reasons.end());
    EXPECT_EQ(shipped().sourcesOf(*found), std::vector<std::string>{"capa-quoted"});
    EXPECT_EQ(shipped().sourcesOf({"usual-here", {}}), std::vector<std::string>{"common-practice"})
        << "the rule's, where none is named";
}

// Later -----------------------------------------------------------------------------------------------------------------

TEST(InSeason, NoAmountIsExpectedWhileEvidenceContradicts) {
    auto q = weighedAt("2026-12-10", 60);
    const auto one = adviceFor(weighedAt("2026-12-10", 32));
    EXPECT_TRUE(one.expectedLater);
    auto combs = colony({.asOf = "2026-12-10", .capped = 0.25});
    combs.tareSd = kilograms(0);
    combs.weighings = q.weighings;
    const auto both = adviceFor(combs);
    ASSERT_EQ(both.decidedBy, DecidedBy::Contradiction);
    EXPECT_FALSE(both.expectedLater);
}

TEST(InSeason, AfterALightHeftInClosingTheRestIsSyrupAndNoFondant) {
    EXPECT_FALSE(adviceFor(hefted("2026-09-15", stores::HeftWord::Light)).expectedLater);
    EXPECT_TRUE(adviceFor(hefted("2026-12-15", stores::HeftWord::Light)).expectedLater);
}

TEST(InSeason, FondantLaidOnALightHiveHasToTouchTheBees) {
    const auto told = [](const Advice& advice) {
        return std::any_of(advice.cautions.begin(), advice.cautions.end(),
                           [](const Remark& each) { return each.id == "emergency"; });
    };
    EXPECT_TRUE(told(adviceFor(hefted("2027-01-10", stores::HeftWord::Light))));
    EXPECT_FALSE(told(adviceFor(hefted("2027-01-10", stores::HeftWord::Fair)))) << "nothing is laid on";
    EXPECT_FALSE(told(adviceFor(hefted("2026-09-15", stores::HeftWord::Light)))) << "it is syrup";
}

TEST(InSeason, FarTooManyMitesComeBeforeStores) {
    auto q = colony({.asOf = "2026-09-15", .capped = 0.5});
    q.answers.mitesCounted = true;
    q.answers.mitesPer100 = 8;
    const auto many = adviceFor(q);
    ASSERT_FALSE(many.cautions.empty());
    EXPECT_EQ(many.cautions.front().id, "varroa-first");
    EXPECT_EQ(cautionClass(many, "varroa-first"), "many");
    q.answers.mitesPer100 = 1;
    EXPECT_EQ(cautionClass(adviceFor(q), "varroa-first"), "counted");
    q.answers.mitesPer100 = 8;
    q.answers.mitesTreated = true;
    EXPECT_EQ(cautionClass(adviceFor(q), "varroa-first"), "treated");
}

TEST(InSeason, AHeavyHiveIsNotWeighedWithinDays) {
    const auto heavy = adviceFor(hefted("2027-01-10", stores::HeftWord::Heavy)),
               fair = adviceFor(hefted("2027-01-10", stores::HeftWord::Fair));
    EXPECT_GE(days(heavy, heavy.nextLook->date), 7);
    EXPECT_EQ(days(fair, fair.nextLook->date), 3);
}

TEST(InSeason, FondantIsExpectedNoSoonerThanTheNextWeighing) {
    const auto a = adviceFor(weighedAt("2026-12-15", 33));
    ASSERT_TRUE(a.expectedLater && !a.feed);
    EXPECT_EQ(a.expectedLater->from, std::min(a.nextLook->date, a.expectedLater->until));
}

TEST(InSeason, AfterTheLastFeedBeforeTheQuietTimeNoneIsExpected) {
    const auto early = adviceFor(weighedAt("2027-03-20", 23.5)), last = adviceFor(weighedAt("2027-04-28", 23.2));
    ASSERT_TRUE(early.feed && last.feed);
    EXPECT_TRUE(early.expectedLater);
    EXPECT_FALSE(last.expectedLater) << "a fortnight on is too near to spring forage";
}

// Queen, food, mites ----------------------------------------------------------------------------------------------------

TEST(InSeason, BeesWithoutAQueenAreUnitedWithinThreeWeeks) {
    auto q = colony({.asOf = "2026-08-25", .capped = 0.6});
    q.queenSeen = q.eggsSeen = false;
    q.brood = BeeCount{0};
    const auto a = adviceFor(q);
    ASSERT_EQ(a.decidedBy, DecidedBy::NoQueen);
    EXPECT_EQ(days(a, a.unite->by), 21);
    EXPECT_EQ(a.nextLook->what, NextLookAt::QueenCells);
    EXPECT_EQ(days(a, a.nextLook->date), 4);
    EXPECT_TRUE(!a.ask || a.ask->kind == AskKind::Mites) << "a flow to come or combs in store change nothing for them";
    auto late = colony({.asOf = "2026-10-01", .capped = 0.6});
    late.queenSeen = late.eggsSeen = false;
    late.brood = BeeCount{0};
    const auto soon = adviceFor(late);
    ASSERT_EQ(soon.decidedBy, DecidedBy::NoQueen);
    EXPECT_LT(days(soon, soon.unite->by), 21) << "while it is warm enough";
}

TEST(InSeason, FoodIsOutOfReachOnlyWhereMuchOfItLiesElsewhere) {
    auto q = colony({.asOf = "2026-12-01", .capped = 0, .covered = 3});
    q.combs[8].brood = 0.05;
    q.combs[8].capped = q.combs[9].capped = 0.1;
    q.combs[0].capped = 0.9;
    EXPECT_EQ(adviceFor(q).decidedBy, DecidedBy::NoFoodInReach);
    q.combs[0].capped = 0.3;
    const auto small = adviceFor(q);
    EXPECT_EQ(small.decidedBy, DecidedBy::WinterVisit) << "half a comb elsewhere is not what they lack";
    EXPECT_TRUE(small.feed);
}

TEST(InSeason, WhoHasTreatedIsToldToCountAgain) {
    auto q = colony({.capped = 0.5});
    EXPECT_EQ(cautionClass(adviceFor(q), "varroa-first"), "north");
    q.answers.mitesTreated = true;
    EXPECT_EQ(cautionClass(adviceFor(q), "varroa-first"), "treated");
    q.trouble = true;
    EXPECT_EQ(cautionClass(adviceFor(q), "varroa-first"), "") << "with signs of disease the hive stays closed";
}

TEST(InSeason, MarchAndAprilAreNamedWhereBroodGrowsThen) {
    EXPECT_EQ(cautionClass(adviceFor(weighedAt("2026-12-15", 33, "gb-oxford")), "spring-starvation"), "north");
    EXPECT_EQ(cautionClass(adviceFor(weighedAt("2026-12-15", 28, "us-fl-tallahassee")), "spring-starvation"), "any");
    EXPECT_EQ(cautionClass(adviceFor(weighedAt("2026-12-15", 36, "fi-sodankyla")), "spring-starvation"), "any");
}

// Combs and cluster -----------------------------------------------------------------------------------------------------

TEST(InSeason, CombsOfHoneyAreNoReasonToNarrowTheNest) {
    auto full = twoBoxes("2026-09-20", 0.5, 0.9);
    full.coveredCombs = 9;
    EXPECT_FALSE(says(adviceFor(full).reasons, "narrow-nest"));
    auto empty = twoBoxes("2026-10-04", 0.95, 0.0);
    empty.coveredCombs = 5;
    empty.bees = stores::beesOnCombs(5, empty.combs, empty.boxes.front());
    const auto narrowed = adviceFor(empty);
    ASSERT_FALSE(narrowed.feed);
    EXPECT_TRUE(says(narrowed.reasons, "narrow-nest"));
    auto hungry = twoBoxes("2026-09-20", 0.4, 0.0);
    const auto fed = adviceFor(hungry);
    ASSERT_TRUE(fed.feed);
    EXPECT_FALSE(says(fed.reasons, "narrow-nest")) << "the syrup wants them";
    empty.trouble = true;
    EXPECT_FALSE(says(adviceFor(empty).reasons, "narrow-nest")) << "nothing of a sick hive is moved";
}

TEST(InSeason, WhatIsFedInClosingComesWithinReach) {
    const auto fed = adviceFor(colony({.asOf = "2026-09-14", .capped = 0.05}));
    ASSERT_TRUE(fed.feed);
    ASSERT_LT(fed.estimate->mean, kilograms(3)) << "a cold spell here takes more than there is in all";
    EXPECT_EQ(cautionClass(fed, "cluster-gap"), "");
    const auto winter = adviceFor(colony({.asOf = "2026-12-20", .capped = 0.2}));
    EXPECT_EQ(cautionClass(winter, "cluster-gap"), "winter");
}

TEST(InSeason, NoLongColdSpellIsSpokenOfWhenTheColdIsNearlyOver) {
    const auto december = colony({.asOf = "2026-12-20", .capped = 0.2});
    const auto nearlyOver = december.winter.date(december.season.buildup->day - 3).iso();
    const auto april = adviceFor(colony({.asOf = nearlyOver.c_str(), .capped = 0.2}));
    ASSERT_EQ(april.phase, Phase::Winter);
    EXPECT_EQ(cautionClass(april, "cluster-gap"), "");
}

TEST(InSeason, SmallPortionsOfADearthAreNotTooLate) {
    auto dearth = colony({.station = "us-fl-tallahassee", .asOf = "2026-11-15", .capped = 0.25, .covered = 6});
    const auto warm = adviceFor(dearth);
    ASSERT_EQ(warm.decidedBy, DecidedBy::SmallPortions);
    EXPECT_EQ(classOf(warm.reasons, "small-portions"), "dearth");
    const auto late = adviceFor(colony({.station = "de-munich", .asOf = "2026-10-08", .capped = 0.25}));
    ASSERT_EQ(late.decidedBy, DecidedBy::SmallPortions);
    EXPECT_EQ(classOf(late.reasons, "small-portions"), "late");
}

} // namespace winterlarder::advice::in_season_test
