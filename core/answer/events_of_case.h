// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/entries/records.h"
#include "exchange/case/case_file.h"

namespace winterlarder::answer {

//! Ripe stores a feed becomes [kg]; 0 where its ratio is none. Syrup without a ratio counts as winter syrup.
Mass storesOfFeed(const book::FeedRecord& feed);

//! A feed without an amount in the measure of its kind; a syrup too thin or too strong to be one has no density, so no stores: a fault
//! of the ratio. Tested: tests/answer/question_of_case_test.cpp.
void checkFeeds(const book::ColonyCase& record, const exchange::CasePlaces& places, Problems& problems);

//! Weighings, feeds, harvests and medicine of a case, after its place, time, hive and combs. One of the day of the look that came after
//! it counts on top of what was seen.
void fillEvents(advice::ColonyQuestion& question, const book::ColonyCase& record, const DecisionConstants& rules);

} // namespace winterlarder::answer
