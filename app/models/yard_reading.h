// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"
#include "models/followed_winter.h"

#include <map>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace winterlarder::desk {

//! What is to be read of a book for the window.
struct YardRequest {
    book::YardId yard{};                            //!< 0, or gone: the first
    Date day;                                       //!< colonies living and standing there on this day
    book::ColonyId open{};                          //!< the colony whose whole history is wanted; 0: none
    std::optional<std::set<book::ColonyId>> only{}; //!< nothing: the whole yard anew
    PastPointer past{};                             //!< what was learned goes into the cases; nothing: not known
};

//! A yard on a day, read at one moment; or only some of its colonies.
struct YardReading {
    bool whole = true;
    Date day;
    std::vector<book::Yard> yards; //!< all of the book
    book::YardId shown{};
    std::vector<std::pair<book::ColonyId, Outcome<book::ColonyCase>>> colonies;
    //! planned, neither made nor skipped, by day; of the colonies read
    std::map<book::ColonyId, std::vector<book::PlannedVisit>> visits;
    std::optional<book::ColonyHistory> open;
    Problems problems; //!< some of the book could not be read
};

//! Reads in one transaction. Problems: nothing could be read. Tested: tests/app/yard_test.cpp.
Outcome<YardReading> readYard(book::Book& book, const YardRequest& request);

} // namespace winterlarder::desk
