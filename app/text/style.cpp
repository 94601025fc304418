// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/style.h"

#include "quantity/fractions.h"
#include "text/contexts.h"

#include <QDate>
#include <cmath>

namespace winterlarder::text {

namespace {

QString of(const std::string& utf8) { return QString::fromStdString(utf8); }

// What people weigh and buy: half kilograms, or whole pounds.
Mass toSteps(Mass mass, const WordStyle& style) {
    if (style.numbers.system == UnitSystem::Metric) return kilograms(std::round(2 * mass.value()) / 2);
    return massOf(std::round(valueIn(mass, MassUnit::Pound)), MassUnit::Pound);
}
int stepDecimals(Mass steps, const WordStyle& style) {
    return style.numbers.system == UnitSystem::Metric && steps.value() != std::floor(steps.value()) ? 1 : 0;
}

// Half litres; half quarts, and whole ones from a gallon on.
Volume toSteps(Volume volume, const WordStyle& style) {
    if (style.numbers.system == UnitSystem::Metric) return Volume(std::round(2 * volume.value()) / 2);
    constexpr double halfQuartsInGallon = 8;
    const auto unit = volumeUnit(style.numbers.system);
    const double halfQuarts = std::round(halfQuartsInGallon * valueIn(volume, unit));
    const double steps =
        halfQuarts < halfQuartsInGallon ? halfQuarts : 2 * std::round(halfQuartsInGallon * valueIn(volume, unit) / 2);
    return volumeOf(steps / halfQuartsInGallon, unit);
}

template <class Quantity> std::vector<Quantity> inSteps(std::vector<Quantity> parts, const WordStyle& style) {
    Quantity sum{0}, shown{0};
    for (Quantity& part : parts) {
        sum += part;
        const Quantity next = toSteps(sum, style);
        part = next - shown;
        shown = next;
    }
    return parts;
}

// As a jug shows them. Which gallon it is goes without saying where units were chosen.
QString inQuarts(Volume volume, UnitSystem system) {
    constexpr int quartsInGallon = 4;
    const double gallons = valueIn(volume, volumeUnit(system)), halfQuarts = std::round(2 * quartsInGallon * gallons);
    if (halfQuarts < 2 * quartsInGallon) return say::Words::tr("%1 qt").arg(of(formatFraction(halfQuarts / 2, 2)));
    return say::Words::tr("%1 gal").arg(of(formatFraction(gallons, 4)));
}

constexpr double centimetresInAnInch = 2.54;

double toHundreds(double bees) { return std::round(bees / 100) * 100; }

} // namespace

QString worded(const QString& sentence, const WordStyle& style) { return worded(sentence, style.wording); }

QString mass(Mass mass, const WordStyle& style) { return of(format(mass, style.numbers, 1)); }
QString amount(Mass mass, const WordStyle& style) {
    const QString shown = of(format(toSteps(mass, style), style.numbers, stepDecimals(toSteps(mass, style), style)));
    if (!style.poundsBeside || style.numbers.system != UnitSystem::Metric) return shown;
    const Mass pounds = massOf(std::round(valueIn(toSteps(mass, style), MassUnit::Pound)), MassUnit::Pound);
    return say::Words::tr("%1 (%2)", "kilograms and pounds")
        .arg(shown, of(format(pounds, NumberStyle{style.numbers.decimalPoint, UnitSystem::UnitedStates}, 0)));
}

QString amount(const Spread<Mass>& mass, const WordStyle& style) {
    const auto bare = [&](Mass value) {
        const double shown = valueIn(toSteps(value, style), massUnit(style.numbers.system));
        return number(shown == 0 ? 0 : shown, stepDecimals(toSteps(value, style), style), style);
    };
    const Mass typical = toSteps(mass.typical, style);
    return say::Words::tr("%1 (%2\u2013%3)", "amount, lowest, highest")
        .arg(of(format(typical, style.numbers, stepDecimals(typical, style))), bare(mass.low), bare(mass.high));
}

QString mass(const Spread<Mass>& mass, const WordStyle& style) { return of(format(mass, style.numbers, 1)); }
QString volume(Volume volume, const WordStyle& style) {
    if (style.numbers.system != UnitSystem::Metric) return inQuarts(volume, style.numbers.system);
    return of(format(volume, style.numbers, 1));
}
QString amount(Volume volume, const WordStyle& style) {
    if (style.numbers.system != UnitSystem::Metric) return inQuarts(volume, style.numbers.system);
    const double litres = std::round(2 * volume.value()) / 2;
    return of(format(Volume(litres), style.numbers, litres == std::floor(litres) ? 0 : 1));
}
std::vector<Mass> shownParts(const std::vector<Mass>& parts, const WordStyle& style) { return inSteps(parts, style); }
std::vector<Volume> shownParts(const std::vector<Volume>& parts, const WordStyle& style) {
    return inSteps(parts, style);
}

QString length(Length length, const WordStyle& style) {
    constexpr int sixteenths = 16;
    const auto unit = lengthUnit(style.numbers.system);
    if (unit != LengthUnit::Inch) return of(format(length, style.numbers, 0));
    return QStringLiteral("%1 %2").arg(of(formatFraction(valueIn(length, unit), sixteenths)),
                                       of(std::string(symbol(unit))));
}
QString count(double number, const WordStyle& style) { return style.locale.toString(number, 'f', 0); }

QString bees(const Spread<BeeCount>& bees, const WordStyle& style) {
    return QStringLiteral("%1 (%2\u2013%3)")
        .arg(count(toHundreds(bees.typical.count), style), count(toHundreds(bees.low.count), style),
             count(toHundreds(bees.high.count), style));
}

QString number(double number, int decimals, const WordStyle& style) {
    return of(formatNumber(number, style.numbers, decimals));
}

QString quantity(const QString& metric, const WordStyle& style) {
    const std::string written = metric.toStdString();
    const auto point = metric.indexOf(QLatin1Char('.'));
    const int said = point < 0 ? 0 : static_cast<int>(metric.indexOf(QLatin1Char(' ')) - point - 1);
    const bool asWritten = style.numbers.system == UnitSystem::Metric;
    if (metric.endsWith(QLatin1String(" km"))) return distance(metric.chopped(3).toDouble(), style);
    if (metric.endsWith(QLatin1String(" cm")) && !asWritten)
        return say::Words::tr("%1 in").arg(count(metric.chopped(3).toDouble() / centimetresInAnInch, style));
    if (metric.endsWith(QLatin1String(" cm"))) return metric;
    if (const auto mass = parseMass(written, MassUnit::Kilogram))
        return of(format(*mass, style.numbers, asWritten ? said : *mass < kilograms(5) ? 1 : 0));
    if (const auto found = parseLength(written, LengthUnit::Millimetre))
        return asWritten ? of(format(*found, style.numbers, said)) : length(*found, style);
    if (const auto reading = parseTemperature(written, TemperatureUnit::Celsius))
        return of(format(*reading, style.numbers, said));
    return metric;
}

QString distance(double kilometres, const WordStyle& style) {
    constexpr double kilometresInAMile = 1.609344;
    if (style.numbers.system == UnitSystem::Metric) return say::Words::tr("%1 km").arg(count(kilometres, style));
    return say::Words::tr("%n miles", nullptr, static_cast<int>(std::round(kilometres / kilometresInAMile)));
}

QString height(double metres, const WordStyle& style) {
    const bool metric = style.numbers.system == UnitSystem::Metric;
    const bool broken = metric && std::abs(metres - std::round(metres)) >= 0.05;
    return of(format(lengthOf(metres, LengthUnit::Metre), metric ? LengthUnit::Metre : LengthUnit::Foot, style.numbers,
                     broken ? 1 : 0));
}

QString kelvins(double difference, const WordStyle& style) {
    const auto unit = temperatureUnit(style.numbers.system);
    const double perKelvin = unit == TemperatureUnit::Fahrenheit ? 1.8 : 1;
    return QStringLiteral("%1 %2").arg(number(difference * perKelvin, 1, style), of(std::string(symbol(unit))));
}

QString date(Date date, const WordStyle& style) {
    return style.locale.toString(QDate(date.year(), date.month(), date.day()), QStringLiteral("d MMMM yyyy"));
}

QString month(int year, int month, const WordStyle& style) {
    return style.locale.toString(QDate(year, month, 1), QStringLiteral("MMMM yyyy"));
}

QString ofHundred(const Share& share, const WordStyle& style) {
    const double rounded = std::round(share.share * 100);
    if (rounded == 0 && share.share > 0) return say::Words::tr("under 1 of 100");
    return say::Words::tr("%1 of 100").arg(count(rounded, style));
}

} // namespace winterlarder::text
