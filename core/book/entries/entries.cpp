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

} // namespace winterlarder::book
