// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers are worked by hand: 3:2 makes 1.2957 L of syrup and 1.0450 kg of stores of a kilogram of sugar.
#include "feeding/schedule.h"

#include "feeding/feeding_cases.h"
#include "support/require.h"

#include <gtest/gtest.h>
#include <limits>

namespace winterlarder::feeding::schedule_test {
namespace {

const climate::ClimateCurve warm = everyDay(16);

std::vector<int> daysOf(const std::vector<Visit>& visits) {
    std::vector<int> days;
    for (const Visit& visit : visits) days.push_back(visit.day.w);
    return days;
}

std::vector<int> syrupDays(const FeedingPlan& plan) { return daysOf(visitsOf(plan, VisitKind::Syrup)); }
std::vector<int> fondantDays(const FeedingPlan& plan) { return daysOf(visitsOf(plan, VisitKind::Fondant)); }
std::vector<int> checkDays(const FeedingPlan& plan) { return daysOf(visitsOf(plan, VisitKind::Check)); }

double syrupStores(const FeedingPlan& plan) { return plan.syrup.stores.value(); }

// ---- doses and days -------------------------------------------------------------------------------------------------

TEST(FeedingPlan, DosesAreGivenAsTheyAreTaken) {
    const FeedingPlan plan = planFeeding(autumnQuestion(warm));
    const auto visits = visitsOf(plan, VisitKind::Syrup);
    EXPECT_EQ(daysOf(visits), (std::vector<int>{-120, -117, -114}));
    ASSERT_EQ(visits.size(), 3u);
    EXPECT_EQ(plan.ratio.printed, "3:2");
    EXPECT_NEAR(visits[0].sugar.value(), 3.8, 1e-9); // 5 L hold 3.859 kg, weighed out in steps of 0.1 kg
    EXPECT_NEAR(visits[1].sugar.value(), 3.8, 1e-9);
    EXPECT_NEAR(visits[2].sugar.value(), 10 / 1.0450 - 7.6, 0.001);
    EXPECT_NEAR(visits[0].syrup.value(), 3.8 * 1.2957, 0.001);
    EXPECT_EQ(visits[0].date.iso(), "2026-09-03");
    EXPECT_EQ(visits[2].date.iso(), "2026-09-09");
    EXPECT_EQ(checkDays(plan), (std::vector<int>{-104}));
    EXPECT_EQ(plan.fondant.value(), 0);
    EXPECT_EQ(plan.lastDay, SeasonDay{-70});
}

TEST(FeedingPlan, TheSumsAgree) {
    const FeedingPlan plan = planFeeding(autumnQuestion(warm));
    Mass sugar{0};
    Volume syrup{0};
    for (const Visit& visit : plan.visits) {
        sugar += visit.sugar;
        syrup += visit.syrup;
    }
    EXPECT_NEAR(sugar.value(), plan.syrup.sugar.value(), 1e-9);
    EXPECT_NEAR(syrup.value(), plan.syrup.volume.value(), 1e-9);
    EXPECT_NEAR(plan.stores.value(), 10, 1e-9);
    EXPECT_NEAR(syrupStores(plan), 10, 1e-9);
}

TEST(FeedingPlan, NothingLimitsAnEasyPlan) {
    const FeedingLimits limits = planFeeding(autumnQuestion(warm)).limits;
    EXPECT_FALSE(limits.roomFull || limits.deadlinePassed || limits.tooSlow || limits.afterAdvised ||
                 limits.smallLotsOnly);
}

TEST(FeedingPlan, TheTopFeederIsFilledInOneGo) {
    auto question = autumnQuestion(warm);
    question.feeder = {litres(12), true, false, false};
    const auto visits = visitsOf(planFeeding(question), VisitKind::Syrup);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{-120, -117})); // 12 L last three days
    EXPECT_NEAR(visits[0].sugar.value(), 9.2, 1e-9);
}

TEST(FeedingPlan, ASmallFeederIsFilledOften) {
    auto question = autumnQuestion(warm);
    question.storesWanted = kilograms(5);
    question.feeder = {litres(2.8), false, true, true}; // 2.1 kg of sugar, 2 L a day
    const auto visits = visitsOf(planFeeding(question), VisitKind::Syrup);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{-120, -117, -114}));
    EXPECT_NEAR(visits[0].sugar.value(), 2.1, 1e-9);
}

