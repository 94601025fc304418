// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "climate/climate_curve.h"
#include "climate/season.h"
#include "quantity/quantity.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace winterlarder::winter {

//! What is taken as given about one winter of one colony before any dice are thrown. Nothing in it speaks of stores:
//! how much a colony eats does not depend on how much it has.
struct WinterQuestion {
    SeasonDay start;                 //!< first simulated day, -153..180
    climate::SeasonDates season;     //!< derivable() must hold
    climate::ClimateCurve curve;
    double shellFactor = 1;          //!< h: 1 = single-walled timber
    double raceFactor = 1;           //!< 0.9 native dark .. 1.1 Italian
    BeeCount bees;                   //!< adult workers on the start day, > 0
    double beesLogSd = 0.15;         //!< SD of the logarithm of that count
    std::optional<BeeCount> brood;   //!< cells of all ages on the start day; nothing = not known (never zero)
    std::uint64_t colonyStream = 0;  //!< the colony's own random stream (see colonyStream())
    TemperatureDifference offset{0}; //!< fixed season offset added in central runs (tests and hand checks)
};

//! How many winters are drawn and from which seed: same pair, same numbers, on any number of threads.
struct Sampling {
    std::uint64_t seed;
    int winters;
};

//! Random stream of a colony: FNV-1a 64 of its UTF-8 name; a nameless colony uses its position in the batch, from 0.
//! Colony streams and the weather of the site are drawn from separate ranges, so no name or position meets the weather.
std::uint64_t colonyStream(std::string_view name);

} // namespace winterlarder::winter
