// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/portions.h"

#include "feeding/syrup.h"

#include <algorithm>

namespace winterlarder::feeding {

FondantVisits fondantVisits(const DecisionConstants& rules, bool nucleus, Mass step) {
    const Mass most = stepsDown(kilograms(nucleus ? rules.fondantNucleus : rules.fondantVisit), step);
    const Mass least = stepsUp(kilograms(nucleus ? rules.fondantNucleusLeast : rules.fondantLeast), step);
    return {std::min(least, most), most, step};
}

Mass fondantFor(Mass stores, const FondantVisits& visits) {
    return std::clamp(stepsUp(stores / storesPerKgFondant, visits.step), visits.least, visits.most);
}

Mass boardFor(Mass stores, const DecisionConstants& rules, Mass step) {
    return std::min(stepsUp(stores / storesPerKgFondant, step), stepsDown(kilograms(rules.fondantBoard), step));
}

Mass sugarFor(Mass stores, double gives, std::optional<Mass> room, Mass step) {
    const Mass wanted = stepsUp(stores / gives, step);
    return room ? std::min(wanted, stepsDown(*room / gives, step)) : wanted;
}

SeasonDay firstVisit(SeasonDay today, bool fedToday, int visitEveryDays) {
    return fedToday ? today + std::max(1, visitEveryDays) : today;
}

FeedingPlan smallPortions(const FeedingQuestion& question, Mass sugar, Mass step, const PortionDays& days,
                          const DecisionConstants& rules) {
    return planSmallPortions(question, sugar, step, days.last(), litres(rules.lateLitres), litres(rules.lateUptake));
}

bool portionTaken(const FeedingQuestion& question, SeasonDay day, const PortionDays& days,
                  const DecisionConstants& rules) {
    return day <= days.last() && portionTaken(question, day, litres(rules.lateUptake));
}

SeasonDay fondantFrom(SeasonDay today, std::optional<SeasonDay> laidOn, bool upToLate, const DecisionConstants& rules) {
    const SeasonDay after = laidOn.value_or(today) + static_cast<int>(rules.fondantLastsDays);
    return upToLate ? std::max(SeasonDay{static_cast<int>(rules.fondantFromDay)}, after) : after;
}

} // namespace winterlarder::feeding
