// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every feeding plan, over climates from the far north to places without a winter, in both hemispheres.
#include "feeding/feeding_cases.h"
#include "feeding/keepers_days.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::feeding::schedule_properties_test {
namespace {

struct AnyCase {
    std::shared_ptr<const climate::ClimateCurve> curve;
    FeedingQuestion question;
};

std::optional<climate::SeasonDate> firstBelow(const climate::ClimateCurve& curve, double threshold) {
    for (int w = -153; w <= 20; ++w)
        if (curve.normal(SeasonDay{w}).value() < threshold) return on(w);
    return std::nullopt;
}

// Over the whole span from the first run on, not only near its beginning.
int within(int from, int before) { return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(from, before)); }

Feeder anyFeeder() {
    const bool small = *rc::gen::arbitrary<bool>(), top = !small && *rc::gen::arbitrary<bool>();
    const double capacity = within(0, 150) / 10.0;
    return {litres(capacity), top, small, small};
}

AnyCase anyCase() {
    const double latitude = *rc::gen::element(-38.0, 45.0, 60.0);
    auto curve = std::make_shared<const climate::ClimateCurve>(
        yearOf(within(-20, 200) / 10.0, within(10, 150) / 10.0, latitude));
    FeedingQuestion question{kilograms(within(1, 601) / 10.0), Winter(hemisphereOf(latitude), within(2024, 2032)),
                             SeasonDay{within(-153, 181)}};
    question.curve = curve.get();
    question.season.feedAdvisedBy = firstBelow(*curve, 13.5);
    question.season.syrupDeadline = firstBelow(*curve, 11);
    question.season.syrupRefused = firstBelow(*curve, 9);
    question.season.forage = on(within(40, 165));
    question.bees = {double(within(0, 40000))};
    question.feeder = anyFeeder();
    if (*rc::gen::arbitrary<bool>()) question.freeRoom = kilograms(within(0, 300) / 10.0);
    question.visitEveryDays = within(1, 22);
    question.visitWeekdays =
        *rc::gen::container<std::vector<int>>(*rc::gen::inRange<std::size_t>(0, 4), rc::gen::inRange(1, 8));
    if (*rc::gen::arbitrary<bool>()) question.ratio = Ratio{within(60, 300) / 100.0, "own"};
    return {curve, question};
}

// Takes the plan's syrup at the plan's own uptake and tells what is left in the feeder on the last day.
double leftInTheFeeder(const FeedingQuestion& question, const FeedingPlan& plan, SeasonDay last) {
    double inFeeder = 0;
    for (SeasonDay day = question.today; day <= last; day = day + 1) {
        for (const Visit& visit : plan.visits)
            if (visit.day == day) inFeeder += visit.syrup.value();
        const double maximum = question.curve->normal(day).value() + question.diurnalHalfRange.value();
        inFeeder = std::max(0.0, inFeeder - uptakePerDay(question.bees, celsius(maximum), question.feeder).value());
    }
    return inFeeder;
}

// Without a last day of its own a plan ends with first forage.
SeasonDay endOfSyrup(const FeedingQuestion& question) {
    return question.season.syrupDeadline ? question.season.syrupDeadline->day : question.season.forage->day;
}

RC_GTEST_PROP(AnyFeedingPlan, NothingLiquidIsGivenAfterTheLastDayOrLeftUntaken, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    for (const Visit& visit : visitsOf(plan, VisitKind::Syrup)) RC_ASSERT(visit.day <= endOfSyrup(any.question));
    RC_ASSERT(leftInTheFeeder(any.question, plan, endOfSyrup(any.question)) < 1e-6);
}

RC_GTEST_PROP(AnyFeedingPlan, ANewDoseMeetsAnEmptyFeeder, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    FeedingPlan before = plan;
    for (const Visit& visit : visitsOf(plan, VisitKind::Syrup)) {
        before.visits.clear();
        for (const Visit& earlier : plan.visits)
            if (earlier.day < visit.day) before.visits.push_back(earlier);
        RC_ASSERT(leftInTheFeeder(any.question, before, visit.day - 1) < 1e-6);
    }
}

RC_GTEST_PROP(AnyFeedingPlan, DosesFitTheFeederThePortionAndTheRoom, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    const double most = any.question.feeder.top ? any.question.feeder.capacity.value()
                                                : std::min(5.0, any.question.feeder.capacity.value());
    for (const Visit& visit : visitsOf(plan, VisitKind::Syrup)) {
        RC_ASSERT(visit.syrup.value() > 0);
        RC_ASSERT(visit.syrup.value() <= most + 1e-9);
    }
    if (any.question.freeRoom) RC_ASSERT(plan.syrup.stores <= *any.question.freeRoom + kilograms(1e-9));
}

