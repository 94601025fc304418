// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>

namespace winterlarder::numerics {

//! Standard normal deviate of a probability 0 < p < 1: rational approximations in three ranges (Wichura 1988, algorithm
//! AS 241, Applied Statistics 37:477), error below 1e-14. Tested against Boost.Math: tests/winter/normal_test.cpp.
double inverseNormal(double p);

//! The same for many at once, in place; the same digits as one by one.
void inverseNormals(std::span<double> probabilities);

//! Standard normal distribution function.
double normalBelow(double z);

} // namespace winterlarder::numerics
