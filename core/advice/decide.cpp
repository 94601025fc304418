// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/decided.h"

#include "advice/capacity.h"
#include "advice/harvest_rules.h"
#include "advice/health.h"
#include "advice/looking/evidence_first.h"
#include "advice/portions.h"
#include "advice/summer.h"
#include "advice/winter_rules.h"

#include <array>

namespace winterlarder::advice {

namespace {

// A hive that is full is fed nothing, whatever the target; honey may come off it all the same.
std::optional<Decided> fullRule(const AdviceBasis& r) {
    if (!isFull(r)) return std::nullopt;
    if (auto harvest = harvestRule(r)) return harvest;
    return Decided{.verdict = Verdict::Leave, .by = DecidedBy::Full};
}

// In closing: fed up to the target, as far as it is taken by its last day and the combs have room.
std::optional<Decided> closingFeedRule(const AdviceBasis& r) {
    if (r.phase != Phase::Closing || r.target.missing.typical <= r.target.deadBand) return std::nullopt;
    auto plan = syrupInVisits(r, sugarFor(r, r.target.missing.typical));
    if (feedsAnything(plan)) return Decided{.verdict = Verdict::Feed, .by = DecidedBy::Feed, .feed = std::move(plan)};
    return Decided{.verdict = Verdict::Leave, .by = DecidedBy::ShortLater};
}

using Rule = std::optional<Decided> (*)(const AdviceBasis&);
constexpr std::array<Rule, 13> rulesInOrder{diseaseRule,  noFoodInReachRule, actNowRule, noQueenRule, contradictionRule,
                                            heftRule,     weakRule,          summerRule, fullRule,    closingFeedRule,
                                            lateFeedRule, winterFeedRule,    harvestRule};

} // namespace

bool feedsAnything(const feeding::FeedingPlan& plan) {
    return plan.syrup.sugar.value() > 0 || plan.fondant.value() > 0;
}

Decided decide(const AdviceBasis& basis) {
    for (const Rule rule : rulesInOrder)
        if (auto decided = rule(basis)) return *std::move(decided);
    return {};
}

} // namespace winterlarder::advice
