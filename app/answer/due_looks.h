// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "exchange/calendar_file.h"
#include "text/style.h"

namespace winterlarder::answer {

//! readToFollow for a colony's calendar; what cannot be read is told with the colony's name, an exception as a problem of kind Internal.
Outcome<FollowReading> readDue(book::Book& from, book::ColonyId colony, const std::string& name, Date asOf, const BookLearned* learned);

//! What is due for followed colonies, by day: planned visits from the day on, the next weighing, feeding that cannot wait, each with how the
//! winter goes. A colony that cannot be computed is told in `problems`, one whose records fit no winter in `notes`, and the others go on.
//! Nothing more where stopped. Tested: tests/cli/follow_test.cpp.
struct DueLooks {
    std::vector<exchange::DueOn> due;
    Problems problems;
    std::vector<std::string> notes;
};
DueLooks dueLooks(const std::vector<FollowReading>& readings, const ReferenceData& reference,
                                               winter::Sampling sampling, int threads, const text::WordStyle& style,
                                               std::stop_token stop = {});

} // namespace winterlarder::answer
