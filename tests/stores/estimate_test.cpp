// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/estimate.h"

#include "stores/sample_combs.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

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
    EXPECT_FALSE(combine({piece(EvidenceKind::Scale, 12, 0, 1), piece(EvidenceKind::Combs, 12 + 3 * joint - 0.001, 0, 1)})->contradictory);
    EXPECT_TRUE(combine({piece(EvidenceKind::Scale, 12, 0, 1), piece(EvidenceKind::Combs, 12 + 3 * joint + 0.001, 0, 1)})->contradictory);
}

TEST(Contradiction, AnswersTheWidestSpreadAndNamesBoth) {
    const auto estimate = combine({piece(EvidenceKind::Scale, 12, 0, 1), piece(EvidenceKind::Combs, 20, 0.1, 0), piece(EvidenceKind::Heft, 16, 0.1, 0)});
    ASSERT_TRUE(estimate->contradictory);
    EXPECT_EQ(estimate->firstContradicting, EvidenceKind::Combs);
    EXPECT_EQ(estimate->secondContradicting, EvidenceKind::Scale);
    EXPECT_NEAR(estimate->spread.low.value(), 12 - 1.2816, 1e-9);
    EXPECT_NEAR(estimate->spread.high.value(), 20 + 1.2816 * 2, 1e-9);
    EXPECT_NEAR(estimate->spread.typical.value(), (estimate->spread.low + estimate->spread.high).value() / 2, 1e-9);
    EXPECT_NEAR((estimate->mean + 1.2816 * estimate->sd).value(), estimate->spread.high.value(), 1e-9);
    for (const EvidenceShare& share : estimate->shares)
        EXPECT_EQ(share.weight, 0);
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

RC_GTEST_PROP(CombineProperty, WeightsSumToOneUnlessContradictory, ()) {
    const auto estimate = combine(anyPieces(true));
    double sum = 0;
    for (const EvidenceShare& share : estimate->shares)
        sum += share.weight;
    RC_ASSERT(std::abs(sum - (estimate->contradictory ? 0 : 1)) < tolerance());
}

RC_GTEST_PROP(CombineProperty, MoreEvidenceIsNeverWorseThanTheBestPiece, ()) {
    const auto pieces = anyPieces(false);
    const auto estimate = combine(pieces);
    RC_PRE(!estimate->contradictory);
    for (const Evidence& each : pieces)
        RC_ASSERT(estimate->sd <= each.sd(each.typical) + kilograms(tolerance()));
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
