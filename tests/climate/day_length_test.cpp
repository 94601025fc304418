// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/climate_curve.h"

#include "climate/shipped.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace winterlarder::climate::day_length_test {
namespace {

double hours(double latitude, int month, int day) {
    return dayLength(latitude, dayOfYear(*Date::of(2026, month, day))).value();
}

struct WorkedDay {
    int w;
    double hours;
};

// Worked example of the model's description in DEVELOPERS.md, Oxford 51.76 N; printed to three decimals.
constexpr WorkedDay oxfordDays[] = {{-92, 11.695}, {-60, 9.643}, {-30, 8.147}, {0, 7.867},
                                    {30, 9.039},   {60, 10.899}, {90, 12.899}, {108, 14.074}};

TEST(DayLength, OxfordWorkedExample) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude);
    for (const auto& [w, expected] : oxfordDays) EXPECT_NEAR(curve.dayLength({w}).value(), expected, 0.0005) << w;
}

// Check value P05 of shared/reference/winter_checks.csv: 51.5 N on 20 June 16.637 h +-0.003 (almanacs print 16:39 to 16:38).
TEST(DayLength, LondonInJune) { EXPECT_NEAR(hours(51.5, 6, 20), 16.637, 0.003); }

struct PublishedLength {
    const char* place;
    double latitude;
    int month, day, hours;
    double minutes;
};

// Finnish Meteorological Institute, lengths of the day at cities, 22 December 2015 and (north of 54) 21 December 2022, as
// tabulated in public tables of the December solstice. Printed to the minute. Latitudes of the cities from memory.
constexpr PublishedLength solstice[] = {
    {"Oslo", 59.91, 12, 21, 5, 54},      {"Helsinki", 60.17, 12, 21, 5, 49},  {"Tallinn", 59.44, 12, 21, 6, 3},
    {"Stockholm", 59.33, 12, 21, 6, 4},  {"Riga", 56.95, 12, 21, 6, 44},      {"Copenhagen", 55.68, 12, 21, 7, 2},
    {"Vilnius", 54.69, 12, 21, 7, 14},   {"Edinburgh", 55.95, 12, 22, 6, 57}, {"Moscow", 55.75, 12, 22, 7, 0},
    {"Berlin", 52.52, 12, 22, 7, 39},    {"Warsaw", 52.23, 12, 22, 7, 42},    {"London", 51.51, 12, 22, 7, 49},
    {"Kyiv", 50.45, 12, 22, 8, 0},       {"Paris", 48.86, 12, 22, 8, 14},     {"Vienna", 48.21, 12, 22, 8, 20},
    {"Budapest", 47.50, 12, 22, 8, 26},  {"Rome", 41.90, 12, 22, 9, 7},       {"Madrid", 40.42, 12, 22, 9, 17},
    {"Lisbon", 38.72, 12, 22, 9, 27},    {"Athens", 37.98, 12, 22, 9, 31},    {"Cairo", 30.04, 12, 22, 10, 12},
    {"Tenerife", 28.47, 12, 22, 10, 19}, {"Dakar", 14.69, 12, 22, 11, 15},    {"Addis Ababa", 9.03, 12, 22, 11, 36}};

// United States Naval Observatory, Duration of Daylight, San Francisco 2007: longest and shortest day. The rest from memory of
// published sunrise and sunset tables: New York, Sydney, Reykjavik.
constexpr PublishedLength solsticeElsewhere[] = {
    {"San Francisco", 37.77, 6, 21, 14, 47}, {"San Francisco", 37.77, 12, 21, 9, 33},
    {"New York", 40.71, 6, 21, 15, 5},       {"New York", 40.71, 12, 21, 9, 15},
    {"Sydney", -33.87, 6, 21, 9, 54},        {"Sydney", -33.87, 12, 21, 14, 25},
    {"Reykjavik", 64.15, 12, 21, 4, 8}};

// Half a minute printed, and a city that is a tenth of a degree wide.
double solsticeTolerance(const PublishedLength& row) {
    const double across = hours(row.latitude + 0.1, row.month, row.day) - hours(row.latitude - 0.1, row.month, row.day);
    return (0.5 + std::abs(across) * 60 / 2) / 60;
}

void expectPublished(const PublishedLength& row, double tolerance, const char* source) {
    EXPECT_NEAR(hours(row.latitude, row.month, row.day), row.hours + row.minutes / 60, tolerance)
        << row.place << " " << row.month << "-" << row.day << ", " << source;
}

TEST(DayLength, PublishedShortestAndLongestDays) {
    for (const auto& row : solstice) expectPublished(row, solsticeTolerance(row), "Finnish Meteorological Institute");
    for (const auto& row : solsticeElsewhere)
        expectPublished(row, solsticeTolerance(row), "US Naval Observatory; sunrise tables from memory");
}

