// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/steps.h"

#include "scale/side.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::scale {

namespace {

constexpr std::int64_t fastLog = 20 * 60;        // levels this close together may hold both sides of a jump
constexpr std::int64_t together = secondsAnHour; // changes within this are one disturbance
constexpr std::int64_t comesBack = 3 * secondsAnHour;
constexpr std::int64_t longGap = 3 * secondsAnHour; // no line is drawn across
constexpr double aboveUsual = 2.5;
constexpr std::int64_t longestWork = 2 * secondsAnHour; // what goes on for longer is no work at the hive but a flow

// Levels on both sides of something that is not natural.
struct Break {
    std::size_t before = 0, after = 0;
    double threshold = 0; // smallest of its changes' [kg]
    bool single = true;   // one change only
};

class Finder {
public:
    Finder(const std::vector<Reading>& readings, const std::vector<Level>& levels)
        : readings_(readings), levels_(levels), interval_(usualInterval(levels)), usual_(levels, interval_) {}

    Jumps find() {
        const std::vector<Break> breaks = withoutReturns(joined(changes()));
        for (std::size_t i = 0; i < breaks.size(); ++i) {
            lastUntouched_ = readings_.size() - 1;
            if (i + 1 < breaks.size()) lastUntouched_ = lastBefore(breaks[i + 1]);
            measure(breaks[i]);
        }
        return std::move(found_);
    }

private:
    bool fast() const { return interval_ <= fastLog; }

    double threshold(std::size_t from, std::size_t to) const {
        const std::int64_t seconds = levels_[to].moment - levels_[from].moment;
        const double natural =
            levels_[to].kg > levels_[from].kg ? naturalRise(hours(seconds)) : naturalFall(hours(seconds));
        return std::max({smallestJumpKg, natural, aboveUsual * usual_.at(levels_[to].moment)});
    }
    bool jumps(std::size_t from, std::size_t to) const {
        return std::abs(levels_[to].kg - levels_[from].kg) > threshold(from, to);
    }

    std::vector<Break> changes() const {
        std::vector<Break> result;
        std::size_t done = 0; // last level that closes a change
        for (std::size_t i = 1; i < levels_.size(); ++i) {
            if (jumps(i - 1, i)) {
                result.push_back({i - 1, i, threshold(i - 1, i), true});
                done = i;
            } else if (fast() && i >= 2 && i - 2 >= done && i + 1 < levels_.size() && !jumps(i, i + 1) &&
                       jumps(i - 2, i) && levels_[i].moment - levels_[i - 2].moment <= 3 * levelSeconds) {
                result.push_back({i - 2, i, threshold(i - 2, i), true});
                done = i;
            }
        }
        return result;
    }

    std::vector<Break> joined(const std::vector<Break>& changes) const {
        std::vector<Break> result;
        for (const Break& one : changes) {
            if (!result.empty() && fast() &&
                levels_[one.before].moment - levels_[result.back().after].moment <= together) {
                result.back().after = one.after;
                result.back().threshold = std::min(result.back().threshold, one.threshold);
                result.back().single = false;
            } else {
                result.push_back(one);
            }
        }
        return result;
    }

    // Two breaks of which the second takes back the first are one.
    std::vector<Break> withoutReturns(const std::vector<Break>& breaks) const {
        std::vector<Break> result;
        for (const Break& one : breaks) {
            const bool back = !result.empty() && result.back().single && one.single && takesBack(result.back(), one);
            if (back)
                result.back() = {result.back().before, one.after, std::min(result.back().threshold, one.threshold),
                                 false};
            else result.push_back(one);
        }
        return result;
    }
    bool takesBack(const Break& first, const Break& second) const {
        const std::int64_t between = levels_[second.before].moment - levels_[first.after].moment;
        const double rest = levels_[second.after].kg - levels_[first.before].kg;
        const double went = levels_[first.after].kg - levels_[first.before].kg;
        const double came = levels_[second.after].kg - levels_[second.before].kg;
        return between <= std::max<std::int64_t>(comesBack - interval_, 0) && went * came < 0 &&
               std::abs(rest) <= std::max(threshold(first.before, second.after), 0.1 * std::abs(went)) &&
               std::abs(rest) < 0.5 * std::abs(went);
    }

    // ---- the exact readings between which it happened

    double change(std::size_t reading) const {
        return readings_[reading].weight.value() - readings_[reading - 1].weight.value();
    }
    std::size_t levelAway(std::size_t level, int by) const {
        const std::size_t other = by < 0 ? (level > 0 ? level - 1 : level) : std::min(level + 1, levels_.size() - 1);
        const bool near = std::abs(levels_[other].moment - levels_[level].moment) <= 2 * levelSeconds;
        return fast() && near ? other : level;
    }

