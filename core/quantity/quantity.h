// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Only the families the field needs, and no streams, keep the units library quick to compile.
#define UNIT_LIB_DISABLE_IOSTREAM
#define DISABLE_PREDEFINED_UNITS
#define ENABLE_PREDEFINED_LENGTH_UNITS
#define ENABLE_PREDEFINED_AREA_UNITS
#define ENABLE_PREDEFINED_VOLUME_UNITS
#define ENABLE_PREDEFINED_MASS_UNITS
#define ENABLE_PREDEFINED_TIME_UNITS
#define ENABLE_PREDEFINED_POWER_UNITS
#define ENABLE_PREDEFINED_TEMPERATURE_UNITS
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wshadow"
#include <units.h>
#pragma GCC diagnostic pop

namespace winterlarder {

// One type per quantity. Each alias fixes the unit a number has when it enters or leaves through .value(); other units
// of the same dimension convert by themselves (Mass m = units::mass::gram_t(250)). Dimensions never mix.
using Mass = units::mass::kilogram_t;                                  //!< kg
using Length = units::length::millimeter_t;                            //!< mm
using Volume = units::volume::liter_t;                                 //!< L
using Power = units::power::watt_t;                                    //!< W
using Temperature = units::temperature::celsius_t;                     //!< a reading on the scale [degC]
using TemperatureDifference = units::temperature::kelvin_t;            //!< a difference or a standard deviation [K]
using Hours = units::time::hour_t;                                     //!< h
using Days = units::time::day_t;                                       //!< d
using Area = units::unit_t<units::squared<units::length::decimeters>>; //!< dm2: what a comb is measured in

constexpr Mass kilograms(double value) { return Mass(value); }
constexpr Mass grams(double value) { return Mass(value / 1000.0); }
constexpr Length millimetres(double value) { return Length(value); }
constexpr Volume litres(double value) { return Volume(value); }
constexpr Power watts(double value) { return Power(value); }
constexpr Temperature celsius(double value) { return Temperature(value); }
constexpr TemperatureDifference kelvins(double value) { return TemperatureDifference(value); }
constexpr Area squareDecimetres(double value) { return Area(value); }

//! Number of adult bees or of brood cells: a count that may be fractional (a mean), never negative in a valid record.
struct BeeCount {
    double count = 0;
    auto operator<=>(const BeeCount&) const = default;
};

//! A share or probability, 0..1, with the standard error it was estimated to (0 = exact).
struct Share {
    double share = 0;
    double standardError = 0;
    Share others() const { return {1 - share, standardError}; } //!< of the cases in which it is not so
    bool operator==(const Share&) const = default;
};

//! A quantity we only know roughly: 10th, 50th and 90th percentile.
template <class Q> struct Spread {
    Q low{};
    Q typical{};
    Q high{};
    bool operator==(const Spread&) const = default;
};

} // namespace winterlarder
