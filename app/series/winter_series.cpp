// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/winter_series.h"

#include "numerics/normal.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <span>

namespace winterlarder::desk {

namespace {

constexpr double goldenShare = 0.6180339887498949; // 1 / golden ratio

// Net loss of every winter to the end of one day, autumn flow taken off [kg]; 0 where the day is not simulated.
class LossTo {
public:
    LossTo(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow, SeasonDay day)
        : strength_(winter::beyondTrickle(flow, ensemble)),
          room_(flow.room ? flow.room->value() : std::numeric_limits<double>::infinity()) {
        if (ensemble.covers(day)) net_ = ensemble.netLoss(day);
        const SeasonDay until = flow.lastDay ? std::min(day, *flow.lastDay) : day;
        if (strength_ > 0 && ensemble.covers(day) && ensemble.covers(until)) income_ = ensemble.autumnIncome(until);
    }
    double operator[](std::size_t winter) const {
        if (net_.empty()) return 0;
        const double loss = static_cast<double>(net_[winter]);
        return income_.empty() ? loss : loss - std::min(strength_ * static_cast<double>(income_[winter]), room_);
    }

private:
    double strength_, room_;
    std::span<const float> net_, income_;
};

double changedBy(const std::vector<winter::StoresStep>& steps, SeasonDay day) {
    double change = 0;
    for (const auto& step : steps)
        if (step.day <= day) change += step.change.value();
    return change;
}

double storesLeft(const PairedWinter& pair, double changed, const LossTo& before, const LossTo& now) {
    const auto winter = static_cast<std::size_t>(pair.winter);
    return std::max(0.0, pair.startKg + changed - (now[winter] - before[winter]));
}

// What an option changes and when; combs given today are a step of today.
std::vector<winter::StoresStep> stepsOf(const advice::Option& option, SeasonDay today) {
    if (!option.steps.empty()) return option.steps;
    if (option.kind == advice::OptionKind::MoveCombs) return {{today, option.amount}};
    return {};
}

std::optional<SeasonDay> touchCountsFrom(const advice::Option& option) {
    if (option.kind != advice::OptionKind::Feed || option.steps.empty()) return std::nullopt;
    SeasonDay latest = option.steps.front().day;
    for (const auto& step : option.steps) latest = std::max(latest, step.day);
    return latest + 1;
}

std::vector<double> evenQuantiles(std::vector<double> values, int count) {
    std::vector<double> picked;
    if (values.empty()) return picked;
    std::sort(values.begin(), values.end());
    for (int k = 0; k < count; ++k) {
        const double position = (k + 0.5) / count * static_cast<double>(values.size()) - 0.5;
        const double kept = std::clamp(position, 0.0, static_cast<double>(values.size() - 1));
        const auto below = static_cast<std::size_t>(kept);
        const auto above = std::min(below + 1, values.size() - 1);
        picked.push_back(std::lerp(values[below], values[above], kept - static_cast<double>(below)));
    }
    return picked;
}

// Each percentile is looked for where the middle has left it.
DayReading readingOf(std::vector<double>& stores, double reserveKg) {
    const auto below = std::count_if(stores.begin(), stores.end(), [reserveKg](double kg) { return kg < reserveKg; });
    const auto at = [&stores](double share) {
        return stores.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(stores.size() - 1));
    };
    const auto low = at(0.1), middle = at(0.5), high = at(0.9);
    std::nth_element(stores.begin(), middle, stores.end());
    if (low < middle) std::nth_element(stores.begin(), low, middle);
    if (high > middle) std::nth_element(middle + 1, high, stores.end());
    return {*low, *middle, *high, static_cast<double>(below) / static_cast<double>(stores.size())};
}

void addMark(std::vector<SeasonMark>& marks, SeasonMarkKind kind, const std::optional<climate::SeasonDate>& date) {
    if (date) marks.push_back({kind, date->day, date->exact ? 0.0 : date->sdDays});
}

std::vector<SeasonMark> marksOf(const climate::SeasonDates& season, SeasonDay first) {
    std::vector<SeasonMark> marks;
    addMark(marks, SeasonMarkKind::LastIncome, season.lastIncome);
    addMark(marks, SeasonMarkKind::SyrupDeadline, season.syrupDeadline);
    addMark(marks, SeasonMarkKind::BroodStop, season.broodStop);
    addMark(marks, SeasonMarkKind::BroodRestart, season.broodRestart);
    addMark(marks, SeasonMarkKind::Buildup, season.buildup);
    addMark(marks, SeasonMarkKind::Forage, season.forage);
    std::erase_if(marks, [first](const SeasonMark& mark) { return mark.day < first; });
    std::stable_sort(marks.begin(), marks.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return marks;
}

std::vector<EvidencePoint> evidenceOf(const advice::ColonyQuestion& question, const advice::Advice& advice) {
    std::vector<EvidencePoint> points;
    if (!advice.estimate) return points;
    for (const auto& share : advice.estimate->shares)
        if (question.winter.contains(share.evidence.date))
            points.push_back({share.evidence.date, question.winter.nearestSeasonDay(share.evidence.date), share.says});
    return points;
}

} // namespace

std::vector<PairedWinter> pairWithStores(int winters, Mass mean, Mass sd) {
    std::vector<PairedWinter> pairs;
    pairs.reserve(static_cast<std::size_t>(std::max(0, winters)));
    for (int i = 0; i < winters; ++i) {
        const double whole = 0.5 + static_cast<double>(i) * goldenShare;
        const double share = std::clamp(whole - std::floor(whole), 1e-6, 1 - 1e-6);
        pairs.push_back({i, std::max(0.0, mean.value() + sd.value() * numerics::inverseNormal(share))});
    }
    return pairs;
}

std::vector<PairedWinter> standFor(const std::vector<PairedWinter>& pairs, const std::vector<double>& largestLoss,
                                   int count) {
    require(pairs.size() == largestLoss.size(), "{} winters but {} losses", pairs.size(), largestLoss.size());
    std::vector<PairedWinter> ordered = pairs;
    const auto left = [&largestLoss](const PairedWinter& pair) {
        return pair.startKg - largestLoss[static_cast<std::size_t>(pair.winter)];
    };
    std::stable_sort(ordered.begin(), ordered.end(),
                     [&left](const auto& a, const auto& b) { return left(a) < left(b); });
    if (static_cast<int>(ordered.size()) <= count) return ordered;
    std::vector<PairedWinter> picked;
    for (int group = 0; group < count; ++group) {
        const double middle = (group + 0.5) / count * static_cast<double>(ordered.size());
        picked.push_back(ordered[static_cast<std::size_t>(middle)]);
    }
    return picked;
}

OptionLosses lossesUnder(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow,
                         const advice::Option& option, SeasonDay today) {
    const auto steps = stepsOf(option, today);
    auto all = winter::lossesFrom(ensemble, today, flow, steps);
    const auto counted = touchCountsFrom(option);
    auto touching = counted ? winter::lossesFrom(ensemble, today, flow, steps, counted).largest : all.largest;
    return {std::move(all), std::move(touching)};
}

OptionPicture pictureOption(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow,
                            const OptionLosses& losses, const std::vector<PairedWinter>& everyPair,
                            const std::vector<PairedWinter>& drawn, const advice::Option& option, SeasonDay first,
                            SeasonDay last, double reserveKg, Readings readings) {
    OptionPicture picture;
    picture.kind = option.kind;
    const auto steps = stepsOf(option, first);
    const LossTo before(ensemble, flow, first - 1);
    for (const auto& pair : drawn) {
        const auto column = static_cast<std::size_t>(pair.winter);
        picture.lines.push_back({pair.winter,
                                 {},
                                 pair.startKg < losses.touching[column] + reserveKg,
                                 pair.startKg <= losses.all.largest[column]});
    }
    for (SeasonDay day = first; day <= last; day = day + 1) {
        const LossTo now(ensemble, flow, day);
        const double changed = changedBy(steps, day);
        for (std::size_t i = 0; i < drawn.size(); ++i)
            if (auto& left = picture.lines[i].kilograms; left.empty() || left.back() > 0)
                left.push_back(storesLeft(drawn[i], changed, before, now));
    }
    std::vector<double> stores(everyPair.size());
    for (std::size_t i = 0; i < everyPair.size(); ++i)
        stores[i] = everyPair[i].startKg <= losses.all.largest[i]
                        ? 0
                        : std::max(0.0, everyPair[i].startKg - losses.all.atForage[i]);
    picture.dots = evenQuantiles(stores, drawnDots);
    if (readings == Readings::None) return picture;
    std::vector<char> starved(everyPair.size(), 0);
    for (SeasonDay day = first; day <= last; day = day + 1) {
        const LossTo now(ensemble, flow, day);
        const double changed = changedBy(steps, day);
        for (std::size_t i = 0; i < everyPair.size(); ++i) {
            stores[i] = starved[i] ? 0 : storesLeft(everyPair[i], changed, before, now);
            starved[i] = stores[i] <= 0;
        }
        picture.readings.push_back(readingOf(stores, reserveKg));
    }
    return picture;
}

DailyUse splitUse(const winter::DayMeans& means) {
    const double power = means.adultPowerW + means.broodPowerW;
    const double warmth = std::max(0.0, means.useG - means.broodFoodG);
    const double broodShare = power > 0 ? means.broodPowerW / power : 0;
    return {warmth * (1 - broodShare), warmth * broodShare, means.broodFoodG, means.temperatureC, means.incomeG};
}

std::vector<PlacedDot> stackDots(const std::vector<double>& ascending, double rowHeight) {
    std::vector<PlacedDot> dots;
    std::size_t from = 0;
    while (from < ascending.size()) {
        std::size_t to = from;
        while (to < ascending.size() && ascending[to] < ascending[from] + rowHeight) ++to;
        if (to == from) to = from + 1;
        const double sum = std::accumulate(ascending.begin() + static_cast<std::ptrdiff_t>(from),
                                           ascending.begin() + static_cast<std::ptrdiff_t>(to), 0.0);
        for (std::size_t i = from; i < to; ++i)
            dots.push_back({ascending[i], static_cast<int>(i - from), sum / static_cast<double>(to - from)});
        from = to;
    }
    return dots;
}

WinterPicture pictureOf(const advice::ColonyQuestion& question, const advice::Answer& answer) {
    WinterPicture picture;
    const auto& ensemble = answer.workings.ensemble;
    if (!ensemble || !answer.advice.estimate || ensemble->winters() == 0) return picture;
    picture.winter = question.winter;
    picture.first = question.asOf;
    picture.last = std::min(ensemble->lastDay(), ensemble->medianForage() + daysDrawnPastForage);
    picture.reserveKg = answer.advice.reserve.value();
    picture.storesToday = answer.advice.estimate->spread;
    picture.winters = ensemble->winters();
    for (SeasonDay day = picture.first; day <= picture.last; day = day + 1)
        picture.daily.push_back(splitUse(ensemble->means(day)));
    picture.marks = marksOf(answer.advice.season, picture.first);
    picture.evidence = evidenceOf(question, answer.advice);

    const auto pairs = pairWithStores(ensemble->winters(), answer.advice.estimate->mean, answer.advice.storesSd);
    const auto losses = winter::lossesFrom(*ensemble, question.asOf, answer.workings.flow);
    const auto drawn = standFor(pairs, losses.largest, drawnWinters);
    for (const auto& option : answer.advice.options)
        picture.options.push_back(pictureOption(*ensemble, answer.workings.flow,
                                                lossesUnder(*ensemble, answer.workings.flow, option, picture.first),
                                                pairs, drawn, option, picture.first, picture.last, picture.reserveKg));
    return picture;
}

} // namespace winterlarder::desk
