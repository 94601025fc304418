// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/records.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <random>

namespace winterlarder::climate::daily_record_test {
namespace {

using testing::HasSubstr;

double normalOf(const ClimateCurve& curve, Date date) {
    return curve.normal(Winter::containing(date, curve.hemisphere()).seasonDay(date)).value();
}

struct Truth {
    double dailySd;
    double persistence;
    double offsetSd;
    double totalVariance() const { return dailySd * dailySd + offsetSd * offsetSd; }
    double lag1() const { return (persistence * dailySd * dailySd + offsetSd * offsetSd) / totalVariance(); }
};

constexpr int firstYear = 1500;
constexpr int lastYear = 2499;
constexpr double winters = lastYear - firstYear;
constexpr double daysOfAWinter = 90.25;

//! The curve plus an AR(1) process plus an offset of each whole season, the process the model draws its weather from.
std::vector<DailyMean> synthetic(const Truth& truth, const ClimateCurve& curve, std::uint64_t seed,
                                 int from = firstYear, int to = lastYear) {
    std::mt19937_64 generator(seed);
    std::normal_distribution<double> normal;
    double daily = normal(generator);
    double offset = truth.offsetSd * normal(generator);
    const double fresh = std::sqrt(1 - truth.persistence * truth.persistence);
    return recordOf(from, to, [&](Date date) {
        if (date.month() == 8 && date.day() == 1) offset = truth.offsetSd * normal(generator);
        daily = truth.persistence * daily + fresh * normal(generator);
        return normalOf(curve, date) + offset + truth.dailySd * daily;
    });
}

// Standard error of a variance from N days of an AR(1) process over W offsets: both parts and their product.
double varianceError(const Truth& truth) {
    const double days = winters * daysOfAWinter;
    const double s2 = truth.dailySd * truth.dailySd, o2 = truth.offsetSd * truth.offsetSd;
    const double r = truth.persistence;
    return std::sqrt(2 * s2 * s2 * (1 + r * r) / (1 - r * r) / days + 2 * o2 * o2 / winters +
                     4 * o2 * s2 * (1 + r) / (1 - r) / days);
}

// Variance of a winter's mean: the offset and what is left of the daily process.
double winterMeanVariance(const Truth& truth) {
    const double r = truth.persistence;
    return truth.offsetSd * truth.offsetSd + truth.dailySd * truth.dailySd * (1 + r) / (1 - r) / daysOfAWinter;
}

constexpr Truth truths[] = {{3.0, 0.70, 0.8}, {4.5, 0.80, 1.2}, {2.2, 0.50, 0.5}};
constexpr double standardErrors = 4; // one false alarm in 16,000 for each value, and the seeds are fixed

TEST(DailyRecord, FindsTheProcessItWasDrawnFrom) {
    const ClimateCurve curve = curveOf(oxfordMeanC, oxfordLatitude);
    std::uint64_t seed = 20260901;
    for (const Truth& truth : truths) {
        const RecordSummary summary = accepted(synthetic(truth, curve, seed++), oxfordLatitude);
        const OwnClimate& found = summary.climate;
        const double sd = std::sqrt(truth.totalVariance());
        EXPECT_NEAR(*found.dailySdWinterK, sd, standardErrors * varianceError(truth) / (2 * sd));
        EXPECT_NEAR(*found.dailySdSummerK, sd, standardErrors * varianceError(truth) / (2 * sd));
        const double lag1Error = std::sqrt((1 - truth.lag1() * truth.lag1()) / (winters * daysOfAWinter)) +
                                 (1 - truth.lag1()) * varianceError(truth) / truth.totalVariance();
        EXPECT_NEAR(*found.lag1, truth.lag1(), standardErrors * lag1Error);
        const double offsetError = winterMeanVariance(truth) * std::sqrt(2 / winters) / (2 * truth.offsetSd);
        ASSERT_TRUE(found.seasonOffsetSdK);
        EXPECT_NEAR(*found.seasonOffsetSdK, truth.offsetSd, standardErrors * offsetError);
        for (std::size_t month = 0; month < 12; ++month)
            EXPECT_NEAR(found.monthlyMeanC[month], oxfordMeanC[month],
                        standardErrors * std::sqrt(3 * winterMeanVariance(truth) / winters))
                << "month " << month + 1;
        EXPECT_EQ(summary.years, lastYear - firstYear + 1);
        EXPECT_EQ(summary.gaps, 0);
    }
}

TEST(DailyRecord, FindsNoOffsetWhereThereIsNone) {
    const Truth truth{3.0, 0.70, 0.0};
    const auto record = synthetic(truth, curveOf(oxfordMeanC, oxfordLatitude), 7);
    const auto offset = accepted(record, oxfordLatitude).climate.seasonOffsetSdK;
    ASSERT_TRUE(offset);
    const double varianceNoise = winterMeanVariance(truth) * std::sqrt(2 / winters);
    EXPECT_LE(*offset, std::sqrt(standardErrors * varianceNoise));
}

// The raw lag holds the offset too. Taken for the daily process's own it would explain so much of the spread of winters that the
// offset came out low by four standard errors here: eight thousand winters tell the two apart.
TEST(DailyRecord, OffsetIsNotTakenForPersistence) {
    const Truth truth{3.0, 0.90, 1.0};
    constexpr int from = 1401, to = 9801;
    const auto record = synthetic(truth, curveOf(oxfordMeanC, oxfordLatitude), 23, from, to);
    const double offsetError = winterMeanVariance(truth) * std::sqrt(2.0 / (to - from)) / (2 * truth.offsetSd);
    EXPECT_NEAR(*accepted(record, oxfordLatitude).climate.seasonOffsetSdK, truth.offsetSd, 3 * offsetError);
}

// What it finds is what the model draws from again: persistence within a season comes back.
TEST(DailyRecord, GivesBackThePersistenceWithinASeason) {
    const Truth truth = truths[0];
    const auto found = accepted(synthetic(truth, curveOf(oxfordMeanC, oxfordLatitude), 11), oxfordLatitude).climate;
    const ClimateCurve curve =
        curveOf(oxfordMeanC, oxfordLatitude,
                {*found.dailySdWinterK, *found.dailySdSummerK, *found.lag1, *found.seasonOffsetSdK});
    EXPECT_NEAR(curve.dailyPersistence(), truth.persistence, 0.02);
    EXPECT_NEAR(curve.dailySd({14}).value(), truth.dailySd, 0.05);
}

// December to February scatters by 4 K, June to August by 2 K: in the south that is summer and winter.
TEST(DailyRecord, SouthSwapsWinterAndSummer) {
    std::mt19937_64 generator(3);
    std::normal_distribution<double> normal;
    const auto record = recordOf(2000, 2030, [&](Date date) {
        const bool juneToAugust = date.month() >= 6 && date.month() <= 8;
        return 12 + (juneToAugust ? 2 : 4) * normal(generator);
    });
    const OwnClimate north = accepted(record, 50).climate;
    const OwnClimate south = accepted(record, -50).climate;
    const double error = standardErrors / std::sqrt(2 * 31 * daysOfAWinter);
    EXPECT_NEAR(*north.dailySdWinterK, 4, 4 * error);
    EXPECT_NEAR(*north.dailySdSummerK, 2, 2 * error);
    EXPECT_NEAR(*south.dailySdWinterK, 2, 2 * error);
    EXPECT_NEAR(*south.dailySdSummerK, 4, 4 * error);
    EXPECT_NEAR(*north.lag1, 0, standardErrors / std::sqrt(31 * daysOfAWinter));
}

double jagged(Date date) {
    return 10 + 5 * std::cos(2 * 3.14159265 * date.daysSince(day(2000, 1, 15)) / 365.25) + date.day() % 3;
}

TEST(DailyRecord, MonthlyMeansAreThoseOfTheDays) {
    const auto record = recordOf(2001, 2003, jagged);
    const OwnClimate climate = accepted(record, 45).climate;
    for (int month = 1; month <= 12; ++month) {
        double sum = 0;
        int count = 0;
        for (const DailyMean& entry : record)
            if (entry.date.month() == month) sum += entry.meanC, ++count;
        EXPECT_NEAR(climate.monthlyMeanC[static_cast<std::size_t>(month - 1)], sum / count, 1e-9) << month;
    }
    EXPECT_DOUBLE_EQ(climate.latitude, 45);
    EXPECT_FALSE(climate.longitude);
}

TEST(DailyRecord, OrderOfTheDaysDoesNotMatter) {
    auto record = recordOf(2001, 2012, jagged);
    const OwnClimate inOrder = accepted(record, 45).climate;
    std::shuffle(record.begin(), record.end(), std::mt19937(5));
    const OwnClimate shuffled = accepted(record, 45).climate;
    EXPECT_EQ(inOrder.monthlyMeanC, shuffled.monthlyMeanC);
    EXPECT_EQ(inOrder.lag1, shuffled.lag1);
    EXPECT_EQ(inOrder.seasonOffsetSdK, shuffled.seasonOffsetSdK);
}

TEST(DailyRecord, SeasonOffsetNeedsEightWinters) {
    EXPECT_FALSE(accepted(recordOf(2001, 2006, jagged), 45).climate.seasonOffsetSdK);
    EXPECT_TRUE(accepted(recordOf(2001, 2009, jagged), 45).climate.seasonOffsetSdK);
}

TEST(DailyRecord, CountsGapsAndYears) {
    auto record = recordOf(2001, 2003, jagged);
    record.erase(record.begin() + 100, record.begin() + 110);
    const RecordSummary summary = accepted(record, 45);
    EXPECT_EQ(summary.gaps, 10);
    EXPECT_EQ(summary.years, 3);
    EXPECT_EQ(summary.days, 3 * 365 - 10);
}

TEST(DailyRecord, LagIsUnknownWhereNoDaysFollowEachOther) {
    auto record = recordOf(2001, 2004, jagged);
    std::erase_if(record, [](const DailyMean& entry) { return entry.date.daysSince(day(2001, 1, 1)) % 2 == 1; });
    const OwnClimate climate = accepted(record, 45).climate;
    EXPECT_FALSE(climate.lag1);
    EXPECT_FALSE(climate.seasonOffsetSdK);
    EXPECT_TRUE(climate.dailySdWinterK);
}

TEST(DailyRecord, AFlatRecordHasNoLag) {
    const OwnClimate climate = accepted(recordOf(2001, 2012, [](Date) { return 6.0; }), 45).climate;
    EXPECT_NEAR(*climate.dailySdWinterK, 0, 1e-9);
}

std::string refusal(const std::vector<DailyMean>& record, double latitude = 45) {
    const auto summary = summarise(record, latitude);
    return summary.ok() ? "accepted" : describe(summary.problems().front());
}

TEST(DailyRecord, RefusesWhatCannotBeUsed) {
    auto record = recordOf(2001, 2003, jagged);
    EXPECT_EQ(refusal(record), "accepted");
    EXPECT_THAT(refusal(record, 95), HasSubstr("latitude"));
    record[17].meanC = 46;
    EXPECT_EQ(refusal(record), "the mean of 2001-01-18 is 46 degC; daily means lie between -60 and 45 degC");
    record[17].meanC = std::numeric_limits<double>::quiet_NaN();
    EXPECT_THAT(refusal(record), HasSubstr("2001-01-18"));
    record[17] = record[16];
    EXPECT_EQ(refusal(record), "2001-01-17 is there twice; each date stands once");
    EXPECT_THAT(refusal({}), HasSubstr("the record has 0 days; at least 365 are needed"));
}

TEST(DailyRecord, RefusesAMonthWithTooFewDays) {
    auto record = recordOf(2001, 2003, jagged);
    std::erase_if(record, [](const DailyMean& entry) {
        return entry.date.month() == 5 && (entry.date.year() > 2001 || entry.date.day() > 19);
    });
    EXPECT_EQ(refusal(record), "May has 19 days in all; each month needs at least 20");
}

TEST(DailyRecord, RefusesLessThanAYear) {
    auto record = recordOf(2001, 2001, jagged);
    EXPECT_EQ(refusal(record), "accepted");
    record.pop_back();
    EXPECT_EQ(refusal(record), "the record has 364 days; at least 365 are needed");
}

TEST(DailyRecord, EveryFaultIsListed) {
    auto record = recordOf(2001, 2003, jagged);
    record[3].meanC = 99;
    record[5].meanC = -99;
    record.push_back(record[7]);
    const auto summary = summarise(record, 45);
    ASSERT_FALSE(summary);
    EXPECT_EQ(summary.problems().size(), 3u);
}

// Daily highest and lowest temperature at Seattle, 2012-2015 (NOAA), as the Debian package python3-vega-datasets ships it:
// a dependency of the tests, and this test fails where it is not installed.
std::vector<DailyMean> seattle() {
    const auto table = CsvTable::read("/usr/lib/python3/dist-packages/vega_datasets/_data/seattle-weather.csv");
    require(table.ok(), "install python3-vega-datasets: {}",
            table.ok() ? std::string() : describe(table.problems().front()));
    std::vector<DailyMean> record;
    for (std::size_t row = 0; row < table->rows(); ++row) {
        std::string iso = table->cell(row, "date").text;
        std::replace(iso.begin(), iso.end(), '/', '-');
        const double highest = *numberFrom(table->cell(row, "temp_max").text);
        const double lowest = *numberFrom(table->cell(row, "temp_min").text);
        record.push_back({*Date::parse(iso), (highest + lowest) / 2});
    }
    return record;
}

TEST(DailyRecord, SeattleIsReadWhole) {
    const RecordSummary summary = accepted(seattle(), 47.45);
    EXPECT_EQ(summary.days, 1461);
    EXPECT_EQ(summary.years, 4);
    EXPECT_EQ(summary.gaps, 0);
    EXPECT_FALSE(summary.climate.seasonOffsetSdK) << "five winters, not eight";
}

// The station's statistics come from 1995-2013. Four years, among them the two warmest of the region until then, and the middle
// of highest and lowest in place of a mean of hours: months within 2.5 K (three standard errors of a mean of four months, SD
// 1.4 K, and 0.4 K), the year within 1.5 K. An SD of about 360 days with correlation 0.75 (80 independent ones) is known to
// 8 %, a lag of 0.75 to 0.035: three of those, and 5 % for the middle of highest and lowest.
TEST(DailyRecord, SeattleIsNearItsStation) {
    const OwnClimate climate = accepted(seattle(), 47.45).climate;
    const Station& station = shippedStation("us-wa-seattle");
    double yearly = 0;
    for (std::size_t month = 0; month < 12; ++month) {
        EXPECT_NEAR(climate.monthlyMeanC[month], station.monthlyMeanC[month], 2.5) << "month " << month + 1;
        yearly += (climate.monthlyMeanC[month] - station.monthlyMeanC[month]) / 12;
    }
    EXPECT_NEAR(yearly, 0, 1.5);
    EXPECT_NEAR(*climate.dailySdWinterK / station.dailySdWinterK, 1, 0.29);
    EXPECT_NEAR(*climate.dailySdSummerK / station.dailySdSummerK, 1, 0.29);
    EXPECT_NEAR(*climate.lag1, station.lag1, 0.105 + 0.05);
}

} // namespace
} // namespace winterlarder::climate::daily_record_test
