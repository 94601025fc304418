// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/acceptance.h"

#include "answer/advice_json.h"
#include "answer/doubts.h"
#include "answer/json_values.h"
#include "answer/version.h"
#include "exchange/case/case_file.h"

namespace winterlarder::answer {
namespace {

std::optional<Mass> ifAny(Mass mass) { return mass > Mass(0) ? std::optional(mass) : std::nullopt; }

book::PlannedVisit plannedOf(book::ColonyId colony, const feeding::Visit& visit) {
    book::PlannedVisit planned{.colony = colony, .date = visit.date, .what = visit.kind};
    planned.sugar = ifAny(visit.sugar);
    if (visit.syrup > Volume(0)) planned.syrup = visit.syrup;
    planned.fondant = ifAny(visit.fondant);
    return planned;
}

} // namespace

book::AcceptAdvice acceptanceOf(book::ColonyId colony, const book::ColonyCase& record,
                                const advice::ColonyQuestion& question, const advice::Advice& advice,
                                const ReferenceData& reference, const text::WordStyle& style) {
    book::AcceptAdvice accepted{{.colony = colony, .date = record.asOf}, {}};
    accepted.advice.verdict = word(advice.verdict);
    accepted.advice.inputs = exchange::writeCaseLine(caseToWrite(record, reference));
    accepted.advice.answer = adviceJson(record, question, advice, reference, style).compact();
    accepted.advice.seed = advice.seed;
    accepted.advice.winters = advice.winters;
    accepted.advice.programVersion = programVersion;
    if (advice.feed)
        for (const auto& visit : advice.feed->visits) accepted.visits.push_back(plannedOf(colony, visit));
    return accepted;
}

} // namespace winterlarder::answer
