// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/case_of.h"
#include "reference/remark.h"

#include <vector>

namespace winterlarder::answer {

//! The case of a colony on a day (book::caseOf) with the colonies that were united into it since its look: their bees, brood, combs and feeds as their own
//! records tell them on the day they came are added to its own, their boxes stand on top unless its hive was written down since. What their records do not tell
//! is not guessed (UnitedRecord says which). Weights up to that day were of it alone. Once it is looked at again, it is what is seen then.
//! Tested: tests/answer/united_case_test.cpp.
book::ColonyCase caseWithUnited(const book::ColonyHistory& history, const std::vector<book::Yard>& yards,
                                const ReferenceData& reference, Date asOf);

//! What is to be said of the colonies a case counts with its own: united-counted, united-box-on-top, united-bees-unknown, united-stores-unknown
//! (from: text; day, seen: Date).
std::vector<Remark> unitedRemarks(const book::ColonyCase& record);

} // namespace winterlarder::answer
