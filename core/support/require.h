// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fmt/format.h>
#include <stdexcept>
#include <utility>

namespace winterlarder {

//! A promise between parts of the program was broken. Never a user's fault; stays on in Release.
class ContractViolation : public std::logic_error {
public:
    using std::logic_error::logic_error;
};

//! Throws ContractViolation with the formatted message unless the condition holds:
//! `require(first <= last, "range ends {} before it starts {}", last, first);`
template <class... Arguments>
void require(bool condition, fmt::format_string<Arguments...> message, Arguments&&... arguments) {
    if (!condition) throw ContractViolation(fmt::format(message, std::forward<Arguments>(arguments)...));
}

} // namespace winterlarder
