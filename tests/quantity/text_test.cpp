// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/text.h"
#include "support/require.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::text_test {
namespace {

using testing::HasSubstr;

constexpr NumberStyle point{'.', UnitSystem::Metric};
constexpr NumberStyle comma{',', UnitSystem::Metric};
constexpr NumberStyle unitedStates{'.', UnitSystem::UnitedStates};
constexpr NumberStyle imperial{'.', UnitSystem::Imperial};

double mass(std::string_view text, MassUnit bare = MassUnit::Kilogram, const NumberStyle& style = point) {
    const auto parsed = parseMass(text, bare, style);
    if (!parsed) ADD_FAILURE() << '"' << text << "\": " << describe(parsed.problems().front());
    return parsed ? parsed->value() : NAN;
}
double volume(std::string_view text, VolumeUnit bare = VolumeUnit::Litre, const NumberStyle& style = point) {
    const auto parsed = parseVolume(text, bare, style);
    if (!parsed) ADD_FAILURE() << '"' << text << "\": " << describe(parsed.problems().front());
    return parsed ? parsed->value() : NAN;
}
double length(std::string_view text, LengthUnit bare = LengthUnit::Millimetre, const NumberStyle& style = point) {
    const auto parsed = parseLength(text, bare, style);
    if (!parsed) ADD_FAILURE() << '"' << text << "\": " << describe(parsed.problems().front());
    return parsed ? parsed->value() : NAN;
}
double temperature(std::string_view text, TemperatureUnit bare = TemperatureUnit::Celsius) {
    const auto parsed = parseTemperature(text, bare, point);
    if (!parsed) ADD_FAILURE() << '"' << text << "\": " << describe(parsed.problems().front());
    return parsed ? parsed->value() : NAN;
}

TEST(ParseMass, WhatPeopleType) {
    EXPECT_DOUBLE_EQ(mass("1.5 kg"), 1.5);
    EXPECT_DOUBLE_EQ(mass("1,5 kg"), 1.5);
    EXPECT_DOUBLE_EQ(mass("1,5kg"), 1.5);
    EXPECT_DOUBLE_EQ(mass("  1.5  KG "), 1.5);
    EXPECT_DOUBLE_EQ(mass("500 g"), 0.5);
    EXPECT_DOUBLE_EQ(mass("1.5\u00a0kg"), 1.5);
    EXPECT_DOUBLE_EQ(mass("1.5\u202fkg"), 1.5);
    EXPECT_DOUBLE_EQ(mass(".5 kg"), 0.5);
    EXPECT_DOUBLE_EQ(mass("5. kg"), 5);
    EXPECT_DOUBLE_EQ(mass("+2 kg"), 2);
    EXPECT_DOUBLE_EQ(mass("0"), 0);
    EXPECT_DOUBLE_EQ(mass("12"), 12);
    EXPECT_DOUBLE_EQ(mass("12", MassUnit::Pound), 12 * 0.45359237);
    EXPECT_DOUBLE_EQ(mass("250", MassUnit::Gram), 0.25);
}

// International avoirdupois pound 0.45359237 kg exactly, 16 ounces (international yard and pound agreement, 1959).
TEST(ParseMass, PoundsAndOunces) {
    EXPECT_DOUBLE_EQ(mass("3 lb 4 oz"), 3.25 * 0.45359237);
    EXPECT_DOUBLE_EQ(mass("3lb4oz"), 3.25 * 0.45359237);
    EXPECT_DOUBLE_EQ(mass("3 lbs, 4 oz."), 3.25 * 0.45359237);
    EXPECT_DOUBLE_EQ(mass("1 pound"), 0.45359237);
    EXPECT_DOUBLE_EQ(mass("2 1/2 lb"), 2.5 * 0.45359237);
}

// US gallon 231 cubic inches = 3.785411784 L; imperial gallon 4.54609 L (UK Weights and Measures Act 1985): both exact.
TEST(ParseVolume, GallonsOfBothCountries) {
    EXPECT_DOUBLE_EQ(volume("2 US gal"), 2 * 3.785411784);
    EXPECT_DOUBLE_EQ(volume("2 U.S. gallons"), 2 * 3.785411784);
    EXPECT_DOUBLE_EQ(volume("1 imp gal"), 4.54609);
    EXPECT_DOUBLE_EQ(volume("1 imp. gal."), 4.54609);
    EXPECT_DOUBLE_EQ(volume("1 gal", VolumeUnit::Litre, unitedStates), 3.785411784);
    EXPECT_DOUBLE_EQ(volume("1 gal", VolumeUnit::Litre, imperial), 4.54609);
    EXPECT_DOUBLE_EQ(volume("1 US gal", VolumeUnit::Litre, imperial), 3.785411784);
    EXPECT_DOUBLE_EQ(volume("8 imp pt"), 4.54609);
    EXPECT_DOUBLE_EQ(volume("4 US qt"), 3.785411784);
    EXPECT_DOUBLE_EQ(volume("1 imp gal 2 imp pt"), 1.25 * 4.54609);
    EXPECT_DOUBLE_EQ(volume("6 L"), 6);
    EXPECT_DOUBLE_EQ(volume("750 ml"), 0.75);
    EXPECT_DOUBLE_EQ(volume("6"), 6);
}

TEST(ParseVolume, GallonAloneIsNoMetricMeasure) {
    const auto parsed = parseVolume("2 gal", VolumeUnit::Litre, point);
    ASSERT_FALSE(parsed);
    EXPECT_THAT(describe(parsed.problems().front()), HasSubstr("write US gal or imp gal"));
}

TEST(ParseLength, InchesAndMillimetres) {
    EXPECT_DOUBLE_EQ(length("12 in"), 304.8);
    EXPECT_DOUBLE_EQ(length("9 1/8 in"), 231.775);
    EXPECT_DOUBLE_EQ(length("9 1/8\""), 231.775);
    EXPECT_DOUBLE_EQ(length("1/4 in"), 6.35);
    EXPECT_DOUBLE_EQ(length("1 ft 6 in"), 457.2);
    EXPECT_DOUBLE_EQ(length("23.2 cm"), 232);
    EXPECT_DOUBLE_EQ(length("38"), 38);
    EXPECT_DOUBLE_EQ(length("0.3 m"), 300);
}

TEST(ParseTemperature, BothScales) {
    EXPECT_NEAR(temperature("45 F"), 65.0 / 9.0, 1e-12);
    EXPECT_NEAR(temperature("45 °F"), 65.0 / 9.0, 1e-12);
    EXPECT_NEAR(temperature("-40 F"), -40, 1e-12);
    EXPECT_NEAR(temperature("32F"), 0, 1e-12);
    EXPECT_DOUBLE_EQ(temperature("7 °C"), 7);
    EXPECT_DOUBLE_EQ(temperature("7°C"), 7);
    EXPECT_DOUBLE_EQ(temperature("7 c"), 7);
    EXPECT_DOUBLE_EQ(temperature("-3.5"), -3.5);
    EXPECT_DOUBLE_EQ(temperature("\u22123.5 °C"), -3.5);
    EXPECT_NEAR(temperature("50", TemperatureUnit::Fahrenheit), 10, 1e-12);
}

std::string problemOf(std::string_view text, const NumberStyle& style = point) {
    const auto parsed = parseMass(text, MassUnit::Kilogram, style);
    return parsed ? "accepted" : describe(parsed.problems().front());
}

TEST(ParseProblem, SaysWhatIsWrongAndWhatWouldBeRight) {
    EXPECT_EQ(problemOf(""), "nothing is written; write a number and a unit");
    EXPECT_EQ(problemOf("   "), "nothing is written; write a number and a unit");
    EXPECT_THAT(problemOf("heavy"), HasSubstr("does not begin with a number"));
    EXPECT_THAT(problemOf("kg 5"), HasSubstr("does not begin with a number"));
    EXPECT_EQ(problemOf("5 stone"), "\"stone\" is no unit known here; use kg, g, lb or oz");
    EXPECT_EQ(problemOf("5 L"), "\"l\" is no unit known here; use kg, g, lb or oz");
    EXPECT_EQ(problemOf("-5 kg"), "the amount is negative; it is 0 or more");
    EXPECT_THAT(problemOf("5 5 kg"), HasSubstr("two numbers stand side by side"));
    EXPECT_THAT(problemOf("1.2.3 kg"), HasSubstr("more than one decimal point"));
    EXPECT_THAT(problemOf("1,234.5 kg"), HasSubstr("more than one decimal point"));
    EXPECT_THAT(problemOf("3 lb 4"), HasSubstr("a number has no unit"));
    EXPECT_THAT(problemOf("4 oz 3 lb"), HasSubstr("from the larger unit to the smaller"));
    EXPECT_THAT(problemOf("3 lb 4 lb"), HasSubstr("from the larger unit to the smaller"));
    EXPECT_THAT(problemOf("1/0 kg"), HasSubstr("nothing below its line"));
    EXPECT_THAT(problemOf("1/ kg"), HasSubstr("does not begin with a number"));
    EXPECT_THAT(problemOf("."), HasSubstr("does not begin with a number"));
    EXPECT_THAT(problemOf("-"), HasSubstr("does not begin with a number"));
}

TEST(ParseProblem, NoExponentsAndNothingThatIsNoNumber) {
    for (const char* text : {"nan", "inf", "-inf", "infinity", "NaN kg", "1e3 kg", "0x10 kg", "1e400"})
        EXPECT_NE(problemOf(text), "accepted") << text;
}

TEST(ParseProblem, TooLargeIsRefused) {
    const std::string huge = std::string(400, '9');
    EXPECT_THAT(problemOf(huge + " kg"), HasSubstr("write a smaller number"));
    EXPECT_FALSE(parseLength(std::string(307, '9') + " ft", LengthUnit::Millimetre, point));
    EXPECT_FALSE(parseTemperature(huge, TemperatureUnit::Celsius, point));
}

TEST(ParseProblem, ThousandsAreNeverGuessed) {
    EXPECT_EQ(problemOf("1,500 g"), "\"1,500\" can be read in two ways; write 1500 or 1.500");
    EXPECT_EQ(problemOf("1.500 g", comma), "\"1.500\" can be read in two ways; write 1500 or 1,500");
    EXPECT_DOUBLE_EQ(mass("1.500 kg"), 1.5);
    EXPECT_DOUBLE_EQ(mass("1,500 kg", MassUnit::Kilogram, comma), 1.5);
    EXPECT_DOUBLE_EQ(mass("0,500 kg"), 0.5);
    EXPECT_DOUBLE_EQ(mass("1,50 kg"), 1.5);
    EXPECT_DOUBLE_EQ(mass("1,5000 kg"), 1.5);
}

TEST(ParseTemperature, RefusesTheImpossible) {
    EXPECT_FALSE(parseTemperature("-274 °C", TemperatureUnit::Celsius, point));
    EXPECT_TRUE(parseTemperature("-273 °C", TemperatureUnit::Celsius, point));
    EXPECT_FALSE(parseTemperature("-460 °F", TemperatureUnit::Celsius, point));
    EXPECT_FALSE(parseTemperature("5 C 3 C", TemperatureUnit::Celsius, point));
    EXPECT_FALSE(parseTemperature("5 kg", TemperatureUnit::Celsius, point));
    EXPECT_FALSE(parseTemperature("280 K", TemperatureUnit::Celsius, point));
}

TEST(Format, EveryQuantityInEverySystem) {
    EXPECT_EQ(format(kilograms(12.34), point, 1), "12.3 kg");
    EXPECT_EQ(format(kilograms(12.34), comma, 1), "12,3 kg");
    EXPECT_EQ(format(kilograms(0.45359237), unitedStates, 2), "1.00 lb");
    EXPECT_EQ(format(kilograms(0.45359237), imperial, 2), "1.00 lb");
    EXPECT_EQ(format(litres(6), point, 0), "6 L");
    EXPECT_EQ(format(litres(3.785411784), unitedStates, 1), "1.0 US gal");
    EXPECT_EQ(format(litres(4.54609), imperial, 1), "1.0 imp gal");
    EXPECT_EQ(format(millimetres(231.775), point, 0), "232 mm");
    EXPECT_EQ(format(millimetres(231.775), unitedStates, 3), "9.125 in");
    EXPECT_EQ(format(celsius(7), point, 1), "7.0 °C");
    EXPECT_EQ(format(celsius(7), unitedStates, 1), "44.6 °F");
    EXPECT_EQ(format(celsius(7), imperial, 1), "7.0 °C");
    EXPECT_EQ(format(squareDecimetres(8.8), point, 1), "8.8 dm²");
    EXPECT_EQ(format(squareDecimetres(6.4516), unitedStates, 0), "100 sq in");
    EXPECT_EQ(format(watts(5.256), unitedStates, 1), "5.3 W");
    EXPECT_EQ(format(grams(250), MassUnit::Gram, point, 0), "250 g");
    EXPECT_EQ(format(litres(0.75), VolumeUnit::Millilitre, point, 0), "750 mL");
    EXPECT_EQ(format(millimetres(232), LengthUnit::Centimetre, point, 1), "23.2 cm");
}

TEST(Format, NeverMinusNought) {
    EXPECT_EQ(format(celsius(-0.04), point, 1), "0.0 °C");
    EXPECT_EQ(format(celsius(-0.0), point, 0), "0 °C");
    EXPECT_EQ(format(celsius(-0.06), point, 1), "-0.1 °C");
}

TEST(Format, Spreads) {
    EXPECT_EQ(format(Spread<Mass>{kilograms(9.84), kilograms(12.3), kilograms(15.1)}, point, 1), "12.3 kg (9.8–15.1)");
    EXPECT_EQ(format(Spread<Mass>{kilograms(9.84), kilograms(12.3), kilograms(15.1)}, comma, 1), "12,3 kg (9,8–15,1)");
    EXPECT_EQ(format(Spread<Volume>{litres(3.785411784), litres(7.570823568), litres(11.356235352)}, unitedStates, 1),
              "2.0 US gal (1.0–3.0)");
    EXPECT_EQ(format(Spread<Temperature>{celsius(-10), celsius(0), celsius(10)}, unitedStates, 0), "32 °F (14–50)");
    EXPECT_EQ(format(Spread<BeeCount>{{9000}, {12000}, {15500}}, point, 0), "12000 (9000–15500)");
}

TEST(Format, RefusesWhatIsNoNumber) {
    constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
    constexpr double endless = std::numeric_limits<double>::infinity();
    EXPECT_THROW((void)format(kilograms(nothing), point, 1), ContractViolation);
    EXPECT_THROW((void)format(celsius(-endless), point, 1), ContractViolation);
    EXPECT_THROW((void)format(kilograms(1), point, -1), ContractViolation);
    EXPECT_THROW((void)format(kilograms(1), point, 10), ContractViolation);
    EXPECT_THROW((void)format(kilograms(1), NumberStyle{'x', UnitSystem::Metric}, 1), ContractViolation);
}

NumberStyle anyStyle() {
    return {*rc::gen::element('.', ','),
            *rc::gen::element(UnitSystem::Metric, UnitSystem::UnitedStates, UnitSystem::Imperial)};
}

double anyValue(int from, int to) { return *rc::gen::inRange(from * 1000, to * 1000) / 1000.0; }

// Half a unit in the last decimal written, and the rounding of doubles.
double halfStep(double unitSize, int decimals) { return 0.5 * unitSize * std::pow(10.0, -decimals) + 1e-9; }

RC_GTEST_PROP(RoundTrip, Mass, ()) {
    const NumberStyle style = anyStyle();
    const int decimals = *rc::gen::inRange(0, 7);
    const Mass original = kilograms(anyValue(0, 200));
    const auto back = parseMass(format(original, style, decimals), MassUnit::Gram, style);
    RC_ASSERT(back.ok());
    RC_ASSERT(std::abs(back->value() - original.value()) <=
              halfStep(massOf(1, massUnit(style.system)).value(), decimals));
}

RC_GTEST_PROP(RoundTrip, Volume, ()) {
    const NumberStyle style = anyStyle();
    const int decimals = *rc::gen::inRange(0, 7);
    const Volume original = litres(anyValue(0, 100));
    const auto back = parseVolume(format(original, style, decimals), VolumeUnit::Millilitre, style);
    RC_ASSERT(back.ok());
    RC_ASSERT(std::abs(back->value() - original.value()) <=
              halfStep(volumeOf(1, volumeUnit(style.system)).value(), decimals));
}

RC_GTEST_PROP(RoundTrip, Length, ()) {
    const NumberStyle style = anyStyle();
    const int decimals = *rc::gen::inRange(0, 7);
    const Length original = millimetres(anyValue(0, 1000));
    const auto back = parseLength(format(original, style, decimals), LengthUnit::Metre, style);
    RC_ASSERT(back.ok());
    RC_ASSERT(std::abs(back->value() - original.value()) <=
              halfStep(lengthOf(1, lengthUnit(style.system)).value(), decimals));
}

RC_GTEST_PROP(RoundTrip, Temperature, ()) {
    const NumberStyle style = anyStyle();
    const int decimals = *rc::gen::inRange(0, 7);
    const Temperature original = celsius(anyValue(-60, 45));
    const auto back = parseTemperature(format(original, style, decimals), TemperatureUnit::Celsius, style);
    RC_ASSERT(back.ok());
    RC_ASSERT(std::abs(back->value() - original.value()) <= halfStep(1, decimals));
}

// Whatever is typed: an answer that is finite and not negative, or a problem with words; never a crash.
RC_GTEST_PROP(AnyText, IsReadOrRefused, (const std::string& text)) {
    const auto parsed = parseMass(text, MassUnit::Kilogram, anyStyle());
    if (parsed) RC_ASSERT(std::isfinite(parsed->value()) && parsed->value() >= 0);
    else RC_ASSERT(!parsed.problems().front().detail.empty() && !parsed.problems().front().remedy.empty());
}

RC_GTEST_PROP(AnyText, OfTheRightLettersIsReadOrRefused, ()) {
    const auto text =
        *rc::gen::container<std::string>(rc::gen::elementOf(std::string("0123456789.,/-+ kglbozinftUSC")));
    const auto parsed = parseLength(text, LengthUnit::Inch, anyStyle());
    if (parsed) RC_ASSERT(std::isfinite(parsed->value()) && parsed->value() >= 0);
    else RC_ASSERT(!parsed.problems().front().detail.empty());
}

TEST(Symbols, AreReadBack) {
    for (const MassUnit unit : {MassUnit::Kilogram, MassUnit::Gram, MassUnit::Pound, MassUnit::Ounce})
        EXPECT_DOUBLE_EQ(mass("7 " + std::string(symbol(unit))), massOf(7, unit).value()) << symbol(unit);
    for (const VolumeUnit unit :
         {VolumeUnit::Litre, VolumeUnit::Millilitre, VolumeUnit::UsGallon, VolumeUnit::UsQuart, VolumeUnit::UsPint,
          VolumeUnit::ImperialGallon, VolumeUnit::ImperialQuart, VolumeUnit::ImperialPint})
        EXPECT_DOUBLE_EQ(volume("7 " + std::string(symbol(unit))), volumeOf(7, unit).value()) << symbol(unit);
    for (const LengthUnit unit :
         {LengthUnit::Millimetre, LengthUnit::Centimetre, LengthUnit::Metre, LengthUnit::Inch, LengthUnit::Foot})
        EXPECT_DOUBLE_EQ(length("7 " + std::string(symbol(unit))), lengthOf(7, unit).value()) << symbol(unit);
    for (const TemperatureUnit unit : {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit})
        EXPECT_DOUBLE_EQ(temperature("7 " + std::string(symbol(unit))), temperatureOf(7, unit).value()) << symbol(unit);
}

} // namespace
} // namespace winterlarder::text_test
