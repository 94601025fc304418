// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <algorithm>

// On which days feeds and the autumn flow count: identities that hold whatever a colony eats.
namespace winterlarder::winter::days_of_steps_test {
namespace {

constexpr int start = -92;

const DemandEnsemble& winters() {
    static const DemandEnsemble ensemble = *simulate(questionAt("pt-lisbon", 15000, start), constants(), {1, 64});
    return ensemble;
}

std::vector<double> largestFrom(SeasonDay day, const std::vector<StoresStep>& steps) {
    return lossesFrom(winters(), {start}, {}, steps, day).largest;
}

double lossAtEndOf(SeasonDay day, std::size_t winter) { return static_cast<double>(winters().netLoss(day)[winter]); }

// A feed so large that after it no loss is left: the largest loss from a day on is then that of the day itself, or none.
TEST(DaysOfSteps, AFeedCountsOnItsDay) {
    constexpr double feedKg = 500;
    for (const SeasonDay day : {SeasonDay{start}, SeasonDay{-40}, SeasonDay{30}}) {
        const auto onTheDay = largestFrom(day, {{day, kilograms(feedKg)}}),
                   dayAfter = largestFrom(day, {{day + 1, kilograms(feedKg)}});
        const auto unfed = largestFrom(day, {});
        for (std::size_t i = 0; i < unfed.size(); ++i) {
            EXPECT_NEAR(onTheDay[i], unfed[i] - feedKg, 1e-9) << day.w;
            EXPECT_NEAR(dayAfter[i], lossAtEndOf(day, i), 1e-9) << day.w;
        }
    }
}

double flowOn(SeasonDay day, const AutumnFlow& flow) {
    const auto with = netLossBetween(winters(), flow, day, day + 1),
               without = netLossBetween(winters(), {}, day, day + 1);
    double most = 0;
    for (std::size_t i = 0; i < with.size(); ++i) most = std::max(most, without[i] - with[i]);
    return most;
}

// Lisbon in October is warm enough to fly; so without an end the flow would go on.
TEST(DaysOfSteps, TheFlowStopsAfterItsLastDay) {
    const AutumnFlow endless{1, std::nullopt, std::nullopt}, ends{1, SeasonDay{-80}, std::nullopt};
    for (SeasonDay day{-85}; day < SeasonDay{-70}; day = day + 1) {
        EXPECT_GT(flowOn(day, endless), 0.001) << day.w;
        if (day <= *ends.lastDay) EXPECT_EQ(flowOn(day, ends), flowOn(day, endless)) << day.w;
        else EXPECT_NEAR(flowOn(day, ends), 0, 1e-9) << day.w;
    }
}

} // namespace
} // namespace winterlarder::winter::days_of_steps_test
