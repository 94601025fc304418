// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "calendar/season_day.h"

namespace winterlarder::book {

//! Nothing observed longer before the day asked for than this says anything about it (the case file has the same limit).
inline constexpr int oldestObservation = 60; //!< days

//! The first day whose honey may still be offered on `asOf`: 1 April (end of September in the south) before the winter that contains it. What
//! older combs hold was winter stores and has been through one; a treatment that ended before does not touch this honey. Judgement.
Date honeySince(Date asOf, Hemisphere hemisphere);

//! The yard a colony stands in on a day: where it began, or where its last move on or before that day took it.
YardId yardOn(const Colony& colony, const std::vector<Move>& moves, Date day);
//! The hive it lives in on a day, by the last housing on or before it.
const HiveRecord& hiveOn(const Colony& colony, const std::vector<Housing>& housings, Date day);
//! How it left the book, if it had on that day.
std::optional<Fate> fateOn(const std::vector<Fate>& fates, Date day);
//! A feed with the one amount its kind is measured by: syrup in sugar where that is known, else in litres with its ratio; fondant; dry sugar.
FeedRecord oneAmount(FeedRecord feed);
//! The days a yard's keeper knows better than the climate, in the winter that contains `asOf`.
SeasonRecord seasonIn(const YardSeason& season, Hemisphere hemisphere, Date asOf);

//! What the book knows of a colony on a day, as the case `advise` answers: the latest look on or before it that saw both bees and combs
//! (else the latest that saw either), weighings since, feeds since honeySince, harvests since the look, the yard's season and wish, the hive as it was at
//! that look, the treatments that had not ended by honeySince. Records after the day do not exist yet. Problem: no such colony.
//! Tested: tests/book/case_of_test.cpp.
Outcome<ColonyCase> caseOf(Book& book, ColonyId colony, Date asOf);

//! The colonies that are living on the day, by id.
Outcome<std::vector<Colony>> livingOn(Book& book, Date day);

} // namespace winterlarder::book
