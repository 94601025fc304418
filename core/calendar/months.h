// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string_view>

namespace winterlarder {

//! In English, as messages say them.
inline constexpr std::array<std::string_view, 12> monthNames{"January",   "February", "March",    "April",
                                                             "May",       "June",     "July",     "August",
                                                             "September", "October",  "November", "December"};

//! 1..12 of a month's English name or its first letters, three at least, in capitals or not ("September", "sept", "OCT"); 0 where the word
//! is none. Tested: tests/calendar/date_test.cpp.
int monthNamed(std::string_view word);

} // namespace winterlarder
