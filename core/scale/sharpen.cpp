// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/days.h"

#include "numerics/median.h"
#include "numerics/normal_law.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace winterlarder::scale {

namespace {

constexpr std::int32_t daysEachWay = 5;
constexpr std::size_t fewestDays = 5;
constexpr double leastScatterKg = 0.005;
constexpr double likeTheOthers = 3; // standard errors

struct Usual {
    double change = 0, error = 0; // of one more such day [kg]
};

class Sharpener {
public:
    Sharpener(Jumps& found, const std::vector<DayWeight>& days, const std::vector<Reading>& readings) : found_(found) {
        for (const DayWeight& day : days) days_.emplace(dayOf(day.date), &day);
        for (std::size_t i = 0; i < found.jumps.size(); ++i)
            for (std::int32_t day = dayAt(readings, found.jumps[i].begin); day <= dayAt(readings, found.jumps[i].end);
                 ++day)
                jumpsOf_[day].push_back(i);
    }

    void sharpenAll() {
        for (const auto& entry : jumpsOf_)
            if (entry.second.size() == 1 && alone(entry.second.front(), entry.first))
                sharpenOne(found_.jumps[entry.second.front()], entry.first);
    }

private:
    static std::int32_t dayAt(const std::vector<Reading>& readings, std::int64_t moment) {
        const auto at = std::partition_point(readings.begin(), readings.end(),
                                             [&](const Reading& reading) { return reading.moment < moment; });
        return dayNumber((at == readings.end() ? std::prev(at) : at)->local());
    }
    // The jump lies on that day and no other.
    bool alone(std::size_t jump, std::int32_t day) const {
        return std::count_if(jumpsOf_.begin(), jumpsOf_.end(), [&](const auto& entry) {
                   return entry.first != day && entry.first >= day - 1 && entry.first <= day + 1 &&
                          std::find(entry.second.begin(), entry.second.end(), jump) != entry.second.end();
               }) == 0;
    }
    const DayWeight* day(std::int32_t number) const {
        const auto at = days_.find(number);
        return at == days_.end() ? nullptr : at->second;
    }
    static bool dryNight(const DayWeight* day) { return day && day->basis == Basis::Night && !day->wet; }

    std::optional<Usual> usualRound(std::int32_t number) const {
        std::vector<double> changes;
        for (std::int32_t other = number - daysEachWay; other <= number + daysEachWay; ++other) {
            const DayWeight* one = day(other);
            if (other != number && dryNight(one) && dryNight(day(other + 1)) && one->change &&
                !jumpsOf_.contains(other))
                changes.push_back(one->change->value());
        }
        if (changes.size() < fewestDays) return std::nullopt;
        Usual usual{numerics::median(changes), 0};
        for (double& change : changes) change = std::abs(change - usual.change);
        usual.error = std::max(leastScatterKg, normalScatter * numerics::median(changes));
        return usual;
    }

    void sharpenOne(Jump& jump, std::int32_t number) const {
        const DayWeight* on = day(number);
        if (!dryNight(on) || !dryNight(day(number + 1)) || !on->change) return;
        const auto usual = usualRound(number);
        if (!usual) return;
        const double error = jump.error.value(), difference = on->change->value() - usual->change;
        if (error <= 0 || std::abs(difference) > likeTheOthers * std::hypot(error, usual->error)) return;
        const double dayShare = usual->error * usual->error / (error * error + usual->error * usual->error);
        jump.change += kilograms((1 - dayShare) * difference);
        jump.error = kilograms(error * std::sqrt(dayShare));
    }

    Jumps& found_;
    std::map<std::int32_t, const DayWeight*> days_;
    std::map<std::int32_t, std::vector<std::size_t>> jumpsOf_;
};

} // namespace

void sharpen(Jumps& found, const std::vector<DayWeight>& days, const std::vector<Reading>& readings) {
    if (!found.jumps.empty()) Sharpener(found, days, readings).sharpenAll();
}

} // namespace winterlarder::scale
