// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace winterlarder::tracking {

//! Unknown kilograms that are normal given a winter (stores at the decision, lasting errors of weighing, errors of known steps) and
//! are observed through sums of them. Their covariance is the same in every winter, because the sums are; their means differ. One
//! value after the other is taken in by the conjugate update of a normal (a scalar Kalman step), which also gives the likelihood of
//! that value in each winter: exact, without sampling. Tested: tests/tracking/linear_belief_test.cpp against the joint normal.
class LinearBelief {
public:
    explicit LinearBelief(std::size_t winters) : winters_(winters) {}

    //! One more unknown, independent of the others. Returns its place.
    std::size_t add(double mean, double variance);
    void correlate(std::size_t a, std::size_t b, double covariance);

    std::size_t size() const { return size_; }
    double mean(std::size_t winter, std::size_t unknown) const { return means_[unknown][winter]; }
    double variance(std::size_t a, std::size_t b) const { return variance_[a][b]; }

    //! One part of a sum.
    struct Part {
        std::size_t unknown;
        double factor;
    };
    using Sum = std::vector<Part>;
    double expected(std::size_t winter, const Sum& sum) const;
    double spread(const Sum& sum) const; //!< variance of the sum
    //! Takes in an observed value of the sum, one a winter (the rest already taken off), with an error of its own; adds the log
    //! likelihood of it to each winter's.
    void observe(const Sum& sum, const std::vector<double>& observed, double errorVariance,
                 std::vector<double>& logLikelihood);

    //! Lower triangle L of the covariance, L L' = V; a direction without variance has a row of zeros.
    std::vector<std::vector<double>> root() const;

private:
    std::vector<double> covarianceWith(const Sum& sum) const;
    std::size_t winters_;
    std::size_t size_ = 0;
    std::vector<std::vector<double>> means_;    //!< [unknown][winter]
    std::vector<std::vector<double>> variance_; //!< [unknown][unknown]
};

} // namespace winterlarder::tracking
