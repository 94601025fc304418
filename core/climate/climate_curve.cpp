// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/climate_curve.h"

#include "calendar/months.h"
#include "climate/angles.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace winterlarder::climate {

namespace {

constexpr std::size_t months = 12;
constexpr std::array<int, months> monthLengths{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
using Monthly = std::array<double, months>;

constexpr double pi = std::numbers::pi;

constexpr std::size_t before(std::size_t month) { return month == 0 ? months - 1 : month - 1; }
constexpr double lengthOf(std::size_t month) { return monthLengths[month]; }

// Rows below[i] x[i-1] + diagonal[i] x[i] + above[i] x[i+1] = right[i], indices modulo 12.
struct CyclicSystem {
    Monthly below{}, diagonal{}, above{};
};

// Plain tridiagonal elimination; the corner entries below[0] and above[11] are not looked at.
Monthly solveTridiagonal(const CyclicSystem& system, Monthly right) {
    Monthly factor{};
    double pivot = system.diagonal[0];
    right[0] /= pivot;
    for (std::size_t i = 1; i < months; ++i) {
        factor[i] = system.above[i - 1] / pivot;
        pivot = system.diagonal[i] - system.below[i] * factor[i];
        right[i] = (right[i] - system.below[i] * right[i - 1]) / pivot;
    }
    for (std::size_t i = months - 1; i-- > 0;) right[i] -= factor[i + 1] * right[i + 1];
    return right;
}

// Sherman-Morrison: the two corners are a rank-one change of a tridiagonal system.
Monthly solveCyclic(CyclicSystem system, const Monthly& right) {
    const double upper = system.below[0];
    const double lower = system.above[months - 1];
    const double gamma = -system.diagonal[0];
    system.diagonal[0] -= gamma;
    system.diagonal[months - 1] -= upper * lower / gamma;
    Monthly corner{};
    corner[0] = gamma;
    corner[months - 1] = lower;
    Monthly x = solveTridiagonal(system, right);
    const Monthly z = solveTridiagonal(system, corner);
    const double share = (x[0] + upper * x[months - 1] / gamma) / (1.0 + z[0] + upper * z[months - 1] / gamma);
    for (std::size_t i = 0; i < months; ++i) x[i] -= share * z[i];
    return x;
}

double annualMean(const Monthly& means) {
    double sum = 0;
    for (std::size_t i = 0; i < months; ++i) sum += lengthOf(i) * means[i];
    return sum / daysInYear;
}

// Slopes of the cumulative spline at the start of each month.
Monthly edgeSlopes(const Monthly& means, double mean) {
    CyclicSystem system;
    Monthly right{};
    for (std::size_t i = 0; i < months; ++i) {
        const double left = 1.0 / lengthOf(before(i));
        const double next = 1.0 / lengthOf(i);
        system.below[i] = left;
        system.diagonal[i] = 2.0 * (left + next);
        system.above[i] = next;
        right[i] = 3.0 * ((means[before(i)] - mean) * left + (means[i] - mean) * next);
    }
    return solveCyclic(system, right);
}

// Cumulative departure from the annual mean within one month, day days after its start.
struct MonthPiece {
    double start, end, startSlope, endSlope, length;
    double at(int day) const {
        const double u = day / length;
        const double u2 = u * u;
        const double u3 = u2 * u;
        return start * (2 * u3 - 3 * u2 + 1) + startSlope * length * (u3 - 2 * u2 + u) + end * (3 * u2 - 2 * u3) +
               endSlope * length * (u3 - u2);
    }
};

std::array<double, daysInYear> dailyNormals(const Monthly& means) {
    const double mean = annualMean(means);
    const Monthly slopes = edgeSlopes(means, mean);
    std::array<double, daysInYear> normals{};
    std::size_t dayOfYear = 0;
    double start = 0;
    for (std::size_t i = 0; i < months; ++i) {
        const std::size_t next = (i + 1) % months;
        const double end = next == 0 ? 0.0 : start + (means[i] - mean) * lengthOf(i);
        const MonthPiece piece{start, end, slopes[i], slopes[next], lengthOf(i)};
        for (int day = 0; day < monthLengths[i]; ++day) normals[dayOfYear++] = mean + piece.at(day + 1) - piece.at(day);
        start = end;
    }
    return normals;
}

void checkMeans(const std::array<Temperature, months>& means, Problems& problems) {
    for (std::size_t i = 0; i < months; ++i)
        if (!isMeanOfEarth(means[i]))
            problems.push_back(
                inputProblem(fmt::format("the mean temperature of {} is {} degC", monthNames[i], means[i].value()),
                             fmt::format("monthly means lie between {} and {} degC", coldestMeanC, hottestMeanC)));
}

void checkSpread(std::string_view what, double value, Problems& problems) {
    if (!(value >= 0 && std::isfinite(value)))
        problems.push_back(inputProblem(fmt::format("the {} is {} K", what, value), "it is 0 or more"));
}

void checkVariability(const Variability& variability, Problems& problems) {
    checkSpread("spread of daily means in winter", variability.dailySdWinter, problems);
    checkSpread("spread of daily means in summer", variability.dailySdSummer, problems);
    checkSpread("spread of a whole season's mean", variability.seasonOffsetSd, problems);
    if (!(variability.lag1 >= -1 && variability.lag1 <= 1))
        problems.push_back(inputProblem(fmt::format("the correlation of consecutive days is {}", variability.lag1),
                                        "it lies between -1 and 1"));
}

void checkLatitude(double latitude, Problems& problems) {
    if (!(latitude >= -90 && latitude <= 90))
        problems.push_back(
            inputProblem(fmt::format("the latitude is {}", latitude), "it lies between -90 and 90 degrees"));
}

} // namespace

Outcome<ClimateCurve> ClimateCurve::fromMonthlyMeans(const std::array<Temperature, 12>& monthlyMeans, double latitude,
                                                     const Variability& variability) {
    Problems problems;
    checkMeans(monthlyMeans, problems);
    checkLatitude(latitude, problems);
    checkVariability(variability, problems);
    if (!problems.empty()) return problems;
    Monthly means{};
    std::transform(monthlyMeans.begin(), monthlyMeans.end(), means.begin(), [](Temperature t) { return t.value(); });
    ClimateCurve curve;
    curve.normalC_ = dailyNormals(means);
    curve.latitude_ = latitude;
    curve.variability_ = variability;
    return curve;
}

ClimateCurve ClimateCurve::constant(Temperature everyDay, double latitude, const Variability& variability) {
    require(std::isfinite(everyDay.value()), "the constant temperature is {}", everyDay.value());
    require(latitude >= -90 && latitude <= 90, "the latitude is {}", latitude);
    ClimateCurve curve;
    curve.normalC_.fill(everyDay.value());
    curve.latitude_ = latitude;
    curve.variability_ = variability;
    return curve;
}

Temperature ClimateCurve::normal(SeasonDay day) const {
    return celsius(normalC_[static_cast<std::size_t>(dayOfYear(day, hemisphere()))]);
}

Temperature ClimateCurve::coldestNormal() const { return celsius(*std::min_element(normalC_.begin(), normalC_.end())); }

TemperatureDifference ClimateCurve::dailySd(SeasonDay day) const {
    const double winterness = 0.5 + 0.5 * std::cos(2 * pi * (day.w - 14) / daysInYear);
    const double sd =
        variability_.dailySdSummer + (variability_.dailySdWinter - variability_.dailySdSummer) * winterness;
    const double offset = variability_.seasonOffsetSd;
    return kelvins(std::sqrt(std::max(0.25, sd * sd - offset * offset)));
}

double ClimateCurve::dailyPersistence() const {
    const double total = variability_.dailySdWinter * variability_.dailySdWinter;
    const double season = variability_.seasonOffsetSd * variability_.seasonOffsetSd;
    if (total <= season) return 0;
    return std::clamp((variability_.lag1 * total - season) / (total - season), 0.0, 0.95);
}

Hours ClimateCurve::dayLength(SeasonDay day) const {
    return climate::dayLength(latitude_, dayOfYear(day, hemisphere()));
}

Hours dayLength(double latitude, int dayOfYear, double p) {
    require(dayOfYear >= 0 && dayOfYear < daysInYear, "day {} of a year of 365", dayOfYear);
    const double revolution = 0.2163108 + 2 * std::atan(0.9671396 * std::tan(0.00860 * (dayOfYear + 1 - 186)));
    const double declination = std::asin(0.39795 * std::cos(revolution));
    const double cosine = (std::sin(radians(p)) + std::sin(radians(latitude)) * std::sin(declination)) /
                          (std::cos(radians(latitude)) * std::cos(declination));
    return Hours(24.0 - 24.0 / pi * std::acos(std::clamp(cosine, -1.0, 1.0)));
}

} // namespace winterlarder::climate
