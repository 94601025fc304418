// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstddef>

namespace winterlarder::numerics {

//! Cholesky's decomposition: lower triangular L with L L' = A, A symmetric and positive definite but for rounding. `lower(i, j)` is a
//! reference to an element; on entry its lower triangle holds A, on exit L, what is above is not touched. `keep(pivot, j)` says what is taken
//! for a pivot that rounding may have made too small: the pivot, or a larger one; nothing (0) leaves its column 0.
//! Tested: tests/learning/keeper_test.cpp, tests/tracking/linear_belief_test.cpp.
template <class Lower, class Keep> void cholesky(std::size_t size, Lower&& lower, Keep&& keep) {
    for (std::size_t j = 0; j < size; ++j) {
        double pivot = lower(j, j);
        for (std::size_t k = 0; k < j; ++k) pivot -= lower(j, k) * lower(j, k);
        const double root = std::sqrt(keep(pivot, j));
        lower(j, j) = root;
        for (std::size_t i = j + 1; i < size; ++i) {
            double rest = lower(i, j);
            for (std::size_t k = 0; k < j; ++k) rest -= lower(i, k) * lower(j, k);
            lower(i, j) = root > 0 ? rest / root : 0;
        }
    }
}

} // namespace winterlarder::numerics
