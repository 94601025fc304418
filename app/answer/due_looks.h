// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "exchange/calendar_file.h"
#include "text/style.h"

namespace winterlarder::answer {

//! What is due for followed colonies, by day: planned visits from the day on, the next weighing, feeding that cannot wait, each with how the
//! winter goes. Problems: those of the cases. Nothing more where stopped. Tested: tests/cli/follow_test.cpp.
Outcome<std::vector<exchange::DueOn>> dueLooks(const std::vector<FollowReading>& readings, const ReferenceData& reference,
                                               winter::Sampling sampling, int threads, const text::WordStyle& style,
                                               std::stop_token stop = {});

} // namespace winterlarder::answer
