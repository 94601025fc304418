// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/text.h"

#include "support/require.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder {

namespace {

constexpr double poundKg = 0.45359237;
constexpr double inchMm = 25.4;
constexpr double usGallonL = 3.785411784;
constexpr double imperialGallonL = 4.54609;
constexpr double fahrenheitStep = 5.0 / 9.0;
constexpr double fahrenheitZeroC = -32.0 * fahrenheitStep;

// core value = number * scale + zero.
struct UnitScale {
    std::string_view symbol;
    double scale;
    double zero = 0;
};

constexpr std::array massScales{UnitScale{"kg", 1.0}, UnitScale{"g", 0.001}, UnitScale{"lb", poundKg},
                                UnitScale{"oz", poundKg / 16}};
constexpr std::array volumeScales{UnitScale{"L", 1.0},
                                  UnitScale{"mL", 0.001},
                                  UnitScale{"US gal", usGallonL},
                                  UnitScale{"US qt", usGallonL / 4},
                                  UnitScale{"US pt", usGallonL / 8},
                                  UnitScale{"imp gal", imperialGallonL},
                                  UnitScale{"imp qt", imperialGallonL / 4},
                                  UnitScale{"imp pt", imperialGallonL / 8}};
constexpr std::array lengthScales{UnitScale{"mm", 1.0}, UnitScale{"cm", 10.0}, UnitScale{"m", 1000.0},
                                  UnitScale{"in", inchMm}, UnitScale{"ft", 12 * inchMm}};
constexpr std::array temperatureScales{UnitScale{"°C", 1.0}, UnitScale{"°F", fahrenheitStep, fahrenheitZeroC}};
constexpr std::array areaScales{UnitScale{"dm²", 1.0}, UnitScale{"sq in", inchMm* inchMm / 10000.0}};

template <class Scales, class Unit> const UnitScale& scaleOf(const Scales& scales, Unit unit) {
    const auto index = static_cast<std::size_t>(unit);
    require(index < scales.size(), "unit number {} does not exist", index);
    return scales[index];
}

double outward(double coreValue, const UnitScale& scale) { return (coreValue - scale.zero) / scale.scale; }
double inward(double number, const UnitScale& scale) { return number * scale.scale + scale.zero; }

std::string amount(double value, const UnitScale& scale, const NumberStyle& style, int decimals) {
    return fmt::format("{} {}", formatNumber(outward(value, scale), style, decimals), scale.symbol);
}

std::string range(double low, double high, const NumberStyle& style, int decimals) {
    return fmt::format("({}–{})", formatNumber(low, style, decimals), formatNumber(high, style, decimals));
}

template <class Quantity, class Unit>
std::string formatSpread(const Spread<Quantity>& spread, Unit unit, const NumberStyle& style, int decimals) {
    return fmt::format("{} {}", format(spread.typical, style, decimals),
                       range(valueIn(spread.low, unit), valueIn(spread.high, unit), style, decimals));
}

} // namespace

MassUnit massUnit(UnitSystem system) { return system == UnitSystem::Metric ? MassUnit::Kilogram : MassUnit::Pound; }
VolumeUnit volumeUnit(UnitSystem system) {
    if (system == UnitSystem::Metric) return VolumeUnit::Litre;
    return system == UnitSystem::UnitedStates ? VolumeUnit::UsGallon : VolumeUnit::ImperialGallon;
}
LengthUnit lengthUnit(UnitSystem system) {
    return system == UnitSystem::Metric ? LengthUnit::Millimetre : LengthUnit::Inch;
}
TemperatureUnit temperatureUnit(UnitSystem system) {
    return system == UnitSystem::UnitedStates ? TemperatureUnit::Fahrenheit : TemperatureUnit::Celsius;
}
AreaUnit areaUnit(UnitSystem system) {
    return system == UnitSystem::Metric ? AreaUnit::SquareDecimetre : AreaUnit::SquareInch;
}

std::string_view symbol(MassUnit unit) { return scaleOf(massScales, unit).symbol; }
std::string_view symbol(VolumeUnit unit) { return scaleOf(volumeScales, unit).symbol; }
std::string_view symbol(LengthUnit unit) { return scaleOf(lengthScales, unit).symbol; }
std::string_view symbol(TemperatureUnit unit) { return scaleOf(temperatureScales, unit).symbol; }
std::string_view symbol(AreaUnit unit) { return scaleOf(areaScales, unit).symbol; }

