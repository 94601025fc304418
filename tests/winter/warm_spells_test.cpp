// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <cmath>

// How fast early brood answers a warm spell.
namespace winterlarder::winter::warm_spells_test {
namespace {

constexpr int restart = -40, buildup = 60;

// A winter whose every day is measured: 0 degC, and from a day on as warm as is said.
WinterQuestion warmFrom(int day, double warmC) {
    auto question = questionAt("gb-oxford", 13000, -60);
    question.curve = climate::ClimateCurve::constant(celsius(0), 51.76, {3, 3, 0.7, 0});
    const auto exactly = [](int on) { return climate::SeasonDate{{on}, 0, climate::DateOrigin::Case, true}; };
    question.season.broodStop = exactly(-90);
    question.season.broodRestart = exactly(restart);
    question.season.buildup = exactly(buildup);
    question.season.forage = exactly(100);
    for (int past = -60; past < buildup; ++past) question.weatherSoFar.push_back({{past}, past < day ? 0.0 : warmC});
    return question;
}

double eggsOn(int day, const WinterQuestion& question, double shareOfBursts) {
    ModelConstants k = constants();
    k.burstShare = shareOfBursts;
    return simulate(question, k, {1, 16})->means({day}).eggs;
}

// The mean over seven days is exponential: n days of T after a long 0 make T (1 - (6/7)^n). Warm spells are chosen so that it comes
// to 4.5 degC on day n and has not reached 4 degC before, where laying begins to answer; an eighth of the full answer is then due,
// and colonies with and without early brood are still the same in all else.
TEST(WarmSpells, AreFeltThroughAMeanOfSevenDays) {
    for (int n = 1; n <= 5; ++n) {
        const double warmC = 4.5 / (1 - std::pow(6.0 / 7, n));
        const auto question = warmFrom(0, warmC);
        const int day = n - 1;
        const double with = eggsOn(day, question, 1), without = eggsOn(day, question, 0);
        ASSERT_GT(without, 0);
        EXPECT_NEAR(with / without, 1 + constants().burstStrength / 8, 1e-6) << n << " warm days";
        if (n > 1) EXPECT_EQ(eggsOn(day - 1, question, 1), eggsOn(day - 1, question, 0)) << "not yet after " << n - 1;
    }
}

} // namespace
} // namespace winterlarder::winter::warm_spells_test
