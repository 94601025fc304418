// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::exchange {

//! The known words nearest to what was written, best first, at most `most`; only those close enough to be meant
//! (a third of the letters wrong, or one word inside the other). Tested: tests/exchange/suggestion_test.cpp.
std::vector<std::string> nearWords(std::string_view written, const std::vector<std::string>& known,
                                   std::size_t most = 3);

//! `did you mean "forage"?`, or `known: a, b, c` where nothing is near.
std::string suggestion(std::string_view written, const std::vector<std::string>& known);

} // namespace winterlarder::exchange
