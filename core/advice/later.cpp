// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/later.h"

#include "advice/options.h"
#include "advice/portions.h"
#include "advice/summer.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

constexpr Mass notWorthSaying{0.5};
constexpr SeasonDay midJanuary{14};
constexpr int afterFondantDays = 14, betweenWinterLooks = 42, lateLookDays = 21, soonDays = 3, afterPortionsDays = 10;

Mass plannedStores(const Reckoning& r, const Decided& decided) {
    Mass sum{0};
    for (const auto& step : stepsOf(r, decided)) sum += step.change;
    return sum;
}

Spread<Mass> notBelowZero(const Spread<Mass>& stores, double divisor) {
    const auto cut = [&](Mass mass) { return std::max(kilograms(0), mass / divisor); };
    return {cut(stores.low), cut(stores.typical), cut(stores.high)};
}

std::optional<ExpectedLater> sugarForWinter(const Reckoning& r, Mass planned) {
    const auto& missing = r.target.missing;
    const auto left = [&](Mass amount) { return std::min(amount, r.room()) - planned; }; // no more than finds a place
    const auto sugar = notBelowZero({left(missing.low), left(missing.typical), left(missing.high)}, storesPerKgSugar(r));
    if (sugar.high < notWorthSaying) return std::nullopt;
    return ExpectedLater{sugar, {}, r.on(std::max(r.question.asOf, r.days.summer + 1)), r.on(r.target.day)};
}

std::optional<ExpectedLater> fondantInWinter(const Reckoning& r, Mass planned) {
    const SeasonDay until = r.days.quietFrom;
    if (until <= r.question.asOf) return std::nullopt;
    auto loss = winter::largestLossUntil(r.ensemble, r.flow, r.question.asOf, until);
    const auto stores = winter::storesDrawn(loss.size(), r.stores(), r.estimate.sd);
    for (std::size_t i = 0; i < loss.size(); ++i)
        loss[i] = std::max(0.0, loss[i] + r.wish.reserve.value() - stores[i] - planned.value()) / feeding::storesPerKgFondant;
    const auto fondant = winter::massSpread(std::move(loss));
    if (fondant.high < notWorthSaying) return std::nullopt;
    const SeasonDay from = r.phase <= Phase::Late ? std::max(midJanuary, r.question.asOf) : r.question.asOf + afterFondantDays;
    return ExpectedLater{{}, fondant, r.on(std::min(from, until)), r.on(until)};
}

SeasonDay lastVisit(const Reckoning& r, const feeding::FeedingPlan& plan) { return plan.visits.empty() ? r.question.asOf : plan.visits.back().day; }

// The last day on which hard use leaves the reserve, less a week.
SeasonDay winterLook(const Reckoning& r) {
    const SeasonDay soonest = r.question.asOf + static_cast<int>(r.rules().leastLookDays);
    SeasonDay look = soonest;
    for (int days = static_cast<int>(r.rules().leastLookDays); days <= betweenWinterLooks; days += static_cast<int>(r.rules().leastLookDays)) {
        if (r.stores() - hardUseOf(r, days + r.rules().dueDays) <= r.wish.reserve) break;
        look = r.question.asOf + days;
    }
    return std::max(soonest, std::min(look, r.days.forage));
}

NextLook afterFeeding(const Reckoning& r, const feeding::FeedingPlan& plan) {
    const SeasonDay last = lastVisit(r, plan);
    if (!plan.visits.empty() && plan.visits.back().kind == feeding::VisitKind::Check) return {r.on(last), NextLookAt::CheckFeed};
    return {r.on(last + (plan.fondant > Mass(0) ? afterFondantDays : afterPortionsDays)), NextLookAt::Weigh};
}

} // namespace

std::vector<winter::StoresStep> stepsOf(const Reckoning& r, const Decided& decided) {
    std::vector<winter::StoresStep> steps;
    const bool apart = r.question.answers.supersFor == SupersFor::People; // what comes off is not among the stores
    if (decided.harvest && !apart) steps.push_back({r.question.asOf, -decided.harvest->upTo});
    if (decided.feed)
        for (const auto& step : stepsOf(*decided.feed)) steps.push_back(step);
    return steps;
}

std::optional<ExpectedLater> expectedLater(const Reckoning& r, const Decided& decided) {
    // Bees that are to be united, or that the inspector is to see, have no winter plan of their own.
    if (decided.by == DecidedBy::Disease || decided.by == DecidedBy::NoQueen || decided.by == DecidedBy::Weak) return std::nullopt;
    const Mass planned = plannedStores(r, decided);
    return r.phase == Phase::Summer ? sugarForWinter(r, planned) : fondantInWinter(r, planned);
}

NextLook nextLook(const Reckoning& r, const Decided& decided) {
    if (decided.by == DecidedBy::Disease) return {r.on(r.question.asOf), NextLookAt::Inspector};
    if (decided.by == DecidedBy::Contradiction || decided.by == DecidedBy::Heft) return {r.on(r.question.asOf + soonDays), NextLookAt::Weigh};
    if (r.phase == Phase::Summer) return {r.on(summerLook(r, r.stores() + plannedStores(r, decided))), NextLookAt::CountMites};
    if (decided.feed) return afterFeeding(r, *decided.feed);
    if (r.phase == Phase::Closing) return {r.on(std::max(r.target.day, r.question.asOf + 1)), NextLookAt::Weigh};
    if (r.phase == Phase::Late) return {r.on(r.question.asOf + lateLookDays), NextLookAt::Weigh};
    return {r.on(winterLook(r)), NextLookAt::Weigh};
}

} // namespace winterlarder::advice
