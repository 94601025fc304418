// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/units_of_place.h"

namespace winterlarder::answer {

UnitSystem unitsOf(const advice::ColonyQuestion& question) {
    if (question.answers.units) return *question.answers.units;
    return question.place.country == "US" ? UnitSystem::UnitedStates : UnitSystem::Metric;
}

feeding::Steps stepsFor(UnitSystem units) {
    return units == UnitSystem::UnitedStates ? feeding::poundSteps : feeding::Steps{};
}

} // namespace winterlarder::answer