TEST(FeedingPlan, TheKeeperComesOnHisDaysOnly) {
    auto question = autumnQuestion(warm);
    question.visitWeekdays = {6}; // Saturdays: 5, 12, 19 September 2026
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(syrupDays(plan), (std::vector<int>{-118, -111, -104}));
    EXPECT_EQ(checkDays(plan), (std::vector<int>{-90})); // 10 days later is a Tuesday; the next Saturday
}

TEST(FeedingPlan, TheKeeperComesNoOfterThanHeSays) {
    auto question = autumnQuestion(warm);
    question.visitEveryDays = 7;
    EXPECT_EQ(syrupDays(planFeeding(question)), (std::vector<int>{-120, -113, -106}));
    question.visitWeekdays = {1, 4}; // Thursday the 3rd; a week later is a Thursday again
    EXPECT_EQ(syrupDays(planFeeding(question)), (std::vector<int>{-120, -113, -106}));
    question.visitEveryDays = 8;
    EXPECT_EQ(syrupDays(planFeeding(question)),
              (std::vector<int>{-120, -109, -99})); // a Thursday, a Monday, a Thursday
}

TEST(FeedingPlan, ASlowColonyIsWaitedFor) {
    auto question = autumnQuestion(warm);
    question.storesWanted = kilograms(6);
    question.bees = {5000}; // 0.3 L a day: a dose of 4.924 L lasts 17 days
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(syrupDays(plan), (std::vector<int>{-120, -103}));
    // 2.516 L last 9 days, so 10 days after the dose the feeder is empty.
    EXPECT_EQ(checkDays(plan), (std::vector<int>{-93}));
}

TEST(FeedingPlan, NobodyChecksAFeederThatIsStillFull) {
    auto question = autumnQuestion(warm);
    question.storesWanted = kilograms(3.9);
    question.bees = {5000}; // 3.732 kg of sugar, 4.836 L, 17 days
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(syrupDays(plan), (std::vector<int>{-120}));
    EXPECT_EQ(checkDays(plan), (std::vector<int>{-103}));
}

TEST(FeedingPlan, TheKeepersOwnRatioIsUsed) {
    auto question = autumnQuestion(warm);
    question.ratio = parseRatio("2:1").value();
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(plan.ratio.printed, "2:1");
    EXPECT_EQ(plan.advised.ratio.printed, "3:2");
    EXPECT_NEAR(plan.syrup.sugar.value(), 10 / 1.1100, 0.001);
    EXPECT_NEAR(visitsOf(plan, VisitKind::Syrup).front().sugar.value(), 4.4, 1e-9); // 5 L hold 4.421 kg
}

TEST(FeedingPlan, ThickSyrupOnceTheWarmWeeksAreFew) {
    auto question = autumnQuestion(warm);
    question.today = SeasonDay{-103}; // 34 days to the last one
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(plan.ratio.printed, "2:1");
    EXPECT_EQ(plan.advised.warmDaysLeft, 34);
}

TEST(FeedingPlan, InTheSouthTheSameDaysAreInAutumn) {
    auto question = autumnQuestion(warm);
    question.winter = Winter(Hemisphere::South, 2027);
    const auto visits = visitsOf(planFeeding(question), VisitKind::Syrup);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{-120, -117, -114}));
    EXPECT_EQ(visits.front().date.iso(), "2027-03-03");
}

// ---- the last day ---------------------------------------------------------------------------------------------------

TEST(FeedingPlan, TheLastDoseIsCutToWhatIsStillTaken) {
    auto question = autumnQuestion(warm);
    question.today = SeasonDay{-70};
    question.ratio = Ratio{};
    const FeedingPlan plan = planFeeding(question);
    const auto visits = visitsOf(plan, VisitKind::Syrup);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{-70}));
    EXPECT_NEAR(visits[0].syrup.value(), 4, 1e-9); // one day
    EXPECT_NEAR(plan.fondant.value(), (10 - 4 / 1.2957 * 1.0450) / 0.85, 0.001);
    EXPECT_EQ(fondantDays(plan), (std::vector<int>{-67}));
    EXPECT_TRUE(plan.limits.tooSlow);
    EXPECT_TRUE(plan.limits.afterAdvised);
    EXPECT_FALSE(plan.limits.deadlinePassed);
    EXPECT_EQ(checkDays(plan), (std::vector<int>{-60})); // 10 days later is the day syrup is refused
}

