// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/months.h"

#include "support/letters.h"

#include <algorithm>

namespace winterlarder {

int monthNamed(std::string_view word) {
    constexpr std::size_t shortest = 3;
    const auto begins = [&](std::string_view name) {
        return word.size() <= name.size() &&
               std::equal(word.begin(), word.end(), name.begin(), [](char a, char b) { return lower(a) == lower(b); });
    };
    const auto found = std::find_if(monthNames.begin(), monthNames.end(), begins);
    if (word.size() < shortest || found == monthNames.end()) return 0;
    return static_cast<int>(found - monthNames.begin()) + 1;
}

} // namespace winterlarder
