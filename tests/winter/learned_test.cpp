// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/learned_remarks.h"
#include "winter/places.h"

#include <cmath>

// Lasting multipliers, and winters whose luck is given.
namespace winterlarder::winter::learned_test {
namespace {

WinterQuestion oxfordQuestion() { return questionAt("gb-oxford", 13000, -92); }

TEST(Learned, NothingLearnedChangesNoDigit) {
    auto q = oxfordQuestion();
    const auto plain = *simulate(q, constants(), {1, 64});
    q.keepBrood = true;
    const auto kept = *simulate(q, constants(), {1, 64});
    for (int day : {-92, -30, 60, 140}) {
        EXPECT_TRUE(std::equal(plain.netLoss({day}).begin(), plain.netLoss({day}).end(), kept.netLoss({day}).begin()))
            << day;
        EXPECT_TRUE(std::equal(plain.bees({day}).begin(), plain.bees({day}).end(), kept.bees({day}).begin())) << day;
    }
    EXPECT_EQ(plain.draws()[3].lastingUse, 1);
}

// Everything eaten is multiplied, nothing else: bees live as before, income is as before.
TEST(Learned, UseIsMultipliedAsAWhole) {
    auto q = oxfordQuestion();
    q.learned = LearnedMultipliers{1, 0, 1, 0};
    const auto usual = *simulate(q, constants(), {1, 64});
    q.learned->use = 0.8;
    const auto less = *simulate(q, constants(), {1, 64});
    for (std::size_t i = 0; i < 64; i += 7) {
        EXPECT_NEAR(less.used({100})[i], 0.8F * usual.used({100})[i], 1e-4F);
        EXPECT_EQ(less.bees({100})[i], usual.bees({100})[i]);
        EXPECT_NEAR(less.used({140})[i] - less.netLoss({140})[i], usual.used({140})[i] - usual.netLoss({140})[i],
                    1e-3F);
    }
    EXPECT_NEAR(less.means({0}).adultPowerW, 0.8 * usual.means({0}).adultPowerW, 1e-9);
}

TEST(Learned, MoreDeathLeavesFewerBees) {
    auto q = oxfordQuestion();
    q.learned = LearnedMultipliers{1, 0, 1, 0};
    const auto usual = *simulate(q, constants(), {1, 64});
    q.learned->death = 1.3;
    const auto more = *simulate(q, constants(), {1, 64});
    for (std::size_t i = 0; i < 64; i += 7) EXPECT_LT(more.bees({60})[i], usual.bees({60})[i]);
}

// What lasts is taken off the yearly spread: sqrt(0.25^2 - 0.20^2) = 0.15 of death and brood; heat's 0.15 is all lasting.
TEST(Learned, TheYearlySpreadGivesUpWhatLasts) {
    EXPECT_NEAR(yearlySd(0.25, 0.20), 0.15, 1e-12);
    EXPECT_EQ(yearlySd(0.15, 0.20), 0);
}

TEST(Learned, MultipliersAreDrawnRoundTheirMedians) {
    auto q = oxfordQuestion();
    q.learned = LearnedMultipliers{0.9, 0.1, 1.1, 0.2};
    const int n = 4000;
    const auto ensemble = *simulate(q, constants(), {1, n}, 2);
    double use = 0, useSquares = 0, death = 0;
    for (const auto& draw : ensemble.draws()) {
        use += std::log(draw.lastingUse);
        useSquares += std::pow(std::log(draw.lastingUse / 0.9), 2);
        death += std::log(draw.lastingDeath);
    }
    EXPECT_NEAR(use / n, std::log(0.9), 4 * 0.1 / std::sqrt(n));
    EXPECT_NEAR(std::sqrt(useSquares / n), 0.1, 4 * 0.1 / std::sqrt(2.0 * n));
    EXPECT_NEAR(death / n, std::log(1.1), 4 * 0.2 / std::sqrt(n));
}

TEST(GivenLuck, TheGeneratorsOwnLuckGivesTheSameWinters) {
    const auto q = oxfordQuestion();
    std::vector<WinterLuck> luck;
    for (std::uint32_t i = 0; i < 40; ++i) luck.push_back(drawnLuck(1, q.colonyStream, i));
    const auto drawn = *simulate(q, constants(), {1, 40});
    const auto given = *simulateWith(q, constants(), {1, 40}, luck);
    EXPECT_TRUE(std::equal(drawn.netLoss({100}).begin(), drawn.netLoss({100}).end(), given.netLoss({100}).begin()));
}

TEST(GivenLuck, MovesItsWinter) {
    const auto q = oxfordQuestion();
    std::vector<WinterLuck> luck(2);
    luck[1].z[WinterLuck::Heat] = 2;
    const auto winters = *simulateWith(q, constants(), {1, 2}, luck);
    EXPECT_GT(winters.used({60})[1], winters.used({60})[0]);
    EXPECT_THROW(static_cast<void>(simulateWith(q, constants(), {1, 3}, luck)), ContractViolation);
}

TEST(Learned, IsSaidInRemarks) {
    EXPECT_TRUE(learnedRemarks(std::nullopt, {}).empty());
    const auto said = learnedRemarks(LearnedMultipliers{0.88, 0.1, 1.01, 0.1}, {3, 2, -4.2});
    ASSERT_EQ(said.size(), 2u) << "one per cent of deaths is not worth a word";
    EXPECT_EQ(said[0].id, "learned-use");
    EXPECT_EQ(std::get<std::string>(said[0].details.at("class")), "less");
    EXPECT_NEAR(std::get<double>(said[0].details.at("percent")), 12, 1e-9);
    EXPECT_EQ(std::get<double>(said[0].details.at("winters")), 3);
    EXPECT_EQ(said[1].id, "learned-forage");
    EXPECT_EQ(std::get<std::string>(said[1].details.at("class")), "earlier");
    EXPECT_EQ(std::get<std::string>(
                  learnedRemarks(LearnedMultipliers{1.01, 0.1, 1.3, 0.1}, {1, 0, 0})[0].details.at("class")),
              "same");
}

} // namespace
} // namespace winterlarder::winter::learned_test
