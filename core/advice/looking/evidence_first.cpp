// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/looking/evidence_first.h"

#include "advice/looking/evidence_today.h"
#include "advice/portions.h"
#include "feeding/portions.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

bool allShort(const AdviceBasis& r) {
    return std::all_of(r.estimate.shares.begin(), r.estimate.shares.end(), [&](const stores::EvidenceShare& share) {
        return share.evidence.typical - r.target.netLoss < r.target.stores;
    });
}

feeding::FeedingPlan portionForLight(const AdviceBasis& r) {
    const auto& rules = r.rules();
    if (r.phase == Phase::Summer)
        return syrupInVisits(r, feeding::stepsDown(kilograms(rules.heftSugarInSummer), r.question.steps.sugar));
    if (r.phase == Phase::Closing)
        return syrupInVisits(r, feeding::stepsUp(kilograms(rules.heftSugar), r.question.steps.sugar));
    const Mass missing = std::max(kilograms(0), r.target.missing.typical);
    return takesPortions(r) ? smallPortions(r, missing) : fondantVisit(r, missing);
}

bool fedFrom(const ColonyQuestion& q, SeasonDay day) {
    return std::any_of(q.feeds.begin(), q.feeds.end(), [&](const GivenFeed& feed) { return feed.day >= day; });
}

} // namespace

const WeighedHive* lastWeighing(const ColonyQuestion& q) {
    const WeighedHive* latest = nullptr;
    for (const auto& weighing : q.weighings)
        if (!latest || weighing.day >= latest->day) latest = &weighing;
    return latest;
}

std::optional<Decided> contradictionRule(const AdviceBasis& r) {
    if (!r.estimate.contradictory) return std::nullopt;
    Decided decided{.verdict = Verdict::Leave, .by = DecidedBy::Contradiction};
    if (r.phase != Phase::Closing || !allShort(r)) return decided;
    auto first = syrupInVisits(r, feeding::stepsDown(kilograms(r.rules().contradictionSugar), r.question.steps.sugar));
    if (feedsAnything(first)) decided.feed = std::move(first);
    return decided;
}

std::optional<Decided> heftRule(const AdviceBasis& r) {
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

std::optional<feeding::FeedingPlan>
portionWithoutBees(const ColonyQuestion& q, const std::vector<RefusalKind>& refusals, const ModelConstants& constants) {
    const bool beesAlone = refusals == std::vector{RefusalKind::BeesUnknown};
    if (!beesAlone || q.trouble || heftAlone(q) != stores::HeftWord::Light) return std::nullopt;
    const auto days = phaseDays(q.season, q.decisions);
    const SeasonDay lifted = lastWeighing(q)->day;
    if (phaseOn(days, q.asOf) < Phase::Winter || q.asOf > days.quietFrom) return std::nullopt;
    if (q.asOf - lifted > static_cast<int>(q.decisions.fondantLastsDays) || fedFrom(q, lifted)) return std::nullopt;
    feeding::FeedingQuestion asked{kilograms(1), q.winter, q.asOf};
    asked.curve = &q.site->curve;
    asked.season = q.season;
    asked.diurnalHalfRange = kelvins(constants.diurnalHalfRange);
    return feeding::planFondant(asked, feeding::fondantVisits(q.decisions, q.nucleus, q.steps.fondant).most);
}

std::optional<stores::HeftWord> heftAlone(const ColonyQuestion& q) {
    const auto combs = combsForBees(q);
    const bool looked =
        q.quick || std::any_of(combs.begin(), combs.end(), [](const stores::Comb& comb) { return comb.lookedAt(); });
    for (const auto& weighing : q.weighings)
        if (!weighing.heft) return std::nullopt;
    const WeighedHive* latest = lastWeighing(q);
    return looked || !latest ? std::nullopt : latest->heft;
}

} // namespace winterlarder::advice
