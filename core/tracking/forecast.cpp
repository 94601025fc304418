// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/forecast.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace winterlarder::tracking {

namespace {

constexpr std::array tenths{0.1, 0.5, 0.9};

// Walks all particles from day to day.
class Walk {
public:
    Walk(const HivePaths& hivePaths, const Belief& what)
        : paths(hivePaths), belief(what), level(what.stores()), change(what.changes.begin()) {}

    //! Stores of every particle at the end of a day as if none could starve. Days must be asked in order.
    const std::vector<double>& endOf(SeasonDay day) {
        for (; change != belief.changes.end() && change->day <= day; ++change)
            for (std::size_t p = 0; p < level.size(); ++p) level[p] += change->kg[p];
        stores.resize(level.size());
        const auto nodes = static_cast<std::size_t>(belief.nodes);
        for (std::size_t i = 0; i < paths.winters(); ++i) {
            const double loss = static_cast<double>(paths.lossUntil(day, i));
            for (std::size_t p = i * nodes; p < (i + 1) * nodes; ++p) stores[p] = level[p] - loss;
        }
        return stores;
    }

private:
    const HivePaths& paths;
    const Belief& belief;
    std::vector<double> level, stores;
    std::vector<Belief::Change>::const_iterator change;
};

Share shareOf(double p, double effective) {
    p = std::clamp(p, 0.0, 1.0);
    return {p, effective > 0 ? std::sqrt(p * (1 - p) / effective) : 0};
}

// The first days on which something happens, by weight.
class FirstDays {
public:
    explicit FirstDays(SeasonDay first) : first_(first) {}
    void add(SeasonDay day, double weight) {
        const auto at = static_cast<std::size_t>(std::max(0, day - first_));
        if (byDay_.size() <= at) byDay_.resize(at + 1, 0.0);
        byDay_[at] += weight;
    }
    double share() const {
        double sum = 0;
        for (double each : byDay_) sum += each;
        return sum;
    }
    std::optional<SeasonDay> quantile(double q) const {
        double sum = 0;
        for (std::size_t i = 0; i < byDay_.size(); ++i) {
            sum += byDay_[i];
            if (sum >= q - 1e-12) return first_ + static_cast<int>(i);
        }
        return std::nullopt;
    }
    DaySpread spread() const { return {quantile(tenths[0]), quantile(tenths[1]), quantile(tenths[2])}; }

private:
    SeasonDay first_;
    std::vector<double> byDay_;
};

// Gathers a forecast on one walk.
class Gathering {
public:
    Gathering(const FollowQuestion& question, const Tracked& tracked, SeasonDay from)
        : q(question), paths(*tracked.paths), belief(tracked.belief), from_(from), out(belief.particles(), 0),
          low(belief.particles(), 0), reserveDays(from), outDays(question.decided) {}

    Forecast gather() {
        Walk walk(paths, belief);
        if (from_ <= q.decided) startOf(belief.stores(), {});
        for (SeasonDay day = q.decided; day <= paths.last(); day = day + 1) {
            const auto& stores = walk.endOf(day);
            takeDay(day, stores);
            if (day + 1 == from_) startOf(stores, std::optional(day));
        }
        finish();
        return std::move(forecast);
    }

private:
    // Where things stand when the day begins that is asked from.
    void startOf(const std::vector<double>& stores, std::optional<SeasonDay> yesterday) {
        WeightedKilograms losses;
        kilograms_.clear();
        double gone = 0;
        for (std::size_t p = 0; p < stores.size(); ++p) {
            const double w = belief.weight[p];
            if (w <= 0) continue;
            kilograms_.add(out[p] ? 0 : std::max(0.0, stores[p]), w);
            const float lost = yesterday ? paths.lossUntil(*yesterday, belief.winterOf(p)) : 0.0F;
            losses.add(lossOffset + static_cast<double>(lost), w);
            gone += out[p] ? w : 0;
            if (out[p] || stores[p] < q.reserve.value()) touch(p, from_, w);
        }
        forecast.today = kilograms_.spread();
        const auto s = losses.spread();
        const Mass offset = kilograms(lossOffset);
        forecast.lost = {s.low - offset, s.typical - offset, s.high - offset};
        forecast.out = shareOf(gone, belief.effectiveWinters);
    }

