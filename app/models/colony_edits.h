// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/records.h"

#include <optional>

namespace winterlarder::desk {

//! How a keeper told the number of bees.
enum class BeesToldBy { NotTold, CoveredCombs, Seams, Count };
BeesToldBy beesToldBy(const book::BeesRecord& bees);
double beesTold(const book::BeesRecord& bees); //!< in that kind; 0 where not told
//! The records with the bees told in one way; the spread of another way of telling is dropped with it.
book::ColonyCase withBees(book::ColonyCase record, BeesToldBy kind, double value);

//! How the hive was weighed last.
enum class WeighedBy { NotWeighed, Scale, BothSides, OneSide, Heft };
WeighedBy weighedBy(const book::ColonyCase& record);
//! The newest weighing; nothing where there is none.
std::optional<book::WeighingRecord> newestWeighing(const book::ColonyCase& record);
//! The records with the newest weighing replaced (added where there was none, taken out where `weighing` is nothing).
book::ColonyCase withNewestWeighing(book::ColonyCase record, const std::optional<book::WeighingRecord>& weighing);

//! The records with a comb list in place of whatever told of combs before.
book::ColonyCase withCombs(book::ColonyCase record, std::vector<book::CombRecord> combs);

// Tested: tests/app/colony_edits_test.cpp.

} // namespace winterlarder::desk
