// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/season.h"

#include <algorithm>

namespace winterlarder::climate {

namespace {

constexpr SeasonDay lastFall{20};
constexpr SeasonDay firstRise{-100};
constexpr SeasonDay lastRise{165};

using MaybeDay = std::optional<SeasonDay>;

// First day in [-153, 20] on which the value lies under the threshold.
template <class ValueOn> MaybeDay fall(ValueOn valueOn, double threshold) {
    for (SeasonDay day = firstSeasonDay; day <= lastFall; day = day + 1)
        if (valueOn(day) < threshold) return day;
    return std::nullopt;
}

// The day after the last one in [-100, 165] on which the value lies under the threshold, at most 165.
template <class ValueOn> MaybeDay rise(ValueOn valueOn, double threshold) {
    for (SeasonDay day = lastRise; day >= firstRise; day = day - 1)
        if (valueOn(day) < threshold) return std::min(day + 1, lastRise);
    return std::nullopt;
}

MaybeDay earlier(MaybeDay a, MaybeDay b) { return a && b ? std::min(*a, *b) : (a ? a : b); }
MaybeDay later(MaybeDay a, MaybeDay b) { return a && b ? std::max(*a, *b) : (a ? a : b); }

std::optional<SeasonDate> dated(MaybeDay day, double sdDays) {
    if (!day) return std::nullopt;
    return SeasonDate{*day, sdDays, DateOrigin::Climate, false};
}

// The rules read off one curve.
class Rules {
    auto temperature() const {
        return [this](SeasonDay day) { return curve_.normal(day).value(); };
    }
    auto daylight() const {
        return [this](SeasonDay day) { return curve_.dayLength(day).value(); };
    }

public:
    Rules(const ClimateCurve& curve, const ModelConstants& constants) : curve_(curve), constants_(constants) {}

    MaybeDay lastIncome() const {
        return earlier(coolerThan(constants_.incomeEndTemperature), shorterThan(constants_.incomeEndDayLength));
    }
    MaybeDay broodStop() const {
        return earlier(coolerThan(constants_.broodStopTemperature), shorterThan(constants_.broodStopDayLength));
    }
    SeasonDay broodRestart() const { return {static_cast<int>(constants_.broodRestartDay)}; }
    bool broodless(MaybeDay stop) const {
        return curve_.coldestNormal().value() < constants_.broodlessBelow && stop &&
               broodRestart() - *stop >= constants_.broodlessGap;
    }
    MaybeDay syrupDeadline() const { return coolerThan(constants_.syrupTemperature); }
    MaybeDay syrupRefused() const { return coolerThan(constants_.syrupRefusedTemperature); }
    MaybeDay feedAdvisedBy() const { return earlier(coolerThan(constants_.feedByTemperature), syrupDeadline()); }
    MaybeDay buildup(SeasonDay restart) const {
        const MaybeDay found = later(warmFrom(constants_.buildupTemperature), longFrom(constants_.buildupDayLength));
        return found ? later(found, restart + daysFromRestartToBuildup) : found;
    }
    MaybeDay forage(MaybeDay buildupDay) const {
        const MaybeDay found = later(warmFrom(constants_.forageTemperature), longFrom(constants_.forageDayLength));
        return found && buildupDay ? later(found, *buildupDay + daysFromBuildupToForage) : found;
    }

private:
    MaybeDay coolerThan(double threshold) const { return fall(temperature(), threshold); }
    MaybeDay shorterThan(double threshold) const { return fall(daylight(), threshold); }
    MaybeDay warmFrom(double threshold) const { return rise(temperature(), threshold); }
    MaybeDay longFrom(double threshold) const { return rise(daylight(), threshold); }

    const ClimateCurve& curve_;
    const ModelConstants& constants_;
};

WinterClass classOf(const SeasonDates& dates, Temperature coldest, const ModelConstants& constants) {
    if (!dates.derivable()) return WinterClass::NotDerivable;
    if (!dates.broodless()) return WinterClass::Dearth;
    return coldest.value() < constants.confinedBelow ? WinterClass::Confined : WinterClass::Flying;
}

bool fromClimate(const SeasonDate& date) { return date.origin != DateOrigin::Case; }

} // namespace

bool restsOnSearchLimit(const SeasonDates& dates) {
    return (dates.lastIncome && fromClimate(*dates.lastIncome) && dates.lastIncome->day == firstSeasonDay) ||
           (dates.forage && fromClimate(*dates.forage) && dates.forage->day >= lastRise);
}

SeasonDates deriveSeason(const ClimateCurve& curve, const ModelConstants& constants) {
    const Rules rules(curve, constants);
    SeasonDates dates;
    const MaybeDay stop = rules.broodStop();
    const bool broodless = rules.broodless(stop);
    if (broodless) {
        dates.broodStop = dated(stop, constants.broodStopSd);
        dates.broodRestart = dated(rules.broodRestart(), constants.broodRestartSd);
    }
    const MaybeDay buildup = rules.buildup(broodless ? rules.broodRestart() : solstice);
    dates.lastIncome = dated(rules.lastIncome(), constants.incomeEndSd);
    dates.feedAdvisedBy = dated(rules.feedAdvisedBy(), constants.feedBySd);
    dates.syrupDeadline = dated(rules.syrupDeadline(), constants.syrupSd);
    dates.syrupRefused = dated(rules.syrupRefused(), constants.syrupRefusedSd);
    dates.buildup = dated(buildup, constants.buildupSd);
    dates.forage = dated(rules.forage(buildup), constants.forageSd);
    dates.winterClass = classOf(dates, curve.coldestNormal(), constants);
    dates.atEdgeOfRules = restsOnSearchLimit(dates);
    return dates;
}

} // namespace winterlarder::climate
