// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "book/case_of.h"

#include <optional>
#include <set>
#include <vector>

namespace winterlarder::desk {

//! Everything the book holds of one colony, read at one moment; each list by date, oldest first.
struct ColonyRecords {
    book::Colony colony;
    std::vector<book::Move> moves;
    std::vector<book::Fate> fates;
    std::vector<book::Housing> housings;
    std::vector<book::Look> looks;
    std::vector<book::Weighing> weighings;
    std::vector<book::Feed> feeds;
    std::vector<book::Harvest> harvests;
    std::vector<book::Treatment> treatments;
    std::vector<book::Manipulation> manipulations;
    std::vector<book::ActedAdvice> advices;
    std::vector<book::PlannedVisit> visits;
    std::vector<book::WinterOutcome> outcomes;
    std::vector<book::Sighting> sightings;
};

//! Nothing where the colony is gone.
Outcome<std::optional<ColonyRecords>> recordsOf(book::Book& book, book::ColonyId id);

//! The look a case rests on; nothing where it rests on none.
const book::Look* lookOfCase(const ColonyRecords& records, const book::ColonyCase& record);
//! The weighing the window shows beside a case: the newest on or before its day.
const book::Weighing* newestWeighing(const ColonyRecords& records, Date asOf);
//! The look written last, on or before a day.
const book::Look* lastLook(const ColonyRecords& records, Date day);

//! Colonies that touched entries belong to; nothing where it cannot be told (an entry is gone, a yard changed): all may be.
std::optional<std::set<book::ColonyId>> coloniesOf(book::Book& book, const std::vector<book::Touched>& touched);

// Tested: tests/app/yard_test.cpp.

} // namespace winterlarder::desk
