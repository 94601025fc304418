// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/options.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

Option optionOn(const winter::WinterLosses& losses, const StoresAndReserve& today, OptionKind kind, Mass amount,
                Mass storesAfter) {
    const auto outcome = winter::follow(losses, storesAfter, today.sd, today.reserve);
    Option option;
    option.kind = kind;
    option.amount = amount;
    option.storesAfter = storesAfter;
    option.runOut = outcome.runsOut;
    option.touchReserve = outcome.touchesReserve;
    option.springReserve = outcome.atForage;
    option.springSurplus = aboveReserve(outcome.atForage, today.reserve);
    return option;
}

} // namespace

Spread<Mass> aboveReserve(const Spread<Mass>& stores, Mass reserve) {
    const auto above = [&](Mass mass) { return std::max(kilograms(0), mass - reserve); };
    return {above(stores.low), above(stores.typical), above(stores.high)};
}

Option leaveOption(const AdviceBasis& r) {
    return optionOn(r.withFlow, r.today, OptionKind::Leave, kilograms(0), std::max(kilograms(0), r.estimate.mean));
}

Option takeOption(const AdviceBasis& r, const HarvestAdvice& harvest) {
    const Mass left = std::max(kilograms(0), r.today.mean - harvest.fromStores);
    Option option = optionOn(r.withFlow, r.today, OptionKind::TakeNow, harvest.upTo, left);
    option.steps.push_back({r.question.asOf, -harvest.fromStores});
    return option;
}

Option springOption(const AdviceBasis&, const Option& leave) {
    Option option = leave;
    option.kind = OptionKind::TakeInSpring;
    option.amount = leave.springSurplus.typical;
    return option;
}

Option moveOption(const AdviceBasis& r) {
    const Mass brought = r.brought();
    return optionOn(r.withFlow, r.today, OptionKind::MoveCombs, std::max(brought, -brought), r.today.mean);
}

std::vector<winter::StoresStep> stepsOf(const feeding::FeedingPlan& plan) {
    std::vector<winter::StoresStep> steps;
    for (const auto& visit : plan.visits)
        if (visit.stores.value() > 0) steps.push_back({visit.day, visit.stores});
    return steps;
}

Option feedOption(const AdviceBasis& r, const feeding::FeedingPlan& plan) {
    const auto steps = stepsOf(plan);
    const SeasonDay last = steps.empty() ? r.question.asOf : steps.back().day;
    const auto fed = winter::lossesFrom(r.ensemble, r.question.asOf, r.flow, steps);
    const auto afterwards = winter::lossesFrom(r.ensemble, r.question.asOf, r.flow, steps, last + 1);
    Option option = optionOn(fed, r.today, OptionKind::Feed, plan.stores, r.today.mean);
    option.storesAfter = r.today.mean + plan.stores;
    option.touchReserve =
        winter::shareShort(afterwards.largest, r.today.mean, r.today.sd, r.today.reserve, winter::Short::Undercut);
    option.steps = steps;
    return option;
}

Option uniteOption(const Option& leave) {
    Option option = leave;
    option.kind = OptionKind::Unite;
    return option;
}

} // namespace winterlarder::advice
