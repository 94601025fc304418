// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/entries/entries.h"

#include "support/require.h"

#include <fmt/format.h>

namespace winterlarder::book {

std::optional<DayOfYear> DayOfYear::of(int month, int day) {
    if (!Date::of(2001, month, day)) return std::nullopt;
    return DayOfYear{month, day};
}

std::optional<DayOfYear> DayOfYear::parse(std::string_view text) {
    const auto date = Date::parse(fmt::format("2001-{}", text));
    if (!date) return std::nullopt;
    return DayOfYear{date->month(), date->day()};
}

std::string DayOfYear::text() const { return fmt::format("{:02}-{:02}", month, day); }

QueenColour queenColourOf(int year) {
    require(year >= 0, "a queen of the year {}", year);
    switch (year % 5) {
    case 1: return QueenColour::White;
    case 2: return QueenColour::Yellow;
    case 3: return QueenColour::Red;
    case 4: return QueenColour::Green;
    default: return QueenColour::Blue;
    }
}

} // namespace winterlarder::book
