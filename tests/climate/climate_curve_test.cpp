// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/climate_curve.h"

#include "climate/shipped.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::climate::climate_curve_test {
namespace {

constexpr double meansTolerance = 1e-9; // stated bound of the mean-preserving spline

struct WorkedDay {
    int w;
    double normalC;
};

// Worked example of the model's description in DEVELOPERS.md, section "Station input"; printed to three decimals.
constexpr WorkedDay oxfordDays[] = {{-92, 13.265}, {-60, 9.441}, {-30, 6.171}, {0, 5.084},
                                    {30, 5.190},   {60, 6.400},  {90, 8.638},  {108, 10.056}};

TEST(ClimateCurve, TakesTheMeansTheDictionaryAllows) {
    const NumberRange allowed = shipped().range("site.monthly_mean_c");
    EXPECT_EQ(allowed.least, coldestMeanC);
    EXPECT_EQ(allowed.most, hottestMeanC);
}

TEST(ClimateCurve, OxfordWorkedExample) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude);
    for (const auto& [w, normalC] : oxfordDays) EXPECT_NEAR(curve.normal({w}).value(), normalC, 0.0005) << w;
    double sum = 0;
    for (int w = -153; w <= 211; ++w) sum += curve.normal({w}).value();
    EXPECT_NEAR(sum / daysInYear, 11.07507, 0.000005) << "annual mean of the worked example";
}

TEST(ClimateCurve, MonthMeansComeBackAtEveryStation) {
    for (const Station& station : shipped().stations)
        for (std::size_t month = 0; month < 12; ++month)
            EXPECT_NEAR(monthMeanC(curveOf(station), month), station.monthlyMeanC[month], meansTolerance)
                << station.id << " month " << month + 1;
}

// Check value P04 of shared/reference/winter_checks.csv: Bordeaux, greatest error 1e-9 K.
TEST(ClimateCurve, MonthMeansComeBackInBordeaux) {
    const Station& station = shippedStation("fr-bordeaux");
    for (std::size_t month = 0; month < 12; ++month)
        EXPECT_NEAR(monthMeanC(curveOf(station), month), station.monthlyMeanC[month], meansTolerance);
}

// 1920-1939 at Nottingham Castle (O. D. Anderson 1976, Time Series Analysis and Forecasting: The Box-Jenkins Approach).
std::array<double, 12> nottinghamMeanC() {
    const CsvTable table = checkValues("nottingham_monthly.csv");
    require(table.rows() == 20, "{} years of Nottingham Castle", table.rows());
    std::array<double, 12> means{};
    for (std::size_t row = 0; row < table.rows(); ++row)
        for (std::size_t month = 0; month < 12; ++month) {
            const auto fahrenheit = numberFrom(table.cell(row, month + 1).text);
            require(fahrenheit.has_value(), "row {} month {} is no number", row, month + 1);
            means[month] += (*fahrenheit - 32) / 1.8 / 20;
        }
    return means;
}

TEST(ClimateCurve, NottinghamCastleComesBack) {
    const std::array<double, 12> means = nottinghamMeanC();
    const ClimateCurve curve = curveOf(means, 52.95);
    for (std::size_t month = 0; month < 12; ++month)
        EXPECT_NEAR(monthMeanC(curve, month), means[month], meansTolerance) << "month " << month + 1;
}

// Sheffield lies 60 km north, 70 m higher (0.5 K), and its normals are 70 years younger: central England has warmed by
// about 1 K since. A mean of 20 Januaries is known to 0.3 K. So a year within 1 K, each month within 1.5 K.
TEST(ClimateCurve, NottinghamCastleIsNearSheffield) {
    const std::array<double, 12> means = nottinghamMeanC();
    const Station& sheffield = shippedStation("gb-sheffield");
    double yearly = 0;
    for (std::size_t month = 0; month < 12; ++month) {
        EXPECT_NEAR(means[month], sheffield.monthlyMeanC[month], 1.5) << "month " << month + 1;
        yearly += (means[month] - sheffield.monthlyMeanC[month]) / 12;
    }
    EXPECT_NEAR(yearly, 0, 1.0);
}

