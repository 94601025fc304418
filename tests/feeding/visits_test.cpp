// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/visits.h"

#include "climate/site.h"
#include "support/shipped.h"

#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace winterlarder::feeding::visits_test {

namespace {

const climate::ClimateCurve& halifax() {
    static const auto site = climate::siteAtStation(*shipped().station("ca-halifax"), std::nullopt).value();
    return site.curve;
}

FeedingQuestion asked(int today, double bees = 20000) {
    FeedingQuestion q;
    q.winter = Winter(Hemisphere::North, 2026);
    q.today = {today};
    q.curve = &halifax();
    q.season = climate::deriveSeason(halifax(), shipped().constants);
    q.bees = {bees};
    return q;
}

const SeasonDay last = climate::deriveSeason(halifax(), shipped().constants).syrupDeadline->day;

std::vector<Visit> syrupOf(const FeedingPlan& plan) {
    std::vector<Visit> visits;
    for (const auto& visit : plan.visits)
        if (visit.kind == VisitKind::Syrup) visits.push_back(visit);
    return visits;
}

} // namespace

TEST(Steps, AGramOverAStepIsThatStep) {
    EXPECT_EQ(stepsUp(kilograms(3.0005), kilograms(1)), kilograms(3));
    EXPECT_EQ(stepsUp(kilograms(3.002), kilograms(1)), kilograms(4));
    EXPECT_EQ(stepsDown(kilograms(2.9995), kilograms(1)), kilograms(3));
    EXPECT_EQ(stepsDown(kilograms(2.99), kilograms(1)), kilograms(2));
    EXPECT_NEAR(stepsUp(kilograms(2), poundSteps.sugar).value(), 8 * 0.45359237, 1e-9);
}

TEST(PlanSyrup, TheFewestEqualVisitsThatFitTheDose) {
    const auto plan = planSyrup(asked(-115), kilograms(9), kilograms(1), last, true);
    const auto visits = syrupOf(plan);
    ASSERT_EQ(visits.size(), 3u) << "9 kg make 11.7 L or less, at most 5 L a visit";
    std::set<int> days;
    for (const auto& visit : visits) {
        EXPECT_NEAR(visit.sugar.value(), 3, 1e-9);
        EXPECT_LE(visit.syrup.value(), 5);
        EXPECT_TRUE(days.insert(visit.day.w).second);
    }
    EXPECT_EQ(visits.front().day, SeasonDay{-115});
    EXPECT_GE(visits[1].day - visits[0].day, 3);
    EXPECT_EQ(plan.visits.back().kind, VisitKind::Check);
    EXPECT_NEAR(plan.syrup.sugar.value(), 9, 1e-9);
    EXPECT_EQ(plan.fondant, kilograms(0));
}

TEST(PlanSyrup, ATopFeederTakesTwelveLitresAtOnce) {
    auto q = asked(-120, 40000);
    q.feeder.top = true;
    q.feeder.capacity = litres(12);
    EXPECT_EQ(syrupOf(planSyrup(q, kilograms(8), kilograms(1), last, false)).size(), 1u);
    EXPECT_GT(syrupOf(planSyrup(asked(-120, 40000), kilograms(8), kilograms(1), last, false)).size(), 1u);
}

TEST(PlanSyrup, WhatCannotBeTakenByTheLastDayIsLeftOutInWholeSteps) {
    const auto plan = planSyrup(asked(last.w - 4), kilograms(20), kilograms(1), last, false);
    EXPECT_TRUE(plan.limits.tooSlow);
    EXPECT_LT(plan.syrup.sugar, kilograms(20));
    EXPECT_NEAR(plan.syrup.sugar.value(), std::round(plan.syrup.sugar.value()), 1e-9);
    EXPECT_EQ(plan.fondant, kilograms(0)) << "no fondant to fill up for winter";
    for (const auto& visit : plan.visits) EXPECT_LE(visit.day, last);
    EXPECT_FALSE(planSyrup(asked(-115), kilograms(9), kilograms(1), last, false).limits.tooSlow);
}

TEST(PlanSyrup, NothingAfterTheLastDay) {
    const auto plan = planSyrup(asked(last.w + 1), kilograms(5), kilograms(1), last, true);
    EXPECT_TRUE(plan.visits.empty());
    EXPECT_EQ(plan.syrup.sugar, kilograms(0));
}

TEST(SmallPortions, AtMostALitreEachWhileTheyAreTaken) {
    const SeasonDay refused = asked(0).season.syrupRefused->day;
    const auto plan =
        planSmallPortions(asked(last.w + 1), kilograms(20), kilograms(1), refused, litres(1), litres(0.2));
    ASSERT_FALSE(plan.visits.empty());
    for (const auto& visit : plan.visits) {
        EXPECT_LE(visit.syrup.value(), 1 + 1e-9);
        EXPECT_LE(visit.day, refused);
    }
    EXPECT_EQ(plan.ratio.printed, "2:1");
    EXPECT_TRUE(plan.limits.tooSlow);
}

TEST(SmallPortions, NoneWhereTooLittleIsTaken) {
    EXPECT_TRUE(planSmallPortions(asked(0), kilograms(5), kilograms(1), {40}, litres(1), litres(0.2)).visits.empty());
    EXPECT_FALSE(portionTaken(asked(0), {0}, litres(0.2)));
    EXPECT_TRUE(portionTaken(asked(-110), {-110}, litres(0.2)));
}

TEST(PlanFondant, OneVisitToday) {
    auto q = asked(20);
    q.visitWeekdays = {7};
    const auto plan = planFondant(q, kilograms(2.5));
    ASSERT_EQ(plan.visits.size(), 1u);
    EXPECT_EQ(plan.visits.front().day, SeasonDay{20}) << "it cannot wait for Sunday";
    EXPECT_NEAR(plan.stores.value(), 2.5 * storesPerKgFondant, 1e-9);
}

} // namespace winterlarder::feeding::visits_test
