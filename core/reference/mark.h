// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"

namespace winterlarder {

//! The words of all marks, in the order of the enumeration; name(Mark) gives one of them.
const std::vector<std::string>& markNames();
//! The mark a word stands for; nothing for an unknown word. Tested: tests/reference/reference_test.cpp.
std::optional<Mark> markFrom(std::string_view word);

} // namespace winterlarder
