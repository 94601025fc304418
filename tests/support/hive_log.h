// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/reading.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <random>
#include <string>
#include <vector>

//! A hive scale's log of which the truth is known: what the colony ate and brought in, day by day, with foragers out by day, noise, steps,
//! rain and people leaning on it laid over. The same seed gives the same log.
namespace winterlarder::testing {

using scale::Reading;

//! Seconds since 1970-01-01 of a day and hour on the hive's clock.
inline std::int64_t secondsOf(int year, int month, int day, double hour = 0) {
    return static_cast<std::int64_t>(scale::dayOf(*Date::of(year, month, day))) * scale::secondsADay +
           static_cast<std::int64_t>(std::llround(hour * 3600));
}

struct TrueStep {
    std::int64_t at = 0;
    double kg = 0;
};
struct Shower { //!< falls within twenty minutes, dries off within twelve hours
    std::int64_t at = 0;
    double kg = 0;
};
struct Lean { //!< somebody leans on the hive
    std::int64_t from = 0;
    std::int64_t seconds = 0;
    double kg = 0;
};

class HiveLog {
public:
    explicit HiveLog(std::uint32_t seed) : random_(seed) {}

    std::int64_t begin = secondsOf(2018, 1, 1), end = secondsOf(2019, 1, 1);
    std::int64_t interval = 300;
    double startKg = 42, noiseKg = 0.02, resolutionKg = 0.01;
    double strength = 1; //!< of the flows
    double dampKg =
        0; //!< what the wood's water does to a day's change in weeks without flight, give or take (standard deviation)
    std::vector<TrueStep> steps;
    std::vector<Shower> showers;
    std::vector<Lean> leans;

    //! Fixes what every day brings. To be called before anything below.
    HiveLog& draw() {
        firstDay_ = scale::dayNumber(begin);
        const std::int32_t days = scale::dayNumber(end) - firstDay_ + 2;
        std::normal_distribution<double> normal;
        midnight_.assign(1, startKg);
        for (std::int32_t day = 0; day < days; ++day) {
            const Date date = scale::dateOfDay(firstDay_ + day);
            const int number = date.month() * 100 + date.day();
            const bool flow = (number >= 425 && number <= 520) || (number >= 615 && number <= 720);
            const bool cold = number < 315 || number > 1015;
            const double good = std::max(0.0, 1.4 + 0.9 * normal(random_));
            income_.push_back(flow ? strength * good : 0);
            eaten_.push_back(cold ? 0.035 + 0.004 * std::abs(normal(random_))
                                  : 0.18 + 0.03 * std::abs(normal(random_)));
            midnight_.push_back(midnight_.back() + income_.back() - eaten_.back());
        }
        drawDampness(static_cast<std::size_t>(days));
        return *this;
    }

    //! What the colony alone would weigh: no steps, water, noise.
    double colonyKg(std::int64_t local) const {
        const auto day = static_cast<std::size_t>(scale::dayNumber(local) - firstDay_);
        const double hour = scale::secondOfDay(local) / 3600.0;
        const double out = 0.35 * std::min(1.0, income_[day] + (eaten_[day] > 0.1 ? 0.3 : 0)) * flying(hour);
        return midnight_[day] + income_[day] * broughtBy(hour) - eaten_[day] * hour / 24 - out;
    }
    double stepsBy(std::int64_t local) const {
        double sum = 0;
        for (const TrueStep& step : steps)
            if (step.at <= local) sum += step.kg;
        return sum;
    }
    //! True change from the night of one day to that of another, steps taken out, at 2 h, the middle of the night's readings.
    double changeBetween(Date from, Date to) const {
        const auto at = [](Date date) {
            return static_cast<std::int64_t>(scale::dayOf(date)) * scale::secondsADay + 2 * 3600;
        };
        return colonyKg(at(to)) - colonyKg(at(from));
    }

    std::vector<Reading> readings() {
        std::vector<Reading> all;
        std::normal_distribution<double> normal; // of deviation 1: one of 0 is not allowed
        std::int32_t line = 1;
        for (std::int64_t at = begin; at < end; at += interval) {
            const double kg =
                colonyKg(at) + stepsBy(at) + water(at) + dampness(at) + leaning(at) + noiseKg * normal(random_);
            all.push_back({at, kilograms(std::round(kg / resolutionKg) * resolutionKg), 0, ++line});
        }
        return all;
    }

private:
    static double smooth(double x) {
        const double clamped = std::clamp(x, 0.0, 1.0);
        return clamped * clamped * (3 - 2 * clamped);
    }
    static double flying(double hour) { return smooth((hour - 7) / 1.5) - smooth((hour - 18) / 2.5); }
    static double broughtBy(double hour) { return smooth((hour - 9) / 10); }
    double water(std::int64_t at) const {
        double sum = 0;
        for (const Shower& shower : showers)
            if (at > shower.at && at < shower.at + 14 * 3600) {
                const double hours = static_cast<double>(at - shower.at) / 3600;
                sum += shower.kg * std::min(1.0, hours * 3) * std::clamp((13 - hours) / 12, 0.0, 1.0);
            }
        return sum;
    }
    double leaning(std::int64_t at) const {
        double sum = 0;
        for (const Lean& lean : leans)
            if (at >= lean.from && at < lean.from + lean.seconds) sum += lean.kg;
        return sum;
    }

    // Wood takes up water and gives it off again, so that nothing lasts: a fifth of it is gone each day.
    void drawDampness(std::size_t days) {
        damp_.assign(days + 1, 0);
        if (dampKg <= 0) return;
        std::normal_distribution<double> normal;
        for (std::size_t day = 1; day <= days; ++day)
            damp_[day] = 0.8 * damp_[day - 1] + 0.95 * dampKg * normal(random_);
    }
    double dampness(std::int64_t at) const {
        const auto day = static_cast<std::size_t>(scale::dayNumber(at) - firstDay_);
        const double share = scale::secondOfDay(at) / 86400.0;
        return damp_[day] + share * (damp_[day + 1] - damp_[day]);
    }

    std::mt19937 random_;
    std::int32_t firstDay_ = 0;
    std::vector<double> income_, eaten_, midnight_, damp_;
};

} // namespace winterlarder::testing
