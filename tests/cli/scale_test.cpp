// SPDX-License-Identifier: GPL-3.0-or-later
// `scale` as a contract: keys, statuses, options, and a log of known truth from its text to its months.
#include "cli/program.h"
#include "support/hive_log.h"

#include <cmath>
#include <fmt/format.h>
#include <gmock/gmock.h>

namespace winterlarder::scale_test {
namespace {

using namespace winterlarder::testing;
using exchange::JsonValue;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

// A quarter of a year from 25 September 2018: fed on 5 October, the feeder off on the 20th.
HiveLog autumn() {
    HiveLog log(71);
    log.begin = secondsOf(2018, 9, 25);
    log.end = secondsOf(2019, 1, 3);
    log.interval = 900;
    log.steps = {{secondsOf(2018, 10, 5, 14), 6.2}, {secondsOf(2018, 10, 20, 11), -1.4}};
    log.draw();
    return log;
}

std::string shown(std::int64_t local, const char* form) {
    const Date date = scale::dateOfDay(scale::dayNumber(local));
    const int second = scale::secondOfDay(local);
    return fmt::format(fmt::runtime(form), fmt::arg("y", date.year()), fmt::arg("m", date.month()),
                       fmt::arg("d", date.day()), fmt::arg("H", second / 3600), fmt::arg("M", second / 60 % 60),
                       fmt::arg("S", second % 60));
}

constexpr const char* iso = "{y:04}-{m:02}-{d:02} {H:02}:{M:02}:{S:02}";

std::string text(const std::vector<scale::Reading>& readings, const std::string& header, const char* form = iso,
                 double perKg = 1) {
    std::string lines = header;
    for (const scale::Reading& reading : readings)
        lines += shown(reading.local(), form) + fmt::format(",{:.5f}\n", reading.weight.value() * perKg);
    return lines;
}

JsonValue answered(const std::string& log, const std::string& options = "") {
    const Ran ran = runProgram("scale - --json " + options, log);
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    return jsonOf(ran.out);
}

std::vector<std::string> texts(const JsonValue& list, const std::string& key) {
    std::vector<std::string> all;
    for (const JsonValue& item : list.items) all.push_back(at(item, key).text);
    return all;
}

TEST(ScaleCommand, GivesTheFixedKeys) {
    auto log = autumn();
    const auto answer = answered(text(log.readings(), "time,weight_kg\n"));
    EXPECT_EQ(at(answer, "columns.time").text, "time");
    EXPECT_EQ(at(answer, "columns.weight").text, "weight_kg");
    EXPECT_EQ(at(answer, "columns.unit").text, "kg");
    EXPECT_EQ(at(answer, "days").items.size(), 100u);
    EXPECT_EQ(at(answer, "days.0.date").text, "2018-09-25");
    EXPECT_NEAR(at(answer, "days.0.weight_kg").number, log.colonyKg(secondsOf(2018, 9, 25, 2)), 0.03);
    EXPECT_THAT(texts(at(answer, "months"), "month"),
                ElementsAre("2018-09", "2018-10", "2018-11", "2018-12", "2019-01"));
    EXPECT_THAT(texts(at(answer, "steps"), "date"), ElementsAre("2018-10-05", "2018-10-20"));
    EXPECT_THAT(texts(at(answer, "steps"), "kind"), ElementsAre("feed", "equipment"));
    EXPECT_TRUE(at(answer, "faults").items.empty());
}

// Steps are known to 0.18 kg (tests/scale/steps_test.cpp), nights to 0.006 kg.
TEST(ScaleCommand, MonthsAreTheTruthFirstToFirst) {
    auto log = autumn();
    const auto answer = answered(text(log.readings(), "time,weight_kg\n"));
    const auto truth = [&](int month) {
        return log.changeBetween(*Date::of(2018, month, 1),
                                 month == 12 ? *Date::of(2019, 1, 1) : *Date::of(2018, month + 1, 1));
    };
    EXPECT_EQ(at(answer, "months.0.change_kg").kind, JsonValue::Kind::Null);
    EXPECT_THAT(at(answer, "months.0.why").text, HasSubstr("first of the month"));
    EXPECT_NEAR(at(answer, "months.1.change_kg").number, truth(10), 2 * 0.18);
    EXPECT_NEAR(at(answer, "months.2.change_kg").number, truth(11), 0.03);
    EXPECT_NEAR(at(answer, "months.3.change_kg").number, truth(12), 0.03);
    EXPECT_EQ(at(answer, "months.4.change_kg").kind, JsonValue::Kind::Null);
    EXPECT_NEAR(at(answer, "steps.0.kg").number, 6.2, 0.18);
    EXPECT_NEAR(at(answer, "steps.1.kg").number, -1.4, 0.18);
}

TEST(ScaleCommand, MuchWaterInTheWoodIsSaid) {
    HiveLog log(7);
    log.interval = 3600;
    const std::string words = "Water in the wood and on the hive moves this log by about 0.2";
    EXPECT_THAT(runProgram("scale -", text(log.draw().readings(), "time,weight_kg\n")).out,
                ::testing::Not(HasSubstr("Water in the wood")));
    log = HiveLog(7);
    log.interval = 3600;
    log.dampKg = 0.3;
    EXPECT_THAT(runProgram("scale -", text(log.draw().readings(), "time,weight_kg\n")).out, HasSubstr(words));
}

// The same weights in pounds, grams, American dates, Unix seconds and newest first are the same hive.
TEST(ScaleCommand, HowALogIsWrittenChangesNothing) {
    auto log = autumn();
    auto readings = log.readings();
    const auto plain = answered(text(readings, "time,weight_kg\n"));
    const std::string pounds = text(readings, "time,weight (lb)\n", iso, 1 / 0.45359237);
    const std::string grams = text(readings, "at,value\n", iso, 1000);
    const std::string american = text(readings, "time,weight\n", "{m}/{d}/{y} {H:02}:{M:02}");
    std::string unix = "t,weight\n";
    for (const scale::Reading& reading : readings)
        unix += fmt::format("{},{:.5f}\n", reading.moment, reading.weight.value());
    std::reverse(readings.begin(), readings.end());
    const std::string newest = text(readings, "time,weight_kg\n");
    for (const std::string& other : {pounds, grams, american, unix, newest}) {
        const auto answer = answered(other);
        ASSERT_EQ(at(answer, "months").items.size(), 5u) << other.substr(0, 80);
        for (const char* month : {"1", "2", "3"})
            EXPECT_NEAR(at(answer, std::string("months.") + month + ".change_kg").number,
                        at(plain, std::string("months.") + month + ".change_kg").number, 0.001 + 1e-9)
                << other.substr(0, 80);
        EXPECT_EQ(at(answer, "days").items.size(), 100u);
    }
}

TEST(ScaleCommand, DaysAreThoseOfThePlace) {
    auto log = autumn();
    const auto readings = log.readings(); // of a clock in Halifax
    std::string utc = "time,weight\n";
    for (const scale::Reading& reading : readings) {
        const bool summer = reading.moment < secondsOf(2018, 11, 4, 2);
        utc += shown(reading.moment + (summer ? 3 : 4) * 3600, "{y:04}-{m:02}-{d:02}T{H:02}:{M:02}:{S:02}Z") +
               fmt::format(",{:.5f}\n", reading.weight.value());
    }
    const auto plain = answered(text(readings, "time,weight\n")), there = answered(utc, "--time-zone America/Halifax");
    EXPECT_TRUE(at(answered(utc), "columns.days_of_utc").flag);
    EXPECT_FALSE(at(there, "columns.days_of_utc").flag);
    ASSERT_EQ(at(there, "days").items.size(), at(plain, "days").items.size());
    for (const char* day : {"3", "30", "70"})
        EXPECT_NEAR(at(there, std::string("days.") + day + ".weight_kg").number,
                    at(plain, std::string("days.") + day + ".weight_kg").number, 0.002);
    std::string plainUtc = utc;
    plainUtc.erase(std::remove(plainUtc.begin(), plainUtc.end(), 'Z'), plainUtc.end());
    const auto clock = answered(plainUtc, "--clock UTC --time-zone America/Halifax");
    EXPECT_NEAR(at(clock, "days.30.weight_kg").number, at(there, "days.30.weight_kg").number, 1e-9);
    EXPECT_THAT(texts(at(clock, "steps"), "date"), ElementsAre("2018-10-05", "2018-10-20"));
}

TEST(ScaleCommand, RowsLeftOutAreListedWithLineAndReason) {
    auto log = autumn();
    std::string lines = text(log.readings(), "time,weight_kg\n");
    lines +=
        "yesterday,50\n2019-01-04 00:00:00,\n2019-01-04 00:15:00,-9999\n2018-12-24 00:00:00,50\n2019-01-04 00:30:00,48\n2019-01-04 00:30:00,49\n";
    const auto answer = answered(lines);
    std::vector<std::pair<int, std::string>> faults;
    for (const JsonValue& fault : at(answer, "faults").items)
        faults.emplace_back(static_cast<int>(at(fault, "line").number), at(fault, "why").text);
    EXPECT_THAT(
        faults,
        ElementsAre(std::pair(9602, std::string("the time cannot be read")),
                    std::pair(9603, std::string("there is no weight")),
                    std::pair(9604, std::string("no hive weighs that")),
                    std::pair(9605, std::string("the clock was put back: its time contradicts the order of the rows")),
                    std::pair(9607, std::string("line 9606 has the same time"))));
}

TEST(ScaleCommand, TextStaysShortHoweverManyFaultsThereAre) {
    auto log = autumn();
    std::string lines = text(log.readings(), "time,weight_kg\n");
    for (int i = 0; i < 5000; ++i) lines += "yesterday,50\n";
    const Ran ran = runProgram("scale -", lines);
    EXPECT_EQ(ran.status, 0);
    EXPECT_LT(linesOf(ran.out).size(), 50u);
    EXPECT_THAT(ran.out, HasSubstr("Rows left out: 5000"));
    EXPECT_THAT(ran.out, HasSubstr("and 4988 more"));
    EXPECT_THAT(ran.out, HasSubstr("October 2018"));
    EXPECT_THAT(ran.out, HasSubstr("column 1, \"time\""));
    EXPECT_EQ(at(answered(lines), "faults").items.size(), 5000u);
    EXPECT_GT(linesOf(runProgram("scale - --daily", lines).out).size(), 100u);
}

TEST(ScaleCommand, ALogCannotSteerTheTerminal) {
    const std::string log = "time,\x1b[31mweight\n2018-10-13 14:05,50\n\x1b[2Jx,50\n\xff\xfe,51\n2018-10-13 14:10,50\n";
    const Ran ran = runProgram("scale -", log);
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.out.find('\x1b'), std::string::npos);
    EXPECT_NO_THROW(answered(log));
}

struct WrongLog {
    const char* arguments;
    const char* log;
    int status;
    const char* words;
};
class WrongScale : public ::testing::TestWithParam<WrongLog> {};
TEST_P(WrongScale, LeavesStandardOutputEmptyAndSaysWhatWouldBeRight) {
    for (const char* json : {"", " --json"}) {
        const Ran ran = runProgram(std::string("scale ") + GetParam().arguments + json, GetParam().log);
        EXPECT_EQ(ran.status, GetParam().status) << GetParam().arguments << ran.err;
        EXPECT_EQ(ran.out, "");
        EXPECT_THAT(ran.err, HasSubstr(GetParam().words));
        for (const std::string& line : linesOf(ran.err)) EXPECT_THAT(line, HasSubstr("; "));
    }
}
constexpr const char* good = "time,weight\n2018-10-13 14:05,50\n";
INSTANTIATE_TEST_SUITE_P(
    CommandLine, WrongScale,
    ::testing::Values(WrongLog{"nothing.csv", "", 3, "nothing.csv: cannot be opened"}, WrongLog{".", "", 3, "folder"},
                      WrongLog{"", "", 2, "FILE"}, WrongLog{"-", "", 2, "<stdin>: the file is empty"},
                      WrongLog{"-", "a,b\n1,2\n", 2, "no column holds times"},
                      WrongLog{"-", "time,weight\n01/02/2018 01:00,50\n", 2, "--date-order dmy, mdy or ymd"},
                      WrongLog{"-", "time,a,b\n2018-10-13 14:05,50,51\n", 2, "--weight with one of them"},
                      WrongLog{"- --weight nothing", good, 2, "there is no column \"nothing\""},
                      WrongLog{"- --unit stone", good, 2, "--unit is \"stone\"; kg, g or lb"},
                      WrongLog{"- --date-order dym", good, 2, "--date-order"},
                      WrongLog{"- --delimiter x", good, 2, "--delimiter"},
                      WrongLog{"- --decimal x", good, 2, "--decimal"},
                      WrongLog{"- --time-zone Atlantis", good, 2, "--time-zone: \"Atlantis\" is no time zone"},
                      WrongLog{"- --time-zone +99:00", good, 2, "--time-zone"},
                      WrongLog{"- --clock Atlantis", good, 2, "--clock"},
                      WrongLog{"- --clock UTC", "time,weight\n2018-10-13T14:05:00Z,50\n", 2, "--clock"}));

} // namespace
} // namespace winterlarder::scale_test
