// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder {

//! How far a shipped number can be trusted.
//! Fitted: chosen so that the model meets published check values.
enum class Mark { Measured, Handbook, Published, Derived, Fitted, CommonPractice, Memory, Judgement };
std::string_view
name(Mark mark); //!< "measured", "handbook", "published", "derived", "fitted", "common practice", "memory", "judgement"

//! The words of all marks, in the order of the enumeration; name(Mark) gives one of them.
const std::vector<std::string>& markNames();
//! The mark a word stands for; nothing for an unknown word. Tested: tests/reference/reference_test.cpp.
std::optional<Mark> markFrom(std::string_view word);

} // namespace winterlarder
