// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log.h"

#include "calendar/date.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>
#include <sstream>

namespace winterlarder::exchange::scale_log_test {
namespace {

using ::testing::HasSubstr;

Outcome<ScaleLog> read(const std::string& text, const ScaleLogOptions& options = {}) {
    std::istringstream stream(text);
    return readScaleLog(stream, "log.csv", options);
}

ScaleLog must(const std::string& text, const ScaleLogOptions& options = {}) {
    auto log = read(text, options);
    if (!log) throw std::runtime_error(describe(log.problems().front()));
    return std::move(log).value();
}

std::string problemOf(const std::string& text, const ScaleLogOptions& options = {}) {
    const auto log = read(text, options);
    return log ? "" : describe(log.problems().front());
}

std::int64_t secondsOf(int year, int month, int day, int second) {
    return static_cast<std::int64_t>(Date::of(year, month, day)->daysSince(*Date::of(1970, 1, 1))) * 86400 + second;
}

// The same three readings, written as different loggers and spreadsheets do.
struct Form {
    const char* name;
    const char* text;
};
class Forms : public ::testing::TestWithParam<Form> {};
TEST_P(Forms, OfTheSameThreeReadingsGiveTheSame) {
    const ScaleLog log = must(GetParam().text);
    ASSERT_EQ(log.rows.size(), 3u);
    EXPECT_TRUE(log.faults.empty());
    const double kg[] = {52.731, 52.74, 53};
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(log.rows[static_cast<std::size_t>(i)].seconds, secondsOf(2018, 10, 13 + i, 50700)) << GetParam().text;
        EXPECT_NEAR(log.rows[static_cast<std::size_t>(i)].kg, kg[i], 1e-9) << GetParam().text;
    }
}
INSTANTIATE_TEST_SUITE_P(
    Written, Forms,
    ::testing::Values(
        Form{"iso", "time,weight\n2018-10-13 14:05:00,52.731\n2018-10-14 14:05:00,52.74\n2018-10-15 14:05:00,53\n"},
        Form{"isoNoHeader", "2018-10-13T14:05,52.731\n2018-10-14T14:05,52.74\n2018-10-15T14:05,53"},
        Form{"german",
             "Datum;Gewicht [kg]\r\n13.10.2018 14:05;52,731\r\n14.10.2018 14:05;52,74\r\n15.10.2018 14:05;53,0\r\n"},
        Form{"dateApart",
             "Datum;Uhrzeit;Gewicht\n13.10.2018;14:05;52,731\n14.10.2018;14:05;52,74\n15.10.2018;14:05;53,00\n"},
        Form{"american",
             "Time,Weight (kg)\n10/13/2018 2:05 PM,52.731\n10/14/2018 2:05 PM,52.74\n10/15/2018 2:05 PM,53\n"},
        Form{
            "dayFirst",
            "\"when\",\"kg\"\n\"13/10/2018 14:05\",\"52,731\"\n\"14/10/2018 14:05\",\"52,74\"\n\"15/10/2018 14:05\",\"53\"\n"},
        Form{"tabs", "time\tweight_g\n2018-10-13 14:05\t52731\n2018-10-14 14:05\t52740\n2018-10-15 14:05\t53000\n"},
        Form{"gramsUnsaid", "2018-10-13 14:05;52731\n2018-10-14 14:05;52740\n2018-10-15 14:05;53000\n"},
        Form{"gramsInThousands",
             "time;weight g\n2018-10-13 14:05;52,731\n2018-10-14 14:05;52,740\n2018-10-15 14:05;53,000\n"},
        Form{"unitInCells",
             "at,value\n2018-10-13 14:05,52.731 kg\n2018-10-14 14:05,52.74 kg\n2018-10-15 14:05,53 kg\n"},
        Form{"otherColumns", "id,time,temperature,humidity,weight,battery\n1,2018-10-13 14:05,12.1,81,52.731,3.7\n"
                             "2,2018-10-14 14:05,13.1,82,52.74,3.7\n3,2018-10-15 14:05,9.8,83,53,3.6\n"},
        Form{
            "preamble",
            "\xEF\xBB\xBFScale 7 of the orchard\n# made by hand\n\ntime,weight\n2018-10-13 14:05,52.731\n\n2018-10-14 14:05,52.74\n"
            "2018-10-15 14:05,53\n"},
        Form{"bars", "2018-10-13 14:05|52.731\n2018-10-14 14:05|52.74\n2018-10-15 14:05|53\n"},
        Form{"carriageReturns", "time,weight\r2018-10-13 14:05,52.731\r2018-10-14 14:05,52.74\r2018-10-15 14:05,53\r"},
        Form{"named", "13-Oct-2018 14:05:00,52.731\n14-Oct-2018 14:05:00,52.74\n15-Oct-2018 14:05:00,53\n"},
        Form{"twoDigits", "time;kg\n13.10.18 14:05;52,731\n14.10.18 14:05;52,74\n15.10.18 14:05;53\n"},
        Form{
            "utc",
            "time,weight\n2018-10-13T16:05:00+02:00,52.731\n2018-10-14T14:05:00Z,52.74\n2018-10-15T10:35:00-0330,53\n"},
        Form{"unix", "time,weight\n1539439500,52.731\n1539525900,52.74\n1539612300,53\n"},
        Form{"unixThousandths", "1539439500000,52.731\n1539525900000,52.74\n1539612300000,53\n"}),
    [](const auto& instance) { return std::string(instance.param.name); });

TEST(ScaleLogs, PoundsComeFromHeaderOrOption) {
    const ScaleLog header = must("time,weight_lb\n2018-10-13 14:05,100\n2018-10-14 14:05,101\n");
    EXPECT_EQ(header.columns.unit, MassUnit::Pound);
    EXPECT_EQ(header.columns.unitTold, ToldBy::Header);
    EXPECT_NEAR(header.rows[0].kg, 45.359237, 1e-9) << "the pound of 1959, exact";
    const ScaleLog option =
        must("time,weight\n2018-10-13 14:05,100\n2018-10-14 14:05,101\n", {.unit = MassUnit::Pound});
    EXPECT_EQ(option.columns.unitTold, ToldBy::Option);
    EXPECT_NEAR(option.rows[0].kg, 45.359237, 1e-9);
    EXPECT_EQ(must("time,weight\n2018-10-13 14:05,100\n2018-10-14 14:05,101\n").columns.unitTold, ToldBy::Size);
}

TEST(ScaleLogs, AUnitThatCannotBeToldIsAsked) {
    EXPECT_THAT(problemOf("time,weight\n2018-10-13 14:05,800\n2018-10-14 14:05,801\n"),
                HasSubstr("--unit kg, g or lb"));
}

// 200 to 2000 may be pounds of a heavy hive, tenths of a kilogram or grams of a light one.
TEST(ScaleLogs, AUnitIsToldBySizeOutsideTwoHundredToTwoThousandOnly) {
    const auto log = [](const char* weight) { return "time,weight\n2018-10-13 14:05," + std::string(weight) + "\n"; };
    EXPECT_EQ(must(log("199.9")).columns.unit, MassUnit::Kilogram);
    for (const char* either : {"200", "210", "249.9", "1000", "1999"})
        EXPECT_THAT(problemOf(log(either)), HasSubstr("--unit kg, g or lb")) << either;
    EXPECT_EQ(must(log("2000")).columns.unit, MassUnit::Gram);
}

TEST(ScaleLogs, OptionsOverrideWhatIsFound) {
    const std::string text = "time,a,b\n2018-10-13 14:05,10,50\n2018-10-14 14:05,11,52\n2018-10-15 14:05,13,55\n";
    EXPECT_THAT(problemOf(text), HasSubstr("more than one column may hold the weight: \"a\", \"b\""));
    EXPECT_THAT(problemOf(text), HasSubstr("--weight"));
    EXPECT_DOUBLE_EQ(must(text, {.weight = "B"}).rows[0].kg, 50);
    EXPECT_DOUBLE_EQ(must(text, {.weight = "2"}).rows[0].kg, 10);
    EXPECT_THAT(problemOf(text, {.weight = "c"}), HasSubstr("there is no column \"c\""));
    const std::string times =
        "made,seen,weight\n2018-10-13 14:05,2018-10-14 14:05,50\n2018-10-15 14:05,2018-10-16 14:05,51\n";
    EXPECT_THAT(problemOf(times), HasSubstr("--time with one of them"));
    EXPECT_EQ(must(times, {.time = "seen"}).rows[0].seconds, secondsOf(2018, 10, 14, 50700));
}

TEST(ScaleLogs, DateOrderIsToldFromTheWholeFileAndAskedWhereItCannotBe) {
    std::string text = "time,weight\n";
    for (int day = 1; day <= 12; ++day) text += fmt::format("{:02}/10/2018 02:00,{}\n", day, 50 - day * 0.1);
    const std::string question = problemOf(text);
    EXPECT_THAT(question, HasSubstr("--date-order dmy, mdy or ymd"));
    EXPECT_THAT(question, HasSubstr("1/10/2018 in line 2"));
    EXPECT_EQ(must(text, {.dateOrder = DateOrder::DayMonthYear}).rows[1].seconds, secondsOf(2018, 10, 2, 7200));
    EXPECT_EQ(must(text, {.dateOrder = DateOrder::MonthDayYear}).rows[1].seconds, secondsOf(2018, 2, 10, 7200));
    for (int row = 0; row < 3000; ++row) text += "12/10/2018 03:00,48.8\n";
    EXPECT_EQ(must(text + "13/10/2018 02:00,48.7\n").columns.dateOrder, DateOrder::DayMonthYear)
        << "a row far below the first lines decides";
    EXPECT_EQ(must(text + "10/13/2018 02:00,48.7\n").columns.dateOrder, DateOrder::MonthDayYear);
    const std::string mixed = problemOf(text + "10/13/2018 02:00,48.7\n13/10/2018 02:00,48.7\n");
    EXPECT_THAT(mixed, HasSubstr("two orders: the day first in line 3015, the month first in line 3014"));
    EXPECT_EQ(must("time;kg\n01.10.2018 02:00;50,1\n02.10.2018 02:00;50,0\n").columns.dateOrder,
              DateOrder::DayMonthYear)
        << "points between the parts";
}

TEST(ScaleLogs, TwoDigitYearsStandAtTheEndThatVariesLess) {
    EXPECT_EQ(must("time,kg\n18/10/30 02:00,50\n18/11/02 02:00,49\n").columns.dateOrder, DateOrder::YearMonthDay);
    EXPECT_EQ(must("time,kg\n10/30/18 02:00,50\n11/02/18 02:00,49\n").columns.dateOrder, DateOrder::MonthDayYear);
    EXPECT_THAT(problemOf("time,kg\n10/11/12 02:00,50\n"), HasSubstr("year"));
}

TEST(ScaleLogs, RowsThatCannotBeReadAreLeftOutWithLineAndReason) {
    const ScaleLog log = must(
        "time,weight_kg\n2018-10-13 14:05,52.7\nyesterday,52.7\n2018-10-14 14:05,\n2018-10-14 14:10,NaN\n2018-10-14 14:15,inf\n"
        "2018-10-14 14:20,abc\n2018-02-30 14:05,52.7\n2018-10-15 14:05,99999\n,52.7\n2018-10-15 14:10\n"
        "2018-10-15T14:15:00Z,52.7\n\"2018-10-15 14:20,52.7\n2018-10-15 14:25,1e308\n2018-10-15 14:30,-9999\n2018-10-16 14:05,52.6\n");
    ASSERT_EQ(log.rows.size(), 2u);
    std::vector<std::pair<int, RowFault>> faults;
    for (const ScaleLogFault& fault : log.faults) faults.emplace_back(fault.line, fault.why);
    EXPECT_THAT(faults,
                ::testing::ElementsAre(std::pair(3, RowFault::BadTime), std::pair(4, RowFault::NoWeight),
                                       std::pair(5, RowFault::NoWeight), std::pair(6, RowFault::BadWeight),
                                       std::pair(7, RowFault::BadWeight), std::pair(8, RowFault::NoSuchDay),
                                       std::pair(9, RowFault::WeightOutside), std::pair(10, RowFault::NoTime),
                                       std::pair(11, RowFault::NoWeight), std::pair(12, RowFault::OtherTimeForm),
                                       std::pair(13, RowFault::Quotes), std::pair(14, RowFault::WeightOutside),
                                       std::pair(15, RowFault::WeightOutside)));
}

TEST(ScaleLogs, DatesAloneAreNoon) {
    const ScaleLog log = must("date;weight\n2018-10-13;52,7\n2018-10-14;52,6\n");
    EXPECT_TRUE(log.columns.daysOnly);
    EXPECT_EQ(log.rows[0].seconds, secondsOf(2018, 10, 13, 43200));
}

TEST(ScaleLogs, OneRowIsALog) {
    EXPECT_EQ(must("2018-10-13 14:05,52.7").rows.size(), 1u);
    EXPECT_EQ(must("time,weight\n2018-10-13 14:05,52.7\n").rows.size(), 1u);
}

TEST(ScaleLogs, WithNothingToReadSayWhy) {
    EXPECT_THAT(problemOf(""), HasSubstr("the file is empty"));
    EXPECT_THAT(problemOf("\n\n  \n"), HasSubstr("the file is empty"));
    EXPECT_THAT(problemOf("time,weight\n"), HasSubstr("no column holds times"));
    EXPECT_THAT(problemOf("to be or not to be\n"), HasSubstr("no column holds times"));
    EXPECT_THAT(problemOf("time,name\n2018-10-13 14:05,Row 2\n"), HasSubstr("no column holds weights"));
    EXPECT_THAT(problemOf(std::string("PK\3\4\0\0\0\0", 8)), HasSubstr("no text"));
    std::string noise;
    for (int i = 1; i < 20000; ++i) noise += static_cast<char>(1 + i * 7919 % 255);
    EXPECT_NE(problemOf(noise), "");
    EXPECT_NE(problemOf(std::string(1 << 20, '"')), "");
}

TEST(ScaleLogs, ALineOfAMegabyteIsPassedOver) {
    const std::string text =
        "time,weight\n2018-10-13 14:05,52.7\n" + std::string(1 << 20, '7') + "\n2018-10-14 14:05,52.6\n";
    const ScaleLog log = must(text);
    EXPECT_EQ(log.rows.size(), 2u);
    ASSERT_EQ(log.faults.size(), 1u);
    EXPECT_EQ(log.faults[0], (ScaleLogFault{3, RowFault::TooLong, ""}));
}

// Pieces of logs in any order: read or refused, never broken, and what is read lies within the limits.
RC_GTEST_PROP(ScaleLogs, OfAnyTextAreReadOrRefused, ()) {
    const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "2018-10-13 14:05", "13.10.2018 14:05", "10/13/18", "14:05", "1539439500", "T", "Z", "+02:00", ",", ";", "\t",
        "|", "\n", "\r\n", "\"", "52.7", "52,7", "-1", "kg", "time", "weight", "NaN", "1e999", "99999999999999999999",
        "#", " ", "\xff", "0000-00-00 99:99", "2018-02-30 01:00"));
    std::string text;
    for (const std::string& piece : pieces) text += piece;
    const auto log = read(text);
    if (!log) {
        RC_ASSERT(!log.problems().empty());
        RC_ASSERT(!log.problems().front().remedy.empty());
        return;
    }
    RC_ASSERT(!log->rows.empty());
    for (const ScaleLogRow& row : log->rows) RC_ASSERT(row.kg >= lightestKg && row.kg <= heaviestKg && row.line > 0);
}

RC_GTEST_PROP(ScaleLogs, InPoundsAndKilogramsAreTheSameHive, ()) {
    std::string inKg = "time,weight_kg\n", inLb = "time,weight_lb\n";
    const int rows = *rc::gen::inRange(1, 60);
    for (int row = 0; row < rows; ++row) {
        const double kg = *rc::gen::inRange(-20'000, 200'000) / 1000.0;
        const std::string time = fmt::format("2018-10-{:02} {:02}:00,", 1 + row / 24, row % 24);
        inKg += time + fmt::format("{}\n", kg);
        inLb += time + fmt::format("{}\n", kg / 0.45359237);
    }
    const auto metric = read(inKg), pounds = read(inLb);
    RC_ASSERT(metric.ok() && pounds.ok());
    RC_ASSERT(metric->rows.size() == pounds->rows.size());
    for (std::size_t i = 0; i < metric->rows.size(); ++i) {
        RC_ASSERT(std::abs(metric->rows[i].kg - pounds->rows[i].kg) < 1e-9);
        RC_ASSERT(metric->rows[i].seconds == pounds->rows[i].seconds);
    }
}

} // namespace
} // namespace winterlarder::exchange::scale_log_test
