// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/refused.h"

#include "advice/looking/evidence_first.h"
#include "advice/phases.h"
#include "advice/remarks/remarks.h"
#include "stores/bees.h"
#include "stores/weighing.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

// Light in winter: fed all the same, and weighed.
void feedLight(const ColonyQuestion& q, feeding::FeedingPlan portion, Advice& advice) {
    advice.verdict = Verdict::Feed;
    advice.decidedBy = DecidedBy::Heft;
    advice.heft = stores::HeftWord::Light;
    advice.phase = phaseOn(phaseDays(q.season, q.decisions), q.asOf);
    advice.feed = std::move(portion);
    advice.nextLook = NextLook{q.winter.date(q.asOf + static_cast<int>(q.decisions.lookSoonDays)), NextLookAt::Weigh};
    std::erase_if(advice.reasons, [](const Remark& each) { return each.id == idOf(RefusalKind::BeesUnknown); });
    advice.reasons.push_back({"light-bees-unknown", {{"day", lastWeighing(q)->date}}});
    advice.anotherLook.worthIt = true;
    advice.anotherLook.which = LookKind::Weigh;
    advice.anotherLook.about = LookAbout::Stores;
    advice.cautions.push_back({q.longHive ? "fondant-long-hive" : "fondant-on-cluster", {}});
}

// What the last weighing leaves for stores, whoever lives there: a range only, and no amount is made of it.
void sayWeight(const ColonyQuestion& q, const ModelConstants& constants, Advice& advice) {
    const auto* weighed = lastWeighing(q);
    if (!weighed || weighed->heft || !supersCount(q)) return;
    const auto stores = [&](double bees, double brood, Mass doubt) {
        const stores::HiveLoad load{.tare = {q.tare, q.tareSd},
                                    .bees = BeeCount{bees},
                                    .beeMass = kilograms(constants.beeMass),
                                    .broodCells = BeeCount{brood}};
        const auto said = stores::evidenceOfWeighing(weighed->kind, weighed->reading, load, weighed->longHive,
                                                     constants, weighed->date);
        return std::max(kilograms(0), said.typical + doubt);
    };
    const auto& rules = q.decisions;
    advice.reasons.push_back({"weight-uncounted",
                              {{"day", weighed->date},
                               {"low", stores(rules.uncountedBeesMost, rules.uncountedBroodMost, -q.tareSd)},
                               {"high", stores(rules.uncountedBeesLeast, 0, q.tareSd)},
                               {"tare", q.tare}}});
    if (!q.usual) return;
    const bool one = q.usual->high - q.usual->low < kilograms(0.5);
    advice.reasons.push_back({"usual-here",
                              {{"low", q.usual->low},
                               {"high", q.usual->high},
                               {"place", placeOf(*q.usual)},
                               {"class", std::string(one ? "agrees-one" : "agrees")},
                               {"source", q.usual->source}}});
}

} // namespace

Advice refusedAdvice(const ColonyQuestion& q, const std::vector<RefusalKind>& refusals, const ModelConstants& constants,
                     winter::Sampling sampling, int threads) {
    Advice advice;
    advice.refusals = refusals;
    advice.asOf = q.winter.date(q.asOf);
    advice.season = q.season;
    advice.reasons = refusalRemarks(q, refusals);
    advice.winters = sampling.winters;
    advice.seed = sampling.seed;
    if (q.bees) advice.bees = stores::spreadOf(*q.bees, q.beesLogSd);
    if (!heftAlone(q)) advice.estimate = storesToday(q, constants, sampling, threads).estimate;
    if (auto portion = portionWithoutBees(q, refusals, constants)) feedLight(q, *std::move(portion), advice);
    else if (refusals == std::vector{RefusalKind::BeesUnknown}) sayWeight(q, constants, advice);
    return advice;
}

} // namespace winterlarder::advice
