// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/phases.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

int wholeDays(double days) { return static_cast<int>(days); }

SeasonDay dayOr(const std::optional<climate::SeasonDate>& date, SeasonDay other) { return date ? date->day : other; }

SeasonDay closingEnds(const climate::SeasonDates& season, bool dearth, const DecisionConstants& rules) {
    const SeasonDay lastIncome = dayOr(season.lastIncome, dayOr(season.syrupDeadline, climate::solstice));
    if (dearth) return lastIncome;
    return std::min(season.syrupDeadline->day, lastIncome + wholeDays(rules.incomePastDays));
}

} // namespace

PhaseDays phaseDays(const climate::SeasonDates& season, const DecisionConstants& rules) {
    PhaseDays days{};
    days.portionsInWinter = season.winterClass == climate::WinterClass::Dearth || !season.syrupDeadline;
    days.forage = season.forage->day;
    days.winter = season.buildup->day;
    days.closing = std::min(closingEnds(season, days.portionsInWinter, rules), days.winter);
    days.summer =
        std::min(dayOr(season.feedAdvisedBy, days.closing), days.closing) - wholeDays(rules.closingBeforeFeedBy);
    days.late = days.closing;
    if (!days.portionsInWinter)
        days.late =
            std::clamp(dayOr(season.syrupRefused, days.closing + wholeDays(rules.lateDays)), days.closing, days.winter);
    days.quietFrom = days.forage - wholeDays(rules.quietBeforeForage);
    return days;
}

Phase phaseOn(const PhaseDays& days, SeasonDay day) {
    if (day <= days.summer) return Phase::Summer;
    if (day <= days.closing) return Phase::Closing;
    if (day <= days.late) return Phase::Late;
    return day <= days.winter ? Phase::Winter : Phase::Spring;
}

SeasonDay winterFrom(const PhaseDays& days, SeasonDay asOf) { return std::max(days.closing, asOf); }

} // namespace winterlarder::advice
