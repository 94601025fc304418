// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/calendar_file.h"

#include "support/other_calendar_reader.h"

#include <gmock/gmock.h>
#include <sstream>

namespace winterlarder::exchange::calendar_file_test {
namespace {

using winterlarder::testing::readByAnother;

const book::Timestamp written = *book::Timestamp::parse("2026-11-25T09:27:36Z");

DueOn due(const std::string& summary, const std::string& details = "") {
    return {"weighing-7@winterlarder", *Date::of(2027, 2, 10), summary, details};
}

TEST(CalendarFile, AnotherReaderFindsWhatWasWritten) {
    const auto [status, said] = readByAnother(calendarFile("Bees", {due("Row 2: weigh again", "On course.")}, written));
    EXPECT_EQ(status, 0) << said;
    EXPECT_EQ(said, "2027-02-10|weighing-7@winterlarder|Row 2: weigh again|On course.|-360|20261125T092736Z\n");
}

TEST(CalendarFile, SeparatorsBackslashesAndForeignLettersSurvive) {
    const std::string name = "B\xc3\xa4r, \"Wei\xc3\x9f\"; a\\b \xe6\xa2\xa8";
    const auto [status, said] =
        readByAnother(calendarFile("x;y,z", {due(name, "first line\nsecond, with; signs")}, written));
    EXPECT_EQ(status, 0) << said;
    EXPECT_THAT(said, ::testing::HasSubstr("|" + name + "|first line / second, with; signs|"));
}

// Control characters have no place in the file; a name cannot break out of its line.
TEST(CalendarFile, ANameCannotBreakOutOfItsLine) {
    const auto text = calendarFile("Bees", {due("one\r\nEND:VCALENDAR\x01\x7f")}, written);
    EXPECT_EQ(text.find("\nEND:VCALENDAR\r\n"), text.rfind("\nEND:VCALENDAR\r\n"));
    EXPECT_EQ(text.find('\x01'), std::string::npos);
    EXPECT_EQ(readByAnother(text).first, 0);
}

// RFC 5545, 3.1: lines end in CR LF and are at most 75 bytes long.
TEST(CalendarFile, LinesAreFolded) {
    std::string longName;
    for (int i = 0; i < 100; ++i) longName += "\xc3\xa4";
    const auto text = calendarFile("Bees", {due(longName)}, written);
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        ASSERT_FALSE(line.empty());
        EXPECT_EQ(line.back(), '\r');
        EXPECT_LE(line.size(), 76u) << line; // with the CR
    }
    EXPECT_THAT(readByAnother(text).second, ::testing::HasSubstr(longName));
}

TEST(CalendarFile, NothingDueIsACalendarAllTheSame) {
    const auto [status, said] = readByAnother(calendarFile("Bees", {}, written));
    EXPECT_EQ(status, 0) << said;
    EXPECT_EQ(said, "");
}

TEST(CalendarFile, TheOtherReaderRefusesWhatIsNone) { EXPECT_NE(readByAnother("BEGIN:VCALENDAR\r\nVERSION").first, 0); }

} // namespace
} // namespace winterlarder::exchange::calendar_file_test
