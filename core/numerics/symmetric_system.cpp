// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/symmetric_system.h"

#include "support/require.h"

#include <cmath>

namespace winterlarder::learning {

void SymmetricSystem::decompose() {
    for (std::size_t j = 0; j < size_; ++j) {
        double pivot = at(j, j);
        for (std::size_t k = 0; k < j; ++k) pivot -= at(j, k) * at(j, k);
        require(pivot > 0, "pivot {} of a system that must be positive definite", pivot);
        at(j, j) = std::sqrt(pivot);
        for (std::size_t i = j + 1; i < size_; ++i) {
            double rest = at(i, j);
            for (std::size_t k = 0; k < j; ++k) rest -= at(i, k) * at(j, k);
            at(i, j) = rest / at(j, j);
        }
    }
}

std::vector<double> SymmetricSystem::solve(std::vector<double> x) const {
    require(x.size() == size_, "{} values for a system of {}", x.size(), size_);
    for (std::size_t i = 0; i < size_; ++i) {
        for (std::size_t k = 0; k < i; ++k) x[i] -= at(i, k) * x[k];
        x[i] /= at(i, i);
    }
    for (std::size_t i = size_; i-- > 0;) {
        for (std::size_t k = i + 1; k < size_; ++k) x[i] -= at(k, i) * x[k];
        x[i] /= at(i, i);
    }
    return x;
}

} // namespace winterlarder::learning
