// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/daily_temperatures.h"

#include <gmock/gmock.h>

namespace winterlarder::exchange::daily_temperatures_test {
namespace {

using ::testing::HasSubstr;

Outcome<std::vector<DailyTemperature>> read(const std::string& text, const std::string& columns = "",
                                            TemperatureScale scale = TemperatureScale::Celsius) {
    const auto chosen = temperatureColumns(columns);
    if (!chosen) return chosen.problems();
    return readDailyTemperatures(text, "days.csv", *chosen, scale);
}

TEST(DailyTemperatures, MeansAreReadAsTheyStand) {
    const auto days = read("Date,Mean,rain\n2020-01-01,-3.5,0\n2020/01/02,4,1\n");
    ASSERT_TRUE(days);
    ASSERT_EQ(days->size(), 2u);
    EXPECT_EQ((*days)[0].date.iso(), "2020-01-01");
    EXPECT_EQ((*days)[0].meanC, -3.5);
    EXPECT_EQ((*days)[1].date.iso(), "2020-01-02");
}

TEST(DailyTemperatures, LowestAndHighestAreAveragedInEitherUnit) {
    const auto days =
        read("day;TMIN;TMAX\n2020-01-01;32;50\n", "date=day,min=TMIN,max=TMAX", TemperatureScale::Fahrenheit);
    ASSERT_TRUE(days);
    EXPECT_DOUBLE_EQ(days->at(0).meanC, 5);
    EXPECT_DOUBLE_EQ(read("date\tmin\tmax\n2020-01-01\t2\t5\n")->at(0).meanC, 3.5);
}

TEST(DailyTemperatures, EmptyCellsAreGaps) {
    const auto days = read("date,mean\n2020-01-01,\n2020-01-02,NA\n2020-01-03,1\n");
    ASSERT_TRUE(days);
    EXPECT_EQ(days->size(), 1u);
}

TEST(DailyTemperatures, EveryBadRowIsListedWithLineAndColumn) {
    const auto days = read("date,min,max\n2020-01-01,1,2\n2020-13-01,1,2\n2020-01-03,x,2\n2020-01-04,1,99\n2020-01-05,"
                           "9,2\n2020-01-01,1,2\n");
    ASSERT_FALSE(days);
    const auto& problems = days.problems();
    ASSERT_EQ(problems.size(), 5u);
    EXPECT_EQ(problems[0].place, (Place{"days.csv", 3, 1}));
    EXPECT_EQ(problems[1].place, (Place{"days.csv", 4, 12}));
    EXPECT_EQ(problems[2].place, (Place{"days.csv", 5, 14}));
    EXPECT_THAT(problems[3].detail, HasSubstr("minimum is above"));
    EXPECT_THAT(problems[4].detail, HasSubstr("line 2 already"));
}

TEST(DailyTemperatures, MissingColumnsAreNamedWithWhatThereIs) {
    const auto days = read("date,average\n2020-01-01,1\n");
    ASSERT_FALSE(days);
    EXPECT_THAT(days.problems().front().detail, HasSubstr("\"mean\""));
    EXPECT_THAT(days.problems().front().remedy, HasSubstr("average"));
    EXPECT_FALSE(read("day,mean\n2020-01-01,1\n"));
    EXPECT_FALSE(read("date,min\n2020-01-01,1\n"));
    EXPECT_FALSE(read("date,mean\n2020-01-01,1\n", "date=date,min=min,max=max")) << "only what was named is looked for";
}

TEST(DailyTemperatures, ColumnsMustNameOneWayOfReading) {
    EXPECT_TRUE(temperatureColumns(""));
    EXPECT_TRUE(temperatureColumns("date=a,mean=b"));
    EXPECT_TRUE(temperatureColumns("min=a,max=b"));
    for (const char* wrong : {"date=a", "date=a,min=b", "date=a,mean=b,min=c,max=d", "date=a,mean=b,mean=c", "mean",
                              "mean=", "average=b", "mean=b,"})
        EXPECT_FALSE(temperatureColumns(wrong)) << wrong;
}

} // namespace
} // namespace winterlarder::exchange::daily_temperatures_test
