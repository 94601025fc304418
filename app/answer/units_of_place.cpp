// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/units_of_place.h"

namespace winterlarder::answer {

namespace {

std::string countryOf(const advice::ColonyQuestion& question) { return question.site ? question.site->country : std::string(); }

UnitSystem numbersOf(advice::UnitSystem units) {
    switch (units) {
    case advice::UnitSystem::Us: return UnitSystem::UnitedStates;
    case advice::UnitSystem::Imperial: return UnitSystem::Imperial;
    case advice::UnitSystem::Metric: break;
    }
    return UnitSystem::Metric;
}

} // namespace

advice::UnitSystem unitsOf(const advice::ColonyQuestion& question) {
    if (question.answers.units) return *question.answers.units;
    return countryOf(question) == "USA" ? advice::UnitSystem::Us : advice::UnitSystem::Metric;
}

feeding::Steps stepsFor(advice::UnitSystem units) {
    return units == advice::UnitSystem::Us ? feeding::poundSteps : feeding::Steps{};
}

text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question) {
    const std::string country = countryOf(question);
    style.numbers.system = numbersOf(unitsOf(question));
    style.poundsBeside = !question.answers.units && (country == "Canada" || country == "United Kingdom");
    return style;
}

} // namespace winterlarder::answer
