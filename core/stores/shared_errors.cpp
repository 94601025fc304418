// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/shared_errors.h"

#include "numerics/symmetric_system.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace winterlarder::stores {

SharedErrors::SharedErrors(const std::vector<Evidence>& pieces, const std::vector<double>& at) {
    std::vector<double> tare, oneSide, heft, loss;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        tare.push_back(pieces[i].tareSd.value());
        oneSide.push_back(pieces[i].oneSideSd.value());
        heft.push_back(pieces[i].heftSd * std::max(0.0, at[i]));
        loss.push_back(pieces[i].lossSd.value());
    }
    addCommon(tare);
    addCommon(oneSide);
    addCommon(heft);
    addNested(loss);
}

void SharedErrors::addCommon(const std::vector<double>& sds) {
    double least = 0;
    std::size_t having = 0;
    for (const double sd : sds) {
        if (sd <= 0) continue;
        least = having++ == 0 ? sd : std::min(least, sd);
    }
    if (having < 2) return;
    auto& column = columns_.emplace_back(sds.size(), 0.0);
    for (std::size_t i = 0; i < sds.size(); ++i)
        if (sds[i] > 0) column[i] = least;
}

// A column for each step from one size to the next, shared by all that have at least as much.
void SharedErrors::addNested(const std::vector<double>& sds) {
    double below = 0;
    for (const double level : std::set<double>(sds.begin(), sds.end())) {
        if (level <= 0) continue;
        const auto reaching = std::count_if(sds.begin(), sds.end(), [level](double sd) { return sd >= level; });
        if (reaching < 2) return;
        auto& column = columns_.emplace_back(sds.size(), 0.0);
        for (std::size_t i = 0; i < sds.size(); ++i)
            if (sds[i] >= level) column[i] = std::sqrt(level * level - below * below);
        below = level;
    }
}

std::vector<double> SharedErrors::loadingsOf(std::size_t piece) const {
    std::vector<double> loadings;
    for (const auto& column : columns_) loadings.push_back(column[piece]);
    return loadings;
}

double SharedErrors::covariance(std::size_t one, std::size_t other) const {
    double sum = 0;
    for (const auto& column : columns_) sum += column[one] * column[other];
    return sum;
}

namespace {

//! y of the identity: how far each column pulls the weights down.
std::vector<double> pulls(const std::vector<double>& precisions, const SharedErrors& shared) {
    numerics::SymmetricSystem system(shared.columns());
    std::vector<double> right(shared.columns(), 0.0);
    for (std::size_t k = 0; k < shared.columns(); ++k) system.add(k, k, 1);
    for (std::size_t i = 0; i < precisions.size(); ++i)
        for (std::size_t k = 0; k < shared.columns(); ++k) {
            const double stiffness = precisions[i] * shared.loading(i, k);
            if (stiffness == 0) continue;
            right[k] += stiffness;
            for (std::size_t l = 0; l <= k; ++l) system.add(k, l, stiffness * shared.loading(i, l));
        }
    system.decompose();
    return system.solve(std::move(right));
}

} // namespace

std::vector<double> leastSquaresWeights(const std::vector<double>& own, const SharedErrors& shared) {
    std::vector<double> weights;
    for (const double sd : own) weights.push_back(1 / (sd * sd));
    const auto pull = pulls(weights, shared);
    for (std::size_t i = 0; i < weights.size(); ++i) {
        double down = 0;
        for (std::size_t k = 0; k < pull.size(); ++k) down += shared.loading(i, k) * pull[k];
        weights[i] *= 1 - down;
    }
    return weights;
}

} // namespace winterlarder::stores