double valueIn(Mass mass, MassUnit unit) { return outward(mass.value(), scaleOf(massScales, unit)); }
double valueIn(Volume volume, VolumeUnit unit) { return outward(volume.value(), scaleOf(volumeScales, unit)); }
double valueIn(Length length, LengthUnit unit) { return outward(length.value(), scaleOf(lengthScales, unit)); }
double valueIn(Temperature temperature, TemperatureUnit unit) {
    return outward(temperature.value(), scaleOf(temperatureScales, unit));
}
double valueIn(Area area, AreaUnit unit) { return outward(area.value(), scaleOf(areaScales, unit)); }
Mass massOf(double value, MassUnit unit) { return kilograms(inward(value, scaleOf(massScales, unit))); }
Volume volumeOf(double value, VolumeUnit unit) { return litres(inward(value, scaleOf(volumeScales, unit))); }
Length lengthOf(double value, LengthUnit unit) { return millimetres(inward(value, scaleOf(lengthScales, unit))); }
Temperature temperatureOf(double value, TemperatureUnit unit) {
    return celsius(inward(value, scaleOf(temperatureScales, unit)));
}
Area areaOf(double value, AreaUnit unit) { return squareDecimetres(inward(value, scaleOf(areaScales, unit))); }

std::string formatNumber(double value, const NumberStyle& style, int decimals) {
    require(std::isfinite(value), "{} cannot be written as a number", value);
    require(decimals >= 0 && decimals <= 9, "{} decimals", decimals);
    require(style.decimalPoint == '.' || style.decimalPoint == ',', "decimal point '{}'", style.decimalPoint);
    std::string text = fmt::format("{:.{}f}", value, decimals);
    if (text.front() == '-' && text.find_first_of("123456789") == std::string::npos) text.erase(0, 1);
    std::replace(text.begin(), text.end(), '.', style.decimalPoint);
    return text;
}

std::string format(Mass mass, const NumberStyle& style, int decimals) {
    return format(mass, massUnit(style.system), style, decimals);
}
std::string format(Volume volume, const NumberStyle& style, int decimals) {
    return format(volume, volumeUnit(style.system), style, decimals);
}
std::string format(Length length, const NumberStyle& style, int decimals) {
    return format(length, lengthUnit(style.system), style, decimals);
}
std::string format(Temperature temperature, const NumberStyle& style, int decimals) {
    return amount(temperature.value(), scaleOf(temperatureScales, temperatureUnit(style.system)), style, decimals);
}
std::string format(Area area, const NumberStyle& style, int decimals) {
    return amount(area.value(), scaleOf(areaScales, areaUnit(style.system)), style, decimals);
}
std::string format(Power power, const NumberStyle& style, int decimals) {
    return amount(power.value(), UnitScale{"W", 1.0}, style, decimals);
}
std::string format(Mass mass, MassUnit unit, const NumberStyle& style, int decimals) {
    return amount(mass.value(), scaleOf(massScales, unit), style, decimals);
}
std::string format(Volume volume, VolumeUnit unit, const NumberStyle& style, int decimals) {
    return amount(volume.value(), scaleOf(volumeScales, unit), style, decimals);
}
std::string format(Length length, LengthUnit unit, const NumberStyle& style, int decimals) {
    return amount(length.value(), scaleOf(lengthScales, unit), style, decimals);
}

std::string format(const Spread<Mass>& spread, const NumberStyle& style, int decimals) {
    return formatSpread(spread, massUnit(style.system), style, decimals);
}
std::string format(const Spread<Volume>& spread, const NumberStyle& style, int decimals) {
    return formatSpread(spread, volumeUnit(style.system), style, decimals);
}
std::string format(const Spread<Temperature>& spread, const NumberStyle& style, int decimals) {
    return formatSpread(spread, temperatureUnit(style.system), style, decimals);
}
std::string format(const Spread<BeeCount>& spread, const NumberStyle& style, int decimals) {
    return fmt::format("{} {}", formatNumber(spread.typical.count, style, decimals),
                       range(spread.low.count, spread.high.count, style, decimals));
}

} // namespace winterlarder
