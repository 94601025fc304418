// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace winterlarder::numerics {

//! A x = b with a symmetric positive definite A, by Cholesky's decomposition. Tested: tests/learning/keeper_test.cpp.
class SymmetricSystem {
public:
    explicit SymmetricSystem(std::size_t size) : size_(size), lower_(size * size, 0.0) {}
    std::size_t size() const { return size_; }
    void add(std::size_t row, std::size_t column, double value) { lower_[row * size_ + column] += value; }
    void decompose(); //!< after the last add(); only the lower triangle is read
    std::vector<double> solve(std::vector<double> right) const;

private:
    double& at(std::size_t row, std::size_t column) { return lower_[row * size_ + column]; }
    double at(std::size_t row, std::size_t column) const { return lower_[row * size_ + column]; }
    std::size_t size_;
    std::vector<double> lower_;
};

} // namespace winterlarder::numerics
