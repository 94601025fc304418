// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/days.h"

#include "numerics/median.h"
#include "scale/dampness.h"

#include <algorithm>

namespace winterlarder::scale {

namespace {

constexpr double wetNightKg = 0.15;
constexpr std::int32_t hour = 3600;

// A reading with the jumps before it taken out.
struct Steady {
    std::int32_t second = 0; // of the day
    double kg = 0;
    double jumps = 0; // taken out
};

struct Day {
    std::int32_t number = 0;
    std::vector<Steady> readings;
};

class DaysOf {
public:
    DaysOf(const std::vector<Reading>& readings, const Jumps& found)
        : readings_(readings), found_(found), sum_(found.jumps) {}

    std::vector<DayWeight> all() {
        for (const Reading& reading : readings_) take(reading);
        close();
        fillChanges();
        fillKinds();
        return std::move(days_);
    }

private:
    bool disturbed(std::int64_t moment) {
        const auto& stretches = found_.disturbed;
        while (nextStretch_ < stretches.size() &&
               (stretches[nextStretch_].kind == Stretch::Kind::Wet || stretches[nextStretch_].end < moment))
            ++nextStretch_;
        return nextStretch_ < stretches.size() && stretches[nextStretch_].begin <= moment;
    }
    // Between the two ends of a jump nothing is told.
    bool inJump(std::int64_t moment) {
        while (nextJump_ < found_.jumps.size() && found_.jumps[nextJump_].end <= moment) ++nextJump_;
        return nextJump_ < found_.jumps.size() && found_.jumps[nextJump_].begin < moment;
    }

    void take(const Reading& reading) {
        if (disturbed(reading.moment) || inJump(reading.moment)) return;
        const std::int32_t number = dayNumber(reading.local());
        if (day_.readings.empty() || number > day_.number) {
            close();
            day_.number = number;
        }
        const double jumps = sum_.upTo(reading.moment).value();
        day_.readings.push_back({secondOfDay(reading.local()), reading.weight.value() - jumps, jumps});
        lastMoment_ = reading.moment;
    }

    // Readings of the day between two seconds of it, below 0: of the evening before.
    std::vector<const Steady*> between(std::int32_t from, std::int32_t to) const {
        std::vector<const Steady*> some;
        if (yesterday_.number + 1 == day_.number)
            for (const Steady& one : yesterday_.readings)
                if (const auto second = one.second - static_cast<std::int32_t>(secondsADay);
                    second >= from && second < to)
                    some.push_back(&one);
        for (const Steady& one : day_.readings)
            if (one.second >= from && one.second < to) some.push_back(&one);
        return some;
    }
    static double middle(const std::vector<const Steady*>& some) {
        std::vector<double> values;
        values.reserve(some.size());
        for (const Steady* one : some) values.push_back(one->kg);
        return numerics::median(values);
    }

    void close() {
        if (day_.readings.empty()) return;
        Basis basis = Basis::Night;
        auto used = between(0, 4 * hour);
        if (used.empty()) {
            basis = Basis::NearNight;
            used = between(-3 * hour, 6 * hour);
        }
        if (used.empty()) {
            basis = Basis::Day;
            used = between(0, 24 * hour);
        }
        const double kg = middle(used);
        days_.push_back({dateOfDay(day_.number), kilograms(kg + used[used.size() / 2]->jumps), basis,
                         static_cast<int>(used.size()), wetNight() || wetStretch(), kilograms(kg), std::nullopt,
                         std::nullopt});
        yesterday_ = std::move(day_);
        day_ = {};
    }
    bool wetNight() const {
        const auto evening = between(-2 * hour, 0), morning = between(3 * hour, 5 * hour);
        return !evening.empty() && !morning.empty() && middle(morning) - middle(evening) >= wetNightKg;
    }
    // Whether rain set apart lay on the hive at some time of the day that ends with lastMoment_.
    bool wetStretch() const {
        const std::int64_t end = lastMoment_, begin = end - day_.readings.back().second;
        return std::any_of(found_.disturbed.begin(), found_.disturbed.end(), [&](const Stretch& stretch) {
            return stretch.kind == Stretch::Kind::Wet && stretch.begin < begin + 4 * hour && stretch.end > begin;
        });
    }

