// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "book/form/edits.h"

#include <string>
#include <vector>

namespace winterlarder::desk {

//! Case files as what a book would hold: a yard for every place, its colonies, and for each the look, the weighings, feeds and
//! harvests the case tells of. One step. `nextYard` and `nextColony` are the numbers the book gives next (Book::nextId).
//! book::caseOf of a book so made gives the case back, but for weighings older than its look and dates outside their winter.
//! Tested: tests/app/yard_test.cpp.
//! Yards that would have one name say in brackets which of `files` they are from (the names of the cases' files, in their order), or of
//! which colony where no files are named.
book::EditGroup entriesOfCases(const std::vector<book::ColonyCase>& cases, book::YardId nextYard,
                               book::ColonyId nextColony, const std::vector<std::string>& files = {});

} // namespace winterlarder::desk
