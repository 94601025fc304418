// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"
#include "reference/reference.h"

namespace winterlarder::answer {

//! The advice acted on, on the day of the decision: the last of that day; nothing where none was.
const book::ActedAdvice* actedOn(const book::ColonyHistory& records, Date decided);

//! Feeds written down for the day of the decision which the advice acted on did not know of, by the case frozen with it: they were made after it, and are
//! not in the stores it was made for. A case that cannot be read knew of none. Tested: tests/answer/acted_on_test.cpp.
std::vector<book::FeedRecord> fedThatEvening(const book::ColonyHistory& records, Date decided,
                                             const ReferenceData& reference);

//! The case of the decision without them.
book::ColonyCase asDecided(book::ColonyCase autumn, const std::vector<book::FeedRecord>& evening);

} // namespace winterlarder::answer
