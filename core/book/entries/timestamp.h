// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace winterlarder::book {

//! A moment, in whole seconds since 1970-01-01 00:00 UTC (leap seconds not counted). The book never asks a clock: whoever
//! opens or edits it says what time it is. Tested: tests/book/tables_test.cpp.
struct Timestamp {
    std::int64_t seconds = 0;
    auto operator<=>(const Timestamp&) const = default;

    //! "2026-11-25T09:27:36Z"; ContractViolation before 1400 or after 9999.
    std::string iso() const;
    //! Reads exactly the form that iso() writes; nothing where the text is anything else.
    static std::optional<Timestamp> parse(std::string_view iso);
    //! The day in UTC.
    Date date() const;
};

} // namespace winterlarder::book
