// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for every log: drawn colonies with drawn steps.
#include "scale/summary.h"
#include "support/hive_log.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::scale::properties_test {
namespace {

using namespace winterlarder::testing;

// Two and a half months across the end of a flow, with up to three steps by day.
HiveLog someLog() {
    HiveLog log(*rc::gen::arbitrary<std::uint32_t>());
    log.begin = secondsOf(2018, 7, 5);
    log.end = secondsOf(2018, 9, 20);
    log.interval = *rc::gen::element<std::int64_t>(300, 600, 900, 1800);
    const int steps = *rc::gen::inRange(0, 4);
    for (int i = 0; i < steps; ++i) {
        const int kg = *rc::gen::suchThat(rc::gen::inRange(-20, 21), [](int size) { return std::abs(size) >= 3; });
        log.steps.push_back({secondsOf(2018, 7, 15) + (i * 20 + *rc::gen::inRange(0, 15)) * secondsADay +
                                 *rc::gen::inRange(9 * 60, 19 * 60) * 60,
                             1.0 * kg});
    }
    log.draw();
    return log;
}

void expectSameMonths(const Summary& a, const Summary& b, double tolerance) {
    RC_ASSERT(a.months.size() == b.months.size());
    for (std::size_t i = 0; i < a.months.size(); ++i) {
        RC_ASSERT(a.months[i].change.has_value() == b.months[i].change.has_value());
        if (a.months[i].change) RC_ASSERT(std::abs((*a.months[i].change - *b.months[i].change).value()) <= tolerance);
    }
}

RC_GTEST_PROP(ScaleProperties, AWeightAddedToAllChangesNoStepAndNoMonth, ()) {
    HiveLog log = someLog();
    auto readings = log.readings();
    const auto plain = summarise(readings, Times::WallClock);
    const Mass extra = kilograms(*rc::gen::inRange(-400, 400) / 8.0);
    for (Reading& reading : readings) reading.weight += extra;
    const auto heavier = summarise(readings, Times::WallClock);
    expectSameMonths(plain, heavier, 1e-9);
    RC_ASSERT(plain.steps.size() == heavier.steps.size());
    RC_ASSERT(plain.days.size() == heavier.days.size());
    for (std::size_t i = 0; i < plain.days.size(); ++i)
        RC_ASSERT(std::abs((heavier.days[i].weight - plain.days[i].weight - extra).value()) < 1e-9);
}

RC_GTEST_PROP(ScaleProperties, TheOrderOfRowsChangesNothingButANote, (std::uint32_t seed)) {
    HiveLog log = someLog();
    auto readings = log.readings();
    const auto plain = summarise(readings, Times::WallClock);
    std::shuffle(readings.begin(), readings.end(), std::mt19937(seed));
    const auto shuffled = summarise(readings, Times::WallClock);
    RC_ASSERT(shuffled.order == RowOrder::Mixed);
    RC_ASSERT(shuffled.leftOut.empty());
    RC_ASSERT(shuffled.steps == plain.steps);
    expectSameMonths(plain, shuffled, 0);
}

RC_GTEST_PROP(ScaleProperties, DaysAreTheStepsAndTheChangesBetweenThem, ()) {
    HiveLog log = someLog();
    const auto summary = summarise(log.readings(), Times::WallClock);
    Mass between{0}, jumps{0};
    for (const DayWeight& day : summary.days)
        if (day.change) between += *day.change;
    for (const Step& step : summary.steps) jumps += step.jump.change;
    const Mass all = summary.days.back().weight - summary.days.front().weight;
    RC_ASSERT(std::abs((between + jumps - all).value()) < 1e-9);
}

RC_GTEST_PROP(ScaleProperties, AMonthIsTheSumOfItsDays, ()) {
    HiveLog log = someLog();
    const auto summary = summarise(log.readings(), Times::WallClock);
    for (const MonthChange& month : summary.months) {
        if (!month.change || month.unknownDays > 0) continue;
        Mass sum{0};
        for (const DayWeight& day : summary.days)
            if (day.date.month() == month.month) sum += *day.change;
        RC_ASSERT(std::abs((sum - *month.change).value()) < 1e-9);
    }
}

// A step in two parts a quarter of an hour to some hours apart is one or two steps of the same sum.
RC_GTEST_PROP(ScaleProperties, AStepInTwoPartsChangesNoMonth, ()) {
    HiveLog log = someLog();
    log.steps = {{secondsOf(2018, 8, 10, 13), 9}};
    const auto whole = summarise(HiveLog(log).readings(), Times::WallClock);
    const int part = *rc::gen::inRange(2, 8), minutes = *rc::gen::inRange(15, 300);
    log.steps = {{secondsOf(2018, 8, 10, 13), 1.0 * part}, {secondsOf(2018, 8, 10, 13) + minutes * 60, 9.0 - part}};
    const auto parts = summarise(log.readings(), Times::WallClock);
    RC_ASSERT(whole.months[1].change && parts.months[1].change);
    // Each jump is known to 0.18 kg at the worst (tests/scale/steps_test.cpp), half-hour readings to 0.3.
    RC_ASSERT(std::abs((*whole.months[1].change - *parts.months[1].change).value()) <=
              3 * (log.interval > 900 ? 0.3 : 0.18));
    Mass sum{0};
    for (const Step& step : parts.steps) sum += step.jump.change;
    RC_ASSERT(std::abs(sum.value() - 9) <= 2 * (log.interval > 900 ? 0.3 : 0.18));
}

// Whatever stands in the readings, nothing breaks and every day given has readings.
RC_GTEST_PROP(ScaleProperties, AnyReadingsAtAllAreSummedUp, ()) {
    const auto moments = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 40'000'000));
    std::vector<Reading> readings;
    for (const int moment : moments)
        readings.push_back({secondsOf(2018, 1, 1) + moment, kilograms(*rc::gen::inRange(-50, 1000)), 0,
                            static_cast<std::int32_t>(readings.size()) + 1});
    const auto summary = summarise(readings, *rc::gen::element(Times::WallClock, Times::Moments));
    RC_ASSERT(summary.readings + summary.leftOut.size() + summary.merged >= readings.size());
    for (const DayWeight& day : summary.days) RC_ASSERT(day.readings > 0);
}

} // namespace
} // namespace winterlarder::scale::properties_test
