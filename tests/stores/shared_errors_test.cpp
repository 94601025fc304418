// SPDX-License-Identifier: GPL-3.0-or-later
// What errors have in common: lifts and hefts that lean alike, and losses of which one is part of the other.
#include "stores/shared_errors.h"

#include "numerics/symmetric_system.h"
#include "stores/estimate.h"
#include "stores/sample_combs.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::shared_errors_test {
namespace {

using samples::day;

Evidence piece(EvidenceKind kind, double kg, double relativeSd, double absoluteSd) {
    return {kind, day(9, 10), kilograms(kg), relativeSd, kilograms(absoluteSd)};
}

Evidence lift(double kg, double lean, double own) {
    auto made = piece(EvidenceKind::OneSidedLift, kg, 0, std::hypot(lean, own));
    made.oneSideSd = kilograms(lean);
    return made;
}

Evidence heft(double kg, double lean, double own) {
    auto made = piece(EvidenceKind::Heft, kg, std::hypot(lean, own), 0);
    made.heftSd = lean;
    return made;
}

Evidence carried(double kg, double own, double loss) {
    auto made = piece(EvidenceKind::Combs, kg, 0, std::hypot(own, loss));
    made.lossSd = kilograms(loss);
    return made;
}

TEST(SharedLean, ManyLiftsOfOneSideAreNoSurerThanTheLean) {
    std::vector<Evidence> pieces;
    for (int i = 1; i <= 50; ++i) {
        pieces.push_back(lift(18, 4, 2.5));
        EXPECT_NEAR(combine(pieces)->sd.value(), std::sqrt(16 + 6.25 / i), 1e-9) << i;
    }
}

// By hand at 20 kg: 4 kg of each heft's error are one and the same, 2 kg its own.
TEST(SharedLean, HeftsShareTheirsAtTheCombinedValue) {
    EXPECT_NEAR(combine({heft(20, 0.2, 0.1), heft(20, 0.2, 0.1)})->sd.value(), std::sqrt(16 + 4 / 2.0), 1e-9);
}

TEST(SharedLean, LiftsOfDifferentWeightsShareTheSmallerOneAndNoneCountsAgainstItself) {
    const SharedErrors shared({lift(10, 3, 1), lift(22, 4.5, 1.5)}, {10, 22});
    EXPECT_NEAR(shared.covariance(0, 1), 9, 1e-12);
    const auto combined = combine({lift(10, 3, 1), lift(10, 4.5, 0.2)});
    for (const auto& share : combined->shares) EXPECT_GT(share.weight, 0);
}

TEST(SharedLean, KindsLeanEachByItself) {
    const SharedErrors shared({lift(20, 3, 1), heft(20, 0.2, 0.1), piece(EvidenceKind::Combs, 20, 0.15, 0)},
                              {20, 20, 20});
    EXPECT_EQ(shared.columns(), 0U);
}

// What was lost since the 10th is part of what was lost since the 1st, and today's look has lost nothing.
TEST(SharedLoss, IsThatOfTheLaterLook) {
    const std::vector<Evidence> pieces{carried(20, 2, 1.2), carried(20, 2, 0.5), carried(20, 2, 0)};
    const SharedErrors shared(pieces, {20, 20, 20});
    EXPECT_NEAR(shared.covariance(0, 1), 0.25, 1e-12);
    EXPECT_NEAR(shared.covariance(1, 2), 0, 1e-12);
    EXPECT_LE(shared.covariance(0, 0), 1.2 * 1.2);
    // V = [5.44 0.25; 0.25 4.25]
    EXPECT_NEAR(combine({pieces[0], pieces[1]})->sd.value(),
                std::sqrt((5.44 * 4.25 - 0.25 * 0.25) / (5.44 + 4.25 - 2 * 0.25)), 1e-9);
}

TEST(SharedLoss, CancelsInADifference) {
    const double joint = std::sqrt(0.3 * 0.3 * 2 + 1.2 * 1.2 - 0.5 * 0.5);
    EXPECT_FALSE(combine({carried(12, 0.3, 1.2), carried(12 + 3 * joint - 0.001, 0.3, 0.5)})->contradictory);
    EXPECT_TRUE(combine({carried(12, 0.3, 1.2), carried(12 + 3 * joint + 0.001, 0.3, 0.5)})->contradictory);
}

std::vector<Evidence> anyPieces() {
    const auto kg = [] { return *rc::gen::inRange(1, 40) / 10.0; };
    const double tare = kg();
    std::vector<Evidence> pieces;
    const int count = *rc::gen::inRange(2, 9);
    for (int i = 0; i < count; ++i) {
        const double own = kg(), loss = *rc::gen::inRange(0, 4) / 4.0;
        auto made = lift(20, *rc::gen::arbitrary<bool>() ? kg() : 0, own);
        if (*rc::gen::arbitrary<bool>()) made.tareSd = kilograms(tare);
        made.lossSd = kilograms(loss);
        made.absoluteSd = kilograms(std::hypot(own, made.oneSideSd.value(), std::hypot(made.tareSd.value(), loss)));
        pieces.push_back(made);
    }
    return pieces;
}

//! What two pieces share of an error of which they have these parts, beside others that have none or at least `least`.
double least(const std::vector<Evidence>& pieces, Mass Evidence::*part, std::size_t i, std::size_t j) {
    double smallest = 1e9;
    for (const auto& each : pieces)
        if (each.*part > kilograms(0)) smallest = std::min(smallest, (each.*part).value());
    return pieces[i].*part > kilograms(0) && pieces[j].*part > kilograms(0) ? smallest * smallest : 0;
}

// V w = 1 solved as it stands, by Cholesky's decomposition; w over its sum are the weights of least squares, 1 / sum(w) the variance.
RC_GTEST_PROP(SharedErrorsProperty, WeightsAreThoseOfLeastSquares, ()) {
    const auto pieces = anyPieces();
    numerics::SymmetricSystem system(pieces.size());
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = 0; j < pieces.size(); ++j) {
            const double loss = std::min(pieces[i].lossSd, pieces[j].lossSd).value();
            system.add(i, j,
                       i == j ? std::pow(pieces[i].absoluteSd.value(), 2)
                              : least(pieces, &Evidence::tareSd, i, j) + least(pieces, &Evidence::oneSideSd, i, j) +
                                    loss * loss);
        }
    system.decompose();
    const auto weights = system.solve(std::vector<double>(pieces.size(), 1.0));
    const double precision = std::accumulate(weights.begin(), weights.end(), 0.0);
    const auto estimate = combine(pieces);
    RC_ASSERT(std::abs(estimate->sd.value() - 1 / std::sqrt(precision)) < 1e-6);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        RC_ASSERT(std::abs(estimate->shares[i].weight - weights[i] / precision) < 1e-6);
}

} // namespace
} // namespace winterlarder::stores::shared_errors_test
