// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/dampness.h"

#include "scale/summary.h"
#include "support/hive_log.h"

#include <gmock/gmock.h>

namespace winterlarder::scale::dampness_test {
namespace {

using namespace winterlarder::testing;

bool isWinter(const MonthChange& month) { return month.month <= 2 || month.month >= 11; }

// Wood that takes up and gives off 0.1 to 0.3 kg of water on most days (standard deviation 0.1 to 0.2):
// on many days of winter the hive grows heavier, and nobody flew.
TEST(Dampness, IsNoNectarInWinter) {
    for (const double damp : {0.1, 0.15, 0.2})
        for (std::uint32_t seed = 1; seed <= 6; ++seed) {
            HiveLog log(seed);
            log.dampKg = damp;
            log.end = secondsOf(2019, 3, 2);
            log.interval = seed % 2 ? 3600 : 12 * 3600;
            const Summary summary = summarise(log.draw().readings(), Times::WallClock);
            int heavier = 0;
            for (const auto& day : summary.days) heavier += day.change && day.change->value() >= nectarDayKg;
            EXPECT_GT(heavier, 60) << "the log is damp, or this test says nothing";
            for (const auto& month : summary.months) {
                if (month.change && month.unknownDays == 0)
                    EXPECT_NEAR((month.nectar - month.eaten).value(), month.change->value(), 1e-9)
                        << month.year << '-' << month.month;
                if (!isWinter(month)) continue;
                EXPECT_EQ(month.nectarDays, 0) << damp << ' ' << seed << ' ' << month.year << '-' << month.month;
                if (month.change) EXPECT_NEAR(month.eaten.value(), -month.change->value(), 1e-9);
            }
        }
}

// The flows are still found: damp wood takes little of them away and adds little.
TEST(Dampness, LeavesTheFlowsAsTheyAre) {
    HiveLog dry(7), damp(7);
    damp.dampKg = 0.15;
    const auto whole = [](const Summary& summary, int month) {
        return summary.months[static_cast<std::size_t>(month) - 1].nectar.value();
    };
    const Summary without = summarise(dry.draw().readings(), Times::WallClock),
                  with = summarise(damp.draw().readings(), Times::WallClock);
    for (const int month : {5, 7})
        EXPECT_NEAR(whole(with, month), whole(without, month), 0.1 * whole(without, month)) << month;
}

TEST(Dampness, IsMeasuredWhereNothingFlies) {
    HiveLog dry(7), damp(7);
    damp.dampKg = 0.3;
    EXPECT_LT(dampnessOf(summarise(dry.draw().readings(), Times::WallClock).days), 0.05);
    const double told = dampnessOf(summarise(damp.draw().readings(), Times::WallClock).days);
    EXPECT_NEAR(told, 0.27, 0.05) << "half a day's water shows in a night's weight";
    EXPECT_GE(told, muchDampness) << "it is said that days of income in winter are not certain";
    EXPECT_EQ(dampnessOf({}), 0);
}

TEST(Dampness, OfADryLogIsLessThanANectarDay) {
    HiveLog log(8);
    const Summary summary = summarise(log.draw().readings(), Times::WallClock);
    for (const double limit : nectarLimits(summary.days)) EXPECT_EQ(limit, nectarDayKg);
}

TEST(Dampness, OfAFewDaysIsNotKnown) {
    HiveLog log(9);
    log.end = log.begin + 8 * secondsADay;
    log.dampKg = 0.3;
    const Summary summary = summarise(log.draw().readings(), Times::WallClock);
    for (const double limit : nectarLimits(summary.days)) EXPECT_EQ(limit, nectarDayKg);
    EXPECT_TRUE(nectarLimits({}).empty());
}

} // namespace
} // namespace winterlarder::scale::dampness_test