TEST(FeedingPlan, TheCheckIsNotLaterThanTheDaySyrupIsRefused) {
    auto question = autumnQuestion(warm);
    question.today = SeasonDay{-71};
    question.season.syrupRefused = on(-66);
    EXPECT_EQ(checkDays(planFeeding(question)), (std::vector<int>{-66}));
    question.visitWeekdays = {4, 5}; // Thursday -71, Friday -70; -66 is a Tuesday
    EXPECT_EQ(checkDays(planFeeding(question)), (std::vector<int>{-70}));
    question.visitWeekdays = {4}; // no Thursday left
    EXPECT_EQ(checkDays(planFeeding(question)), (std::vector<int>{-66}));
}

TEST(FeedingPlan, ColdDaysCutTheUptake) {
    const auto cool = everyDay(11); // daily maximum 15: two fifths, 1.6 L a day
    auto question = autumnQuestion(cool);
    question.today = SeasonDay{-73}; // 4 days: 6.4 L
    question.ratio = Ratio{};
    const FeedingPlan plan = planFeeding(question);
    const auto visits = visitsOf(plan, VisitKind::Syrup);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{-73}));
    EXPECT_NEAR(visits[0].sugar.value(), 3.8, 1e-9); // 4.924 L are gone on -70, nobody feeds after it
    EXPECT_TRUE(plan.limits.tooSlow);
}

TEST(FeedingPlan, ALateDoseTooSmallToBotherIsLeftOut) {
    auto question = autumnQuestion(warm);
    question.bees = {7000}; // 0.98 L a day
    question.today = SeasonDay{-70};
    EXPECT_EQ(syrupDays(planFeeding(question)).size(), 1u);
    question.bees = {5000}; // 0.3 L on the only day
    const FeedingPlan plan = planFeeding(question);
    EXPECT_TRUE(syrupDays(plan).empty());
    EXPECT_TRUE(plan.limits.tooSlow);
    EXPECT_NEAR(plan.stores.value(), 10, 1e-9);
}

TEST(FeedingPlan, FondantOnceTheLastDayIsPast) {
    auto question = autumnQuestion(warm);
    question.today = SeasonDay{-69};
    const FeedingPlan plan = planFeeding(question);
    EXPECT_TRUE(syrupDays(plan).empty());
    EXPECT_EQ(fondantDays(plan), (std::vector<int>{-69}));
    EXPECT_NEAR(plan.fondant.value(), 10 / 0.85, 1e-9);
    EXPECT_EQ(plan.syrup.sugar.value(), 0);
    EXPECT_TRUE(plan.limits.deadlinePassed);
    EXPECT_TRUE(plan.limits.smallLotsOnly);
    EXPECT_FALSE(plan.limits.tooSlow);
    EXPECT_TRUE(checkDays(plan).empty());
    EXPECT_EQ(plan.crystallisingGPerKg, 0);
}

TEST(FeedingPlan, SmallLotsOnlyUntilSyrupIsRefused) {
    auto question = autumnQuestion(warm);
    question.today = SeasonDay{-60};
    EXPECT_TRUE(planFeeding(question).limits.smallLotsOnly);
    question.today = SeasonDay{-59};
    EXPECT_FALSE(planFeeding(question).limits.smallLotsOnly);
    EXPECT_TRUE(planFeeding(question).limits.deadlinePassed);
    question.season.syrupRefused.reset(); // never wholly refused
    EXPECT_TRUE(planFeeding(question).limits.smallLotsOnly);
}

TEST(FeedingPlan, SyrupAllWinterWhereThereIsNoLastDay) {
    auto question = autumnQuestion(warm);
    question.season.syrupDeadline.reset();
    question.season.syrupRefused.reset();
    question.season.feedAdvisedBy.reset();
    question.today = SeasonDay{10};
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(syrupDays(plan), (std::vector<int>{10, 13, 16}));
    EXPECT_EQ(checkDays(plan), (std::vector<int>{26}));
    EXPECT_FALSE(plan.lastDay.has_value());
    EXPECT_FALSE(plan.limits.afterAdvised || plan.limits.deadlinePassed || plan.limits.smallLotsOnly);
}

