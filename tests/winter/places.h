// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/season.h"
#include "climate/site.h"
#include "support/require.h"
#include "support/shipped.h"
#include "winter/demand.h"
#include "winter/larder.h"

#include <gtest/gtest.h>
#include <string>

namespace winterlarder::winter {

inline climate::ClimateCurve curveOf(const std::string& station) {
    const Station* found = shipped().station(station);
    if (!found) throw std::runtime_error("no station " + station);
    return climate::siteAtStation(*found, std::nullopt).value().curve;
}

//! A colony at a place by the season rules, from a season day on.
inline WinterQuestion questionAt(const climate::ClimateCurve& curve, double bees, int start) {
    WinterQuestion question{{start}, climate::deriveSeason(curve, constants()), curve};
    question.bees = {bees};
    question.colonyStream = colonyStream("test");
    return question;
}
inline WinterQuestion questionAt(const std::string& station, double bees, int start) {
    return questionAt(curveOf(station), bees, start);
}

//! Season day of a month and day: "10-01" in the north is -92.
inline int seasonDayOf(const std::string& monthDay, Hemisphere hemisphere) {
    const Date date = *Date::parse("2025-" + monthDay);
    return Winter::containing(date, hemisphere).seasonDay(date).w;
}

//! Food eaten from the start of one day to the end of another in the noiseless winter [kg].
inline double usedBetween(const DemandEnsemble& run, int first, int last) {
    double grams = 0;
    for (int day = first; day <= last; ++day) grams += run.means({day}).useG;
    return grams / 1000;
}

} // namespace winterlarder::winter
