// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <charconv>
#include <optional>
#include <string_view>
#include <system_error>

namespace winterlarder {

//! The whole text as one number, written as programs write it, whatever the language; nothing where it is none, out of range, or where anything
//! is left over. Tested: tests/support/as_number_test.cpp.
template <class Number> std::optional<Number> asNumber(std::string_view text) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return number;
}

} // namespace winterlarder
