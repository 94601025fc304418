// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/track.h"

#include <optional>
#include <vector>

namespace winterlarder::tracking {

//! Stores at the end of a day; a starved colony has 0.
struct DayBand {
    SeasonDay day;
    Spread<Mass> stores;
    double out = 0; //!< share that has run out by then
};

//! The day by which something has happened in a tenth, half and nine tenths of what is believed; nothing: not in so many.
struct DaySpread {
    std::optional<SeasonDay> low, typical, high;
};

//! What one belief says of the winter: what has been (from the decision) and what is to come (from `from` on).
struct Forecast {
    std::vector<DayBand> bands; //!< from the decision's day to the end of the run
    Spread<Mass> today;         //!< stores at the start of `from`
    Spread<Mass> lost;          //!< net loss from the decision to then
    Share out;                  //!< has run out before `from`
    Share runOut;               //!< runs out in this run, those that have included
    Share touchReserve;         //!< is below the reserve on some day from `from` on
    Spread<Mass> atForage;      //!< at the last day before each winter's first forage, not before the decision
    DaySpread reserveBy, outBy; //!< first day from `from` on below the reserve; first day with nothing
    Spread<SeasonDay> forage;
};

//! Standard errors are sqrt(p (1 - p) / effective winters). Tested: tests/tracking/forecast_test.cpp against the larder.
Forecast forecastOf(const FollowQuestion& question, const Tracked& tracked, SeasonDay from);

//! Where every particle stands on a day, and the least it will have from there to the end of the run, if nothing is done; starved
//! ones go on below 0, so that what would have been missing can be read off.
struct Outlook {
    SeasonDay day;
    std::vector<float> stores, least; //!< [particle], kg
};
//! Outlooks from several days, ascending, none before the question's today.
std::vector<Outlook> outlooks(const FollowQuestion& question, const Tracked& tracked,
                              const std::vector<SeasonDay>& days);

} // namespace winterlarder::tracking