    struct Edges {
        std::size_t lastBefore = 0, firstAfter = 0;
    };
    Edges edges(const Break& one) const {
        if (!fast()) return {levels_[one.before].end - 1, levels_[one.after].first};
        const std::size_t from = levels_[one.before].first, end = levels_[one.after].end;
        const double before = levels_[levelAway(one.before, -1)].kg, after = levels_[levelAway(one.after, 1)].kg;
        const double near = 0.5 * one.threshold;
        std::size_t lastBefore = from, firstAfter = end - 1;
        while (lastBefore + 1 < end && std::abs(readings_[lastBefore + 1].weight.value() - before) <= near)
            ++lastBefore;
        while (firstAfter > from && std::abs(readings_[firstAfter - 1].weight.value() - after) <= near) --firstAfter;
        if (firstAfter <= lastBefore) return atLargestChange(from, end);
        return {lastBefore, firstAfter};
    }
    Edges atLargestChange(std::size_t from, std::size_t end) const {
        std::size_t largest = from + 1;
        for (std::size_t i = from + 1; i < end; ++i)
            if (std::abs(change(i)) > std::abs(change(largest))) largest = i;
        return {largest - 1, largest};
    }

    // The last reading that is surely before a break.
    std::size_t lastBefore(const Break& one) const {
        const Level& level = levels_[one.before];
        return fast() && level.first > 0 ? level.first - 1 : level.end - 1;
    }

    // ---- its size

    ToldWeight sizeOf(const Edges& edges) const {
        const std::int64_t begin = readings_[edges.lastBefore].moment, end = readings_[edges.firstAfter].moment;
        const std::int64_t middle = begin + (end - begin) / 2;
        const Carry carry = end - begin <= std::max(longGap, interval_ * 5 / 2) ? Carry::On : Carry::Not;
        const Side before{edges.lastBefore, std::min(settledReading_, edges.lastBefore)};
        const Side after{edges.firstAfter, std::max(lastUntouched_, edges.firstAfter)};
        const ToldWeight now = weightToldBy(readings_, after, middle, interval_, carry);
        const ToldWeight then = weightToldBy(readings_, before, middle, interval_, carry);
        return {now.weight - then.weight, kilograms(std::hypot(now.error.value(), then.error.value()))};
    }

    double farthest(const Edges& edges) const {
        const double before = readings_[edges.lastBefore].weight.value();
        double most = 0;
        for (std::size_t i = edges.lastBefore; i <= edges.firstAfter; ++i)
            if (const double away = readings_[i].weight.value() - before; std::abs(away) > std::abs(most)) most = away;
        return most;
    }

    // A rise or fall over hours, none of whose parts stands out.
    bool creeps(const Break& one) const {
        if (one.single || levels_[one.after].moment - levels_[one.before].moment <= longestWork) return false;
        double largest = 0;
        for (std::size_t i = one.before + 1; i <= one.after; ++i)
            largest = std::max(largest, std::abs(levels_[i].kg - levels_[i - 1].kg));
        return largest < 0.4 * std::abs(levels_[one.after].kg - levels_[one.before].kg) || largest < 2 * one.threshold;
    }
    // Whether the weight left the range between its values before and after.
    bool wentAway(const Edges& at, double most, double threshold) const {
        const double rest = readings_[at.firstAfter].weight.value() - readings_[at.lastBefore].weight.value();
        return most > std::max(0.0, rest) + threshold || most < std::min(0.0, rest) - threshold;
    }

    void measure(const Break& one) {
        if (creeps(one)) return;
        const Edges at = edges(one);
        const std::int64_t begin = readings_[at.lastBefore].moment, end = readings_[at.firstAfter].moment;
        const ToldWeight told = sizeOf(at);
        const double size = told.weight.value();
        const double natural = size > 0 ? naturalRise(hours(end - begin)) : naturalFall(hours(end - begin));
        const double enough = one.single ? 0.8 * one.threshold : std::max(one.threshold, natural);
        if (std::abs(size) >= enough) found_.jumps.push_back({begin, end, told.weight, told.error});
        else if (!one.single && wentAway(at, farthest(at), one.threshold))
            found_.disturbed.push_back({Stretch::Kind::Disturbed, readings_[at.lastBefore + 1].moment,
                                        readings_[at.firstAfter - 1].moment, kilograms(farthest(at))});
        settledReading_ = at.firstAfter;
    }

    const std::vector<Reading>& readings_;
    const std::vector<Level>& levels_;
    std::int64_t interval_;
    UsualChange usual_;
    std::size_t settledReading_ = 0; // first after the last disturbance
    std::size_t lastUntouched_ = 0;  // last before the next
    Jumps found_;
};

} // namespace

double naturalRise(double hours) {
    if (hours <= 4) return 0.25 + 0.75 * hours;
    if (hours <= 24) return 3.25 + 2.75 * (hours - 4) / 20;
    return 6 + 4 * (hours - 24) / 24;
}

double naturalFall(double hours) {
    if (hours <= 2) return 0.25 + 0.75 * hours;
    if (hours <= 24) return 1.75 + 0.75 * (hours - 2) / 22;
    return 2.5 + 0.5 * (hours - 24) / 24;
}

Jumps findJumps(const std::vector<Reading>& readings, const std::vector<Level>& levels) {
    if (levels.size() < 2) return {};
    return Finder(readings, levels).find();
}

} // namespace winterlarder::scale
