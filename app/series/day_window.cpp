// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/day_window.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr double daysBefore = 5;
constexpr int countedPastForage = 8;

double highestOfLine(const WinterLine& line, SeasonDay first, DayWindow seen) {
    double highest = 0;
    const auto from = static_cast<std::size_t>(std::max(0.0, std::floor(seen.first - first.w)));
    const auto to =
        std::min(line.kilograms.size(), static_cast<std::size_t>(std::max(0.0, std::ceil(seen.last - first.w) + 1)));
    for (std::size_t day = from; day < to; ++day) highest = std::max(highest, line.kilograms[day]);
    return highest;
}

// Days on which the colony may already gather count only where nothing else is seen.
DayWindow counted(const WinterPicture& picture, DayWindow seen) {
    const double end = picture.last.w - daysDrawnPastForage + countedPastForage - 1;
    if (seen.first < end) seen.last = std::min(seen.last, end);
    return seen;
}

bool holds(DayWindow seen, double day) { return seen.first <= day && day <= seen.last; }

} // namespace

DayWindow wholeWinter(const WinterPicture& picture) {
    double first = picture.first.w - daysBefore;
    for (const auto& point : picture.evidence) first = std::min(first, point.day.w - daysBefore);
    return {first, static_cast<double>(picture.last.w)};
}

DayWindow fitted(DayWindow wanted, DayWindow whole) {
    const double days = std::min(whole.days(), std::max(leastDaysSeen, wanted.days()));
    const double middle = (wanted.first + wanted.last) / 2;
    const double first = std::clamp(middle - days / 2, whole.first, whole.last - days);
    return {first, first + days};
}

DayWindow stretched(DayWindow seen, DayWindow whole, double factor, double about) {
    const double days = std::clamp(seen.days() * factor, std::min(leastDaysSeen, whole.days()), whole.days());
    const double share = seen.days() > 0 ? (about - seen.first) / seen.days() : 0.5;
    const double first = about - share * days;
    return fitted({first, first + days}, whole);
}

DayWindow reaching(DayWindow seen, DayWindow whole, double day) {
    const double shift = day < seen.first ? day - seen.first : day > seen.last ? day - seen.last : 0;
    return shift == 0 ? seen : fitted({seen.first + shift, seen.last + shift}, whole);
}

double highestSeen(const WinterPicture& picture, const std::set<advice::OptionKind>& options, DayWindow seen) {
    double highest = 2 * picture.reserveKg;
    if (holds(seen, picture.first.w)) highest = std::max(highest, picture.storesToday.high.value());
    for (const auto& point : picture.evidence)
        if (holds(seen, point.day.w)) highest = std::max(highest, point.stores.high.value());
    for (const auto& option : picture.options) {
        if (!options.contains(option.kind)) continue;
        for (const auto& line : option.lines)
            highest = std::max(highest, highestOfLine(line, picture.first, counted(picture, seen)));
        for (const double kg : option.dots) highest = std::max(highest, kg);
    }
    return highest;
}

} // namespace winterlarder::desk
