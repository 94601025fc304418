// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "answer/hive_of_case.h"
#include "book/entries/records.h"
#include "exchange/case/case_file.h"
#include "reference/reference.h"
#include "stores/plausible.h"
#include "stores/tare.h"
#include "support/outcome.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::answer {

//! A day on which boxes were put on or taken off, and the hive as it stood from then on, where that is known.
struct HiveChange {
    Date day;
    std::optional<book::HiveRecord> hive;
};

//! A colony's records made into the plain values the models take. Where it cannot be answered but nothing is at fault
//! (too far from a station, no bees known, ...) the question says so in `refusals`. Problems: given dates in conflict,
//! a climate outside the model's limits, more bees than it knows - each at its place in the case. Records that are in doubt
//! (answer/doubts.h) are set aside: the question says so and does without them.
//! `positionInBatch` (from 0) is the random stream of a colony without a name; `changes` as in doubtsOf. Tested:
//! tests/answer/question_of_case_test.cpp.
Outcome<advice::ColonyQuestion> questionOf(const book::ColonyCase& record, const exchange::CasePlaces& places,
                                           const ReferenceData& reference, std::uint64_t positionInBatch,
                                           const std::vector<HiveChange>& changes = {});

//! A fault for every hive format, of a box or a comb, that is not shipped: a book may have come from anywhere.
Problems unknownFormats(const book::ColonyCase& record, const exchange::CasePlaces& places,
                        const ReferenceData& reference);

//! A question read from the text of a case, and the records it was made from.
struct ReadQuestion {
    book::ColonyCase record;
    advice::ColonyQuestion question;
    Problems asked{}; //!< askedOfCase (answer/doubts.h)
};

//! A doubt of a record of a case in words, at its place: the core knows what is wrong, not how it is said.
using DoubtInWords = std::function<Problem(const stores::Doubt&, Place, const book::ColonyCase&)>;

//! Reads a case and makes its question: every fault of both steps in one list, by place; impossible records are faults, said
//! by `inWords`. Tested: tests/answer/core_alone.cpp.
Outcome<ReadQuestion> readQuestion(std::string_view text, std::string file, const ReferenceData& reference,
                                   std::uint64_t positionInBatch, const DoubtInWords& inWords, int firstLine = 1);

} // namespace winterlarder::answer
