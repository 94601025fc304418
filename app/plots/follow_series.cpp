// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/follow_series.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

std::vector<StoresBand> bandsOf(const tracking::Forecast& forecast, int from, int until) {
    std::vector<StoresBand> bands;
    for (const auto& band : forecast.bands)
        if (band.day.w >= from && band.day.w <= until)
            bands.push_back({static_cast<double>(band.day.w), band.stores.low.value(), band.stores.typical.value(),
                             band.stores.high.value()});
    return bands;
}

double highest(const std::vector<StoresBand>& bands, double most) {
    for (const auto& band : bands) most = std::max(most, band.high);
    return most;
}

} // namespace

FollowSeries followSeries(const FollowedWinter& followed) {
    FollowSeries series;
    if (!followed.following || !followed.colony.question) return series;
    const auto& f = *followed.following;
    const auto& q = *followed.colony.question;
    series.first = q.decided.w;
    series.today = q.today.w;
    series.forageLow = f.now.forage.low.w, series.forage = f.now.forage.typical.w,
    series.forageHigh = f.now.forage.high.w;
    series.last = std::max(series.today, series.forageHigh);
    series.autumn = bandsOf(f.autumn, series.first, series.last);
    series.now = bandsOf(f.now, series.today, series.last);
    series.reserveKg = q.reserve.value();
    series.mostKg = highest(series.now, highest(series.autumn, series.reserveKg));
    for (const auto& point : f.seen) {
        series.seen.push_back({static_cast<double>(point.day.w), point.stores.value(), point.sd.value()});
        series.mostKg = std::max(series.mostKg, (point.stores + point.sd).value());
    }
    return series;
}

} // namespace winterlarder::desk
