// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

namespace winterlarder::tracking::hive_paths_test {
namespace {

TEST(HivePaths, LossesAreThoseOfTheLarder) {
    const auto losses = winter::netLossBetween(oxfordWinters(), {}, {-92}, {0});
    for (std::size_t i = 0; i < losses.size(); i += 97) EXPECT_NEAR(oxfordPaths().lossUntil({-1}, i), losses[i], 1e-5);
    EXPECT_EQ(oxfordPaths().lossUntil({-93}, 0), 0);
}

// 8,000 to 10,000 bees lost by March are 1 kg (4,000 bees to the pound; design figure of the model's description).
TEST(HivePaths, BeesLostAreKilogramsLost) {
    const double lost = oxfordPaths().bees({-92}, 0) - oxfordPaths().bees({60}, 0);
    const double brood =
        static_cast<double>(oxfordWinters().brood({60})[0]) - static_cast<double>(oxfordWinters().brood({-92})[0]);
    EXPECT_NEAR(oxfordPaths().lifeKg({-92}, 0) - oxfordPaths().lifeKg({60}, 0), 0.000115 * lost - 0.00015 * brood,
                1e-9);
}

TEST(HivePaths, TheMeanBroodIsThatOfTheEnsemble) {
    double sum = 0;
    for (float each : oxfordWinters().brood({30})) sum += static_cast<double>(each);
    EXPECT_NEAR(sum / quick.winters, oxfordWinters().means({30}).broodCells, 1e-3);
}

TEST(HivePaths, NeedTheBrood) {
    auto question = oxfordColony(15, 2, 0).winter;
    question.keepBrood = false;
    const auto ensemble = *winter::simulate(question, constants(), {1, 32});
    EXPECT_THROW(HivePaths(ensemble, {}, {-92}, constants()), ContractViolation);
}

} // namespace
} // namespace winterlarder::tracking::hive_paths_test
