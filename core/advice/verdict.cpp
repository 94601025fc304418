// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/verdict.h"

#include "stores/harvest.h"

namespace winterlarder::advice {

bool tooWeak(const ColonyQuestion& question, double typicalBees) {
    return typicalBees < leastWinterBees && !question.nucleus && question.season.broodStop &&
           question.season.winterClass != climate::WinterClass::Dearth && question.asOf < question.season.broodStop->day;
}

namespace {

bool anyCombToTake(const Reckoning& r) {
    if (r.question.combs.empty()) return true; // not listed: the keeper will find one
    return !stores::harvestOrder(r.question.combs, r.question.boxes, r.question.coveredCombs,
                                 stores::openFactor(r.question.freshlyFilled))
                .empty();
}

} // namespace

bool mayHarvest(const Reckoning& r) {
    const ColonyQuestion& q = r.question;
    return !r.estimate.contradictory && q.setAside.empty() && !q.treated && q.moisturePercent.value_or(0) <= mostMoisturePercent && !q.trouble &&
           anyCombToTake(r);
}

Verdict verdictFor(const Reckoning& r, const Amounts& amounts, double typicalBees) {
    if (tooWeak(r.question, typicalBees)) return Verdict::Unite;
    return verdictOf(amounts, r.harvestable);
}

} // namespace winterlarder::advice
