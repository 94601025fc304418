// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"

#include <optional>

namespace winterlarder::desk {

//! How a keeper told the number of bees.
enum class BeesToldBy { NotTold, CoveredCombs, Seams, Count };
BeesToldBy beesToldBy(const book::BeesRecord& bees);
double beesTold(const book::BeesRecord& bees); //!< in that kind; 0 where not told
//! The bees told in one way; the spread of another way of telling is dropped with it.
book::BeesRecord withBees(book::BeesRecord bees, BeesToldBy kind, double value);

//! How the hive was weighed.
enum class WeighedBy { NotWeighed, Scale, BothSides, OneSide, Heft };
WeighedBy weighedBy(const std::optional<book::WeighingRecord>& weighing);

// Tested: tests/app/colony_edits_test.cpp.

//! The advice made the plan, in place of what an earlier plan still wants from this day on.
book::Edit planInstead(const book::AcceptAdvice& accepted, const book::ColonyHistory& records, Date asOf);
//! Whether it is the plan already: kept in the book as it is, with all its visits, whatever became of them.
bool isPlan(const book::AcceptAdvice& accepted, const book::ColonyHistory& records);

//! A feed written down. A new one ticks off the visit that was planned for its kind within three days of it, in the same step.
book::Edit feedGiven(const book::Feed& feed, const std::vector<book::PlannedVisit>& visits);

//! A visit ticked off: made on the day it was planned for, or on the day asked about where that comes first.
book::MarkVisitDone madeOnItsDay(book::PlannedVisitId visit, Date planned, std::optional<Date> asOf);

} // namespace winterlarder::desk
