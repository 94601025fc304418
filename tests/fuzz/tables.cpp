// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/daily_record.h"
#include "exchange/logs/daily_temperatures.h"
#include "exchange/logs/scale_log.h"
#include "fuzz/targets.h"
#include "scale/proposals.h"

#include <algorithm>
#include <cmath>
#include <sstream>

namespace winterlarder::fuzz {

void temperatures(std::string_view input) {
    const auto end = std::min(input.find('\n'), input.size());
    const auto columns = exchange::temperatureColumns(input.substr(0, end));
    const auto table = input.substr(std::min(end + 1, input.size()));
    const auto read = exchange::readDailyTemperatures(
        table, "t.csv", columns ? *columns : exchange::TemperatureColumns{}, exchange::TemperatureScale::Celsius);
    if (!read) return holdRefusal(read.problems(), "t.csv");
    std::vector<climate::DailyMean> days;
    for (const auto& day : *read) {
        hold(day.meanC >= -90 && day.meanC <= 60, "a temperature outside its limits");
        days.push_back({day.date, day.meanC});
    }
    const auto summary = climate::summarise(days, 45);
    if (!summary) return holdRefusal(summary.problems());
    for (const double month : summary->climate.monthlyMeanC) hold(std::isfinite(month), "a month that is no number");
}

void scaleLog(std::string_view input) {
    std::istringstream stream{std::string(input)};
    const auto log = exchange::readScaleLog(stream, "log.csv");
    if (!log) return holdRefusal(log.problems());
    hold(!log->rows.empty(), "a log without a reading");
    std::vector<scale::Reading> readings;
    for (const auto& row : log->rows) {
        hold(row.kg >= exchange::lightestKg && row.kg <= exchange::heaviestKg, "a weight outside its limits");
        readings.push_back(
            {row.seconds, kilograms(row.kg), row.offset == exchange::ScaleLogRow::noOffset ? 0 : row.offset, row.line});
    }
    const auto summary = scale::summarise(std::move(readings), scale::Times::WallClock);
    for (const auto& day : summary.days) hold(std::isfinite(day.weight.value()), "a day's weight that is no number");
    hold(std::is_sorted(summary.days.begin(), summary.days.end(),
                        [](const auto& a, const auto& b) { return a.date < b.date; }),
         "days out of order");
    const auto proposed = scale::propose(summary);
    for (std::size_t i = 1; i < proposed.weighings.size(); ++i)
        hold(proposed.weighings[i - 1].date < proposed.weighings[i].date, "two weighings proposed for one day");
    for (const auto& record : proposed.records)
        hold(std::isfinite(record.change.value()), "a change that is no number");
}

} // namespace winterlarder::fuzz
