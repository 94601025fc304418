// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/side.h"

#include "numerics/median.h"
#include "numerics/normal_law.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace winterlarder::scale {

namespace {

constexpr double steepestKgAnHour = 2.0;
constexpr std::size_t mostPoints = 48;    // of a line
constexpr double medianOverMean = 1.2533; // standard error of a median over that of a mean, normal scatter
constexpr double agreement = 1.5;         // standard errors

class SideReader {
public:
    SideReader(const std::vector<Reading>& readings, const Side& side, std::int64_t moment, std::int64_t interval,
               Carry carry)
        : readings_(readings), side_(side), interval_(interval), zero_(readings[side.near].moment),
          at_(carry == Carry::On ? hours(moment - zero_) : 0) {}

    ToldWeight told() {
        const double scatter = scatterOfSide();
        std::vector<Told> lines;
        for (std::int64_t window = std::max<std::int64_t>(secondsAnHour, interval_ * 5 / 2), times = 1; times <= 8;
             times *= 2) {
            const std::size_t count = within(window * times);
            if (!lines.empty() && count == lines.back().count) break;
            const Told next = line(count, scatter);
            const bool agrees = std::all_of(lines.begin(), lines.end(), [&](const Told& shorter) {
                return std::abs(next.weight - shorter.weight) <= agreement * shorter.error;
            });
            if (!agrees) break;
            lines.push_back(next);
        }
        return {kilograms(lines.back().weight), kilograms(lines.back().error)};
    }

private:
    struct Told { // by one line
        double weight = 0, error = 0;
        std::size_t count = 0; // readings
    };

    bool before() const { return side_.far < side_.near; }
    std::size_t most() const { return (before() ? side_.near - side_.far : side_.far - side_.near) + 1; }
    const Reading& reading(std::size_t away) const {
        return readings_[before() ? side_.near - away : side_.near + away];
    }

    // Readings at most so many seconds away from the near one, itself included.
    std::size_t within(std::int64_t seconds) const {
        std::size_t count = 1;
        while (count < most() && std::abs(reading(count).moment - zero_) <= seconds) ++count;
        return count;
    }

    double scatterOfSide() const {
        std::vector<double> seconds;
        for (std::size_t i = 2; i < std::min<std::size_t>(most(), 200); ++i)
            seconds.push_back(std::abs(reading(i).weight.value() - 2 * reading(i - 1).weight.value() +
                                       reading(i - 2).weight.value()));
        if (seconds.empty()) return 0;
        return normalScatter * numerics::median(seconds) / std::sqrt(6.0);
    }

    // Readings in groups of equal number, at most mostPoints, by their medians.
    void points(std::size_t count, std::size_t group, std::vector<double>& x, std::vector<double>& y) const {
        std::vector<double> values;
        for (std::size_t first = 0; first < count; first += group) {
            values.clear();
            double sum = 0;
            for (std::size_t i = first; i < std::min(first + group, count); ++i) {
                values.push_back(reading(i).weight.value());
                sum += hours(reading(i).moment - zero_);
            }
            x.push_back(sum / static_cast<double>(values.size()));
            y.push_back(numerics::median(values));
        }
    }

    Told line(std::size_t count, double scatter) const {
        const std::size_t group = (count + mostPoints - 1) / mostPoints;
        std::vector<double> x, y;
        points(count, group, x, y);
        const bool tooShort = interval_ < 20 * 60 && std::abs(reading(count - 1).moment - zero_) < 20 * 60;
        const numerics::Line fitted = numerics::robustLine(x, y, tooShort ? 0 : steepestKgAnHour);
        double mean = 0, spread = 0;
        for (const double each : x) mean += each / static_cast<double>(x.size());
        for (const double each : x) spread += (each - mean) * (each - mean) * static_cast<double>(group);
        const double carried = fitted.slope != 0 && spread > 0 ? (at_ - mean) * (at_ - mean) / spread : 0;
        return {fitted.at(at_), medianOverMean * scatter * std::sqrt(1 / static_cast<double>(count) + carried), count};
    }

    const std::vector<Reading>& readings_;
    const Side& side_;
    std::int64_t interval_, zero_;
    double at_; // hours from the near reading
};

} // namespace

ToldWeight weightToldBy(const std::vector<Reading>& readings, const Side& side, std::int64_t moment,
                        std::int64_t interval, Carry carry) {
    return SideReader(readings, side, moment, interval, carry).told();
}

} // namespace winterlarder::scale
