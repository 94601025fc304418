// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/entries/records.h"
#include "exchange/case/case_file.h"

namespace winterlarder::answer {

//! Food use by that of other bees: rows foodOf... of constants.csv; others and not known 1.0 (size judgement).
double raceFactor(const std::optional<book::BeeKind>& kind, const ModelConstants& constants);

//! Bees, brood and queen of a case, after its hive and combs. Problem: more bees than the dictionary allows to count, at its place.
//! Tested: tests/answer/question_of_case_test.cpp.
void fillBees(advice::ColonyQuestion& question, const book::BeesRecord& record, const exchange::CasePlaces& places,
              const ReferenceData& reference, Problems& problems);

} // namespace winterlarder::answer
