// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/symmetric_system.h"

#include "numerics/cholesky.h"
#include "support/require.h"

namespace winterlarder::numerics {

void SymmetricSystem::decompose() {
    cholesky(
        size_, [this](std::size_t row, std::size_t column) -> double& { return at(row, column); },
        [](double pivot, std::size_t) {
            require(pivot > 0, "pivot {} of a system that must be positive definite", pivot);
            return pivot;
        });
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

} // namespace winterlarder::numerics