TEST(FeedingPlan, FirstForageEndsAPlanWithoutALastDay) {
    auto question = autumnQuestion(warm);
    question.season.syrupDeadline.reset();
    question.today = SeasonDay{120};
    question.ratio = Ratio{};
    const auto visits = visitsOf(planFeeding(question), VisitKind::Syrup);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{120}));
    EXPECT_NEAR(visits[0].syrup.value(), 4, 1e-9);
}

TEST(FeedingPlan, SaysWhenTheLastOfItIsTakenAfterTheAdvisedDay) {
    auto question = autumnQuestion(warm);
    question.today = SeasonDay{-96}; // 4.4, 4.4, 0.2 kg of sugar on -96, -93, -90, the last taken the same day
    question.ratio = parseRatio("2:1").value();
    EXPECT_EQ(syrupDays(planFeeding(question)), (std::vector<int>{-96, -93, -90}));
    EXPECT_FALSE(planFeeding(question).limits.afterAdvised);
    question.today = SeasonDay{-95};
    EXPECT_TRUE(planFeeding(question).limits.afterAdvised);
}

// ---- room -----------------------------------------------------------------------------------------------------------

TEST(FeedingPlan, WhatTheCombsCannotTakeBecomesFondant) {
    auto question = autumnQuestion(warm);
    question.freeRoom = kilograms(6);
    const FeedingPlan plan = planFeeding(question);
    EXPECT_NEAR(syrupStores(plan), 6, 1e-9);
    EXPECT_NEAR(plan.fondant.value(), 4 / 0.85, 1e-9);
    EXPECT_TRUE(plan.limits.roomFull);
    EXPECT_FALSE(plan.limits.tooSlow);
    EXPECT_NEAR(plan.stores.value(), 10, 1e-9);
}

TEST(FeedingPlan, RoomForExactlyAllOfItIsEnough) {
    auto question = autumnQuestion(warm);
    question.freeRoom = kilograms(10);
    const FeedingPlan plan = planFeeding(question);
    EXPECT_NEAR(syrupStores(plan), 10, 1e-9);
    EXPECT_FALSE(plan.limits.roomFull);
}

TEST(FeedingPlan, FullCombsTakeFondantToday) {
    auto question = autumnQuestion(warm);
    for (const double room : {0.0, -1.0, 0.04}) {
        question.freeRoom = kilograms(room);
        const FeedingPlan plan = planFeeding(question);
        EXPECT_TRUE(plan.limits.roomFull) << room;
        EXPECT_TRUE(syrupDays(plan).empty()) << room;
        EXPECT_EQ(fondantDays(plan), (std::vector<int>{-120})) << room;
    }
}

// ---- fondant --------------------------------------------------------------------------------------------------------

// An association's figure: 15 kg of fondant are eaten in about three weeks.
TEST(FeedingPlan, FondantIsLaidOnAsItIsEaten) {
    auto question = autumnQuestion(warm);
    question.storesWanted = kilograms(60); // 70.6 kg of fondant
    question.bees = {0};
    const FeedingPlan plan = planFeeding(question);
    const auto visits = visitsOf(plan, VisitKind::Fondant);
    ASSERT_EQ(daysOf(visits), (std::vector<int>{-120, -99, -78, -57, -36}));
    EXPECT_NEAR(visits[3].fondant.value(), 15, 1e-9);
    EXPECT_NEAR(visits[4].fondant.value(), 60 / 0.85 - 60, 1e-9);
    EXPECT_NEAR(plan.stores.value(), 60, 1e-9);
}

TEST(FeedingPlan, NoFondantAfterFirstForage) {
    auto question = autumnQuestion(warm);
    question.storesWanted = kilograms(30);
    question.today = SeasonDay{110};
    const FeedingPlan plan = planFeeding(question);
    ASSERT_EQ(fondantDays(plan), (std::vector<int>{110}));
    EXPECT_NEAR(plan.fondant.value(), 30 / 0.85, 1e-9);
}

