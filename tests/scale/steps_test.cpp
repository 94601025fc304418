// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/summary.h"
#include "support/hive_log.h"

#include <gmock/gmock.h>

namespace winterlarder::scale::steps_test {
namespace {

using namespace winterlarder::testing;

Date day(int year, int month, int of) { return *Date::of(year, month, of); }

Summary summaryOf(HiveLog& log) { return summarise(log.readings(), Times::WallClock); }

std::string told(const Summary& summary) {
    std::string text;
    for (const Step& step : summary.steps)
        text += step.date.iso() + " " + std::to_string(step.jump.change.value()) + "\n";
    return text;
}

// A jump is the distance of two robust lines through about twelve readings of 0.02 kg noise: standard error 0.02 kg. The lines bend where
// foragers leave and come home: by at most 0.1 kg in the half hour between. Four standard errors and that.
constexpr double sizeTolerance = 0.18;

void expectSteps(const Summary& summary, const std::vector<TrueStep>& truth, double tolerance) {
    ASSERT_EQ(summary.steps.size(), truth.size()) << told(summary);
    for (std::size_t i = 0; i < truth.size(); ++i) {
        EXPECT_EQ(summary.steps[i].date, dateOfDay(dayNumber(truth[i].at))) << told(summary);
        EXPECT_NEAR(summary.steps[i].jump.change.value(), truth[i].kg, tolerance) << summary.steps[i].date.iso();
    }
}

TEST(Steps, AYearWithoutAnyHasNone) {
    for (std::uint32_t seed = 1; seed <= 8; ++seed) {
        HiveLog log(seed);
        log.strength = 0.5 * seed;
        const Summary summary = summaryOf(log.draw());
        EXPECT_TRUE(summary.steps.empty()) << "seed " << seed << "\n" << told(summary);
        EXPECT_TRUE(summary.disturbed.empty()) << "seed " << seed;
    }
}

const std::vector<TrueStep> aYearOfWork = {{secondsOf(2018, 4, 3, 13.2), 1.2},  {secondsOf(2018, 4, 28, 15.4), 6.3},
                                           {secondsOf(2018, 6, 18, 11.1), 5.9}, {secondsOf(2018, 7, 24, 10.0), -19.5},
                                           {secondsOf(2018, 7, 24, 17.5), 4.8}, {secondsOf(2018, 8, 20, 18.6), 7.4},
                                           {secondsOf(2018, 9, 2, 12.7), -1.5}, {secondsOf(2018, 12, 30, 14.0), 2.5}};

TEST(Steps, OfAYearAreFoundWithDateAndSize) {
    for (const std::int64_t interval : {60, 300, 600, 900}) {
        HiveLog log(11);
        log.interval = interval;
        log.end = interval < 300 ? secondsOf(2018, 5, 10) : log.end;
        log.steps = aYearOfWork;
        std::vector<TrueStep> within;
        for (const TrueStep& step : aYearOfWork)
            if (step.at < log.end) within.push_back(step);
        expectSteps(summaryOf(log.draw()), within, sizeTolerance);
    }
}

// Hourly: two readings a side make the line, and an hour of a flow is not straight: 0.3 kg.
TEST(Steps, OfAnHourlyLogAreFoundFromOneKilogramOn) {
    HiveLog log(12);
    log.interval = 3600;
    log.steps = aYearOfWork;
    expectSteps(summaryOf(log.draw()), aYearOfWork, 0.3);
}

// Nectar comes in evenly, 0.2 kg an hour, and 0.9 kg are put on: from one hour to the next the hive is 1.1 kg heavier, more than bees
// bring in an hour (1 kg); the step alone is less than that, and is found all the same, with its own size.
TEST(Steps, SmallerThanWhatBetrayedThemAreKept) {
    std::vector<Reading> readings;
    const std::int64_t begin = secondsOf(2018, 6, 1), put = secondsOf(2018, 6, 3, 12.5);
    for (std::int64_t at = begin; at < secondsOf(2018, 6, 6); at += 3600) {
        const double hours = static_cast<double>(at - begin) / 3600;
        readings.push_back({at, kilograms(40 + 0.2 * hours + (at > put ? 0.9 : 0)), 0, 0});
    }
    const Summary summary = summarise(readings, Times::WallClock);
    ASSERT_EQ(summary.steps.size(), 1u) << told(summary);
    EXPECT_EQ(summary.steps[0].date, day(2018, 6, 3));
    EXPECT_NEAR(summary.steps[0].jump.change.value(), 0.9, 1e-6);
}

TEST(Steps, PouredOverTwentyMinutesAreOne) {
    HiveLog log(13);
    for (int minute = 0; minute < 20; ++minute) log.steps.push_back({secondsOf(2018, 8, 25, 18) + minute * 60, 0.25});
    log.interval = 60;
    log.begin = secondsOf(2018, 8, 15);
    log.end = secondsOf(2018, 9, 5);
    const Summary summary = summaryOf(log.draw());
    ASSERT_EQ(summary.steps.size(), 1u) << told(summary);
    EXPECT_NEAR(summary.steps[0].jump.change.value(), 5.0, sizeTolerance);
}

TEST(Steps, BetweenTheLogsCoarseValuesAreFound) {
    HiveLog log(14);
    log.resolutionKg = 0.1;
    log.steps = aYearOfWork;
    // The resolution's uniform error, 0.1/sqrt(12) kg a reading, lies beneath the tolerance it adds: half a digit.
    expectSteps(summaryOf(log.draw()), aYearOfWork, sizeTolerance + 0.05);
}

TEST(Steps, BoxesOffForAnInspectionLeaveTheirNetChangeOnly) {
    HiveLog log(15);
    log.leans = {{secondsOf(2018, 5, 30, 11), 1800, -22},
                 {secondsOf(2018, 5, 30, 11.3), 300, 9},
                 {secondsOf(2018, 9, 12, 15), 1500, -17}};
    log.steps = {{secondsOf(2018, 5, 30, 11.25), 3.1}};
    const Summary summary = summaryOf(log.draw());
    expectSteps(summary, log.steps, sizeTolerance);
    ASSERT_EQ(summary.disturbed.size(), 1u) << "the inspection of September left nothing but a stretch";
    EXPECT_EQ(dateOfDay(dayNumber(summary.disturbed[0].begin)), day(2018, 9, 12));
    EXPECT_NEAR(summary.disturbed[0].most.value(), -17, 0.2);
}

TEST(Steps, SomebodyLeaningOnTheHiveIsNone) {
    for (const std::int64_t interval : {60, 300, 900, 3600}) {
        HiveLog log(16);
        log.interval = interval;
        log.begin = secondsOf(2018, 8, 1);
        log.end = secondsOf(2018, 11, 1);
        for (int week = 0; week < 12; ++week)
            log.leans.push_back({secondsOf(2018, 8, 2, 9) + week * 7 * secondsADay,
                                 std::max<std::int64_t>(120, interval), 12.5 - 2 * week});
        const Summary summary = summaryOf(log.draw());
        EXPECT_TRUE(summary.steps.empty()) << interval << " s\n" << told(summary);
    }
}

TEST(Steps, ASingleWildReadingOfAnHourlyLogIsNone) {
    HiveLog log(17);
    log.interval = 3600;
    auto readings = log.draw().readings();
    for (const std::size_t at : {500u, 3000u, 7000u}) readings[at].weight = kilograms(at == 3000 ? 0 : 180);
    const Summary summary = summarise(readings, Times::WallClock);
    EXPECT_TRUE(summary.steps.empty()) << told(summary);
    EXPECT_EQ(summary.disturbed.size(), 3u);
}

TEST(Steps, RainThatDriesOffIsNone) {
    HiveLog log(18);
    log.showers = {
        {secondsOf(2018, 3, 3, 2.5), 0.9}, {secondsOf(2018, 5, 30, 14), 1.4}, {secondsOf(2018, 11, 8, 21.5), 1.8}};
    const Summary summary = summaryOf(log.draw());
    EXPECT_TRUE(summary.steps.empty()) << told(summary);
    ASSERT_EQ(summary.disturbed.size(), 3u);
    for (const Stretch& stretch : summary.disturbed) EXPECT_EQ(stretch.kind, Stretch::Kind::Wet);
    for (const DayWeight& one : summary.days) {
        const bool rained = one.date == day(2018, 3, 3) || one.date == day(2018, 3, 4) ||
                            one.date == day(2018, 11, 9) || one.date == day(2018, 5, 31);
        if (one.wet) EXPECT_TRUE(rained) << one.date.iso();
    }
}

TEST(Steps, HiddenInAGapAreOneOfUnknownKind) {
    HiveLog log(19);
    log.steps = {{secondsOf(2018, 10, 25, 12), -6}};
    auto readings = log.draw().readings();
    std::erase_if(readings, [](const Reading& one) {
        return one.moment > secondsOf(2018, 10, 24) && one.moment < secondsOf(2018, 10, 27);
    });
    const Summary summary = summarise(readings, Times::WallClock);
    ASSERT_EQ(summary.steps.size(), 1u) << told(summary);
    EXPECT_EQ(summary.steps[0].kind, StepKind::Unknown);
    EXPECT_EQ(summary.steps[0].rule, StepRule::InAGap);
    ASSERT_EQ(summary.gaps.size(), 1u);
    // What was eaten in three days of the gap cannot be told from the step.
    EXPECT_NEAR(summary.steps[0].jump.change.value(), -6, 0.3);
}

TEST(Steps, OfADailyLogNeedToBeMoreThanADayBrings) {
    HiveLog log(20);
    log.interval = secondsADay;
    log.begin = secondsOf(2018, 1, 1, 20.5);
    log.steps = {
        {secondsOf(2018, 4, 22, 12), 11}, {secondsOf(2018, 7, 24, 12), -19.5}, {secondsOf(2018, 8, 28, 12), 8}};
    // One reading a day: the day's own income, up to 3 kg, is told only by its neighbours.
    const Summary summary = summaryOf(log.draw());
    ASSERT_EQ(summary.steps.size(), 3u) << told(summary);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(summary.steps[i].jump.change.value(), log.steps[i].kg, 1.5);
}

} // namespace
} // namespace winterlarder::scale::steps_test
