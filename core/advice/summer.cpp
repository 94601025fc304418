// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/summer.h"

#include "advice/harvest_rules.h"
#include "advice/portions.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

Mass hardLossUntil(const AdviceBasis& r, SeasonDay look) {
    return kilograms(winter::quantile(winter::largestLossUntil(r.ensemble, r.flow, r.question.asOf, look - 1), 0.9));
}

SeasonDay soonest(const AdviceBasis& r) { return r.question.asOf + static_cast<int>(r.rules().leastLookDays); }

//! One visit: as much of what is missing as is given at a time, and left a week to be taken.
feeding::FeedingPlan inOneVisit(const AdviceBasis& r, Mass missing) {
    const Mass step = r.question.steps.sugar, least = feeding::stepsUp(kilograms(r.rules().summerPortionLeast), step);
    auto asked = feedingQuestion(r);
    asked.visitEveryDays = std::max(asked.visitEveryDays, static_cast<int>(r.rules().leastLookDays));
    const Mass most = sugarFor(r, r.room() + kilograms(1));
    Mass sugar = std::min(std::max(sugarFor(r, missing), least), most);
    auto plan = feeding::planSyrup(asked, sugar, step, r.days.closing, false);
    while (plan.visits.size() > 1 && sugar > step) {
        sugar = feeding::stepsDown(sugar - step * 0.5, step);
        plan = feeding::planSyrup(asked, sugar, step, r.days.closing, false);
    }
    return plan;
}

Decided portion(const AdviceBasis& r, Mass missing) {
    auto plan = inOneVisit(r, missing);
    if (!feedsAnything(plan)) return {.verdict = Verdict::Leave, .by = DecidedBy::SummerSafe};
    return {.verdict = Verdict::Feed, .by = DecidedBy::SummerPortion, .feed = std::move(plan)};
}

} // namespace

Mass safetyAmount(const AdviceBasis& r) {
    const auto& rules = r.rules();
    const SeasonDay look =
        std::max(soonest(r), std::min(r.days.summer, r.question.asOf + static_cast<int>(rules.summerLookDays)));
    return std::max(kilograms(r.question.nucleus ? rules.safetyNucleus : rules.safetyLeast),
                    hardLossUntil(r, look) + kilograms(rules.safetyBeyond));
}

std::optional<Decided> summerRule(const AdviceBasis& r) {
    if (r.phase != Phase::Summer) return std::nullopt;
    const Mass safety = safetyAmount(r);
    if (r.stores() < safety) return portion(r, safety - r.stores());
    if (auto supers = wholeSupers(r, r.stores() - safety))
        return Decided{.verdict = Verdict::Harvest, .by = DecidedBy::SummerHarvest, .harvest = std::move(supers)};
    return Decided{.verdict = Verdict::Leave, .by = DecidedBy::SummerSafe};
}

SeasonDay summerLook(const AdviceBasis& r, Mass stores) {
    const auto lasts = [&](SeasonDay look) {
        return stores - hardLossUntil(r, look) >= kilograms(r.rules().safetyBeyond);
    };
    const SeasonDay winterIsDecided =
        r.days.portionsInWinter // a dearth in summer may come any month
            ? std::min(r.days.summer + 1,
                       r.question.asOf + static_cast<int>(r.rules().summerLookDays + r.rules().leastLookDays))
            : r.days.summer + 1; // a look on the last day of summer would only order another one
    SeasonDay low = soonest(r), high = std::max(low, winterIsDecided); // lasts(low) is taken for granted
    while (high - low > 0) {
        const SeasonDay middle = low + (high - low + 1) / 2;
        if (lasts(middle)) low = middle;
        else high = middle - 1;
    }
    return low;
}

} // namespace winterlarder::advice
