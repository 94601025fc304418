// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/estimate.h"

#include "numerics/symmetric_system.h"
#include "stores/sample_combs.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numeric>
#include <random>
#include <rapidcheck/gtest.h>
#include <tuple>

namespace winterlarder::stores::estimate_test {
namespace {

using samples::day;

Evidence piece(EvidenceKind kind, double kg, double relativeSd, double absoluteSd) {
    return {kind, day(9, 10), kilograms(kg), relativeSd, kilograms(absoluteSd)};
}

TEST(Combine, NothingGivesNothing) { EXPECT_FALSE(combine({})); }

TEST(Combine, OnePieceIsTheAnswer) {
    const auto estimate = combine({piece(EvidenceKind::Combs, 20, 0.15, 0.3)});
    const double sd = std::hypot(3.0, 0.3);
    EXPECT_NEAR(estimate->mean.value(), 20, 1e-12);
    EXPECT_NEAR(estimate->sd.value(), sd, 1e-12);
    EXPECT_NEAR(estimate->spread.low.value(), 20 - 1.2816 * sd, 1e-9);
    EXPECT_NEAR(estimate->spread.high.value(), 20 + 1.2816 * sd, 1e-9);
    EXPECT_EQ(estimate->shares.front().weight, 1);
    EXPECT_FALSE(estimate->contradictory);
}

TEST(Combine, ExactlyKnownStoresStayExact) {
    const auto estimate = combine({piece(EvidenceKind::Scale, 18, 0, 0)});
    EXPECT_EQ(estimate->sd, kilograms(0));
    EXPECT_EQ(estimate->spread.low, kilograms(18));
}

// By hand: errors at their own values 3 and 2 kg give 15.846 kg; there the comb record's error is 2.3769 kg,
// weights 0.177 and 0.25, so 16.487 kg with 1.530 kg.
TEST(Combine, RelativeErrorsAreTakenAtTheCombinedValueInTwoPasses) {
    const auto estimate = combine({piece(EvidenceKind::Combs, 20, 0.15, 0), piece(EvidenceKind::Scale, 14, 0, 2)});
    EXPECT_NEAR(estimate->mean.value(), 16.487, 0.001);
    EXPECT_NEAR(estimate->sd.value(), 1.530, 0.001);
    EXPECT_NEAR(estimate->shares[0].weight, 0.4145, 0.0002);
    EXPECT_NEAR(estimate->shares[1].weight, 0.5855, 0.0002);
    EXPECT_NEAR(estimate->shares[0].says.low.value(), 20 - 1.2816 * 3, 1e-9)
        << "each piece speaks for itself at its own value";
}

TEST(Combine, SpreadIsCutAtZeroButNotTheMean) {
    const auto estimate = combine({piece(EvidenceKind::Scale, -1, 0, 2)});
    EXPECT_EQ(estimate->mean, kilograms(-1));
    EXPECT_EQ(estimate->spread.low, kilograms(0));
    EXPECT_EQ(estimate->spread.typical, kilograms(0));
    EXPECT_NEAR(estimate->spread.high.value(), -1 + 1.2816 * 2, 1e-9);
}

TEST(Contradiction, BeginsBeyondThreeJointStandardDeviations) {
    const double joint = std::sqrt(2.0); // of two pieces with 1 kg each
    EXPECT_FALSE(
        combine({piece(EvidenceKind::Scale, 12, 0, 1), piece(EvidenceKind::Combs, 12 + 3 * joint - 0.001, 0, 1)})
            ->contradictory);
    EXPECT_TRUE(
        combine({piece(EvidenceKind::Scale, 12, 0, 1), piece(EvidenceKind::Combs, 12 + 3 * joint + 0.001, 0, 1)})
            ->contradictory);
}

TEST(Contradiction, AnswersTheWidestSpreadAndNamesBoth) {
    const auto estimate = combine({piece(EvidenceKind::Scale, 12, 0, 1), piece(EvidenceKind::Combs, 20, 0.1, 0),
                                   piece(EvidenceKind::Heft, 16, 0.1, 0)});
    ASSERT_TRUE(estimate->contradictory);
    EXPECT_EQ(estimate->firstContradicting, EvidenceKind::Combs);
    EXPECT_EQ(estimate->secondContradicting, EvidenceKind::Scale);
    EXPECT_NEAR(estimate->spread.low.value(), 12 - 1.2816, 1e-9);
    EXPECT_NEAR(estimate->spread.high.value(), 20 + 1.2816 * 2, 1e-9);
    EXPECT_NEAR(estimate->spread.typical.value(), (estimate->spread.low + estimate->spread.high).value() / 2, 1e-9);
    EXPECT_NEAR((estimate->mean + 1.2816 * estimate->sd).value(), estimate->spread.high.value(), 1e-9);
    for (const EvidenceShare& share : estimate->shares) EXPECT_EQ(share.weight, 0);
}

// Looked at pair by pair, so many weighings would take minutes; kinds and errors repeat, and only their outermost can differ most.
TEST(Contradiction, IsFoundAmongHundredsOfThousands) {
    std::vector<Evidence> pieces;
    for (int i = 0; i < 300000; ++i) pieces.push_back(piece(EvidenceKind::Scale, 12 + 1e-6 * i, 0, 1 + 0.1 * (i % 40)));
    EXPECT_FALSE(combine(pieces)->contradictory);
    pieces[150000] = piece(EvidenceKind::Heft, 30, 0, 0.5);
    const auto estimate = combine(pieces);
    EXPECT_TRUE(estimate->contradictory);
    EXPECT_EQ(estimate->firstContradicting, EvidenceKind::Heft);
    EXPECT_EQ(estimate->secondContradicting, EvidenceKind::Scale);
}

// By hand: the tare errs by 2 kg and each reading by 0.5 kg, so the two readings differ by 0.5 sqrt(2) kg, whatever the tare is.
TEST(Contradiction, WhatTwoShareDoesNotSetThemApart) {
    const double joint = 0.5 * std::sqrt(2.0);
    const auto reading = [](double kg) {
        auto made = piece(EvidenceKind::Scale, kg, 0, std::hypot(2, 0.5));
        made.tareSd = kilograms(2);
        return made;
    };
    EXPECT_FALSE(combine({reading(12), reading(12 + 3 * joint - 0.001)})->contradictory);
    EXPECT_TRUE(combine({reading(12), reading(12 + 3 * joint + 0.001)})->contradictory);
    EXPECT_FALSE(combine({reading(12), piece(EvidenceKind::Combs, 12 + 3 * joint + 0.001, 0, 0.5)})->contradictory)
        << "combs know nothing of the tare";
    const auto later = [&](double kg) {
        auto made = reading(kg);
        made.date = day(9, 12);
        return made;
    };
    const double between = std::sqrt(2 * (0.25 + 1)); // a kilogram of it is another on another day
    EXPECT_FALSE(combine({reading(12), later(12 + 3 * between - 0.001)})->contradictory);
    EXPECT_TRUE(combine({reading(12), later(12 + 3 * between + 0.001)})->contradictory);
}

// ---- weighings by one tare ------------------------------------------------------------------------------------------------

//! A weighing whose error is the tare's and one of its own.
Evidence weighing(double kg, double tareSd, double ownSd, EvidenceKind kind = EvidenceKind::Scale) {
    auto made = piece(kind, kg, 0, std::hypot(tareSd, ownSd));
    made.tareSd = kilograms(tareSd);
    return made;
}

// By hand: the tare errs by 2 kg, the weighings by 1 and 2 kg of their own. V = [5 4; 4 8], its inverse [8 -4; -4 5] / 24, so the weights are as
// 4 to 1 and the variance is 24 / 5.
TEST(SharedTare, TwoWeighingsAreCombinedWithTheirCovariance) {
    const auto estimate = combine({weighing(20, 2, 1), weighing(15, 2, 2)});
    EXPECT_NEAR(estimate->shares[0].weight, 0.8, 1e-12);
    EXPECT_NEAR(estimate->shares[1].weight, 0.2, 1e-12);
    EXPECT_NEAR(estimate->mean.value(), 19, 1e-12);
    EXPECT_NEAR(estimate->sd.value(), std::sqrt(4.8), 1e-12);
    EXPECT_NEAR(shareOfTare(*estimate), 1, 1e-12);
}

TEST(SharedTare, NoNumberOfWeighingsIsSurerThanTheTare) {
    std::vector<Evidence> pieces;
    for (int i = 0; i < 1000; ++i) {
        pieces.push_back(weighing(18, 2, 0.5));
        EXPECT_GT(combine(pieces)->sd, kilograms(2)) << i;
    }
    EXPECT_NEAR(combine(pieces)->sd.value(), std::sqrt(4 + 0.25 / 1000), 1e-9);
}

TEST(SharedTare, OneWeighingIsCombinedAsIfItsErrorWereAllItsOwn) {
    const auto with = combine({weighing(18, 2, 0.5), piece(EvidenceKind::Combs, 20, 0.15, 0.3)});
    auto alone = weighing(18, 2, 0.5);
    alone.tareSd = kilograms(0);
    const auto without = combine({alone, piece(EvidenceKind::Combs, 20, 0.15, 0.3)});
    EXPECT_EQ(with->mean, without->mean);
    EXPECT_EQ(with->sd, without->sd);
    EXPECT_EQ(with->shares[0].weight, without->shares[0].weight);
}

// The same weights, tried out: the combined value errs by as much as it says.
TEST(SharedTare, TheCombinedErrorIsThatOfManyTrials) {
    const std::vector<Evidence> pieces{weighing(20, 1.8, 0.6), weighing(20, 1.8, 1.5, EvidenceKind::OneSidedLift),
                                       piece(EvidenceKind::Combs, 20, 0, 2.5), weighing(20, 1.8, 0.3)};
    const auto estimate = combine(pieces);
    std::mt19937_64 draws(7);
    std::normal_distribution<double> normal;
    constexpr int trials = 200000;
    double squares = 0;
    for (int trial = 0; trial < trials; ++trial) {
        const double tare = 1.8 * normal(draws);
        double error = 0;
        for (const auto& [own, tares, at] :
             {std::tuple(0.6, 1, 0), std::tuple(1.5, 1, 1), std::tuple(2.5, 0, 2), std::tuple(0.3, 1, 3)})
            error += estimate->shares[static_cast<std::size_t>(at)].weight * (tares * tare + own * normal(draws));
        squares += error * error;
    }
    EXPECT_NEAR(std::sqrt(squares / trials), estimate->sd.value(), 0.01 * estimate->sd.value());
}

TEST(SharedTare, TwoFiguresTogetherAreWhatTheyAreCombined) {
    EXPECT_NEAR(sdTogether(std::sqrt(5.0), std::sqrt(8.0), 4), std::sqrt(4.8), 1e-12);
    EXPECT_NEAR(sdTogether(3, 2, 0),
                combine({piece(EvidenceKind::Combs, 20, 0, 3), piece(EvidenceKind::Scale, 20, 0, 2)})->sd.value(),
                1e-12);
    EXPECT_EQ(sdTogether(2, 2, 4), 2) << "the same error twice";
}

std::vector<Evidence> anyPieces(bool relative) {
    std::vector<Evidence> pieces;
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i) {
        const double relativeSd = relative ? *rc::gen::inRange(0, 40) / 100.0 : 0;
        pieces.push_back(piece(static_cast<EvidenceKind>(i), *rc::gen::inRange(-20, 400) / 10.0, relativeSd,
                               *rc::gen::inRange(1, 80) / 10.0));
    }
    return pieces;
}

double tolerance() { return 1e-9; }

// V w = 1 solved as it stands, by Cholesky's decomposition; w over its sum are the weights of least squares, 1 / sum(w) the variance.
RC_GTEST_PROP(SharedTareProperty, WeightsAreThoseOfLeastSquares, ()) {
    const double tareSd = *rc::gen::inRange(1, 40) / 10.0;
    std::vector<Evidence> pieces;
    const int count = *rc::gen::inRange(2, 8);
    for (int i = 0; i < count; ++i) {
        const double own = *rc::gen::inRange(1, 40) / 10.0;
        pieces.push_back(i < 2 || *rc::gen::arbitrary<bool>() ? weighing(20, tareSd, own)
                                                              : piece(EvidenceKind::Combs, 20, 0, own));
    }
    numerics::SymmetricSystem system(pieces.size());
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = 0; j < pieces.size(); ++j)
            system.add(i, j,
                       i == j ? std::pow(pieces[i].absoluteSd.value(), 2)
                              : pieces[i].tareSd.value() * pieces[j].tareSd.value());
    system.decompose();
    const auto weights = system.solve(std::vector<double>(pieces.size(), 1.0));
    const double precision = std::accumulate(weights.begin(), weights.end(), 0.0);
    const auto estimate = combine(pieces);
    RC_ASSERT(std::abs(estimate->sd.value() - 1 / std::sqrt(precision)) < 1e-6);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        RC_ASSERT(std::abs(estimate->shares[i].weight - weights[i] / precision) < 1e-6);
}

