// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "book/form/edits.h"

#include <vector>

namespace winterlarder::desk {

//! Case files as what a book would hold: a yard for every place, its colonies, and for each the look, the weighings, feeds and
//! harvests the case tells of. One step. `nextYard` and `nextColony` are the numbers the book gives next (Book::nextId).
//! book::caseOf of a book so made gives the case back, but for weighings older than its look and dates outside their winter.
//! Tested: tests/app/yard_test.cpp.
book::EditGroup entriesOfCases(const std::vector<book::ColonyCase>& cases, book::YardId nextYard,
                               book::ColonyId nextColony);

} // namespace winterlarder::desk
