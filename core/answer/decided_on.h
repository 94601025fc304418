// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"
#include "calendar/season_day.h"

namespace winterlarder::answer {

//! The day a winter is followed from, out of records up to a day: of the last advice acted on in it, else of the last look before the solstice that saw bees and
//! combs, else of the first after it, else that day; later where another colony was united into it since.
//! Tested: tests/answer/followed_colony_test.cpp, united_case_test.cpp.
Date decidedOn(const book::ColonyHistory& records, const Winter& winter, Date asOf);

} // namespace winterlarder::answer