TEST(ClimateCurve, ColdestNormal) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude);
    double coldest = 100;
    for (int w = -153; w <= 211; ++w) coldest = std::min(coldest, curve.normal({w}).value());
    EXPECT_DOUBLE_EQ(curve.coldestNormal().value(), coldest);
    EXPECT_LT(coldest, 5.2) << "the coldest day lies under the coldest month's mean";
}

TEST(ClimateCurve, EqualMonthsGiveEqualDays) {
    std::array<double, 12> means;
    means.fill(6.0);
    const ClimateCurve curve = curveOf(means, 50);
    for (int w = -153; w <= 211; ++w) EXPECT_NEAR(curve.normal({w}).value(), 6.0, 1e-12);
}

TEST(ClimateCurve, Constant) {
    const ClimateCurve curve = ClimateCurve::constant(celsius(6), -37.8, {4, 3, 0.8, 0.5});
    for (int w = -153; w <= 211; ++w) EXPECT_EQ(curve.normal({w}), celsius(6));
    EXPECT_EQ(curve.coldestNormal(), celsius(6));
    EXPECT_EQ(curve.hemisphere(), Hemisphere::South);
    EXPECT_DOUBLE_EQ(curve.latitude(), -37.8);
    EXPECT_THROW((void)ClimateCurve::constant(celsius(NAN), 50, {}), ContractViolation);
}

TEST(ClimateCurve, SouthCountsFromJuly) {
    const Station& melbourne = shippedStation("au-melbourne");
    const ClimateCurve curve = curveOf(melbourne);
    const Winter winter(Hemisphere::South, 2026);
    const SeasonDay midJuly = winter.seasonDay(*Date::of(2026, 7, 16));
    const SeasonDay midJanuary = winter.seasonDay(*Date::of(2027, 1, 16));
    EXPECT_NEAR(curve.normal(midJuly).value(), melbourne.monthlyMeanC[6], 1.0);
    EXPECT_NEAR(curve.normal(midJanuary).value(), melbourne.monthlyMeanC[0], 1.0);
}

std::array<double, 12> anyMeans() {
    std::array<double, 12> means;
    for (double& mean : means) mean = *rc::gen::inRange(-6000, 4501) / 100.0;
    return means;
}

RC_GTEST_PROP(ClimateCurveProperty, MonthMeansComeBackWhateverTheyAre, ()) {
    const std::array<double, 12> means = anyMeans();
    const ClimateCurve curve = curveOf(means, *rc::gen::element(50.0, -50.0));
    for (std::size_t month = 0; month < 12; ++month)
        RC_ASSERT(std::abs(monthMeanC(curve, month) - means[month]) < meansTolerance);
}

RC_GTEST_PROP(ClimateCurveProperty, WarmerByOneKelvinIsWarmerByOneKelvinEveryDay, ()) {
    std::array<double, 12> means = anyMeans();
    for (double& mean : means) mean = std::min(mean, 44.0);
    const ClimateCurve cool = curveOf(means, 50);
    for (double& mean : means) mean += 1;
    const ClimateCurve warm = curveOf(means, 50);
    for (int w = -153; w <= 211; ++w)
        RC_ASSERT(std::abs(warm.normal({w}).value() - cool.normal({w}).value() - 1) < meansTolerance);
}

// The spline's derivative, the temperature itself, runs on over the edges of months: no day-to-day step beyond what
// the months' own differences ask for.
TEST(ClimateCurve, RunsSmoothlyOverTheEdgesOfMonthsAndOfTheYear) {
    for (const Station& station : shipped().stations) {
        const ClimateCurve curve = curveOf(station);
        const auto [low, high] = std::minmax_element(station.monthlyMeanC.begin(), station.monthlyMeanC.end());
        const double steepest = (*high - *low) / 30;
        for (int w = -153; w <= 211; ++w)
            ASSERT_LT(std::abs(curve.normal({w + 1}).value() - curve.normal({w}).value()), steepest)
                << station.id << " season day " << w;
    }
}

