// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/daily_record.h"

#include "climate/shipped.h"

#include <functional>

namespace winterlarder::climate {

inline Date day(int year, int month, int dayOfMonth) { return *Date::of(year, month, dayOfMonth); }

inline RecordSummary accepted(const std::vector<DailyMean>& record, double latitude) {
    auto summary = summarise(record, latitude);
    require(summary.ok(), "{}", summary.ok() ? std::string() : describe(summary.problems().front()));
    return std::move(summary).value();
}

//! Days first..last (years) with the temperature a function gives.
inline std::vector<DailyMean> recordOf(int firstYear, int lastYear, const std::function<double(Date)>& temperature) {
    std::vector<DailyMean> record;
    for (Date date = day(firstYear, 1, 1); date <= day(lastYear, 12, 31); date = date.plusDays(1))
        record.push_back({date, temperature(date)});
    return record;
}

} // namespace winterlarder::climate
