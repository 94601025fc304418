// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/basis.h"

#include "advice/looking/evidence_today.h"
#include "winter/seen_brood.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

SeasonDay earliestObservation(const ColonyQuestion& question) {
    SeasonDay first = std::min(question.asOf, question.lookedOn);
    for (const auto& weighing : question.weighings) first = std::min(first, weighing.day);
    return std::max(first, firstSeasonDay); // what was seen before the season's first day counts on it
}

bool storesKnown(const ColonyQuestion& question) {
    const auto combs = combsForBees(question);
    const bool looked =
        std::any_of(combs.begin(), combs.end(), [](const stores::Comb& comb) { return comb.lookedAt(); });
    return looked || question.quick || !question.weighings.empty();
}

} // namespace

namespace {

winter::WinterQuestion asSeen(const ColonyQuestion& question) {
    winter::WinterQuestion asked{earliestObservation(question), question.season, question.site->curve};
    asked.shellFactor = question.shellFactor;
    asked.raceFactor = question.raceFactor;
    asked.bees = *question.bees;
    asked.beesLogSd = question.drawnBeesLogSd;
    asked.brood = question.brood;
    asked.seenOn = std::max(question.lookedOn, firstSeasonDay);
    asked.colonyStream = question.stream;
    asked.learned = question.learned;
    return asked;
}

} // namespace

bool layingInDoubt(const ColonyQuestion& question, const ModelConstants& constants) {
    return question.bees && question.brood && !question.queenSeen && !question.eggsSeen &&
           winter::seenToHaveStopped(asSeen(question), constants);
}

winter::WinterQuestion winterQuestion(const ColonyQuestion& question, const ModelConstants& constants) {
    auto asked = asSeen(question);
    if (layingInDoubt(question, constants)) asked.brood.reset();
    return asked;
}

winter::AutumnFlow autumnFlow(const ColonyQuestion& question, std::optional<Mass> freeRoom) {
    return {question.flowStrength, question.flowLastDay, freeRoom};
}

std::vector<RefusalKind> refusalsOf(const ColonyQuestion& question) {
    std::vector<RefusalKind> refusals = question.refusals;
    const auto refuse = [&](RefusalKind kind) {
        if (std::find(refusals.begin(), refusals.end(), kind) == refusals.end()) refusals.push_back(kind);
    };
    if (question.bees && question.bees->count <= 0) refuse(RefusalKind::NoColony);
    if (!question.bees) refuse(RefusalKind::BeesUnknown);
    if (!storesKnown(question)) refuse(RefusalKind::StoresUnknown);
    if (question.asOf > lastSimulatedDay) refuse(RefusalKind::OutOfSeason);
    if (question.site && !question.season.derivable()) refuse(RefusalKind::SeasonNotDerivable);
    if (question.season.forage && question.asOf >= question.season.forage->day) refuse(RefusalKind::AfterForage);
    std::sort(refusals.begin(), refusals.end());
    return refusals;
}

} // namespace winterlarder::advice
