// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/levels.h"

#include "numerics/median.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::scale {

namespace {

std::int64_t binOf(std::int64_t moment) {
    return moment >= 0 ? moment / levelSeconds : -((levelSeconds - 1 - moment) / levelSeconds);
}

} // namespace

std::vector<Level> levelsOf(const std::vector<Reading>& readings) {
    std::vector<Level> levels;
    std::vector<double> values;
    for (std::size_t i = 0, end = 0; i < readings.size(); i = end) {
        const std::int64_t bin = binOf(readings[i].moment);
        values.clear();
        std::int64_t sum = 0;
        for (end = i; end < readings.size() && binOf(readings[end].moment) == bin; ++end) {
            values.push_back(readings[end].weight.value());
            sum += readings[end].moment - readings[i].moment;
        }
        const auto count = static_cast<std::int64_t>(end - i);
        levels.push_back({readings[i].moment + sum / count, numerics::median(values), i, end});
    }
    return levels;
}

std::int64_t usualInterval(const std::vector<Level>& levels) {
    std::vector<double> intervals;
    for (std::size_t i = 1; i < levels.size(); ++i)
        intervals.push_back(static_cast<double>(levels[i].moment - levels[i - 1].moment));
    return intervals.empty() ? 0 : static_cast<std::int64_t>(numerics::lowerMedian(intervals));
}

UsualChange::UsualChange(const std::vector<Level>& levels, std::int64_t interval) {
    if (levels.empty()) return;
    constexpr double none = -1;
    constexpr std::size_t week = 7;
    first_ = dayNumber(levels.front().moment);
    std::vector<double> largest(static_cast<std::size_t>(dayNumber(levels.back().moment) - first_) + 1, none);
    for (std::size_t i = 1; i < levels.size(); ++i) {
        if (levels[i].moment - levels[i - 1].moment > 2 * interval) continue;
        double& day = largest[static_cast<std::size_t>(dayNumber(levels[i].moment) - first_)];
        day = std::max(day, std::abs(levels[i].kg - levels[i - 1].kg));
    }
    usual_.assign(largest.size(), 0);
    std::vector<double> near;
    for (std::size_t day = 0; day < largest.size(); ++day) {
        near.clear();
        const std::size_t end = std::min(day + week + 1, largest.size());
        for (std::size_t other = day > week ? day - week : 0; other < end; ++other)
            if (other != day && largest[other] > none) near.push_back(largest[other]);
        if (!near.empty()) usual_[day] = numerics::lowerMedian(near);
    }
}

double UsualChange::at(std::int64_t moment) const {
    const std::int32_t day = dayNumber(moment) - first_;
    return day < 0 || static_cast<std::size_t>(day) >= usual_.size() ? 0 : usual_[static_cast<std::size_t>(day)];
}

} // namespace winterlarder::scale
