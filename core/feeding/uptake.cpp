// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/schedule.h"

#include "support/require.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder::feeding {

namespace {

struct UptakeRow {
    double bees;
    double litresPerDay;
};

// Common practice; the published figures for a full colony run from 2 to 6.7 L a day.
constexpr std::array<UptakeRow, 5> warmDays{{{0, 0}, {2000, 0.1}, {5000, 0.3}, {10000, 2}, {20000, 4}}};

double litresOnAWarmDay(double bees) {
    if (bees >= warmDays.back().bees) return warmDays.back().litresPerDay;
    const auto above =
        std::find_if(warmDays.begin() + 1, warmDays.end(), [=](const UptakeRow& row) { return bees <= row.bees; });
    const auto below = above - 1;
    const double share = (bees - below->bees) / (above->bees - below->bees);
    return below->litresPerDay + share * (above->litresPerDay - below->litresPerDay);
}

double shareOfAWarmDay(double dailyMaximumC, const Feeder& feeder) {
    constexpr double fullFrom = 18.0;
    const double nothingAt = feeder.touchesCluster ? 10.0 : 13.0;
    return std::clamp((dailyMaximumC - nothingAt) / (fullFrom - nothingAt), 0.0, 1.0);
}

} // namespace

Volume uptakePerDay(BeeCount bees, Temperature dailyMaximum, const Feeder& feeder) {
    require(std::isfinite(bees.count) && bees.count >= 0, "bees cannot be {}", bees.count);
    const double pace = feeder.slow ? 0.5 : 1.0;
    return litres(pace * litresOnAWarmDay(bees.count) * shareOfAWarmDay(dailyMaximum.value(), feeder));
}

RatioAdvice adviseRatio(const climate::ClimateCurve& curve, SeasonDay today, std::optional<SeasonDay> lastDay,
                        TemperatureDifference diurnalHalfRange) {
    constexpr double warmAboveC = 15.0;
    constexpr int daysForThinSyrup = 35;
    const SeasonDay last = lastDay.value_or(today + (daysInYear - 1));
    RatioAdvice advice;
    for (SeasonDay day = today; day <= last; day = day + 1)
        if (curve.normal(day).value() + diurnalHalfRange.value() > warmAboveC) ++advice.warmDaysLeft;
    advice.thin = advice.warmDaysLeft >= daysForThinSyrup;
    advice.ratio = advice.thin ? Ratio{1.5, "3:2"} : Ratio{2.0, "2:1"};
    return advice;
}

} // namespace winterlarder::feeding
