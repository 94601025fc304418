// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <bit>
#include <cstdint>

//! Arithmetic of the ensemble kernel, free of branches and calls so that a loop over winters becomes vector code. Errors
//! are stated against the mathematical function. Tested: tests/winter/lane_math_test.cpp.
namespace winterlarder::winter::lane {

#if defined(__GNUC__)
#define WINTERLARDER_INLINE inline __attribute__((always_inline))
#else
#define WINTERLARDER_INLINE inline
#endif

WINTERLARDER_INLINE double larger(double a, double b) { return a > b ? a : b; }
WINTERLARDER_INLINE double smaller(double a, double b) { return a < b ? a : b; }
WINTERLARDER_INLINE double clamp01(double x) { return larger(0.0, smaller(1.0, x)); }

//! Natural logarithm of a normal positive number; relative error below 4e-15 away from 1, absolute below 1e-15 near it.
WINTERLARDER_INLINE double log(double x) {
    constexpr std::uint64_t rootHalf = 0x3fe6a09e667f3bcdULL; // bits of sqrt(1/2)
    constexpr std::uint64_t bias = 1024;
    const std::uint64_t bits = std::bit_cast<std::uint64_t>(x);
    const std::uint64_t exponent = (bits - rootHalf + (bias << 52)) >> 52;
    const double mantissa = std::bit_cast<double>(bits - ((exponent - bias) << 52));
    const double e = std::bit_cast<double>(0x4330000000000000ULL | exponent) - (0x1.0p52 + static_cast<double>(bias));
    const double s = (mantissa - 1) / (mantissa + 1);
    const double q = s * s;
    double series = 1.0 / 21;
    series = series * q + 1.0 / 19;
    series = series * q + 1.0 / 17;
    series = series * q + 1.0 / 15;
    series = series * q + 1.0 / 13;
    series = series * q + 1.0 / 11;
    series = series * q + 1.0 / 9;
    series = series * q + 1.0 / 7;
    series = series * q + 1.0 / 5;
    series = series * q + 1.0 / 3;
    return e * 0.693147180559945309417 + 2 * (s + s * q * series);
}

//! e to the x for -700 < x < 700; relative error below 4e-16 x (1 + |x|).
WINTERLARDER_INLINE double exp(double x) {
    constexpr double shifter = 0x1.8p52;
    const double t = x * 1.44269504088896340736 + shifter;
    const double n = t - shifter;
    const double r = (x - n * 0.693147180369123816490) - n * 1.90821492927058770002e-10;
    double series = 1.0 / 6227020800.0;
    series = series * r + 1.0 / 479001600.0;
    series = series * r + 1.0 / 39916800.0;
    series = series * r + 1.0 / 3628800.0;
    series = series * r + 1.0 / 362880.0;
    series = series * r + 1.0 / 40320.0;
    series = series * r + 1.0 / 5040.0;
    series = series * r + 1.0 / 720.0;
    series = series * r + 1.0 / 120.0;
    series = series * r + 1.0 / 24.0;
    series = series * r + 1.0 / 6.0;
    series = series * r + 0.5;
    series = series * r + 1.0;
    series = series * r + 1.0;
    return std::bit_cast<double>(std::bit_cast<std::uint64_t>(series) + (std::bit_cast<std::uint64_t>(t) << 52));
}

//! x to the y for normal positive x.
WINTERLARDER_INLINE double power(double x, double y) { return exp(y * log(x)); }

} // namespace winterlarder::winter::lane
