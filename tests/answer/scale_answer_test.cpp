// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/scale_answer.h"

#include "support/hive_log.h"

#include <gmock/gmock.h>
#include <sstream>

namespace winterlarder::answer::scale_answer_test {
namespace {

using namespace winterlarder::testing;

exchange::ScaleLog logOf(const std::string& text) {
    std::istringstream stream(text);
    return exchange::readScaleLog(stream, "log.csv").value();
}

TEST(ScaleClocks, AreFoundByNameOrHours) {
    const std::int64_t from = secondsOf(2018, 1, 1), to = secondsOf(2019, 1, 1), july = secondsOf(2018, 7, 1);
    const auto offset = [&](const char* name, std::int64_t moment) {
        return timeZoneNamed(name, from, to).value().offsetAt(moment);
    };
    EXPECT_EQ(offset("UTC", july), 0);
    EXPECT_EQ(offset("+02:00", july), 7200);
    EXPECT_EQ(offset("-0330", july), -12600);
    EXPECT_EQ(offset("+2", july), 7200);
    EXPECT_EQ(offset("America/Halifax", from), -4 * 3600);
    EXPECT_EQ(offset("America/Halifax", july), -3 * 3600);
    // Clocks in Nova Scotia went forward on 11 March 2018 at 2 h, 6 h UTC.
    EXPECT_EQ(offset("America/Halifax", secondsOf(2018, 3, 11, 6) - 1), -4 * 3600);
    EXPECT_EQ(offset("America/Halifax", secondsOf(2018, 3, 11, 6)), -3 * 3600);
    for (const char* none : {"", "Atlantis", "+99:00", "+", "+1:2:3", "EST5EDTx", "../etc/passwd"})
        EXPECT_FALSE(timeZoneNamed(none, from, to)) << none;
}

TEST(ScaleClocks, GiveTheDaysOfThePlace) {
    const std::string utc =
        "time,kg\n2018-07-02T02:30:00Z,40\n2018-07-02T04:00:00Z,41\n"; // 23:30 the day before, and 1 h
    const auto there = answerOf(logOf(utc), {"America/Halifax", std::nullopt}).value();
    ASSERT_EQ(there.summary.days.size(), 2u);
    EXPECT_EQ(there.summary.days[0].date.iso(), "2018-07-01");
    EXPECT_FALSE(there.utcDays);
    const auto unsaid = answerOf(logOf(utc), {}).value();
    EXPECT_EQ(unsaid.summary.days.size(), 1u);
    EXPECT_TRUE(unsaid.utcDays);
    const auto written =
        answerOf(logOf("time,kg\n2018-07-01T23:30:00-03:00,40\n2018-07-02T01:00:00-03:00,41\n"), {}).value();
    EXPECT_EQ(written.summary.days.size(), 2u) << "the day as written where the offset is";
    EXPECT_FALSE(written.utcDays);
}

// 28 October 2018, central Europe: the hour from two to three comes twice.
TEST(ScaleClocks, KeepTheHourThatComesTwice) {
    std::string log = "time,kg\n";
    for (const char* hour : {"00", "01", "02", "02", "03", "04"})
        for (const char* minute : {"00", "15", "30", "45"})
            log += std::string("2018-10-28 ") + hour + ":" + minute + ",40\n";
    const auto answer = answerOf(logOf(log), {"Europe/Berlin", std::nullopt}).value();
    EXPECT_EQ(answer.summary.readings, 24u);
    EXPECT_TRUE(answer.summary.leftOut.empty());
    EXPECT_TRUE(answer.summary.jumps.empty());
}

} // namespace
} // namespace winterlarder::answer::scale_answer_test