// Luther College, Decorah, Iowa: sunrise, sunset and length of day, September. Finnish Meteorological Institute, 20 July 2009
// (Oulu, Helsinki); National Astronomical Observatory of Japan, 20 July 2009 (Tokyo). Printed to the minute.
constexpr PublishedLength betweenSolstices[] = {{"Decorah", 43.30, 9, 1, 13, 9},   {"Decorah", 43.30, 9, 10, 12, 43},
                                                {"Decorah", 43.30, 9, 20, 12, 14}, {"Decorah", 43.30, 9, 30, 11, 45},
                                                {"Oulu", 65.02, 7, 20, 19, 40},    {"Helsinki", 60.17, 7, 20, 17, 47},
                                                {"Tokyo", 35.67, 7, 20, 14, 15}};

// The formula knows no years and runs about a day behind the sun; the leap cycle is worth three quarters of a day more. So
// half a minute printed and what the day changes by in two days.
TEST(DayLength, PublishedDaysBetweenTheSolstices) {
    for (const auto& row : betweenSolstices) {
        const double perDay = hours(row.latitude, row.month, row.day + 1 > 30 ? row.day - 1 : row.day + 1) -
                              hours(row.latitude, row.month, row.day);
        expectPublished(row, 0.5 / 60 + 2 * std::abs(perDay), "see the table's comment");
    }
}

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

// The sun's declination by the low-precision formula of the Astronomical Almanac (0.01 degrees), year 2026.
double almanacDayLength(double latitude, int day) {
    const double n = Date::of(2026, 1, 1)->plusDays(day).daysSince(*Date::of(2000, 1, 1));
    const double anomaly = radians(357.528 + 0.9856003 * n);
    const double longitude =
        radians(280.460 + 0.9856474 * n + 1.915 * std::sin(anomaly) + 0.020 * std::sin(2 * anomaly));
    const double declination = std::asin(std::sin(radians(23.439)) * std::sin(longitude));
    const double cosine = (std::sin(radians(-0.8333)) - std::sin(radians(latitude)) * std::sin(declination)) /
                          (std::cos(radians(latitude)) * std::cos(declination));
    return 24 / std::numbers::pi * std::acos(std::clamp(cosine, -1.0, 1.0));
}

struct Bound {
    double latitude;
    double minutes;
};

// How far the formula may be from the almanac on any day of the year [min]: 6.5 at 60 degrees, a day's change of the light.
constexpr Bound almanacBounds[] = {{0, 0.1}, {20, 1.5}, {40, 3.2}, {-40, 3.2}, {50, 4.5}, {60, 6.5}, {-60, 6.5}};

TEST(DayLength, KeepsToTheAlmanacAllYear) {
    for (const auto& [latitude, minutes] : almanacBounds)
        for (int day = 0; day < daysInYear; ++day)
            ASSERT_NEAR(dayLength(latitude, day).value(), almanacDayLength(latitude, day), minutes / 60)
                << "latitude " << latitude << " day " << day;
}

TEST(DayLength, ClampsBeyondThePolarCircles) {
    EXPECT_DOUBLE_EQ(hours(69.65, 6, 21), 24);
    EXPECT_DOUBLE_EQ(hours(69.65, 12, 21), 0);
    EXPECT_DOUBLE_EQ(hours(-75, 12, 21), 24);
    EXPECT_DOUBLE_EQ(hours(-75, 6, 21), 0);
    for (const double pole : {90.0, -90.0})
        for (int day = 0; day < daysInYear; ++day) {
            const double length = dayLength(pole, day).value();
            ASSERT_TRUE(length == 0 || length == 24) << pole << " day " << day << ": " << length;
        }
}

RC_GTEST_PROP(DayLengthProperty, LiesBetweenNoughtAndTwentyFour, ()) {
    const double latitude = *rc::gen::inRange(-9000, 9001) / 100.0;
    const double length = dayLength(latitude, *rc::gen::inRange(0, daysInYear)).value();
    RC_ASSERT(length >= 0 && length <= 24);
}

// Without refraction and the sun's width a day here and its antipode's make 24 hours.
RC_GTEST_PROP(DayLengthProperty, HemispheresShareTheDay, ()) {
    const double latitude = *rc::gen::inRange(0, 9001) / 100.0;
    const int day = *rc::gen::inRange(0, daysInYear);
    RC_ASSERT(std::abs(dayLength(latitude, day, 0).value() + dayLength(-latitude, day, 0).value() - 24) < 1e-9);
}

RC_GTEST_PROP(DayLengthProperty, SummerDaysGrowTowardsThePole, ()) {
    const double latitude = *rc::gen::inRange(0, 8900) / 100.0;
    RC_ASSERT(dayLength(latitude + 1, 170).value() >= dayLength(latitude, 170).value());
    RC_ASSERT(dayLength(latitude + 1, 354).value() <= dayLength(latitude, 354).value());
}

TEST(DayLength, RefusesDaysOutsideTheYear) {
    EXPECT_THROW((void)dayLength(50, -1), ContractViolation);
    EXPECT_THROW((void)dayLength(50, 365), ContractViolation);
}

TEST(DayLength, SouthernCurveCountsFromJuly) {
    const ClimateCurve curve = curveOf(shippedStation("au-melbourne"));
    EXPECT_LT(curve.dayLength({-11}).value(), 9.6);
    EXPECT_GT(curve.dayLength({172}).value(), 14.6);
}

} // namespace
} // namespace winterlarder::climate::day_length_test
