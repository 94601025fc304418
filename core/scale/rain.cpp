// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/median.h"
#include "scale/steps.h"

#include <algorithm>
#include <optional>

namespace winterlarder::scale {

namespace {

constexpr double heaviestRainKg = 2.0;
constexpr double goneShare = 0.6;

std::size_t firstLevelFrom(const std::vector<Level>& levels, std::int64_t moment) {
    return static_cast<std::size_t>(
        std::partition_point(levels.begin(), levels.end(), [&](const Level& level) { return level.moment < moment; }) -
        levels.begin());
}

// Median of the levels between two moments, the changes of jumps within `since`..their time taken out.
std::optional<double> steadyLevel(const Jumps& found, const std::vector<Level>& levels, std::int64_t since,
                                  std::int64_t from, std::int64_t to) {
    std::vector<double> values;
    for (std::size_t i = firstLevelFrom(levels, from); i < levels.size() && levels[i].moment <= to; ++i) {
        double kg = levels[i].kg;
        const auto later = std::upper_bound(found.jumps.begin(), found.jumps.end(), since,
                                            [](std::int64_t moment, const Jump& jump) { return moment < jump.end; });
        for (auto jump = later; jump != found.jumps.end() && jump->end <= levels[i].moment; ++jump)
            kg -= jump->change.value();
        values.push_back(kg);
    }
    if (values.empty()) return std::nullopt;
    return numerics::median(values);
}

// When a rise was gone; nothing where it stayed.
std::optional<std::int64_t> goneAt(const Jump& jump, const Jumps& found, const std::vector<Level>& levels) {
    if (jump.change <= kilograms(0) || jump.change > kilograms(heaviestRainKg)) return std::nullopt;
    if (jump.end - jump.begin > 3 * secondsAnHour) return std::nullopt;
    const auto before = steadyLevel(found, levels, jump.begin, jump.begin - secondsAnHour, jump.begin);
    const auto later = steadyLevel(found, levels, jump.end, jump.end + secondsADay, jump.end + 3 * secondsADay / 2);
    if (!before || !later || *later - *before > (1 - goneShare) * jump.change.value()) return std::nullopt;
    return jump.end + secondsADay;
}

} // namespace

void setRainApart(Jumps& found, const std::vector<Level>& levels) {
    std::vector<Jump> stay;
    bool any = false;
    for (const Jump& jump : found.jumps) {
        const auto gone = goneAt(jump, found, levels);
        if (gone) found.disturbed.push_back({Stretch::Kind::Wet, jump.end, *gone, jump.change});
        else stay.push_back(jump);
        any = any || gone;
    }
    if (!any) return;
    found.jumps = std::move(stay);
    std::sort(found.disturbed.begin(), found.disturbed.end(),
              [](const Stretch& a, const Stretch& b) { return a.begin < b.begin; });
}

} // namespace winterlarder::scale
