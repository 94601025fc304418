// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/dampness.h"

#include "numerics/median.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::scale {

namespace {

constexpr int daysEitherWay = 10, fewestKnown = 10;
constexpr int leastStillDays = 28;
constexpr double mostLostADay = 0.12, mostGainedADay = 0.04;
constexpr double deviations = 4, normalFromMedian = 1.4826;

// What the days round a day did together.
struct Weeks {
    double change = 0;
    int known = 0;
    bool told() const { return known >= fewestKnown; }
    bool still() const { return told() && change >= -mostLostADay * known && change <= mostGainedADay * known; }
};

// Of each day, on a window that moves along.
std::vector<Weeks> weeksOf(const std::vector<DayWeight>& days) {
    std::vector<Weeks> all;
    Weeks now;
    const auto count = [&](const DayWeight& day, int sign) {
        if (!day.change) return;
        now.change += sign * day.change->value();
        now.known += sign;
    };
    std::size_t first = 0, next = 0;
    for (const DayWeight& day : days) {
        for (; next < days.size() && days[next].date.daysSince(day.date) <= daysEitherWay; ++next) count(days[next], 1);
        for (; day.date.daysSince(days[first].date) > daysEitherWay; ++first) count(days[first], -1);
        all.push_back(now);
    }
    return all;
}

// Changes of all days that lie in still weeks, four weeks of them on end at least.
std::vector<double> changesWithoutFlight(const std::vector<DayWeight>& days, const std::vector<Weeks>& weeks) {
    std::vector<double> changes;
    for (std::size_t first = 0; first < days.size();) {
        std::size_t end = first;
        while (end < days.size() && weeks[end].still()) ++end;
        if (end - first >= static_cast<std::size_t>(leastStillDays))
            for (std::size_t i = first; i < end; ++i)
                if (days[i].change) changes.push_back(days[i].change->value());
        first = std::max(end, first + 1);
    }
    return changes;
}

double scatterOf(std::vector<double> changes) {
    if (changes.empty()) return 0;
    const double middle = numerics::median(changes);
    for (double& change : changes) change = std::abs(change - middle);
    return normalFromMedian * numerics::median(changes);
}

} // namespace

double dampnessOf(const std::vector<DayWeight>& days) { return scatterOf(changesWithoutFlight(days, weeksOf(days))); }

std::vector<double> nectarLimits(const std::vector<DayWeight>& days) {
    const auto weeks = weeksOf(days);
    const double damp = std::max(nectarDayKg, deviations * scatterOf(changesWithoutFlight(days, weeks)));
    std::vector<double> limits;
    for (const Weeks& each : weeks) limits.push_back(!each.told() || each.change > damp ? nectarDayKg : damp);
    return limits;
}

} // namespace winterlarder::scale
