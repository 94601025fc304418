// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace winterlarder::numerics {

//! Middle of the values, the mean of the two in the middle where their number is even; the values are left in another order.
//! ContractViolation where there are none. Tested: tests/scale/levels_test.cpp.
double median(std::vector<double>& values);
//! The same, the lower of the two in the middle.
double lowerMedian(std::vector<double>& values);

//! A straight line through points that a few wild ones cannot turn: the median slope of all pairs (Theil 1950; Sen 1968), through the
//! median of what is left.
struct Line {
    double slope = 0;
    double level = 0; //!< at x = 0
    double at(double x) const { return level + slope * x; }
};
//! Slope 0 where all points share one x, for a single point, and where it is less than two of its standard errors (as their scatter, by its
//! median, gives it): a level is then the better guide beyond the points. `steepest` bounds the slope both ways.
Line robustLine(const std::vector<double>& x, const std::vector<double>& y, double steepest);

} // namespace winterlarder::numerics
