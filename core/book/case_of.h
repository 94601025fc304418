// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"
#include "calendar/season_day.h"

namespace winterlarder::book {

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
//! (else the latest that saw either), signs of disease seen at any look since then, weighings since in the hive as it was then, feeds since
//! honeySince, harvests since the look, the season and wish of the yard it stands in, that hive, the treatments that had not ended by honeySince.
//! Records after the day do not exist yet; colonies united into it are not counted here (answer/united_case.h). `yards`: of the book, by which hers is found. Tested: tests/book/case_of_test.cpp.
ColonyCase caseOf(const ColonyHistory& history, const std::vector<Yard>& yards, const ReferenceData& reference,
                  Date asOf);
//! The same, read in one transaction. Problem: no such colony.
Outcome<ColonyCase> caseOf(Book& book, ColonyId colony, Date asOf);

//! The look a case made from a history on a day rests on; nothing where it rests on none.
const Look* lookOfCase(const ColonyHistory& history, Date asOf);
//! The newest weighing on or before the day that still says something of it; nothing where there is none.
const Weighing* newestWeighing(const ColonyHistory& history, Date asOf);
//! The look written last, on or before a day, however old; nothing where there is none.
const Look* lastLook(const ColonyHistory& history, Date day);

} // namespace winterlarder::book
