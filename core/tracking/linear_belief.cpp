// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/linear_belief.h"

#include "numerics/cholesky.h"
#include "support/require.h"

#include <cmath>
#include <numbers>

namespace winterlarder::tracking {

std::size_t LinearBelief::add(double mean, double variance) {
    require(variance >= 0 && std::isfinite(mean), "an unknown with variance {} and mean {}", variance, mean);
    for (auto& row : variance_) row.push_back(0);
    variance_.emplace_back(size_ + 1, 0.0);
    variance_.back().back() = variance;
    means_.emplace_back(winters_, mean);
    return size_++;
}

void LinearBelief::correlate(std::size_t a, std::size_t b, double covariance) {
    variance_[a][b] = variance_[b][a] = covariance;
}

double LinearBelief::expected(std::size_t winter, const Sum& sum) const {
    double total = 0;
    for (const Part& part : sum) total += part.factor * means_[part.unknown][winter];
    return total;
}

std::vector<double> LinearBelief::covarianceWith(const Sum& sum) const {
    std::vector<double> covariance(size_, 0);
    for (std::size_t a = 0; a < size_; ++a)
        for (const Part& part : sum) covariance[a] += part.factor * variance_[a][part.unknown];
    return covariance;
}

double LinearBelief::spread(const Sum& sum) const {
    const auto covariance = covarianceWith(sum);
    double variance = 0;
    for (const Part& part : sum) variance += part.factor * covariance[part.unknown];
    return variance;
}

void LinearBelief::observe(const Sum& sum, const std::vector<double>& observed, double errorVariance,
                           std::vector<double>& logLikelihood) {
    require(observed.size() == winters_ && errorVariance > 0, "{} values with error variance {} for {} winters",
            observed.size(), errorVariance, winters_);
    const auto covariance = covarianceWith(sum);
    const double variance = spread(sum) + errorVariance;
    const double constant = -0.5 * std::log(2 * std::numbers::pi * variance);
    for (std::size_t i = 0; i < winters_; ++i) {
        const double news = observed[i] - expected(i, sum);
        logLikelihood[i] += constant - 0.5 * news * news / variance;
        for (std::size_t a = 0; a < size_; ++a) means_[a][i] += covariance[a] / variance * news;
    }
    for (std::size_t a = 0; a < size_; ++a)
        for (std::size_t b = 0; b < size_; ++b) variance_[a][b] -= covariance[a] * covariance[b] / variance;
}

std::vector<std::vector<double>> LinearBelief::root() const {
    std::vector<std::vector<double>> lower(size_, std::vector<double>(size_, 0));
    for (std::size_t a = 0; a < size_; ++a)
        for (std::size_t b = 0; b <= a; ++b) lower[a][b] = variance_[a][b];
    numerics::cholesky(
        size_, [&](std::size_t row, std::size_t column) -> double& { return lower[row][column]; },
        [&](double pivot, std::size_t j) { return pivot <= 1e-12 * (1 + variance_[j][j]) ? 0 : pivot; });
    return lower;
}

} // namespace winterlarder::tracking
