// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace winterlarder {

//! What would be right where a text is no date (Date::parse): "write 2026-09-03" where it is a day written in another way ("3 September 2026",
//! "Sept 3, 2026", "3.9.2026", "2026/9/3"), both days where day and month cannot be told apart ("9/3/2026"), else dateForm. Month names are
//! English, dots stand between day, month and year, years have four digits. Never taken for the date. Tested: tests/calendar/date_test.cpp.
std::string dateMeant(std::string_view written);

} // namespace winterlarder
