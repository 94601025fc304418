// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/summary.h"

#include <algorithm>

namespace winterlarder::scale {

namespace {

std::vector<Gap> gapsOf(const std::vector<Reading>& readings, std::int64_t interval) {
    std::vector<Gap> gaps;
    const std::int64_t longest = std::max<std::int64_t>(3 * interval, 2 * secondsAnHour);
    for (std::size_t i = 1; i < readings.size(); ++i)
        if (readings[i].moment - readings[i - 1].moment > longest)
            gaps.push_back({readings[i - 1].local(), readings[i].local()});
    return gaps;
}

std::vector<Stretch> onTheWall(std::vector<Stretch> stretches, const std::vector<Reading>& readings) {
    for (Stretch& stretch : stretches) {
        const auto at = std::partition_point(readings.begin(), readings.end(),
                                             [&](const Reading& reading) { return reading.moment < stretch.begin; });
        const std::int32_t offset = at == readings.end() ? 0 : at->offset;
        stretch.begin += offset;
        stretch.end += offset;
    }
    return stretches;
}

} // namespace

Summary summarise(std::vector<Reading> readings, Times times) {
    Summary summary;
    OrderedReadings ordered = inOrder(std::move(readings), times);
    summary.readings = ordered.readings.size();
    summary.merged = ordered.merged;
    summary.interval = ordered.interval;
    summary.order = ordered.order;
    summary.jumps = std::move(ordered.jumps);
    summary.leftOut = std::move(ordered.leftOut);
    if (ordered.readings.empty()) return summary;
    const auto levels = levelsOf(ordered.readings);
    Jumps found = findJumps(ordered.readings, levels);
    setRainApart(found, levels);
    sharpen(found, dayWeights(ordered.readings, found), ordered.readings);
    summary.days = dayWeights(ordered.readings, found);
    summary.months = monthChanges(summary.days);
    summary.steps = stepsOf(found.jumps, summary.days, ordered.readings);
    summary.disturbed = onTheWall(std::move(found.disturbed), ordered.readings);
    summary.gaps = gapsOf(ordered.readings, ordered.interval);
    return summary;
}

} // namespace winterlarder::scale
