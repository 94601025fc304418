// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"
#include "calendar/season_day.h"

namespace winterlarder::answer {

//! The day a winter is followed from, out of records up to a day: of the last advice acted on in it, else of the last look before the solstice that saw bees and
//! combs (or bees, with a weight within thirty days: the later of the two days), else of the first after it, else that day; later where another colony was united into it since.
//! Tested: tests/answer/followed_colony_test.cpp, united_case_test.cpp.
Date decidedOn(const book::ColonyHistory& records, const Winter& winter, Date asOf);

//! Where nothing tells on that day (`autumn`, its case) what stores a colony brought that was united onto it: the day after it on which both were first weighed.
//! Tested: tests/answer/united_case_test.cpp.
std::optional<Date> weighedOnceUnited(const book::ColonyHistory& records, const book::ColonyCase& autumn);

} // namespace winterlarder::answer
