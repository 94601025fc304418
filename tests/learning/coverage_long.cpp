// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/synthetic_keepers.h"

// The whole of what tests/learning/coverage_test.cpp takes samples of.
namespace winterlarder::learning {
namespace {

TEST(CoverageLong, FiveHundredKeepersFiveWinters) {
    const auto covered = coverage({500, 5, 1000, 21});
    RecordProperty("use", std::to_string(covered.use));
    RecordProperty("death", std::to_string(covered.death));
    EXPECT_GE(covered.use, 0.75);
    EXPECT_LE(covered.use, 0.85);
    EXPECT_GE(covered.death, 0.75);
    EXPECT_LE(covered.death, 0.85);
    std::printf("in the 80 %% interval: use %.3f, death %.3f\n", covered.use, covered.death);
}

TEST(CoverageLong, ForecastsAfterThreeWintersAreWithinFivePercentOfTheExactPosteriors) {
    const auto scores = scoresAfterThree({500, 4, 1500, 22});
    EXPECT_LE(scores.learned, 1.05 * scores.exact);
    EXPECT_LT(scores.learned, scores.unlearned);
    std::printf("mean ranked score: learned %.4f, exact %.4f, nothing learned %.4f kg\n", scores.learned, scores.exact,
                scores.unlearned);
}

} // namespace
} // namespace winterlarder::learning
