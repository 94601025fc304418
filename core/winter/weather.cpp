// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/weather.h"

#include "numerics/normal.h"
#include "winter/draws.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder::winter {

namespace {

// The normals a block's chain is fed with, one day after the other; two days come from one call of the generator.
class News {
public:
    News(std::uint64_t seed, std::uint32_t firstWinter) : seed_(seed), firstWinter_(firstWinter) {}

    Lanes first() const {
        Lanes z{};
        for (std::size_t i = 0; i < laneCount; ++i)
            z[i] = uniform(seed_, Luck::Weather, 0, winterOf(i), firstWeatherIndex);
        numerics::inverseNormals(z.all());
        return z;
    }

    const Lanes& of(int day) {
        const auto index = dailyWeatherIndex + static_cast<std::uint32_t>(day - firstSeasonDay.w);
        if (index % 2 == 0) draw(index);
        return pair_[index % 2];
    }

private:
    std::uint32_t winterOf(std::size_t lane) const { return firstWinter_ + static_cast<std::uint32_t>(lane); }
    void draw(std::uint32_t index) {
        for (std::size_t i = 0; i < laneCount; ++i) {
            const auto two = uniformPair(seed_, Luck::Weather, 0, winterOf(i), index);
            pair_[0][i] = two[0];
            pair_[1][i] = two[1];
        }
        numerics::inverseNormals(pair_[0].all());
        numerics::inverseNormals(pair_[1].all());
    }

    std::uint64_t seed_;
    std::uint32_t firstWinter_;
    std::array<Lanes, 2> pair_{};
};

void drawFreely(const KernelSetting& s, News& news, BlockLuck& luck) {
    const double spread = std::sqrt(1 - s.persistence * s.persistence);
    Lanes z = news.first();
    for (int day = firstSeasonDay.w; day <= s.end; ++day) {
        if (day >= s.start) luck.weather[static_cast<std::size_t>(day - s.start)] = z;
        const Lanes& e = news.of(day);
        for (std::size_t i = 0; i < laneCount; ++i) z[i] = s.persistence * z[i] + spread * e[i];
    }
}

// Weights of one step of the chain towards a known later day: z = fromBefore x z(yesterday) + fromAfter x z(known) + sd x e.
struct BridgeStep {
    double fromBefore, fromAfter, sd;
};

BridgeStep bridgeStep(double r, int daysToKnown) {
    const double q = r * r, left = std::pow(q, daysToKnown), whole = 1 - left * q;
    return {r * (1 - left) / whole, std::pow(r, daysToKnown) * (1 - q) / whole,
            std::sqrt((1 - q) * (1 - left) / whole)};
}

// The first day has no yesterday.
BridgeStep firstStep(double r, int daysToKnown) {
    const double lag = std::pow(r, daysToKnown);
    return {0, lag, std::sqrt(1 - lag * lag)};
}

// Standardised anomaly of a measured day, per winter: their offsets differ.
Lanes measuredAnomaly(const WinterQuestion& q, const MeasuredDay& measured, const Lanes& offsetK) {
    const double normal = q.curve.normal(measured.day).value(), sd = q.curve.dailySd(measured.day).value();
    Lanes z{};
    for (std::size_t i = 0; i < laneCount; ++i) z[i] = (measured.meanC - normal - offsetK[i]) / sd;
    return z;
}

void drawRound(const WinterQuestion& q, const KernelSetting& s, News& news, BlockLuck& luck) {
    const double r = s.persistence;
    auto next = q.weatherSoFar.begin();
    Lanes z{}, e = news.first();
    for (int day = firstSeasonDay.w; day <= s.end; ++day) {
        while (next != q.weatherSoFar.end() && next->day.w < day) ++next;
        if (next != q.weatherSoFar.end() && next->day.w == day) {
            z = measuredAnomaly(q, *next, luck.offsetK);
        } else {
            const bool known = next != q.weatherSoFar.end();
            const bool first = day == firstSeasonDay.w;
            const Lanes after = known ? measuredAnomaly(q, *next, luck.offsetK) : Lanes{};
            const int ahead = known ? next->day.w - day : 0;
            BridgeStep step{r, 0, std::sqrt(1 - r * r)};
            if (first) step = {0, 0, 1};
            if (known) step = first ? firstStep(r, ahead) : bridgeStep(r, ahead);
            for (std::size_t i = 0; i < laneCount; ++i)
                z[i] = step.fromBefore * z[i] + step.fromAfter * after[i] + step.sd * e[i];
        }
        if (day >= s.start) luck.weather[static_cast<std::size_t>(day - s.start)] = z;
        e = news.of(day);
    }
}

} // namespace

SeasonOffset seasonOffset(const WinterQuestion& question) {
    const double so = question.curve.variability().seasonOffsetSd;
    if (question.weatherSoFar.empty() || so <= 0) return {0, so};
    const double r = question.curve.dailyPersistence();
    double precision = 1 / (so * so), pull = 0, lastAnomaly = 0, lastScale = 0;
    const MeasuredDay* last = nullptr;
    for (const auto& measured : question.weatherSoFar) {
        const double scale = 1 / question.curve.dailySd(measured.day).value();
        const double anomaly = (measured.meanC - question.curve.normal(measured.day).value()) * scale;
        const double lag = last ? std::pow(r, measured.day - last->day) : 0;
        const double step = anomaly - lag * lastAnomaly, perOffset = scale - lag * lastScale;
        const double variance = 1 - lag * lag;
        precision += perOffset * perOffset / variance;
        pull += perOffset * step / variance;
        lastAnomaly = anomaly;
        lastScale = scale;
        last = &measured;
    }
    return {pull / precision, std::sqrt(1 / precision)};
}

void drawWeather(const WinterQuestion& question, const KernelSetting& setting, std::uint64_t seed,
                 std::uint32_t firstWinter, BlockLuck& luck) {
    luck.weather.resize(static_cast<std::size_t>(setting.end - setting.start + 1));
    News news(seed, firstWinter);
    if (question.weatherSoFar.empty()) drawFreely(setting, news, luck);
    else drawRound(question, setting, news, luck);
}

} // namespace winterlarder::winter