    void touch(std::size_t p, SeasonDay day, double w) {
        if (low[p]) return;
        low[p] = 1;
        reserveDays.add(day, w);
    }

    void takeDay(SeasonDay day, const std::vector<double>& stores) {
        kilograms_.clear();
        double gone = 0;
        for (std::size_t p = 0; p < stores.size(); ++p) {
            const double w = belief.weight[p];
            if (w <= 0) continue;
            if (!out[p] && stores[p] <= 0) {
                out[p] = 1;
                outDays.add(day, w);
            }
            const double left = out[p] ? 0 : stores[p];
            kilograms_.add(left, w);
            gone += out[p] ? w : 0;
            if (day >= from_ && left < q.reserve.value()) touch(p, day, w);
            if (day == eveOfForage(belief.winterOf(p))) atForage.add(left, w);
        }
        forecast.bands.push_back({day, kilograms_.spread(), std::min(1.0, gone)});
    }

    // Forage that came before the decision counts on that day: every winter has one such day.
    SeasonDay eveOfForage(std::size_t winter) const {
        return std::clamp(SeasonDay{paths.forage(winter) - 1}, q.decided, paths.last());
    }

    void finish() {
        forecast.runOut = shareOf(outDays.share(), belief.effectiveWinters);
        forecast.touchReserve = shareOf(reserveDays.share(), belief.effectiveWinters);
        forecast.reserveBy = reserveDays.spread();
        forecast.outBy = outDays.spread();
        forecast.atForage = atForage.spread();
        FirstDays forage(firstSeasonDay);
        for (std::size_t p = 0; p < belief.particles(); ++p)
            forage.add({paths.forage(belief.winterOf(p))}, belief.weight[p]);
        forecast.forage = {*forage.quantile(tenths[0]), *forage.quantile(tenths[1]),
                           *forage.quantile(tenths[2] - 1e-9)};
    }

    static constexpr double lossOffset = 60; // autumn flow may make a loss a gain; the grid of kilograms begins at 0
    const FollowQuestion& q;
    const HivePaths& paths;
    const Belief& belief;
    SeasonDay from_;
    std::vector<char> out, low;
    FirstDays reserveDays, outDays;
    WeightedKilograms kilograms_, atForage;
    Forecast forecast;
};

} // namespace

Forecast forecastOf(const FollowQuestion& question, const Tracked& tracked, SeasonDay from) {
    return Gathering(question, tracked, from).gather();
}

std::vector<Outlook> outlooks(const FollowQuestion& question, const Tracked& tracked,
                              const std::vector<SeasonDay>& days) {
    const auto& belief = tracked.belief;
    const auto& paths = *tracked.paths;
    std::vector<Outlook> result;
    if (days.empty()) return result;
    std::vector<double> level = belief.stores();
    for (const auto& change : belief.changes)
        for (std::size_t p = 0; p < level.size(); ++p) level[p] += change.kg[p];
    const auto at = [&](SeasonDay endOf, std::size_t p) {
        return static_cast<float>(level[p] - static_cast<double>(paths.lossUntil(endOf, belief.winterOf(p))));
    };
    std::vector<float> least(level.size(), std::numeric_limits<float>::max());
    auto asked = days.rbegin();
    for (SeasonDay day = paths.last(); day >= question.today && asked != days.rend(); day = day - 1) {
        for (std::size_t p = 0; p < level.size(); ++p) least[p] = std::min(least[p], at(day, p));
        for (; asked != days.rend() && *asked >= day; ++asked) {
            Outlook outlook{*asked, std::vector<float>(level.size()), least};
            for (std::size_t p = 0; p < level.size(); ++p) outlook.stores[p] = at(day - 1, p);
            result.push_back(std::move(outlook));
        }
    }
    std::reverse(result.begin(), result.end());
    return result;
}

} // namespace winterlarder::tracking
