// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace winterlarder {

//! Edits between two words: insertion, deletion, substitution, two neighbours swapped (optimal string alignment), case of ASCII letters
//! ignored; letters beyond the 64th are not looked at. Tested: tests/support/edit_distance_test.cpp.
int editDistance(std::string_view a, std::string_view b);

} // namespace winterlarder