// ---- what cannot be fed as syrup never keeps a plan from ending -----------------------------------------------------

TEST(FeedingPlan, NoBeesNoWarmthNoFeederNoSugarInTheSyrup) {
    const auto frost = everyDay(-5);
    auto noBees = autumnQuestion(warm), cold = autumnQuestion(frost), noFeeder = autumnQuestion(warm),
         water = autumnQuestion(warm);
    noBees.bees = {0};
    noFeeder.feeder.capacity = litres(0);
    water.ratio = parseRatio("1:9").value();
    for (const FeedingQuestion& question : {noBees, cold, noFeeder, water}) {
        const FeedingPlan plan = planFeeding(question);
        EXPECT_TRUE(syrupDays(plan).empty());
        EXPECT_EQ(fondantDays(plan), (std::vector<int>{-120}));
        EXPECT_TRUE(plan.limits.tooSlow);
        EXPECT_NEAR(plan.stores.value(), 10, 1e-9);
    }
}

TEST(FeedingPlan, AThimbleForAFeederStillEnds) {
    auto question = autumnQuestion(warm);
    question.feeder.capacity = litres(0.01);
    question.visitEveryDays = 0;
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(syrupDays(plan).size(), 51u); // one a day up to the last day
    EXPECT_NEAR(plan.stores.value(), 10, 1e-9);
}

TEST(FeedingPlan, AKeeperWhoHardlyEverComes) {
    auto question = autumnQuestion(warm);
    question.storesWanted = kilograms(60);
    question.season.syrupDeadline.reset();
    question.visitEveryDays = 1000;
    const FeedingPlan plan = planFeeding(question);
    EXPECT_EQ(syrupDays(plan), (std::vector<int>{-120}));
    EXPECT_EQ(fondantDays(plan), (std::vector<int>{-120}));
    EXPECT_NEAR(plan.stores.value(), 60, 1e-9);
}

// ---- crystals -------------------------------------------------------------------------------------------------------

// Mohos 2010: 2:1 at 0 C may drop 104 g per kg of sugar, 3:2 (60 %) none.
TEST(FeedingPlan, SaysHowMuchSugarAColdNightMayDrop) {
    const auto fifteen = climate::ClimateCurve::constant(celsius(15), 45, climate::Variability{3, 3, 0.8, 0.5});
    auto question = autumnQuestion(fifteen);
    question.ratio = parseRatio("2:1").value();
    // 15 - 4 - 1.28 x 3 = 7.16 C: straight between 64.87 % at 5 C and 65.58 % at 10 C, 65.177 %.
    const double dissolved = 65.177 / (100 - 65.177) / 2;
    EXPECT_NEAR(planFeeding(question).crystallisingGPerKg, 1000 * (1 - dissolved), 0.1);
    question.ratio = parseRatio("3:2").value();
    EXPECT_EQ(planFeeding(question).crystallisingGPerKg, 0);
}

TEST(FeedingPlan, TheColdestNightUpToTheLastDayCounts) {
    const auto curve = yearOf(12, 8, 45);
    auto question = autumnQuestion(curve);
    question.ratio = parseRatio("2:1").value();
    const double early = planFeeding(question).crystallisingGPerKg;
    question.season.syrupDeadline = on(-40);
    EXPECT_GT(planFeeding(question).crystallisingGPerKg, early);
    EXPECT_NEAR(planFeeding(question).crystallisingGPerKg, 104, 0.5);
}

// ---- broken promises ------------------------------------------------------------------------------------------------

TEST(FeedingPlan, QuestionsThatCannotBeAsked) {
    auto question = autumnQuestion(warm);
    question.curve = nullptr;
    EXPECT_THROW(planFeeding(question), ContractViolation);
    for (const double wanted : {0.0, -1.0, std::nan(""), std::numeric_limits<double>::infinity()}) {
        question = autumnQuestion(warm);
        question.storesWanted = kilograms(wanted);
        EXPECT_THROW(planFeeding(question), ContractViolation) << wanted;
    }
    for (const int day : {-154, 181}) {
        question = autumnQuestion(warm);
        question.today = SeasonDay{day};
        EXPECT_THROW(planFeeding(question), ContractViolation) << day;
    }
}

} // namespace
} // namespace winterlarder::feeding::schedule_test
