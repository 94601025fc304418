// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace winterlarder::climate {

//! For messages.
inline constexpr std::array<const char*, 12> monthNames{"January",   "February", "March",    "April",
                                                        "May",       "June",     "July",     "August",
                                                        "September", "October",  "November", "December"};

} // namespace winterlarder::climate
