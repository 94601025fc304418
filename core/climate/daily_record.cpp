// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/daily_record.h"

#include "calendar/months.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <map>
#include <set>

namespace winterlarder::climate {

namespace {

constexpr int fewestDaysInAll = 365;
constexpr int fewestDaysOfAMonth = 20;
constexpr int fewestDaysOfAWinter = 60;
constexpr int fewestWinters = 8;
constexpr std::size_t fewestPairs = 20;
void addProblem(Problems& problems, std::string detail, std::string remedy) {
    problems.push_back({ProblemKind::Input, {}, std::move(detail), std::move(remedy)});
}

std::vector<DailyMean> sorted(std::vector<DailyMean> record) {
    std::stable_sort(record.begin(), record.end(),
                     [](const DailyMean& a, const DailyMean& b) { return a.date < b.date; });
    return record;
}

void checkDays(const std::vector<DailyMean>& days, Problems& problems) {
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (!isMeanOfEarth(celsius(days[i].meanC)))
            addProblem(problems, fmt::format("the mean of {} is {} degC", days[i].date.iso(), days[i].meanC),
                       fmt::format("daily means lie between {} and {} degC", coldestMeanC, hottestMeanC));
        if (i > 0 && days[i].date == days[i - 1].date)
            addProblem(problems, fmt::format("{} is there twice", days[i].date.iso()), "each date stands once");
    }
    if (days.size() < fewestDaysInAll)
        addProblem(problems, fmt::format("the record has {} days", days.size()),
                   fmt::format("at least {} are needed", fewestDaysInAll));
}

struct MonthSums {
    std::array<double, 12> sum{};
    std::array<int, 12> count{};
};

std::size_t monthIndex(Date date) { return static_cast<std::size_t>(date.month() - 1); }

MonthSums monthSums(const std::vector<DailyMean>& days) {
    MonthSums sums;
    for (const DailyMean& day : days) {
        sums.sum[monthIndex(day.date)] += day.meanC;
        ++sums.count[monthIndex(day.date)];
    }
    return sums;
}

void checkMonths(const MonthSums& sums, Problems& problems) {
    for (std::size_t i = 0; i < 12; ++i)
        if (sums.count[i] < fewestDaysOfAMonth)
            addProblem(problems, fmt::format("{} has {} days in all", monthNames[i], sums.count[i]),
                       fmt::format("each month needs at least {}", fewestDaysOfAMonth));
}

// Departure of one day from the curve.
struct Anomaly {
    Date date;
    double kelvin;
};

enum class Quarter { DecemberToFebruary, JuneToAugust };

bool inQuarter(Date date, Quarter quarter) {
    const int month = date.month();
    return quarter == Quarter::DecemberToFebruary ? month == 12 || month <= 2 : month >= 6 && month <= 8;
}

std::vector<Anomaly> anomaliesIn(const std::vector<DailyMean>& days, const ClimateCurve& curve, Quarter quarter) {
    std::vector<Anomaly> result;
    for (const DailyMean& day : days) {
        if (!inQuarter(day.date, quarter)) continue;
        const Winter winter = Winter::containing(day.date, curve.hemisphere());
        result.push_back({day.date, day.meanC - curve.normal(winter.seasonDay(day.date)).value()});
    }
    return result;
}

double meanOf(const std::vector<double>& values) {
    double sum = 0;
    for (double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

double varianceOf(const std::vector<double>& values) {
    const double mean = meanOf(values);
    double sum = 0;
    for (double value : values) sum += (value - mean) * (value - mean);
    return sum / static_cast<double>(values.size() - 1);
}

std::vector<double> kelvins(const std::vector<Anomaly>& anomalies) {
    std::vector<double> values;
    for (const Anomaly& anomaly : anomalies) values.push_back(anomaly.kelvin);
    return values;
}

// Correlation of consecutive days of one quarter; nothing where too few days follow one another.
std::optional<double> lagOne(const std::vector<Anomaly>& anomalies) {
    std::vector<double> first, second;
    for (std::size_t i = 1; i < anomalies.size(); ++i) {
        if (anomalies[i].date.daysSince(anomalies[i - 1].date) != 1) continue;
        first.push_back(anomalies[i - 1].kelvin);
        second.push_back(anomalies[i].kelvin);
    }
    if (first.size() < fewestPairs) return std::nullopt;
    const double scale = std::sqrt(varianceOf(first) * varianceOf(second));
    if (!(scale > 0)) return std::nullopt;
    const double firstMean = meanOf(first), secondMean = meanOf(second);
    double covariance = 0;
    for (std::size_t i = 0; i < first.size(); ++i) covariance += (first[i] - firstMean) * (second[i] - secondMean);
    return std::clamp(covariance / static_cast<double>(first.size() - 1) / scale, -1.0, 1.0);
}

// December counts with the January after it.
int winterOf(Date date) { return date.month() == 12 ? date.year() + 1 : date.year(); }

struct WinterMeans {
    std::vector<double> means;
    double daysEach = 0;
};

WinterMeans winterMeans(const std::vector<Anomaly>& anomalies) {
    std::map<int, std::vector<double>> winters;
    for (const Anomaly& anomaly : anomalies) winters[winterOf(anomaly.date)].push_back(anomaly.kelvin);
    WinterMeans result;
    for (const auto& [year, values] : winters) {
        if (values.size() < fewestDaysOfAWinter) continue;
        result.means.push_back(meanOf(values));
        result.daysEach += static_cast<double>(values.size());
    }
    if (!result.means.empty()) result.daysEach /= static_cast<double>(result.means.size());
    return result;
}

// Variance of the mean of n consecutive values of an AR(1) process of variance 1.
double varianceOfMean(double persistence, double n) {
    double sum = 1;
    double power = 1;
    for (int lag = 1; lag < n; ++lag) {
        power *= persistence;
        sum += 2 * (1 - lag / n) * power;
    }
    return sum / n;
}

// What the means of whole winters would vary by if a season offset of this variance lay under the daily process.
double explained(double offsetVariance, double dailyVariance, double lag1, double daysEach) {
    const double within = dailyVariance - offsetVariance;
    const double persistence = (lag1 * dailyVariance - offsetVariance) / within;
    return offsetVariance + within * varianceOfMean(persistence, daysEach);
}

// The offset that explains the variance of the winter means found, by bisection; explained() grows with the offset.
std::optional<double> seasonOffsetSd(const std::vector<Anomaly>& anomalies, double dailyVariance, double lag1) {
    const WinterMeans winters = winterMeans(anomalies);
    if (winters.means.size() < fewestWinters) return std::nullopt;
    const double found = varianceOf(winters.means);
    double low = 0;
    double high = std::max(0.0, lag1) * dailyVariance;
    if (high <= 0 || lag1 >= 1 || found <= explained(0, dailyVariance, lag1, winters.daysEach)) return 0.0;
    for (int step = 0; step < 60; ++step) {
        const double middle = (low + high) / 2;
        (explained(middle, dailyVariance, lag1, winters.daysEach) < found ? low : high) = middle;
    }
    return std::sqrt((low + high) / 2);
}

void describeScatter(const std::vector<DailyMean>& days, const ClimateCurve& curve, OwnClimate& climate) {
    const bool north = curve.hemisphere() == Hemisphere::North;
    const auto winter = anomaliesIn(days, curve, north ? Quarter::DecemberToFebruary : Quarter::JuneToAugust);
    const auto summer = anomaliesIn(days, curve, north ? Quarter::JuneToAugust : Quarter::DecemberToFebruary);
    const double winterVariance = varianceOf(kelvins(winter));
    climate.dailySdWinterK = std::sqrt(winterVariance);
    climate.dailySdSummerK = std::sqrt(varianceOf(kelvins(summer)));
    climate.lag1 = lagOne(winter);
    if (climate.lag1) climate.seasonOffsetSdK = seasonOffsetSd(winter, winterVariance, *climate.lag1);
}

int yearsTouched(const std::vector<DailyMean>& days) {
    std::set<int> years;
    for (const DailyMean& day : days) years.insert(day.date.year());
    return static_cast<int>(years.size());
}

} // namespace

Outcome<RecordSummary> summarise(const std::vector<DailyMean>& record, double latitude) {
    const std::vector<DailyMean> days = sorted(record);
    const MonthSums sums = monthSums(days);
    Problems problems;
    checkDays(days, problems);
    checkMonths(sums, problems);
    if (!problems.empty()) return problems;
    RecordSummary summary;
    summary.climate.latitude = latitude;
    std::array<Temperature, 12> means;
    for (std::size_t i = 0; i < 12; ++i) {
        summary.climate.monthlyMeanC[i] = sums.sum[i] / sums.count[i];
        means[i] = celsius(summary.climate.monthlyMeanC[i]);
    }
    const auto curve = ClimateCurve::fromMonthlyMeans(means, latitude, {});
    if (!curve) return curve.problems();
    describeScatter(days, *curve, summary.climate);
    summary.days = static_cast<int>(days.size());
    summary.years = yearsTouched(days);
    summary.gaps = days.back().date.daysSince(days.front().date) + 1 - summary.days;
    return summary;
}

} // namespace winterlarder::climate
