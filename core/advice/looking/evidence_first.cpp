// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/looking/evidence_first.h"

#include "advice/looking/evidence_today.h"
#include "advice/portions.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

bool allShort(const Reckoning& r) {
    return std::all_of(r.estimate.shares.begin(), r.estimate.shares.end(), [&](const stores::EvidenceShare& share) {
        return share.evidence.typical - r.target.netLoss < r.target.stores;
    });
}

feeding::FeedingPlan portionForLight(const Reckoning& r) {
    const auto& rules = r.rules();
    if (r.phase == Phase::Summer)
        return syrupInVisits(r, feeding::stepsDown(kilograms(rules.heftSugarInSummer), r.question.steps.sugar));
    if (r.phase == Phase::Closing)
        return syrupInVisits(r, feeding::stepsUp(kilograms(rules.heftSugar), r.question.steps.sugar));
    const Mass missing = std::max(kilograms(0), r.target.missing.typical);
    return takesPortions(r) ? smallPortions(r, missing) : fondantVisit(r, missing);
}

} // namespace

std::optional<Decided> contradictionRule(const Reckoning& r) {
    if (!r.estimate.contradictory) return std::nullopt;
    Decided decided{.verdict = Verdict::Leave, .by = DecidedBy::Contradiction};
    if (r.phase != Phase::Closing || !allShort(r)) return decided;
    auto first = syrupInVisits(r, feeding::stepsDown(kilograms(r.rules().contradictionSugar), r.question.steps.sugar));
    if (feedsAnything(first)) decided.feed = std::move(first);
    return decided;
}

std::optional<Decided> heftRule(const Reckoning& r) {
    const auto word = heftAlone(r.question);
    if (!word) return std::nullopt;
    Decided decided{.verdict = Verdict::Leave, .by = DecidedBy::Heft};
    const bool quiet = r.phase == Phase::Spring && r.question.asOf > r.days.quietFrom;
    if (*word != stores::HeftWord::Light || quiet) return decided;
    auto portion = portionForLight(r);
    if (!feedsAnything(portion)) return decided;
    decided.verdict = Verdict::Feed;
    decided.feed = std::move(portion);
    return decided;
}

std::optional<stores::HeftWord> heftAlone(const ColonyQuestion& q) {
    const auto combs = combsForBees(q);
    const bool looked =
        q.quick || std::any_of(combs.begin(), combs.end(), [](const stores::Comb& comb) { return comb.lookedAt(); });
    const WeighedHive* latest = nullptr;
    for (const auto& weighing : q.weighings) {
        if (!weighing.heft) return std::nullopt;
        if (!latest || weighing.day >= latest->day) latest = &weighing;
    }
    return looked || !latest ? std::nullopt : latest->heft;
}

} // namespace winterlarder::advice
