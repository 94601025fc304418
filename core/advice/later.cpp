// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/later.h"

#include "advice/looking/evidence_first.h"
#include "advice/options.h"
#include "advice/portions.h"
#include "advice/summer.h"
#include "advice/winter_rules.h"
#include "feeding/portions.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

int inDays(double days) { return static_cast<int>(days); }

Mass plannedStores(const AdviceBasis& r, const Decided& decided) {
    Mass sum{0};
    for (const auto& step : stepsOf(r, decided)) sum += step.change;
    return sum;
}

Spread<Mass> notBelowZero(const Spread<Mass>& stores, double divisor) {
    const auto cut = [&](Mass mass) { return std::max(kilograms(0), mass / divisor); };
    return {cut(stores.low), cut(stores.typical), cut(stores.high)};
}

// Not before the next look, which says how much.
std::optional<ExpectedLater> sugarForWinter(const AdviceBasis& r, const Decided& decided, Mass planned) {
    const auto& missing = r.target.missing;
    const auto left = [&](Mass amount) { return std::min(amount, r.room()) - planned; }; // no more than finds a place
    const auto sugar =
        notBelowZero({left(missing.low), left(missing.typical), left(missing.high)}, storesPerKgSugar(r));
    if (sugar.high < kilograms(r.rules().laterLeast)) return std::nullopt;
    const Date from = std::max(r.on(std::max(r.question.asOf, r.days.summer + 1)), nextLook(r, decided).date);
    return ExpectedLater{sugar, {}, std::min(from, r.on(r.target.day)), r.on(r.target.day)};
}

// From the next visit after a feed, else from the next weighing; nothing where no day is left before the quiet time.
std::optional<SeasonDay> fondantFrom(const AdviceBasis& r, const Decided& decided) {
    const SeasonDay until = r.days.quietFrom, today = r.question.asOf;
    if (until <= today) return std::nullopt;
    const bool upToLate = r.phase <= Phase::Late;
    const SeasonDay from = decided.feed ? feeding::fondantFrom(today, std::nullopt, upToLate, r.rules())
                                        : std::max(SeasonDay{upToLate ? inDays(r.rules().fondantFromDay) : today.w},
                                                   r.question.winter.nearestSeasonDay(nextLook(r, decided).date));
    if (decided.feed && from > until) return std::nullopt;
    return std::min(from, until);
}

std::optional<ExpectedLater> fondantInWinter(const AdviceBasis& r, const Decided& decided, Mass planned) {
    const auto from = fondantFrom(r, decided);
    if (!from) return std::nullopt;
    const SeasonDay until = r.days.quietFrom;
    auto loss = winter::largestLossUntil(r.ensemble, r.flow, r.question.asOf, until);
    const auto stores = winter::storesDrawn(loss.size(), r.stores(), r.estimate.sd);
    for (std::size_t i = 0; i < loss.size(); ++i)
        loss[i] = std::max(0.0, loss[i] + r.today.reserve.value() - stores[i] - planned.value()) /
                  feeding::storesPerKgFondant;
    const auto fondant = winter::massSpread(std::move(loss));
    if (fondant.high < kilograms(r.rules().laterLeast)) return std::nullopt;
    return ExpectedLater{{}, fondant, r.on(*from), r.on(until)};
}

SeasonDay lastVisit(const AdviceBasis& r, const feeding::FeedingPlan& plan) {
    return plan.visits.empty() ? r.question.asOf : plan.visits.back().day;
}

// The last day on which hard use leaves the reserve, less a week.
SeasonDay winterLook(const AdviceBasis& r) {
    const SeasonDay soonest = r.question.asOf + static_cast<int>(r.rules().leastLookDays);
    SeasonDay look = soonest;
    for (int days = static_cast<int>(r.rules().leastLookDays); days <= inDays(r.rules().winterLookDays);
         days += static_cast<int>(r.rules().leastLookDays)) {
        if (r.stores() - hardUseOf(r, days + r.rules().dueDays) <= r.today.reserve) break;
        look = r.question.asOf + days;
    }
    return std::max(soonest, std::min(look, r.days.forage));
}

NextLook afterFeeding(const AdviceBasis& r, const feeding::FeedingPlan& plan) {
    const SeasonDay last = lastVisit(r, plan);
    if (!plan.visits.empty() && plan.visits.back().kind == feeding::VisitKind::Check)
        return {r.on(last), NextLookAt::CheckFeed};
    return {r.on(last + inDays(plan.fondant > Mass(0) ? r.rules().fondantLastsDays : r.rules().portionsLookDays)),
            NextLookAt::Weigh};
}

// A contradiction tells no amount, and after a heft in closing the rest is syrup, once it was weighed; bees that are to be united, or that the
// inspector is to see, have no winter plan of their own.
bool noneIsExpected(const AdviceBasis& r, const Decided& decided) {
    switch (decided.by) {
    case DecidedBy::Disease:
    case DecidedBy::NoQueen:
    case DecidedBy::Weak:
    case DecidedBy::Contradiction: return true;
    case DecidedBy::Heft: return r.phase == Phase::Closing;
    default: return false;
    }
}

bool weighedSoon(const AdviceBasis& r, const Decided& decided) {
    if (decided.by == DecidedBy::Heft) return heftAlone(r.question) != stores::HeftWord::Heavy;
    return decided.by == DecidedBy::Contradiction;
}

} // namespace

std::vector<winter::StoresStep> stepsOf(const AdviceBasis& r, const Decided& decided) {
    std::vector<winter::StoresStep> steps;
    if (decided.harvest && decided.harvest->fromStores > kilograms(0))
        steps.push_back({r.question.asOf, -decided.harvest->fromStores});
    if (decided.feed)
        for (const auto& step : stepsOf(*decided.feed)) steps.push_back(step);
    return steps;
}

std::optional<ExpectedLater> expectedLater(const AdviceBasis& r, const Decided& decided) {
    if (noneIsExpected(r, decided)) return std::nullopt;
    const Mass planned = plannedStores(r, decided);
    return r.phase == Phase::Summer ? sugarForWinter(r, decided, planned) : fondantInWinter(r, decided, planned);
}

NextLook nextLook(const AdviceBasis& r, const Decided& decided) {
    if (decided.by == DecidedBy::Disease) return {r.on(r.question.asOf), NextLookAt::Inspector};
    if (decided.by == DecidedBy::NoQueen)
        return {r.on(r.question.asOf + inDays(r.rules().queenTestDays)), NextLookAt::QueenCells};
    if (weighedSoon(r, decided)) return {r.on(r.question.asOf + inDays(r.rules().lookSoonDays)), NextLookAt::Weigh};
    if (r.phase == Phase::Summer)
        return {r.on(summerLook(r, r.stores() + plannedStores(r, decided))), NextLookAt::CountMites};
    if (decided.feed) return afterFeeding(r, *decided.feed);
    if (hardlyLives(r, decided)) return {r.on(r.question.asOf + inDays(r.rules().leastLookDays)), NextLookAt::Weigh};
    if (r.phase == Phase::Closing) {
        const int soonest = decided.by == DecidedBy::Weak ? inDays(r.rules().leastLookDays) : 1; // united first
        return {r.on(std::max(r.target.day, r.question.asOf + soonest)), NextLookAt::Weigh};
    }
    if (r.phase == Phase::Late) return {r.on(r.question.asOf + inDays(r.rules().lateLookDays)), NextLookAt::Weigh};
    return {r.on(winterLook(r)), NextLookAt::Weigh};
}

} // namespace winterlarder::advice
