// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

//! One colony of a book as a plain value: read once, then asked, cut at a day or edited without the book.
//! Tested: tests/book/colony_history_test.cpp.
namespace winterlarder::book {

//! Everything a book holds of one colony; each list by date, then id, as the book gives it.
struct ColonyHistory {
    Colony colony{};
    std::vector<Move> moves{};
    std::vector<Fate> fates{};
    std::vector<Housing> housings{};
    std::vector<Look> looks{};
    std::vector<Weighing> weighings{};
    std::vector<Feed> feeds{};
    std::vector<Harvest> harvests{};
    std::vector<Treatment> treatments{};
    std::vector<Manipulation> manipulations{};
    std::vector<ActedAdvice> advices{};
    std::vector<PlannedVisit> visits{};
    std::vector<WinterOutcome> outcomes{};
    std::vector<Sighting> sightings{};
    //! The colonies that were united into it, each up to the day it was, by that day.
    std::vector<ColonyHistory> united{};
    bool operator==(const ColonyHistory&) const = default;
};

//! Calls visit(list) with every list of a colony's own entries, in the order of Kind.
template <class History, class Visit> void eachList(History& history, Visit visit) {
    visit(history.moves), visit(history.fates), visit(history.housings), visit(history.looks), visit(history.weighings);
    visit(history.feeds), visit(history.harvests), visit(history.treatments), visit(history.manipulations);
    visit(history.advices), visit(history.visits), visit(history.outcomes), visit(history.sightings);
}

//! A colony's history, read in one transaction. findHistory: nothing where the colony is gone; historyOf: that is a problem.
Outcome<std::optional<ColonyHistory>> findHistory(Book& book, ColonyId colony);
Outcome<ColonyHistory> historyOf(Book& book, ColonyId colony);

//! The day a colony was united into another; nothing where it never was.
std::optional<Date> unitedOn(const ColonyHistory& history, ColonyId into);

//! What there was of it on a day: records dated later are left out. Visits stay, they lie ahead of the day they were planned on.
ColonyHistory historyUntil(ColonyHistory history, Date day);

//! The history as the book would hold it after the edit, worked out by the book's own expansion of edits (targetsOf); nothing where the
//! colony is gone then. `newNumber` numbers new entries. Problems: the edit cannot be made, or changes entries of others, which
//! the history does not know. Limits of values are left to the book; colonies united into it stay as they were read.
using NewNumber = std::function<std::int64_t(Kind)>;
Outcome<std::optional<ColonyHistory>> afterEdit(const Edit& edit, const ColonyHistory& history, const std::string& who,
                                                const NewNumber& newNumber);

//! The yards of a book, and what was measured in them; read in one transaction.
struct YardsOfBook {
    std::vector<Yard> yards{};         //!< by id
    std::vector<WeatherLog> weather{}; //!< by id
    //! Daily means of a yard up to a day, ascending, one a day; later logs count.
    std::vector<DayTemperature> measuredIn(YardId yard, Date until) const;
};
Outcome<YardsOfBook> yardsOf(Book& book);

//! The colonies that are living on the day, by id.
Outcome<std::vector<Colony>> livingOn(Book& book, Date day);

} // namespace winterlarder::book
