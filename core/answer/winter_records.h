// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "calendar/season_day.h"

#include <optional>
#include <vector>

namespace winterlarder::answer {

//! Everything a book holds of one colony up to a day, read at one moment; entries by date.
struct WinterRecords {
    book::Colony colony;
    book::YardId yard{}; //!< where it stands on that day
    std::vector<book::Housing> housings;
    std::vector<book::Look> looks;
    std::vector<book::Weighing> weighings;
    std::vector<book::Feed> feeds;
    std::vector<book::Harvest> harvests;
    std::vector<book::Manipulation> manipulations;
    std::vector<book::ActedAdvice> advices;
    std::vector<book::PlannedVisit> visits;
    std::vector<book::WinterOutcome> outcomes;
    std::vector<book::Sighting> sightings;
    std::vector<book::Fate> fates;
    std::vector<book::DayTemperature> weather; //!< of the yard, ascending, one a day; later logs count
    bool operator==(const WinterRecords&) const = default;
};

//! Records of a colony that are dated on or before a day. Problems: those of the book, no such colony.
//! Tested: tests/answer/followed_colony_test.cpp.
Outcome<WinterRecords> winterRecordsOf(book::Book& from, book::ColonyId colony, Date until);

} // namespace winterlarder::answer
