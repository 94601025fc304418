// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/locked_in.h"

#include "winter/kernel.h"
#include "winter/larder.h"
#include "winter/luck.h"
#include "winter/weather.h"
#include "winter/winter_dates.h"

#include <algorithm>

namespace winterlarder::winter {

namespace {

// The longest run of one winter.
int longestRunOf(const BlockLuck& luck, const KernelSetting& setting, const ModelConstants& k, double offsetK,
                 int forage, std::size_t lane) {
    int run = 0, longest = 0;
    for (int day = setting.start; day < std::min(forage, setting.end + 1); ++day) {
        const auto at = static_cast<std::size_t>(day - setting.start);
        const double mean = setting.normalC[at] + offsetK + setting.dailySdK[at] * luck.weather[at][lane];
        run = mean + k.diurnalHalfRange < k.lockedInBelow ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    return longest;
}

} // namespace

double longestLockedIn(const climate::ClimateCurve& curve, const climate::SeasonDates& season,
                       const ModelConstants& constants, Sampling sampling) {
    const WinterQuestion place{firstSeasonDay, season, curve};
    KernelSetting setting;
    setting.start = firstSeasonDay.w;
    setting.end = lastSimulatedDay.w;
    setting.persistence = curve.dailyPersistence();
    for (int day = setting.start; day <= setting.end; ++day) {
        setting.normalC.push_back(curve.normal({day}).value());
        setting.dailySdK.push_back(curve.dailySd({day}).value());
    }
    const SeasonOffset offset = seasonOffset(place);
    std::vector<double> longest;
    BlockLuck luck{};
    for (int first = 0; first < sampling.winters; first += laneCount) {
        drawWeather(place, setting, sampling.seed, static_cast<std::uint32_t>(first), luck);
        for (int i = 0; i < std::min(laneCount, sampling.winters - first); ++i) {
            const WinterLuck z = drawnLuck(sampling.seed, 0, static_cast<std::uint32_t>(first + i));
            const double offsetK = offset.meanK + offset.sdK * z[WinterLuck::SeasonOffset];
            WinterDraw draw;
            drawDates(place, constants, {offsetK, z[WinterLuck::SpringEarliness], z[WinterLuck::Forage], 0, 0, 0},
                      draw);
            longest.push_back(
                longestRunOf(luck, setting, constants, offsetK, draw.forage, static_cast<std::size_t>(i)));
        }
    }
    return quantile(std::move(longest), 0.9);
}

} // namespace winterlarder::winter
