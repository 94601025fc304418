// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/keeper.h"

#include "numerics/cholesky.h"
#include "numerics/symmetric_system.h"
#include "tracking/winters.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace winterlarder::learning::keeper_test {
namespace {

//! A winter that says ln use = value with a standard deviation, and nothing of death.
WinterEvidence says(double value, double sd) { return {1 / (sd * sd), 0, 0, value / (sd * sd), 0}; }

TEST(SymmetricSystem, SolvesByHand) {
    numerics::SymmetricSystem system(2); // 4x + 2y = 10, 2x + 3y = 9: x = 1.5, y = 2
    system.add(0, 0, 4);
    system.add(1, 0, 2);
    system.add(0, 1, 2);
    system.add(1, 1, 3);
    system.decompose();
    const auto x = system.solve({10, 9});
    EXPECT_NEAR(x[0], 1.5, 1e-12);
    EXPECT_NEAR(x[1], 2, 1e-12);
}

// [4 2; 2 5] = [2 0; 1 2] [2 1; 0 2].
TEST(Cholesky, RootByHandAndAColumnThatIsLeftOut) {
    const auto rootOf = [](double last, auto keep) {
        std::vector<std::vector<double>> lower{{4, 0}, {2, last}};
        numerics::cholesky(
            2, [&](std::size_t row, std::size_t column) -> double& { return lower[row][column]; }, keep);
        return lower;
    };
    EXPECT_EQ(rootOf(5, [](double pivot, std::size_t) { return pivot; }),
              (std::vector<std::vector<double>>{{2, 0}, {1, 2}}));
    EXPECT_EQ(rootOf(1, [](double pivot, std::size_t) { return std::max(pivot, 9.0); })[1][1], 3)
        << "a pivot of 0 is made larger";
    EXPECT_EQ(rootOf(5, [](double pivot, std::size_t j) { return j == 0 ? 0 : pivot; }),
              (std::vector<std::vector<double>>{{0, 0}, {0, std::sqrt(5.0)}}));
}

TEST(Keeper, NothingSeenIsNothingLearned) {
    const auto learned = learn({}, constants());
    EXPECT_EQ(learned.winters, 0);
    EXPECT_FALSE(learned.multipliers(1, 1));
    EXPECT_FALSE(learn({{1, 1, WinterEvidence{}}}, constants()).multipliers(1, 1));
}

// One colony, one winter: the sum of its parts is normal with variance 0.04; seen as 0.3 with SD 0.2 it becomes 0.15, SD 0.1414.
TEST(Keeper, OneWinterByHand) {
    const auto learned = learn({{1, 7, says(0.3, 0.2)}}, constants());
    const Lasting own = learned.colonies.at(7).use;
    EXPECT_NEAR(own.logMean, 0.15, 1e-12);
    EXPECT_NEAR(own.logSd, 0.2 / std::sqrt(2.0), 1e-12);
    // Half of the variance is the keeper's: 0.02 / 0.08 x 0.3.
    EXPECT_NEAR(learned.keeper.use.logMean, 0.075, 1e-12);
    // A neighbour in the yard shares seven tenths; elsewhere half.
    EXPECT_NEAR(learned.yards.at(1).use.logMean, 0.028 / 0.08 * 0.3, 1e-12);
    EXPECT_NEAR(learned.anywhere.use.logMean, 0.075, 1e-12);
    EXPECT_NEAR(learned.anywhere.use.logSd, std::sqrt(0.04 - 0.02 * 0.02 / 0.08), 1e-12);
    EXPECT_NEAR(learned.colonies.at(7).death.logMean, 0, 1e-12);
    EXPECT_NEAR(learned.colonies.at(7).death.logSd, 0.2, 1e-12);
}

TEST(Keeper, UnknownColoniesFallBackOnTheirYardThenTheKeeper) {
    const auto learned = learn({{1, 7, says(0.3, 0.05)}, {2, 8, says(-0.2, 0.05)}}, constants());
    EXPECT_EQ(learned.multipliers(1, 99)->use, learned.yards.at(1).use.median());
    EXPECT_EQ(learned.multipliers(5, 99)->use, learned.anywhere.use.median());
    EXPECT_EQ(learned.multipliers(1, 7)->useLogSd, learned.colonies.at(7).use.logSd);
    EXPECT_GT(learned.yards.at(1).use.logMean, learned.yards.at(2).use.logMean);
}

TEST(Keeper, MoreWintersNarrowAndOrderDoesNotMatter) {
    std::vector<ColonyWinter> winters;
    double before = 0.2;
    for (int year = 0; year < 5; ++year) {
        winters.push_back({1, 7, says(0.1 + 0.01 * year, 0.2)});
        const double now = learn(winters, constants()).colonies.at(7).use.logSd;
        EXPECT_LT(now, before);
        before = now;
    }
    const double forward = learn(winters, constants()).colonies.at(7).use.logMean;
    std::reverse(winters.begin(), winters.end());
    EXPECT_NEAR(learn(winters, constants()).colonies.at(7).use.logMean, forward, 1e-12);
}

TEST(Keeper, AColonyThatMovedKeepsItsOwnPart) {
    const auto learned = learn({{1, 7, says(0.3, 0.1)}, {2, 7, says(0.3, 0.1)}}, constants());
    EXPECT_GT(learned.colonies.at(7).use.logMean, learned.yards.at(1).use.logMean);
    EXPECT_EQ(learned.yards.size(), 2u);
}

TEST(Forage, ShiftIsLearnedByHand) {
    const auto season = tracking::oxfordColony(20, 1, 0).winter.season; // forage on day 108, SD 9
    const double yearly = 81 - 25 + std::pow(5 * 0.5, 2);
    const auto shift = learnForage({{{118}, 4}}, season, 0.5, constants());
    EXPECT_NEAR(shift.meanDays, 10 * 25 / (25 + yearly + 16), 1e-9);
    EXPECT_NEAR(shift.sdDays, std::sqrt(1 / (1 / 25.0 + 1 / (yearly + 16))), 1e-9);
    const auto moved = withForage(season, shift, constants());
    EXPECT_EQ(moved.forage->day - season.forage->day, 2); // 2.4 days
    EXPECT_NEAR(moved.forage->sdDays, std::sqrt(56 + shift.sdDays * shift.sdDays), 1e-9);
    EXPECT_LT(moved.forage->sdDays, season.forage->sdDays);
}

TEST(Forage, NothingLearnedOrAGivenDateStays) {
    auto season = tracking::oxfordColony(20, 1, 0).winter.season;
    EXPECT_EQ(*withForage(season, {}, constants()).forage, *season.forage);
    season.forage->origin = climate::DateOrigin::Case;
    EXPECT_EQ(*withForage(season, {10, 2, 3}, constants()).forage, *season.forage);
}

TEST(Forage, NeverWithinAWeekOfBuildUp) {
    const auto season = tracking::oxfordColony(20, 1, 0).winter.season;
    const auto moved = withForage(season, {-80, 2, 3}, constants());
    EXPECT_EQ(moved.forage->day, season.buildup->day + 7);
}

TEST(Forage, TheWeightTurnsWhereItIsLowest) {
    const std::vector<DayWeight> weights{{{-40}, kilograms(40)},
                                         {{30}, kilograms(32)},
                                         {{95}, kilograms(25)},
                                         {{107}, kilograms(24)},
                                         {{119}, kilograms(27)}};
    const auto turn = forageTurn(weights, constants());
    ASSERT_TRUE(turn);
    EXPECT_EQ(turn->day, (SeasonDay{107}));
    EXPECT_NEAR(turn->sdDays, std::hypot(4, 24.0 / 4), 1e-12);
    EXPECT_FALSE(forageTurn({weights.begin(), weights.end() - 1}, constants())); // nothing gained yet
    EXPECT_FALSE(forageTurn({}, constants()));
}

} // namespace
} // namespace winterlarder::learning::keeper_test
