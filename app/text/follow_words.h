// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "report/visits.h"
#include "text/asked.h"
#include "text/style.h"
#include "tracking/follow.h"

#include <QString>

#include <string>
#include <string_view>

//! Words of a winter that is followed, the same on the command line and in the window. Tested: tests/cli/follow_test.cpp,
//! tests/app/following_test.cpp.
namespace winterlarder::text {

//! How it goes and what is fed next: "On course.", "Act now: 2.5 kg of fondant on the bees today, then weigh again."
QString followHeadline(const tracking::FollowQuestion& question, const tracking::Following& following,
                       const WordStyle& style, NumberForm form = plainly);
//! The state in two words.
QString followState(tracking::FollowState state);
//! What may be wanted after that, and when; nothing where nothing is.
QString expectedLaterSentence(const tracking::FollowQuestion& question, const tracking::Following& following,
                              const WordStyle& style);
//! How often it goes wrong from here, as forecast in autumn and now.
QString followRisk(const tracking::FollowQuestion& question, const tracking::Following& following,
                   const WordStyle& style, NumberForm form = plainly);
//! When to look next; why not, where no look is worth it.
QString followNext(const tracking::FollowQuestion& question, const tracking::Following& following,
                   const WordStyle& style, NumberForm form = plainly);
//! One of the five questions after a death, by its id (answer::deathQuestions).
QString deathQuestion(std::string_view id);
//! What was seen: "scale", "two-sided lift", "heft", "combs", "bees", "cluster", "flying", "glimpse", "dead" as words.
QString seenKind(std::string_view kind, const WordStyle& style);

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

} // namespace winterlarder::text
