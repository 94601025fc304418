// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/season.h"

#include "climate/shipped.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::climate::season_test {
namespace {

SeasonDates seasonOf(const ClimateCurve& curve) { return deriveSeason(curve, shipped().constants); }

std::string dayText(const std::optional<SeasonDate>& date) { return date ? std::to_string(date->day.w) : ""; }

std::string monthDay(const std::optional<SeasonDate>& date, Hemisphere hemisphere) {
    return date ? Winter(hemisphere, 2026).date(date->day).iso().substr(5) : "";
}

std::string letter(WinterClass winterClass) {
    return std::string(1, std::string("ABCN")[static_cast<std::size_t>(winterClass)]);
}

struct Column {
    const char* name;
    std::optional<SeasonDate> SeasonDates::*date;
};

constexpr Column columns[] = {{"end", &SeasonDates::lastIncome},      {"feed_by", &SeasonDates::feedAdvisedBy},
                              {"syrup", &SeasonDates::syrupDeadline}, {"syrup_hard", &SeasonDates::syrupRefused},
                              {"off", &SeasonDates::broodStop},       {"on", &SeasonDates::broodRestart},
                              {"spring", &SeasonDates::buildup},      {"forage", &SeasonDates::forage}};

// shared/reference/season_dates.csv: what the rules of the model's description give for each shipped station.
TEST(Season, EveryShippedStationHasItsDates) {
    const CsvTable table = checkValues("season_dates.csv");
    ASSERT_EQ(table.rows(), shipped().stations.size());
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const auto expected = [&](const std::string& column) { return table.cell(row, column).text; };
        const std::string id = expected("id");
        const ClimateCurve curve = curveOf(shippedStation(id));
        const SeasonDates dates = seasonOf(curve);
        EXPECT_EQ(letter(dates.winterClass), expected("class")) << id;
        EXPECT_EQ(dates.broodless() ? "1" : "0", expected("broodless")) << id;
        EXPECT_EQ(curve.hemisphere() == Hemisphere::North ? "N" : "S", expected("hemisphere")) << id;
        EXPECT_NEAR(curve.coldestNormal().value(), *numberFrom(expected("coldest_normal_C")), 0.0500001) << id;
        for (const auto& [name, date] : columns) {
            EXPECT_EQ(dayText(dates.*date), expected(name + std::string("_w"))) << id << " " << name;
            EXPECT_EQ(monthDay(dates.*date, curve.hemisphere()), expected(name + std::string("_mmdd")))
                << id << " " << name;
            if (!(dates.*date)) continue;
            EXPECT_DOUBLE_EQ((dates.*date)->sdDays, *numberFrom(expected(std::string("sd_") + name)))
                << id << " " << name;
        }
    }
}

TEST(Season, DerivedDatesComeFromTheClimateAndAreNotExact) {
    const SeasonDates dates = seasonOf(curveOf(oxfordMeanC, oxfordLatitude));
    for (const Column& column : columns) {
        ASSERT_TRUE(dates.*column.date) << column.name;
        EXPECT_EQ((dates.*column.date)->origin, DateOrigin::Climate) << column.name;
        EXPECT_FALSE((dates.*column.date)->exact) << column.name;
    }
    EXPECT_FALSE(dates.atEdgeOfRules);
}

// Worked example d of the model's description: Oxford off -72, on 10, spring 62, forage 108.
TEST(Season, OxfordWorkedExample) {
    const SeasonDates dates = seasonOf(curveOf(oxfordMeanC, oxfordLatitude));
    EXPECT_EQ(dates.winterClass, WinterClass::Flying);
    EXPECT_EQ(dates.broodStop->day.w, -72);
    EXPECT_EQ(dates.broodRestart->day.w, 10);
    EXPECT_EQ(dates.buildup->day.w, 62);
    EXPECT_EQ(dates.forage->day.w, 108);
}

TEST(Season, TropicsHaveNoDearthToDerive) {
    std::array<double, 12> means;
    means.fill(26);
    const SeasonDates dates = seasonOf(curveOf(means, 5));
    EXPECT_EQ(dates.winterClass, WinterClass::NotDerivable);
    EXPECT_FALSE(dates.derivable());
    EXPECT_FALSE(dates.broodless());
    for (const Column& column : columns) EXPECT_FALSE(dates.*column.date) << column.name;
}

TEST(Season, AlwaysColdOnTheEquatorHasNoBuildup) {
    std::array<double, 12> means;
    means.fill(8);
    const SeasonDates dates = seasonOf(curveOf(means, 0));
    EXPECT_EQ(dates.winterClass, WinterClass::NotDerivable);
    EXPECT_FALSE(dates.buildup);
    EXPECT_TRUE(dates.broodless());
}

// Laying stops for the winter where "21 days lie between": a gap of just the least is one, a day less is none.
TEST(Season, TheShortestGapIsAGap) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude);
    ModelConstants constants = shipped().constants;
    const SeasonDates oxford = deriveSeason(curve, constants);
    constants.broodlessGap = oxford.broodRestart->day - oxford.broodStop->day;
    EXPECT_TRUE(deriveSeason(curve, constants).broodless());
    constants.broodlessGap += 1;
    EXPECT_FALSE(deriveSeason(curve, constants).broodless());
}

