// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/months.h"

#include "support/letters.h"

namespace winterlarder {

int monthNamed(std::string_view word) {
    constexpr std::size_t shortest = 3;
    if (word.size() < shortest) return 0;
    for (std::size_t month = 0; month < monthNames.size(); ++month)
        if (lowered(monthNames[month]).starts_with(lowered(word))) return static_cast<int>(month) + 1;
    return 0;
}

} // namespace winterlarder
