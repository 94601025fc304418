// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/kinds.h"

#include "numerics/median.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <tuple>

namespace winterlarder::scale {

namespace {

constexpr double flowKgADay = nectarDayKg / 2;
constexpr std::int64_t gap = 12 * secondsAnHour;

class Kinds {
public:
    Kinds(const std::vector<DayWeight>& days, std::vector<Step>& steps)
        : days_(days), steps_(steps), partner_(steps.size()) {}

    void giveAll() {
        pairUp();
        for (std::size_t i = 0; i < steps_.size(); ++i) std::tie(steps_[i].kind, steps_[i].rule) = kindOf(i);
    }

private:
    using Given = std::pair<StepKind, StepRule>;

    static double kg(const Step& step) { return step.jump.change.value(); }

    // What was put on and taken off again, or taken off and put back within the week, nearest first.
    void pairUp() {
        for (std::size_t second = 0; second < steps_.size(); ++second)
            for (std::size_t first = second; first-- > 0 && daysBetween(first, second) <= 200;) {
                if (partner_[first] || !belong(first, second)) continue;
                partner_[first] = second;
                partner_[second] = first;
                break;
            }
    }
    int daysBetween(std::size_t first, std::size_t second) const {
        return steps_[second].date.daysSince(steps_[first].date);
    }
    bool belong(std::size_t first, std::size_t second) const {
        const double one = kg(steps_[first]), other = kg(steps_[second]), size = std::abs(one),
                     rest = std::abs(one + other);
        if (one * other >= 0 || rest > 0.5 * size) return false;
        if (one < 0) return daysBetween(first, second) <= 7 && rest <= std::max(0.4, 0.02 * size);
        const bool filled = nectarBetween(steps_[first].date, steps_[second].date) >= 0.5 * size;
        return rest <= (filled ? 0.25 : std::max(0.4, 0.1 * size));
    }

    std::size_t firstDayFrom(Date date) const {
        return static_cast<std::size_t>(
            std::lower_bound(days_.begin(), days_.end(), date,
                             [](const DayWeight& day, Date wanted) { return day.date < wanted; }) -
            days_.begin());
    }
    // Median of the daily changes from..from+count-1; nothing where none is known.
    std::optional<double> usualChange(Date from, int count) const {
        std::vector<double> changes;
        for (std::size_t i = firstDayFrom(from); i < days_.size() && days_[i].date.daysSince(from) < count; ++i)
            if (days_[i].change) changes.push_back(days_[i].change->value());
        if (changes.empty()) return std::nullopt;
        return numerics::lowerMedian(changes);
    }
    std::optional<double> before(const Step& step) const { return usualChange(step.date.plusDays(-7), 7); }
    std::optional<double> after(const Step& step) const { return usualChange(step.date.plusDays(1), 5); }
    bool flow(const Step& step) const {
        return before(step).value_or(0) >= flowKgADay || after(step).value_or(0) >= flowKgADay;
    }

    // How much more was lost in ten days than the colony ate before; nothing where the log does not tell.
    std::optional<double> extraLoss(const Step& step) const {
        const auto usual = before(step);
        const Date from = step.date.plusDays(1);
        double change = 0;
        int known = 0;
        for (std::size_t i = firstDayFrom(from); i < days_.size() && days_[i].date.daysSince(from) < 10; ++i)
            if (days_[i].change && ++known) change += days_[i].change->value();
        if (!usual || known < 3) return std::nullopt;
        return std::min(0.0, *usual) * known - change;
    }

    double nectarBetween(std::optional<Date> from, Date to) const {
        double sum = 0;
        for (std::size_t i = from ? firstDayFrom(*from) : 0; i < days_.size() && days_[i].date < to; ++i)
            if (days_[i].kind == DayKind::Nectar) sum += days_[i].change->value();
        return sum;
    }
    // Of another step of a kind before this one, the last.
    std::optional<Date> lastOf(StepKind kind, std::size_t until) const {
        for (std::size_t i = until; i-- > 0;)
            if (steps_[i].kind == kind) return steps_[i].date;
        return std::nullopt;
    }

    Given putOn(const Step& step) const {
        if (kg(step) > feederFullKg) return {StepKind::Equipment, StepRule::TooMuchForFood};
        const auto extra = extraLoss(step);
        if (extra && *extra >= std::max(0.15, 0.08 * kg(step))) return {StepKind::Feed, StepRule::ShrankLikeSyrup};
        if (flow(step)) return {StepKind::Equipment, StepRule::RoomInAFlow};
        const bool told = before(step) && after(step);
        if (told && kg(step) >= 1) return {StepKind::Feed, StepRule::NothingComesIn};
        return {StepKind::Unknown, StepRule::NoRule};
    }

    Given takenOff(std::size_t i) const {
        const Step& step = steps_[i];
        const double off = -kg(step);
        if (off >= 3 && nectarBetween(lastOf(StepKind::Harvest, i), step.date) >= 0.5 * off)
            return {StepKind::Harvest, StepRule::TookWhatCameIn};
        const auto fed = lastOf(StepKind::Feed, i);
        if (off <= 3 && fed && step.date.daysSince(*fed) <= 60) return {StepKind::Equipment, StepRule::AfterFeed};
        const std::int32_t second = secondOfDay(step.local);
        const bool byDay = second >= 9 * secondsAnHour && second < 18 * secondsAnHour;
        if (off >= 1 && off <= 4 && byDay && before(step).value_or(0) >= flowKgADay)
            return {StepKind::Unknown, StepRule::LikeASwarm};
        return {StepKind::Unknown, StepRule::NoRule};
    }

    Given kindOf(std::size_t i) const {
        const Step& step = steps_[i];
        if (step.jump.end - step.jump.begin > gap && !partner_[i] && !daily(step))
            return {StepKind::Unknown, StepRule::InAGap};
        if (partner_[i]) return {StepKind::Equipment, StepRule::CameAndWent};
        return kg(step) > 0 ? putOn(step) : takenOff(i);
    }
    // A log of one reading a day has no gap between two of them.
    bool daily(const Step& step) const {
        const std::size_t next = firstDayFrom(step.date.plusDays(1));
        return step.jump.end - step.jump.begin <= 3 * secondsADay / 2 && next < days_.size() &&
               days_[next].readings == 1;
    }

    const std::vector<DayWeight>& days_;
    std::vector<Step>& steps_;
    std::vector<std::optional<std::size_t>> partner_;
};

std::int32_t offsetAt(const std::vector<Reading>& readings, std::int64_t moment) {
    const auto at = std::partition_point(readings.begin(), readings.end(),
                                         [&](const Reading& reading) { return reading.moment < moment; });
    return at == readings.end() ? readings.back().offset : at->offset;
}

} // namespace

std::vector<Step> stepsOf(const std::vector<Jump>& jumps, const std::vector<DayWeight>& days,
                          const std::vector<Reading>& readings) {
    std::vector<Step> steps;
    for (const Jump& jump : jumps) {
        // Half-way, and of two readings a day apart the earlier day where that is midnight.
        const std::int64_t middle = jump.middle();
        const std::int64_t local = middle + offsetAt(readings, middle);
        steps.push_back({jump, dateOfDay(dayNumber(local - 1)), local, StepKind::Unknown, StepRule::NoRule});
    }
    Kinds(days, steps).giveAll();
    return steps;
}

} // namespace winterlarder::scale