RC_GTEST_PROP(AnyFeedingPlan, VisitsAreInOrderOnTheKeepersDaysAndNeverPast, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    const KeepersDays keeper(any.question.winter, any.question.visitWeekdays);
    RC_ASSERT(std::is_sorted(plan.visits.begin(), plan.visits.end(),
                             [](const Visit& one, const Visit& other) { return one.day < other.day; }));
    for (const Visit& visit : plan.visits) {
        RC_ASSERT(visit.day >= any.question.today);
        RC_ASSERT(visit.date == any.question.winter.date(visit.day));
        if (visit.kind != VisitKind::Check) RC_ASSERT(keeper.comesOn(visit.day));
    }
}

RC_GTEST_PROP(AnyFeedingPlan, FeedIsNotBroughtMoreOftenThanTheKeeperComes, ()) {
    const AnyCase any = anyCase();
    std::optional<SeasonDay> previous;
    for (const Visit& visit : planFeeding(any.question).visits) {
        if (visit.kind == VisitKind::Check) continue;
        if (previous) RC_ASSERT(visit.day - *previous >= any.question.visitEveryDays);
        previous = visit.day;
    }
}

RC_GTEST_PROP(AnyFeedingPlan, OneCheckFollowsTheLastSyrup, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    const auto doses = visitsOf(plan, VisitKind::Syrup), checks = visitsOf(plan, VisitKind::Check);
    RC_ASSERT(checks.size() == (doses.empty() ? 0u : 1u));
    if (checks.empty()) return;
    RC_ASSERT(checks.front().day >= doses.back().day);
    const auto& refused = any.question.season.syrupRefused;
    if (refused) RC_ASSERT(checks.front().day <= refused->day);
    if (!refused) RC_ASSERT(checks.front().day >= doses.back().day + 10);
}

RC_GTEST_PROP(AnyFeedingPlan, AllThatIsWantedIsPlanned, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    Mass stores{0}, sugar{0}, fondant{0};
    for (const Visit& visit : plan.visits) {
        stores += visit.stores;
        sugar += visit.sugar;
        fondant += visit.fondant;
    }
    RC_ASSERT(std::abs((stores - any.question.storesWanted).value()) < 0.05 + 1e-9);
    RC_ASSERT(std::abs((stores - plan.stores).value()) < 1e-9);
    RC_ASSERT(std::abs((sugar - plan.syrup.sugar).value()) < 1e-9);
    RC_ASSERT(std::abs((fondant - plan.fondant).value()) < 1e-9);
    RC_ASSERT(std::abs((plan.syrup.stores + plan.fondant * storesPerKgFondant - stores).value()) < 1e-9);
}

RC_GTEST_PROP(AnyFeedingPlan, WhateverBecomesFondantHasAReason, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    if (plan.fondant > Mass(0)) RC_ASSERT(plan.limits.roomFull || plan.limits.tooSlow || plan.limits.deadlinePassed);
    else RC_ASSERT(!plan.limits.roomFull && !plan.limits.tooSlow);
}

RC_GTEST_PROP(AnyFeedingPlan, MoreWantedIsNeverLessSugar, ()) {
    AnyCase any = anyCase();
    const FeedingPlan plan = planFeeding(any.question);
    any.question.storesWanted += kilograms(*rc::gen::inRange(1, 100) / 100.0);
    const FeedingPlan more = planFeeding(any.question);
    RC_ASSERT(more.syrup.sugar >= plan.syrup.sugar - kilograms(1e-9));
    RC_ASSERT(more.fondant >= plan.fondant - kilograms(1e-9));
}

RC_GTEST_PROP(AnyFeedingPlan, TheSameQuestionHasTheSameAnswer, ()) {
    const AnyCase any = anyCase();
    const FeedingPlan once = planFeeding(any.question), again = planFeeding(any.question);
    RC_ASSERT(once.visits.size() == again.visits.size());
    RC_ASSERT(once.stores == again.stores);
    RC_ASSERT(once.crystallisingGPerKg == again.crystallisingGPerKg);
}

} // namespace
} // namespace winterlarder::feeding::schedule_properties_test
