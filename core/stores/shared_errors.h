// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

namespace winterlarder::stores {

//! What the errors of several pieces of evidence have in common, as columns of loadings [kg]: the covariance of two pieces is the sum over the
//! columns of the product of their loadings. The tare's error, the lean of lifts of one side and that of hefts are shared as far as the piece that
//! has least of it. The loss up to the asking day is part of the loss since any earlier day: two pieces share the smaller one's. What only one piece
//! has is its own. Tested: tests/stores/shared_errors_test.cpp.
class SharedErrors {
public:
    //! `at`: for each piece the stores at which its relative errors are taken [kg].
    SharedErrors(const std::vector<Evidence>& pieces, const std::vector<double>& at);

    std::size_t columns() const { return columns_.size(); }
    double loading(std::size_t piece, std::size_t column) const { return columns_[column][piece]; }
    std::vector<double> loadingsOf(std::size_t piece) const;
    double covariance(std::size_t one, std::size_t other) const;

private:
    void addCommon(const std::vector<double>& sds);
    void addNested(const std::vector<double>& sds);
    std::vector<std::vector<double>> columns_;
};

//! Weights of generalised least squares before they are made to sum to 1, V^-1 1 with V = D + T T', by Woodbury's identity: p (1 - T y) with
//! p = 1 / D and (1 + T' P T) y = T' p. `own`: the standard deviations in D [kg], above 0. Their sum is 1 / variance of the combined value.
std::vector<double> leastSquaresWeights(const std::vector<double>& own, const SharedErrors& shared);

} // namespace winterlarder::stores
