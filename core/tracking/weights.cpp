// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/weights.h"

#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace winterlarder::tracking {

std::vector<double> normalised(const std::vector<double>& logWeights) {
    require(!logWeights.empty(), "no weights");
    const double largest = *std::max_element(logWeights.begin(), logWeights.end());
    std::vector<double> weights(logWeights.size(), 1.0 / static_cast<double>(logWeights.size()));
    if (!(largest > -std::numeric_limits<double>::infinity())) return weights;
    double sum = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) sum += weights[i] = std::exp(logWeights[i] - largest);
    for (double& weight : weights) weight /= sum;
    return weights;
}

double effectiveSize(const std::vector<double>& weights) {
    double sum = 0, squares = 0;
    for (double weight : weights) {
        sum += weight;
        squares += weight * weight;
    }
    return squares > 0 ? sum * sum / squares : 0;
}

namespace {

double sizeAt(double power, const std::vector<double>& logLikelihood, const std::vector<double>& fixed) {
    std::vector<double> logs(logLikelihood.size());
    for (std::size_t i = 0; i < logs.size(); ++i) logs[i] = std::isinf(logLikelihood[i]) ? logLikelihood[i] : power * logLikelihood[i] + fixed[i];
    return effectiveSize(normalised(logs));
}

} // namespace

double temperingPower(const std::vector<double>& logLikelihood, const std::vector<double>& fixed, double least) {
    if (sizeAt(1, logLikelihood, fixed) >= least) return 1;
    double low = 0, high = 1;
    for (int i = 0; i < 40; ++i) {
        const double middle = 0.5 * (low + high);
        (sizeAt(middle, logLikelihood, fixed) >= least ? low : high) = middle;
    }
    return low;
}

void WeightedKilograms::clear() {
    std::fill(weight_.begin(), weight_.begin() + static_cast<std::ptrdiff_t>(top_) + 1, 0.0);
    total_ = 0;
    top_ = 0;
}

void WeightedKilograms::add(double kg, double weight) {
    const auto at = static_cast<std::size_t>(std::clamp(kg / cell, 0.0, static_cast<double>(cells)));
    weight_[at] += weight;
    total_ += weight;
    top_ = std::max(top_, at);
}

double WeightedKilograms::quantile(double q) const {
    require(total_ > 0, "a quantile of nothing");
    const double wanted = q * total_;
    double below = 0;
    for (std::size_t i = 0; i <= top_; ++i) {
        if (below + weight_[i] >= wanted && weight_[i] > 0) {
            const double within = i == 0 ? 0 : (wanted - below) / weight_[i];
            return (static_cast<double>(i) + std::clamp(within, 0.0, 1.0)) * cell;
        }
        below += weight_[i];
    }
    return static_cast<double>(top_ + 1) * cell;
}

double WeightedKilograms::shareBelow(double kg) const {
    const double position = std::clamp(kg / cell, 0.0, static_cast<double>(cells));
    const auto whole = static_cast<std::size_t>(position);
    double below = 0;
    for (std::size_t i = 0; i < whole; ++i) below += weight_[i];
    return total_ > 0 ? (below + (position - static_cast<double>(whole)) * weight_[whole]) / total_ : 0;
}

Spread<Mass> WeightedKilograms::spread() const {
    return {kilograms(quantile(0.1)), kilograms(quantile(0.5)), kilograms(quantile(0.9))};
}

} // namespace winterlarder::tracking
