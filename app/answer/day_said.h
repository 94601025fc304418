// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "support/outcome.h"

#include <optional>
#include <string>

namespace winterlarder::answer {

//! The day WINTERLARDER_TODAY says is today; nothing where it says none, and the clock's is meant. A problem where it is no day, placed
//! at the program of this name. Tested: tests/answer/day_said_test.cpp.
Outcome<std::optional<Date>> daySaid(const std::string& program);

} // namespace winterlarder::answer
