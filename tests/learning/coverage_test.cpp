// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/synthetic_keepers.h"

#include <algorithm>

// Invented keepers whose truth is known. The small numbers here run every time; 500 keepers run in coverage_long.cpp.
namespace winterlarder::learning::coverage_test {
namespace {

// 50 keepers, three winters each: three standard errors of a share of 0.8 are 0.17.
TEST(Coverage, AnIntervalOfFourFifthsHoldsTheTruthFourTimesInFive) {
    const auto covered = coverage({50, 3, 300, 11});
    EXPECT_NEAR(covered.use, 0.8, 0.17);
    EXPECT_NEAR(covered.death, 0.8, 0.17);
    RecordProperty("use", std::to_string(covered.use));
}

TEST(Coverage, ForecastsAreAsGoodAsTheExactPosteriors) {
    const auto scores = scoresAfterThree({24, 4, 500, 12});
    EXPECT_LT(scores.learned, 1.10 * scores.exact); // 24 keepers; within 5 % is held over 500
    EXPECT_LT(scores.learned, scores.unlearned);
}

// One winter moves a little, five a lot, and the interval narrows each time.
TEST(Coverage, OneWinterMovesALittleFiveALot) {
    const SyntheticKeepers what{10, 5, 300, 13};
    const auto keepers = inventKeepers(what);
    const Learner learner(what);
    double one = 0, five = 0, sdOne = 0, sdFive = 0, truth = 0;
    for (const auto& keeper : keepers) {
        const auto a = learner.learned(keeper, 1).use, b = learner.learned(keeper, 5).use;
        one += a.logMean * keeper.logUse;
        five += b.logMean * keeper.logUse;
        truth += keeper.logUse * keeper.logUse;
        sdOne += a.logSd / what.keepers;
        sdFive += b.logSd / what.keepers;
    }
    EXPECT_GT(one / truth, 0.1);
    EXPECT_LT(one / truth, five / truth);
    EXPECT_GT(five / truth, 0.5);
    EXPECT_LT(sdFive, 0.7 * sdOne);
    EXPECT_LT(sdOne, 0.2);
}

// The learned mean and spread of a single winter are those of the exact posterior; where too few winters count they are drawn again.
TEST(Coverage, OneWinterLearnedIsTheExactPosterior) {
    const SyntheticKeepers what{6, 1, 2500, 14};
    const auto keepers = inventKeepers(what);
    const ExactPosterior exact(what);
    for (const auto& keeper : keepers) {
        const PastWinter past{asked(keeper.winters[0]), std::nullopt};
        const auto evidence = *evidenceOf(past, constants(), {what.seed, what.winters}, 2);
        const auto use = learn({{1, 1, evidence}}, constants()).colonies.at(1).use;
        const auto truth = ExactPosterior::use(exact.posterior(keeper, 1));
        // Two ensembles in each of which some 150 winters count: four standard errors of a mean are 4 sd sqrt(2 / 150).
        EXPECT_NEAR(use.logMean, truth.logMean, 4 * truth.logSd * std::sqrt(2.0 / 150));
        EXPECT_NEAR(use.logSd / truth.logSd, 1, 4 * std::sqrt(1.0 / 150));
    }
}

// Chi-square of ranks in ten bins.
double chiSquare(const std::vector<double>& places) {
    std::array<double, 10> count{};
    for (double place : places) count[std::min<std::size_t>(9, static_cast<std::size_t>(place * 10))] += 1;
    const double expected = static_cast<double>(places.size()) / 10;
    double sum = 0;
    for (double each : count) sum += (each - expected) * (each - expected) / expected;
    return sum;
}

constexpr double chiSquareOneInAThousand = 27.88; // 9 degrees of freedom

// Rank histograms: where the truth lies in the forecast, before and after two weighings, is evenly spread.
TEST(RankHistogram, IsFlatBeforeAndAfterWeighings) {
    const SyntheticKeepers what{300, 1, 600, 15};
    auto q = keepersQuestion();
    q.winter.keepBrood = true;
    const auto ensemble = *winter::simulate(q.winter, constants(), {99, what.winters}, 2);
    const tracking::HivePaths paths(ensemble, {}, q.decided, constants());
    std::vector<double> before, after;
    for (const auto& keeper : inventKeepers(what)) {
        auto seen = asked(keeper.winters[0]);
        std::erase_if(seen.observations, [](const auto& each) { return each.day > SeasonDay{25}; });
        const auto place = [&](const tracking::FollowQuestion& asking) {
            const auto belief = tracking::reweigh(asking, paths, {}, 1, constants());
            return tracking::believed(belief, [&](std::size_t p) {
                return static_cast<double>(paths.lossUntil({scoredDay}, belief.winterOf(p))) < keeper.winters[0].loss
                           ? 1.0
                           : 0.0;
            });
        };
        after.push_back(place(seen));
        seen.observations.clear();
        before.push_back(place(seen));
    }
    EXPECT_LT(chiSquare(before), chiSquareOneInAThousand);
    EXPECT_LT(chiSquare(after), chiSquareOneInAThousand);
}

} // namespace
} // namespace winterlarder::learning::coverage_test
