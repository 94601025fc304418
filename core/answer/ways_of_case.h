// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/entries/records.h"

#include <cstdint>

namespace winterlarder::answer {

//! Share of a full bloom an autumn flow brings: rows flow... of decisions.csv; 0 for none.
double flowShare(book::FlowStrength flow, const DecisionConstants& rules);

//! The keeper's ways: flow expected, feeder, visits, names, what past winters taught; after place and time. `positionInBatch` is the
//! random stream of a colony without a name. Tested: tests/answer/question_of_case_test.cpp.
void fillWays(advice::ColonyQuestion& question, const book::ColonyCase& record, const ReferenceData& reference,
              std::uint64_t positionInBatch);

//! What only the keeper knows. Mites that were counted, or medicine with its day, answer their questions without being asked.
void fillAnswers(advice::KeepersAnswers& answers, const book::ColonyCase& record, const DecisionConstants& rules);

} // namespace winterlarder::answer
