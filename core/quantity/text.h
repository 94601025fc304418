// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "support/outcome.h"

#include <string>
#include <string_view>

namespace winterlarder {

//! The units a person thinks in. Metric: kg, L, mm, dm2, degC. UnitedStates: lb, US gal, in, sq in, degF. Imperial: lb,
//! imp gal, in, sq in, degC (thermometers in such places read Celsius).
enum class UnitSystem { Metric, UnitedStates, Imperial };

//! How numbers look and which units they are shown in. Everything else of a locale stays out of the core.
struct NumberStyle {
    char decimalPoint = '.'; //!< '.' or ','
    UnitSystem system = UnitSystem::Metric;
    bool operator==(const NumberStyle&) const = default;
};

enum class MassUnit { Kilogram, Gram, Pound, Ounce };
enum class VolumeUnit { Litre, Millilitre, UsGallon, UsQuart, UsPint, ImperialGallon, ImperialQuart, ImperialPint };
enum class LengthUnit { Millimetre, Centimetre, Metre, Inch, Foot };
enum class TemperatureUnit { Celsius, Fahrenheit };
enum class AreaUnit { SquareDecimetre, SquareInch };

//! The unit of a system in which a quantity is shown.
MassUnit massUnit(UnitSystem system);
VolumeUnit volumeUnit(UnitSystem system);
LengthUnit lengthUnit(UnitSystem system);
TemperatureUnit temperatureUnit(UnitSystem system);
AreaUnit areaUnit(UnitSystem system);

//! "kg", "US gal", "in", "°C" ...: what stands after a number; parse...() reads every one of them.
std::string_view symbol(MassUnit unit);
std::string_view symbol(VolumeUnit unit);
std::string_view symbol(LengthUnit unit);
std::string_view symbol(TemperatureUnit unit);
std::string_view symbol(AreaUnit unit);

//! The number a quantity has in a unit, and back. Pound 0.45359237 kg, inch 25.4 mm, US gallon 231 cubic inches, imperial
//! gallon 4.54609 L: exact by definition (international yard and pound agreement 1959; UK Weights and Measures Act 1985).
double valueIn(Mass mass, MassUnit unit);
double valueIn(Volume volume, VolumeUnit unit);
double valueIn(Length length, LengthUnit unit);
double valueIn(Temperature temperature, TemperatureUnit unit);
double valueIn(Area area, AreaUnit unit);
Mass massOf(double value, MassUnit unit);
Volume volumeOf(double value, VolumeUnit unit);
Length lengthOf(double value, LengthUnit unit);
Temperature temperatureOf(double value, TemperatureUnit unit);
Area areaOf(double value, AreaUnit unit);

//! Reads what a person types: "1.5 kg", "1,5kg", "500 g", "3 lb 4 oz", "2 US gal", "1 imp gal", "12 in", "9 1/8 in",
//! "45 F", "7 °C", or a bare number in the unit given. Upper and lower case are the same, spaces (no-break ones too)
//! are free. "gal", "qt" and "pt" alone are those of the style's system, and a problem in a metric one.
//! A point and a comma both part the decimals; a number that could be read as thousands ("1,500" where the style's decimal
//! point is a point, "1.500" where it is a comma) is a problem, never a guess. Parts of one quantity go from the larger unit
//! to the smaller. Problems say what is wrong and what would be right: nothing there, no number, unknown unit, more than one
//! number, a negative amount, a temperature under absolute zero, a number too large. Exponents, "nan" and "inf" are no
//! numbers here. Tested: tests/quantity/text_test.cpp.
Outcome<Mass> parseMass(std::string_view text, MassUnit bareNumber, const NumberStyle& style = {});
Outcome<Volume> parseVolume(std::string_view text, VolumeUnit bareNumber, const NumberStyle& style = {});
Outcome<Length> parseLength(std::string_view text, LengthUnit bareNumber, const NumberStyle& style = {});
Outcome<Temperature> parseTemperature(std::string_view text, TemperatureUnit bareNumber, const NumberStyle& style = {});

//! "12.3 kg", "27,1 lb", "-3.0 °C": number in the style's unit with 0..9 decimals, a space, the unit. No digit groups;
//! never "-0". The quantity must be finite (ContractViolation otherwise). What format writes, parse reads back.
std::string format(Mass mass, const NumberStyle& style, int decimals);
std::string format(Volume volume, const NumberStyle& style, int decimals);
std::string format(Length length, const NumberStyle& style, int decimals);
std::string format(Temperature temperature, const NumberStyle& style, int decimals);
std::string format(Area area, const NumberStyle& style, int decimals);
//! Power is in watts in every system.
std::string format(Power power, const NumberStyle& style, int decimals);
//! The same in a unit of one's own choice ("250 g").
std::string format(Mass mass, MassUnit unit, const NumberStyle& style, int decimals);
std::string format(Volume volume, VolumeUnit unit, const NumberStyle& style, int decimals);
std::string format(Length length, LengthUnit unit, const NumberStyle& style, int decimals);

//! "12.3 kg (9.8–15.1)": the typical value with its unit, then 10th and 90th percentile.
std::string format(const Spread<Mass>& spread, const NumberStyle& style, int decimals);
std::string format(const Spread<Volume>& spread, const NumberStyle& style, int decimals);
std::string format(const Spread<Temperature>& spread, const NumberStyle& style, int decimals);
std::string format(const Spread<BeeCount>& spread, const NumberStyle& style, int decimals);

//! A plain number with the style's decimal point.
std::string formatNumber(double value, const NumberStyle& style, int decimals);

} // namespace winterlarder
