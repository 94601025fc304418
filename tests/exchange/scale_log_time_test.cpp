// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log_time.h"

#include "calendar/date.h"

#include <gtest/gtest.h>
#include <string>

namespace winterlarder::exchange::scale_log_time_test {
namespace {

struct Written {
    const char* text;
    DateOrder order;
    const char* date; // ISO
    int second;       // of the day
    int offset = -1;  // seconds, -1 none
};

class TimeText : public ::testing::TestWithParam<Written> {};
TEST_P(TimeText, IsRead) {
    const Written& row = GetParam();
    const auto time = timeParts(row.text);
    ASSERT_TRUE(time) << row.text;
    const auto day = dayOfParts(*time, row.order);
    ASSERT_TRUE(day) << row.text;
    EXPECT_EQ(Date::of(1970, 1, 1)->plusDays(*day).iso(), row.date) << row.text;
    EXPECT_EQ(time->second, row.second) << row.text;
    EXPECT_EQ(time->offset.value_or(-1), row.offset) << row.text;
}

constexpr auto dmy = DateOrder::DayMonthYear, mdy = DateOrder::MonthDayYear, ymd = DateOrder::YearMonthDay;
constexpr int at1405 = 14 * 3600 + 5 * 60;
INSTANTIATE_TEST_SUITE_P(
    Forms, TimeText,
    ::testing::Values(
        Written{"2018-10-01T14:05:00Z", ymd, "2018-10-01", at1405, 0},
        Written{"2018-10-01 14:05", ymd, "2018-10-01", at1405},
        Written{"2018/10/1 14:05:00", ymd, "2018-10-01", at1405},
        Written{"2018-10-01T14:05:00.123456+02:00", ymd, "2018-10-01", at1405, 7200},
        Written{"2018-10-01T14:05:00-0330", ymd, "2018-10-01", at1405, -12600},
        Written{"2018-10-01 14:05:00 UTC", ymd, "2018-10-01", at1405, 0},
        Written{"2018-10-01 14:05:00+00", ymd, "2018-10-01", at1405, 0},
        Written{"2018-10-01T14:05:00,5", ymd, "2018-10-01", at1405},
        Written{"1.10.2018 14:05", dmy, "2018-10-01", at1405}, Written{"01.10.18 14:05:00", dmy, "2018-10-01", at1405},
        Written{"10/1/2018 2:05 PM", mdy, "2018-10-01", at1405},
        Written{"10/01/18 2:05:00pm", mdy, "2018-10-01", at1405}, Written{"10/1/2018 12:05 AM", mdy, "2018-10-01", 300},
        Written{"10/1/2018 12:05 pm", mdy, "2018-10-01", 43500},
        Written{"01/10/2018, 14:05", dmy, "2018-10-01", at1405}, Written{"18-10-01 14:05", ymd, "2018-10-01", at1405},
        Written{"01-Oct-2018 14:05:00", dmy, "2018-10-01", at1405},
        Written{"1 October 2018 14:05", dmy, "2018-10-01", at1405},
        Written{"Oct 1, 2018 14:05", dmy, "2018-10-01", at1405}, Written{"20181001140500", ymd, "2018-10-01", at1405},
        Written{"201810011405", ymd, "2018-10-01", at1405}, Written{"2018-10-01", ymd, "2018-10-01", 0},
        Written{"20181001", ymd, "2018-10-01", 0}, Written{"2018-10-01 24:00", ymd, "2018-10-01", 86400},
        Written{"29.02.2020 00:00", dmy, "2020-02-29", 0}, Written{"2016-12-31 23:59:60", ymd, "2016-12-31", 86400}));

TEST(TimeTexts, OfUnixAreSecondsOrThousandths) {
    for (const char* text : {"1538402700", "1538402700.25", "1538402700123"}) {
        const auto time = timeParts(text);
        ASSERT_TRUE(time) << text;
        EXPECT_EQ(time->form, TimeParts::Form::UnixTime);
        EXPECT_EQ(time->unixSeconds, 1538402700) << text;
    }
}

TEST(TimeTexts, OfADayAloneOrAClockAloneSaySo) {
    EXPECT_EQ(timeParts("2018-10-01")->form, TimeParts::Form::DateOnly);
    EXPECT_EQ(timeParts("14:05:00")->form, TimeParts::Form::TimeOnly);
    EXPECT_EQ(timeParts("2:05 PM")->second, at1405);
}

TEST(TimeTexts, ThatAreNoneAreRefused) {
    for (const char* text : {"",
                             "x",
                             "52.7",
                             "52,731",
                             "1.2",
                             "12345",
                             "2018-10",
                             "2018-10-01 25:00",
                             "2018-10-01 14:60",
                             "2018-10-01 14:05 CET x",
                             "2018-10-01x14:05",
                             "2018-10.01",
                             "13:05 PM 1",
                             "99:99",
                             "2018-10-01 13:05 PM",
                             "nan",
                             "inf",
                             "1e9",
                             "2018-10-01 14:05:00+1",
                             "2018-10-01 14:05:00+99:00",
                             "Foo 1, 2018",
                             "1538402700x",
                             "-1538402700",
                             "1772517600177327360",
                             "17725176001773273601",
                             "99999999999999999999999999999999999999999999",
                             "177251760017.5",
                             "2018-10-01 14:05:00 2018-10-01 14:05:00 2018-10-01 14:05:00"})
        EXPECT_FALSE(timeParts(text)) << text;
}

TEST(TimeTexts, OfDaysThatAreNotAreNoDay) {
    EXPECT_FALSE(dayOfParts(*timeParts("30.02.2018"), dmy));
    EXPECT_FALSE(dayOfParts(*timeParts("2019-02-29"), ymd));
    EXPECT_FALSE(dayOfParts(*timeParts("31/12/2018"), mdy));
    EXPECT_FALSE(dayOfParts(*timeParts("1969-12-31"), ymd));
    EXPECT_FALSE(dayOfParts(*timeParts("0000-00-00"), ymd));
}

} // namespace
} // namespace winterlarder::exchange::scale_log_time_test
