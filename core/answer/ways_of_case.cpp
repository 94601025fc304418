// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/ways_of_case.h"

#include "book/entries/words.h"
#include "support/require.h"

namespace winterlarder::answer {

namespace {

feeding::Feeder feederOf(const std::optional<book::FeederRecord>& record, const ReferenceData& reference) {
    const book::FeederRecord chosen = record.value_or(book::FeederRecord{});
    const FeederType* type = reference.feeder(book::wordOf(chosen.kind));
    require(type != nullptr, "no feeder {}", book::wordOf(chosen.kind));
    return {.capacity = chosen.capacity.value_or(type->capacity),
            .top = type->overAll,
            .touchesCluster = type->atCluster,
            .slow = type->slow};
}

// The shift of first forage is in the season already.
void fillLearned(advice::ColonyQuestion& question, const book::LearnedRecord& record) {
    if (record.winters > 0)
        question.learned = winter::LearnedMultipliers{record.use, record.useLogSd, record.death, record.deathLogSd};
    question.learnedFrom = {record.winters, record.forageYears, record.forageShiftDays};
}

// Mites that were counted, or medicine with its day, answer their questions without being asked.
void fillMites(advice::KeepersAnswers& answers, const book::ColonyCase& record) {
    answers.mitesPer100 = record.bees.mitesPer100;
    answers.mitesCounted = record.bees.mitesPer100 ? std::optional(true) : record.bees.mitesCounted;
    answers.mitesTreated =
        record.bees.mitesTreated || record.treatments.empty() ? record.bees.mitesTreated : std::optional(true);
}

} // namespace

double flowShare(book::FlowStrength flow, const DecisionConstants& rules) {
    switch (flow) {
    case book::FlowStrength::None: return 0;
    case book::FlowStrength::Trickle: return rules.flowTrickle;
    case book::FlowStrength::Fair: return rules.flowFair;
    case book::FlowStrength::Strong: return rules.flowStrong;
    }
    return 0;
}

void fillWays(advice::ColonyQuestion& question, const book::ColonyCase& record, const ReferenceData& reference,
              std::uint64_t positionInBatch) {
    question.flowStrength = flowShare(record.site.autumnFlow.value_or(book::FlowStrength::None), reference.decisions);
    if (record.site.autumnFlow == book::FlowStrength::Strong)
        question.flowLastDay = question.asOf + static_cast<int>(reference.decisions.strongFlowDays);
    question.feeder = feederOf(record.feeder, reference);
    question.visitEveryDays = record.wish.visitEveryDays;
    question.visitWeekdays = record.wish.visitWeekdays;
    question.moisturePercent = record.moisturePercent;
    question.colony = record.colony.value_or("");
    question.yard = record.yard.value_or("");
    if (record.learned) fillLearned(question, *record.learned);
    question.stream = record.colony ? winter::colonyStream(*record.colony) : positionInBatch;
}

void fillAnswers(advice::KeepersAnswers& answers, const book::ColonyCase& record, const DecisionConstants& rules) {
    fillMites(answers, record);
    answers.fedOrTreated = record.fedOrTreated;
    answers.supersFor = record.hive.supersFor;
    if (record.site.autumnFlow) answers.autumnFlow = flowShare(*record.site.autumnFlow, rules);
    answers.fullCombs = record.fullCombs;
    answers.visitsInWinter = record.wish.visitsInWinter;
    answers.foodBeside = record.bees.foodBeside;
    answers.shortRisk = record.wish.shortRisk;
    answers.reserve = record.wish.reserve;
    answers.honeyKind = record.honeyKind;
    answers.units = record.units;
}

} // namespace winterlarder::answer
