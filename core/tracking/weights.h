// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"

#include <vector>

//! Importance weights kept as logarithms, and statistics of weighted values. Tested: tests/tracking/weights_test.cpp.
namespace winterlarder::tracking {

//! Weights that sum to 1 from their logarithms; the largest is taken off first, so nothing over- or underflows. Equal weights where
//! every logarithm is minus infinity.
std::vector<double> normalised(const std::vector<double>& logWeights);

//! Effective sample size (sum w)^2 / sum w^2 (Kish 1965), between 1 and the number of weights.
double effectiveSize(const std::vector<double>& weights);

//! The largest power 0..1 of the likelihood at which the weights exp(power x likelihood + fixed) still have an effective size of at
//! least `least`; by bisection. 1 where the whole likelihood leaves as much.
double temperingPower(const std::vector<double>& logLikelihood, const std::vector<double>& fixed, double least);

//! Quantiles of weighted values by the inverse of their distribution function on a grid of 10 g from 0 up; values below 0 count as
//! 0. Built once a day, asked several times.
class WeightedKilograms {
public:
    void clear();
    void add(double kg, double weight);
    double quantile(double q) const;
    double shareBelow(double kg) const;
    Spread<Mass> spread() const;

private:
    static constexpr double cell = 0.01;
    static constexpr std::size_t cells = 12000;
    std::vector<double> weight_ = std::vector<double>(cells + 1, 0.0);
    double total_ = 0;
    std::size_t top_ = 0;
};

} // namespace winterlarder::tracking