RC_GTEST_PROP(CombineProperty, WeightsSumToOneUnlessContradictory, ()) {
    const auto estimate = combine(anyPieces(true));
    double sum = 0;
    for (const EvidenceShare& share : estimate->shares) sum += share.weight;
    RC_ASSERT(std::abs(sum - (estimate->contradictory ? 0 : 1)) < tolerance());
}

RC_GTEST_PROP(CombineProperty, MoreEvidenceIsNeverWorseThanTheBestPiece, ()) {
    const auto pieces = anyPieces(false);
    const auto estimate = combine(pieces);
    RC_PRE(!estimate->contradictory);
    for (const Evidence& each : pieces) RC_ASSERT(estimate->sd <= each.sd(each.typical) + kilograms(tolerance()));
}

RC_GTEST_PROP(CombineProperty, MeanLiesAmongThePieces, ()) {
    const auto pieces = anyPieces(true);
    const auto estimate = combine(pieces);
    RC_PRE(!estimate->contradictory);
    const auto [least, most] = std::minmax_element(
        pieces.begin(), pieces.end(), [](const Evidence& a, const Evidence& b) { return a.typical < b.typical; });
    RC_ASSERT(estimate->mean >= least->typical - kilograms(tolerance()));
    RC_ASSERT(estimate->mean <= most->typical + kilograms(tolerance()));
}

RC_GTEST_PROP(CombineProperty, OrderDoesNotMatter, ()) {
    auto pieces = anyPieces(true);
    const auto forward = combine(pieces);
    std::reverse(pieces.begin(), pieces.end());
    const auto backward = combine(pieces);
    RC_ASSERT(std::abs((forward->mean - backward->mean).value()) < tolerance());
    RC_ASSERT(std::abs((forward->sd - backward->sd).value()) < tolerance());
    RC_ASSERT(forward->contradictory == backward->contradictory);
    RC_ASSERT(forward->firstContradicting == backward->firstContradicting);
    RC_ASSERT(forward->secondContradicting == backward->secondContradicting);
}

} // namespace
} // namespace winterlarder::stores::estimate_test
