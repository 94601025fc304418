// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "report/visits.h"
#include "text/style.h"

#include <QString>

#include <string>
#include <vector>

//! Words of what is to be done at a colony, the same in lists, the calendar and the window. Tested: tests/cli/calendar_test.cpp.
namespace winterlarder::text {

//! Titles of what is due, for a calendar.
QString dueVisit(const book::PlannedVisit& visit, const WordStyle& style);
QString dueTask(const report::Task& task, const WordStyle& style);
//! The same in a list with days, where the day is not today.
QString taskOfDay(const report::Task& task, const WordStyle& style);
//! What to mind on its day, as words below a title; nothing where the title says all. The answer of the day it was written is not that of its own.
QString dueDetails(const report::Task& task, const WordStyle& style);
//! Of a visit that was not made: the day it was planned for.
QString dueSince(Date planned, const WordStyle& style);
//! Why nothing but visits is due for a colony: its records fit no winter.
QString nothingDue(const std::string& colony);
std::string calendarName();
//! How to unite, with the partner where one is known.
QString howToUnite(const advice::UniteAdvice& unite, const WordStyle& style);
//! The tasks of one colony with sugar and syrup in the amounts that are printed, of which the sugar adds up to the whole that is printed (see shownParts); visits
//! with as much sugar have as much syrup. Tested: tests/answer/wording_test.cpp.
std::vector<report::Task> asShown(std::vector<report::Task> tasks, const WordStyle& style);

} // namespace winterlarder::text
