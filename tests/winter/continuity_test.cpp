// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/continuity.h"

namespace winterlarder::winter::continuity_test {

// The places where the model is at its edges; all 173 stations with a winter in test_winter_long.
TEST(Continuity, HoldsAtTheEdgesOfTheModel) {
    for (const char* station :
         {"za-bloemfontein", "gb-stornoway", "no-tromso", "gb-oxford", "us-ga-atlanta", "ca-halifax"})
        continuity::expectAll(station, 400);
}

TEST(Continuity, HoldsAtEveryTwelfthStation) {
    const auto stations = continuity::stationsWithAWinter();
    for (std::size_t i = 0; i < stations.size(); i += 12) {
        continuity::expectNoJumps(stations[i], {12000, 9000}, 800, 0.6, 1.8);
        continuity::expectFewerButNotFew(stations[i]);
    }
}

// A double deep box on 5 September, and the same colony on 1 October with the bees counted then.
TEST(Continuity, AnEarlyLookAsksForWhatALaterOneWould) {
    auto asked = questionAt("gb-oxford", 17500, -118);
    asked.brood = BeeCount{16000};
    const auto needOf = [](const WinterQuestion& q) {
        return quantile(lossesFrom(*simulate(q, constants(), {1, 2500}), q.start, {}).largest, 0.8) + 4;
    };
    const double early = needOf(asked);
    EXPECT_GE(early, 21);
    EXPECT_LE(early, 28);
    const double later = needOf(questionAt("gb-oxford", 13000, -92));
    EXPECT_GE(later, 17);
    EXPECT_LE(later, 22);
}

} // namespace winterlarder::winter::continuity_test
