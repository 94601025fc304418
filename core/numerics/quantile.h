// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace winterlarder::numerics {

//! Quantile by linear interpolation between order statistics, position q (n - 1), 0 <= q <= 1. Values need not be sorted.
//! ContractViolation where there are none. Tested: tests/winter/larder_test.cpp.
double quantile(std::vector<double> values, double q);
//! The same of values already in ascending order.
double sortedQuantile(const std::vector<double>& sorted, double q);

} // namespace winterlarder::numerics
