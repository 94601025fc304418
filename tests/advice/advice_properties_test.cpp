// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every answer, over random colonies of many places and days.
#include "advice/advice_properties.h"

namespace winterlarder::advice::advice_properties_test {

TEST(AdviceProperties, HoldOfEveryAnswer) {
    const auto seen = properties::expectOverColonies(1, 250);
    EXPECT_EQ(seen.size(), 10u) << "every phase in both halves of the earth";
    for (const auto& each : seen) EXPECT_GE(each.second, 5);
}

namespace {

// What is asked of the keeper now, and what typically later, as stores.
double askedInAll(const Advice& a) {
    double sum = a.feed ? a.feed->stores.value() : 0;
    if (a.expectedLater)
        sum += 1.08 * a.expectedLater->sugar.typical.value() +
               feeding::storesPerKgFondant * a.expectedLater->fondant.typical.value();
    return sum;
}

} // namespace

TEST(AdviceProperties, NoDaysChangeOfPhaseMakesMoreThanThreeKilograms) {
    for (const char* station : {"ca-halifax", "gb-london", "de-munich"})
        for (const double capped : {0.2, 0.45, 0.7}) {
            auto q = colony({.station = station, .capped = capped});
            q.brood.reset();
            q.queenSeen = true;
            const auto days = phaseDays(q.season, q.decisions);
            for (const SeasonDay last : {days.summer, days.closing, days.late, days.winter}) {
                q.asOf = q.lookedOn = last;
                const auto before = roughly(q);
                q.asOf = q.lookedOn = last + 1;
                const auto after = roughly(q);
                EXPECT_NEAR(askedInAll(before), askedInAll(after), 3)
                    << station << ", " << capped << ", day " << last.w;
            }
        }
}

TEST(AdviceProperties, VaguerEvidenceAsksForNoMore) {
    for (unsigned seed = 1; seed <= 30; ++seed) {
        const Drawn drawn = drawnColony(1000 + seed);
        auto vague = drawn.question;
        if (vague.combs.empty()) continue;
        for (auto& comb : vague.combs) comb.facesSeen = 1;
        const auto a = roughly(drawn.question), b = roughly(vague);
        EXPECT_LE(b.feed ? b.feed->stores.value() : 0, (a.feed ? a.feed->stores.value() : 0) + 1e-6) << drawn.what;
    }
}

} // namespace winterlarder::advice::advice_properties_test