TEST(Variability, WinterAndSummerSpread) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude, {4.0, 3.0, 0.80, 0.5});
    EXPECT_NEAR(curve.dailySd({14}).value(), std::sqrt(16 - 0.25), 1e-12);
    EXPECT_NEAR(curve.dailySd({14 - 365 / 2}).value(), std::sqrt(9 - 0.25), 1e-3);
    EXPECT_GE(curve.dailySd({14}), curve.dailySd({100}));
}

TEST(Variability, SpreadNeverFallsUnderHalfAKelvin) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude, {0.6, 0.6, 0.8, 0.59});
    for (int w = -153; w <= 211; ++w) EXPECT_DOUBLE_EQ(curve.dailySd({w}).value(), 0.5);
}

double persistence(double sw, double lag1, double so) {
    return curveOf(oxfordMeanC, oxfordLatitude, {sw, 3, lag1, so}).dailyPersistence();
}

TEST(Variability, PersistenceWithinASeason) {
    EXPECT_NEAR(persistence(4.0, 0.80, 0.5), (0.80 * 16 - 0.25) / (16 - 0.25), 1e-15);
    EXPECT_DOUBLE_EQ(persistence(4.0, 0.99, 0), 0.95);
    EXPECT_DOUBLE_EQ(persistence(4.0, 0.01, 1.0), 0.0);
    EXPECT_DOUBLE_EQ(persistence(4.0, -0.5, 0), 0.0);
    EXPECT_DOUBLE_EQ(persistence(0.5, 0.8, 0.5), 0.0) << "nothing is left for the daily process";
    EXPECT_DOUBLE_EQ(persistence(0.5, 0.8, 0.9), 0.0);
    EXPECT_DOUBLE_EQ(persistence(0, 0, 0), 0.0);
}

std::size_t problemsOf(std::array<double, 12> means, double latitude, const Variability& variability) {
    const auto curve = ClimateCurve::fromMonthlyMeans(temperatures(means), latitude, variability);
    return curve.ok() ? 0 : curve.problems().size();
}

TEST(ClimateCurve, RefusesWhatCannotBe) {
    constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
    constexpr double endless = std::numeric_limits<double>::infinity();
    EXPECT_EQ(problemsOf(oxfordMeanC, 51.76, {4, 3, 0.8, 0.5}), 0u);
    for (const double bad : {nothing, endless, -endless, 45.1, -60.1}) {
        std::array<double, 12> means = oxfordMeanC;
        means[3] = bad;
        EXPECT_EQ(problemsOf(means, 51.76, {}), 1u) << bad;
    }
    for (const double bad : {nothing, 90.1, -91.0}) EXPECT_EQ(problemsOf(oxfordMeanC, bad, {}), 1u) << bad;
    EXPECT_EQ(problemsOf(oxfordMeanC, 51.76, {-1, 3, 0.8, 0.5}), 1u);
    EXPECT_EQ(problemsOf(oxfordMeanC, 51.76, {4, nothing, 0.8, 0.5}), 1u);
    EXPECT_EQ(problemsOf(oxfordMeanC, 51.76, {4, 3, 1.1, 0.5}), 1u);
    EXPECT_EQ(problemsOf(oxfordMeanC, 51.76, {4, 3, 0.8, endless}), 1u);
    std::array<double, 12> means = oxfordMeanC;
    means[0] = means[11] = 99;
    EXPECT_EQ(problemsOf(means, 100, {-1, -1, 2, -1}), 7u) << "every problem is listed";
}

TEST(ClimateCurve, NamesTheMonthAtFault) {
    std::array<double, 12> means = oxfordMeanC;
    means[3] = 99;
    const auto curve = ClimateCurve::fromMonthlyMeans(temperatures(means), 51.76, {});
    ASSERT_FALSE(curve);
    EXPECT_EQ(describe(curve.problems().front()),
              "the mean temperature of April is 99 degC; monthly means lie between -60 and 45 degC");
}

TEST(ClimateCurve, TakesTheExtremes) {
    std::array<double, 12> means;
    means.fill(-60);
    EXPECT_EQ(problemsOf(means, 90, {}), 0u);
    means.fill(45);
    EXPECT_EQ(problemsOf(means, -90, {}), 0u);
}

} // namespace
} // namespace winterlarder::climate::climate_curve_test
