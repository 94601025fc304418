// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/seen_brood.h"

#include "winter/places.h"

#include <cmath>

// What a count of brood says of a colony, and looks that come after the first weighing.
namespace winterlarder::winter::seen_brood_test {
namespace {

WinterQuestion september(std::optional<double> cells) {
    auto question = questionAt("gb-oxford", 17500, -118);
    if (cells) question.brood = BeeCount{*cells};
    return question;
}

double needOf(const WinterQuestion& question) {
    const auto ensemble = simulate(question, constants(), {1, 2500}, 2);
    return quantile(lossesFrom(*ensemble, question.start, {}).largest, 0.8) + 4;
}

// 12,862.5 cells are expected of 17,500 bees on 5 September.
TEST(SeenBrood, IsMixedWithWhatIsExpected) {
    const auto seen = seenBrood(september(16000), constants());
    EXPECT_NEAR(21 * seen.perAge, std::sqrt(12862.5 * 16000), 1e-6);
    EXPECT_NEAR(seen.logShift, 0.0625 / 0.185 * std::log(16000 / 12862.5), 1e-12);
    EXPECT_NEAR(seen.zScale, 0.8137, 5e-5);
    EXPECT_FALSE(seen.stopped);
    const auto asExpected = seenBrood(september(12862.5), constants());
    EXPECT_NEAR(21 * asExpected.perAge, 12862.5, 1e-6);
    EXPECT_NEAR(asExpected.logShift, 0, 1e-12);
}

TEST(SeenBrood, MovesTheLuckByNoMoreThanAFactorE) {
    EXPECT_NEAR(seenBrood(september(60000), constants()).logShift, 0.0625 / 0.185, 1e-12);
    EXPECT_NEAR(seenBrood(september(1000), constants()).logShift, -0.0625 / 0.185, 1e-12);
}

TEST(SeenBrood, CountsLessWhereTheColonysWaysAreKnown) {
    auto question = september(16000);
    question.learned = LearnedMultipliers{1, 0.1, 1, 0.1};
    const double variance = 0.25 * 0.25 - 0.2 * 0.2;
    EXPECT_NEAR(seenBrood(question, constants()).logShift, variance / (variance + 0.1225) * std::log(16000 / 12862.5),
                1e-12);
}

TEST(SeenBrood, HardlyAnyMeansThatLayingHasStopped) {
    EXPECT_TRUE(seenToHaveStopped(september(0), constants()));
    EXPECT_TRUE(seenToHaveStopped(september(643), constants())); // 5 % of 12,862.5 are 643.1
    EXPECT_FALSE(seenToHaveStopped(september(644), constants()));
    EXPECT_FALSE(seenToHaveStopped(september(std::nullopt), constants()));
    const auto run = simulateCentral(september(0), constants());
    EXPECT_EQ(run.draws()[0].broodStop, -118);
    for (int day : {-118, -80, -20, 9}) EXPECT_EQ(run.means({day}).eggs, 0) << day;
    EXPECT_GT(run.means({11}).eggs, 0) << "the restart is the drawn one";
}

TEST(SeenBrood, OfAColonyThatHasStoppedLeavesItsLongLivedBeesAsDrawn) {
    auto stopped = questionAt("gb-oxford", 12000, -103);
    stopped.brood = BeeCount{100};
    const double share = (-103 - (-72 - 45)) / 62.0;
    EXPECT_NEAR(simulateCentral(stopped, constants()).means({-103}).longLivedBees, share * 12000, 1e-6);
}

TEST(SeenBrood, FromTheUsualStopOnIsOnlyItself) {
    auto question = questionAt("gb-oxford", 13000, -72);
    question.brood = BeeCount{2100};
    const auto seen = seenBrood(question, constants());
    EXPECT_NEAR(seen.perAge, 100, 1e-9);
    EXPECT_EQ(seen.logShift, 0);
    EXPECT_EQ(seen.zScale, 1);
    question.start = {40};
    EXPECT_EQ(seenBrood(question, constants()).logShift, 0) << "a count after the restart does not move the luck";
}

TEST(SeenBrood, WhereLayingNeverStopsNoneSeenMovesNoStop) {
    auto question = questionAt("pt-lisbon", 15000, -122);
    question.brood = BeeCount{0};
    const auto run = simulateCentral(question, constants());
    EXPECT_EQ(run.draws()[0].broodStop, -11);
    EXPECT_GT(run.means({-122}).eggs, 0) << "she lays again the next day";
}

// The model's own figures: 23.0 kg with 16,000 cells, 22.3 not seen, 14.8 with none; 5 % for another generator.
TEST(SeenBrood, MovesTheNeed) {
    EXPECT_NEAR(needOf(september(16000)), 23.0, 0.05 * 19);
    EXPECT_NEAR(needOf(september(std::nullopt)), 22.3, 0.05 * 18.3);
    EXPECT_NEAR(needOf(september(0)), 14.8, 0.05 * 10.8);
    const double below = needOf(september(643)), above = needOf(september(644));
    EXPECT_NEAR(above - below, 1.8, 0.5) << "the step where laying counts as stopped";
}

TEST(SeenBrood, NarrowsTheLuckAsAPosteriorDoes) {
    const auto firstEggs = [](const WinterQuestion& question, double z) {
        std::vector<WinterLuck> luck(1);
        luck[0].z[WinterLuck::Brood] = z;
        return simulateWith(question, constants(), {1, 1}, luck)->means({-118}).eggs;
    };
    const auto unseen = september(std::nullopt), seen = september(12862.5);
    EXPECT_NEAR(std::log(firstEggs(unseen, 1) / firstEggs(unseen, 0)), 0.25, 1e-9);
    EXPECT_NEAR(std::log(firstEggs(seen, 1) / firstEggs(seen, 0)), 0.25 * 0.8137, 2e-5);
}

// A weighing of 10 August, a look on 5 September: the run starts with more bees, and half of the winters have the
// seen ones that day.
TEST(LaterLook, TheRunBeginsWithTheBeesItNeeds) {
    auto question = september(16000);
    question.start = {-144};
    question.seenOn = SeasonDay{-118};
    question.keepBrood = true;
    const double start = beesAtStart(question, constants());
    EXPECT_GT(start, 17500);
    auto plain = question;
    plain.seenOn.reset();
    plain.brood.reset();
    plain.bees = {start};
    EXPECT_NEAR(simulateCentral(plain, constants()).means({-118}).bees, 17500, 60) << "numbers hardly change the ratio";
    const auto ensemble = *simulate(question, constants(), {1, 1000}, 2);
    const auto bees = ensemble.bees({-118});
    EXPECT_NEAR(quantile({bees.begin(), bees.end()}, 0.5), 17500, 900) << "the noiseless run lies beside the median";
    const auto unseen = *simulate(plain, constants(), {1, 1000}, 2);
    EXPECT_TRUE(
        std::equal(unseen.netLoss({-119}).begin(), unseen.netLoss({-119}).end(), ensemble.netLoss({-119}).begin()))
        << "before the look nothing of it counts";
}

TEST(LaterLook, SeenBroodCountsFromItsDayOn) {
    auto question = september(0);
    question.start = {-144};
    question.seenOn = SeasonDay{-118};
    const auto run = simulateCentral(question, constants());
    EXPECT_GT(run.means({-119}).eggs, 0);
    EXPECT_GT(run.means({-119}).broodCells, 5000);
    EXPECT_EQ(run.means({-118}).eggs, 0);
    EXPECT_EQ(run.means({-118}).broodCells, 0);
}

TEST(LaterLook, OnTheStartDayChangesNothing) {
    auto question = september(16000);
    const auto plain = simulateCentral(question, constants());
    question.seenOn = question.start;
    const auto same = simulateCentral(question, constants());
    EXPECT_EQ(plain.netLoss({60})[0], same.netLoss({60})[0]);
    question.seenOn = SeasonDay{-119};
    EXPECT_THROW(simulateCentral(question, constants()), ContractViolation) << "before the start";
}

// A start after the restart without a word of brood: the rule's eggs of that day, 21 of them.
TEST(UnseenBrood, AfterTheRestartFollowsTheRule) {
    const auto question = questionAt("gb-oxford", 9000, 41);
    const auto run = simulateCentral(question, constants());
    const auto& k = constants();
    const double ramp = (41.0 - 10) / (62 - 10);
    const double eggs =
        k.winterLaying * 9000 / k.winterLayingBees * (k.winterLayingStart + (1 - k.winterLayingStart) * ramp);
    EXPECT_NEAR(run.means({41}).broodCells, 21 * eggs, 1e-6);
    EXPECT_EQ(simulateCentral(questionAt("gb-oxford", 9000, 0), constants()).means({0}).broodCells, 0)
        << "none between stop and restart";
}

} // namespace
} // namespace winterlarder::winter::seen_brood_test
