// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace winterlarder::desk {

//! The places at which a line of values a day apart bends, the first and the last among them: straight from one to the next it is nowhere
//! off by more than `tolerance`. Fewer places are drawn sooner. Tested: tests/app/winter_series_test.cpp.
std::vector<std::size_t> bendsOf(const std::vector<double>& values, double tolerance);

} // namespace winterlarder::desk