TEST(Season, EdgeOfTheRulesIsSaid) {
    for (const char* id : {"is-reykjavik", "gb-lerwick", "no-tromso"})
        EXPECT_TRUE(seasonOf(curveOf(shippedStation(id))).atEdgeOfRules) << id;
    EXPECT_FALSE(seasonOf(curveOf(shippedStation("ch-davos"))).atEdgeOfRules);
    EXPECT_FALSE(seasonOf(curveOf(shippedStation("pt-lisbon"))).atEdgeOfRules);
}

TEST(Season, OrderHoldsAtEveryStation) {
    for (const Station& station : shipped().stations) {
        const SeasonDates dates = seasonOf(curveOf(station));
        ASSERT_TRUE(dates.derivable()) << station.id;
        EXPECT_GE(dates.forage->day - dates.buildup->day, 7) << station.id;
        if (dates.broodless()) {
            EXPECT_LE(dates.broodStop->day, dates.broodRestart->day) << station.id;
            EXPECT_GE(dates.buildup->day - dates.broodRestart->day, 7) << station.id;
        }
        if (dates.syrupDeadline) {
            EXPECT_LE(dates.feedAdvisedBy->day, dates.syrupDeadline->day) << station.id;
        }
        if (dates.syrupRefused) {
            EXPECT_LE(dates.syrupDeadline->day, dates.syrupRefused->day) << station.id;
        }
    }
}

ClimateCurve anyCurve() {
    const double mean = *rc::gen::inRange(-100, 280) / 10.0;
    const double swing = *rc::gen::inRange(0, 250) / 10.0;
    const double latitude = *rc::gen::inRange(-900, 901) / 10.0;
    const bool north = latitude >= 0;
    std::array<double, 12> means;
    for (std::size_t month = 0; month < 12; ++month)
        means[month] = std::clamp(
            mean + swing * std::cos(2 * 3.14159265358979 * (static_cast<double>(month) - (north ? 6.5 : 0.5)) / 12),
            -60.0, 45.0);
    return curveOf(means, latitude);
}

RC_GTEST_PROP(SeasonProperty, OrderHoldsInEveryClimate, ()) {
    const SeasonDates dates = seasonOf(anyCurve());
    RC_ASSERT(dates.broodStop.has_value() == dates.broodRestart.has_value());
    if (dates.broodless()) RC_ASSERT(dates.broodRestart->day - dates.broodStop->day >= 21);
    const SeasonDay restart = dates.broodless() ? dates.broodRestart->day : SeasonDay{-11};
    if (dates.buildup) RC_ASSERT(dates.buildup->day - restart >= 7);
    if (dates.derivable()) RC_ASSERT(dates.forage->day - dates.buildup->day >= 7);
    if (dates.syrupDeadline) RC_ASSERT(dates.feedAdvisedBy->day <= dates.syrupDeadline->day);
    if (dates.syrupRefused) RC_ASSERT(dates.syrupDeadline->day <= dates.syrupRefused->day);
    RC_ASSERT((dates.winterClass == WinterClass::NotDerivable) == !dates.derivable());
}

// The rules know season days only: six months rolled and the latitude turned give the same class and nearly the same days
// (months differ by up to three days in length, sun and leap days by two more).
TEST(Season, SouthMirrorsNorth) {
    std::array<double, 12> rolled;
    for (std::size_t month = 0; month < 12; ++month) rolled[month] = oxfordMeanC[(month + 6) % 12];
    const SeasonDates north = seasonOf(curveOf(oxfordMeanC, oxfordLatitude));
    const SeasonDates south = seasonOf(curveOf(rolled, -oxfordLatitude));
    EXPECT_EQ(north.winterClass, south.winterClass);
    for (const Column& column : columns)
        EXPECT_NEAR((north.*column.date)->day.w, (south.*column.date)->day.w, 5) << column.name;
}

RC_GTEST_PROP(SeasonProperty, ColderIsNeverLaterInAutumnNorEarlierInSpring, ()) {
    std::array<double, 12> means = oxfordMeanC;
    const double shift = *rc::gen::inRange(-50, 31) / 10.0;
    for (double& mean : means) mean += shift;
    const SeasonDates mild = seasonOf(curveOf(means, oxfordLatitude));
    for (double& mean : means) mean -= 1;
    const SeasonDates cold = seasonOf(curveOf(means, oxfordLatitude));
    RC_ASSERT(cold.lastIncome->day <= mild.lastIncome->day);
    RC_ASSERT(cold.feedAdvisedBy->day <= mild.feedAdvisedBy->day);
    RC_ASSERT(cold.broodStop->day <= mild.broodStop->day);
    RC_ASSERT(cold.buildup->day >= mild.buildup->day);
    RC_ASSERT(cold.forage->day >= mild.forage->day);
}

} // namespace
} // namespace winterlarder::climate::season_test
