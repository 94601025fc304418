// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "climate/climate_curve.h"
#include "climate/season.h"
#include "quantity/quantity.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace winterlarder::winter {

//! Mean of one day that is past, measured by the keeper.
struct MeasuredDay {
    SeasonDay day;
    double meanC = 0;
};

//! What was learned from past winters of these bees: lasting multipliers on the food eaten and on the death of bees, log-normal
//! round their medians, of short-lived and long-lived bees alike. The yearly spreads of heat, brood and death give up the
//! variance that lasts (yearlySd()).
struct LearnedMultipliers {
    double use = 1, useLogSd = 0;
    double death = 1, deathLogSd = 0;
    bool operator==(const LearnedMultipliers&) const = default;
};

//! What is taken as given about one winter of one colony before any dice are thrown. Nothing in it speaks of stores:
//! how much a colony eats does not depend on how much it has.
struct WinterQuestion {
    SeasonDay start;             //!< first simulated day, -153..180
    climate::SeasonDates season; //!< derivable() must hold
    climate::ClimateCurve curve;
    double shellFactor = 1;        //!< h: 1 = single-walled timber
    double raceFactor = 1;         //!< 0.9 native dark .. 1.1 Italian
    BeeCount bees;                 //!< adult workers on the day they were seen, > 0
    double beesLogSd = 0.15;       //!< SD of the logarithm of that count
    std::optional<BeeCount> brood; //!< cells of all ages seen that day; nothing = not known (never zero)
    //! Day on which bees and brood were seen; nothing: the start day. Where it comes later, the run begins with as many
    //! bees as one noiseless run needs to have the seen ones that day, and takes the brood in then.
    std::optional<SeasonDay> seenOn;
    std::uint64_t colonyStream = 0;  //!< the colony's own random stream (see colonyStream())
    TemperatureDifference offset{0}; //!< fixed season offset added in central runs (tests and hand checks)
    //! The weather so far, ascending, one entry a day, gaps allowed. Those days are as measured in every winter, the days between
    //! and after are drawn on from them, and the season's offset is drawn as far as they leave it open. Drawn winters only.
    std::vector<MeasuredDay> weatherSoFar;
    std::optional<LearnedMultipliers> learned; //!< nothing: as if no winter had been before, to the last digit
    bool keepBrood = false;                    //!< the brood of every winter is kept too; a hive's weight needs it
};

//! How many winters are drawn and from which seed: same pair, same numbers, on any number of threads.
struct Sampling {
    std::uint64_t seed;
    int winters;
};

//! Yearly part of a spread once a lasting part is known apart: sqrt(max(0, all^2 - lasting^2)).
double yearlySd(double all, double lasting);

//! Random stream of a colony: FNV-1a 64 of its UTF-8 name; a nameless colony uses its position in the batch, from 0.
//! Colony streams and the weather of the site are drawn from separate ranges, so no name or position meets the weather.
std::uint64_t colonyStream(std::string_view name);

} // namespace winterlarder::winter