    void fillChanges() {
        for (std::size_t i = 0; i + 1 < days_.size(); ++i) {
            DayWeight& day = days_[i];
            if (days_[i + 1].date.daysSince(day.date) != 1) continue;
            day.change = days_[i + 1].withoutJumps - day.withoutJumps;
        }
    }
    void fillKinds() {
        const auto limits = nectarLimits(days_);
        for (std::size_t i = 0; i + 1 < days_.size(); ++i) {
            DayWeight& day = days_[i];
            if (!day.change) continue;
            const double gained = day.change->value();
            const bool water = (days_[i + 1].wet && !day.wet) || gained < limits[i];
            day.kind = gained < nectarDayKg ? DayKind::Eating : water ? DayKind::Wet : DayKind::Nectar;
        }
    }

    const std::vector<Reading>& readings_;
    const Jumps& found_;
    JumpSum sum_;
    std::size_t nextStretch_ = 0, nextJump_ = 0;
    std::int64_t lastMoment_ = 0;
    Day day_, yesterday_;
    std::vector<DayWeight> days_;
};

MonthEnd endsOf(bool first, bool last) {
    if (first) return last ? MonthEnd::Known : MonthEnd::LastMissing;
    return last ? MonthEnd::FirstMissing : MonthEnd::BothMissing;
}

class MonthsOf {
public:
    explicit MonthsOf(const std::vector<DayWeight>& days) : days_(days) {}

    MonthChange of(Date first, Date next) const {
        MonthChange month;
        month.year = first.year();
        month.month = first.month();
        const auto begin = from(first), end = from(next);
        const bool hasFirst = begin != days_.end() && begin->date == first;
        const bool hasLast = end != days_.end() && end->date == next;
        month.ends = endsOf(hasFirst, hasLast);
        if (month.ends == MonthEnd::Known) {
            month.change = end->withoutJumps - begin->withoutJumps;
            month.byDay = begin->basis == Basis::Day || end->basis == Basis::Day;
            month.wet = begin->wet || end->wet;
        }
        month.unknownDays = next.daysSince(first);
        for (auto day = begin; day != end; ++day) count(*day, month);
        return month;
    }

private:
    std::vector<DayWeight>::const_iterator from(Date date) const {
        return std::lower_bound(days_.begin(), days_.end(), date,
                                [](const DayWeight& day, Date wanted) { return day.date < wanted; });
    }
    static void count(const DayWeight& day, MonthChange& month) {
        if (!day.change) return;
        --month.unknownDays;
        if (*day.kind == DayKind::Nectar) {
            ++month.nectarDays;
            month.nectar += *day.change;
            return;
        }
        month.eaten -= *day.change; // water that came goes again
        ++(*day.kind == DayKind::Wet ? month.wetDays : month.eatingDays);
    }
    const std::vector<DayWeight>& days_;
};

Date firstOfNextMonth(Date first) {
    return first.month() == 12 ? *Date::of(first.year() + 1, 1, 1) : *Date::of(first.year(), first.month() + 1, 1);
}

} // namespace

std::vector<DayWeight> dayWeights(const std::vector<Reading>& readings, const Jumps& found) {
    return DaysOf(readings, found).all();
}

std::vector<MonthChange> monthChanges(const std::vector<DayWeight>& days) {
    std::vector<MonthChange> months;
    if (days.empty()) return months;
    const MonthsOf all(days);
    Date first = *Date::of(days.front().date.year(), days.front().date.month(), 1);
    for (Date next = firstOfNextMonth(first); first <= days.back().date; first = next, next = firstOfNextMonth(first))
        months.push_back(all.of(first, next));
    return months;
}

} // namespace winterlarder::scale
