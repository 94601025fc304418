// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "book/book.h"
#include "exchange/calendar_file.h"
#include "report/visits.h"
#include "text/style.h"

namespace winterlarder::answer {

//! The book in ids of calendar events: its mark, so a copy is the same book and any other is not; of one made before books had marks, when and by whom it
//! was made, as ever.
std::string calendarMark(const book::BookInfo& info);

//! What the answer of a colony, in the plan of its yard, asks to be done; while its winter is not yet followed.
struct AdvisedDue {
    std::vector<report::Task> tasks;
    text::WordStyle style;    //!< of its place
    bool feedNothing = false; //!< what was planned to be fed is not, see report::feedForbidden
};
AdvisedDue advisedDue(const advice::ColonyQuestion& question, const advice::Advice& advice,
                      const text::WordStyle& style);

report::Task taskOf(const book::PlannedVisit& visit); //!< as it was planned

//! What is planned, then what is advised beyond it: nothing of a kind that is planned.
std::vector<report::Task> plannedFirst(const std::vector<book::PlannedVisit>& visits,
                                       const std::vector<report::Task>& advised);

//! What a winter that is followed asks to be done: nothing of a dead colony.
std::vector<report::Task> followedTasks(const tracking::Following& following);

//! A colony for a calendar; `advised`: nothing where its answer is not known.
struct ReadDue {
    FollowReading reading;
    std::optional<AdvisedDue> advised{};
};

//! readToFollow for a colony's calendar; what cannot be read is told with the colony's name, an exception as a problem of kind Internal.
Outcome<FollowReading> readDue(book::Book& from, book::ColonyId colony, const std::string& name, Date asOf,
                               const BookLearned* learned);

//! What is due for colonies, by day, as the page Plan lists it: planned visits, then what is advised beyond them (feed, combs to hang in,
//! uniting, honey, the next weighing), or once the winter is followed what that asks for; each with words of its own, told as at its place. A planned feed whose day has passed is due today. What the answer forbids
//! is left out, and so is a colony that is gone. Ids are the same whenever the same thing is written, and no other book's. A colony that cannot be
//! computed is told in `problems`, one whose records fit no winter in `notes`, and the others go on. Nothing more where stopped. Tested:
//! tests/cli/calendar_test.cpp, tests/cli/follow_test.cpp.
struct DueLooks {
    std::vector<exchange::DueOn> due;
    Problems problems;
    std::vector<std::string> notes;
};
DueLooks dueLooks(const std::string& mark, const std::vector<ReadDue>& colonies, const ReferenceData& reference,
                  winter::Sampling sampling, int threads, const text::WordStyle& style, std::stop_token stop = {});

} // namespace winterlarder::answer
