// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "support/outcome.h"

#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::exchange {

//! Which columns of a table of daily temperatures are read: a date, and either the mean or the lowest and highest.
struct TemperatureColumns {
    std::string date = "date";
    std::string mean = "mean";   //!< empty: not used
    std::string minimum = "min"; //!< empty: not used
    std::string maximum = "max";
};

//! Reads "date=D,min=TMIN,max=TMAX" or "date=D,mean=T"; empty text gives the usual names. Problems: unknown or doubled
//! keys, min without max, neither mean nor min and max.
Outcome<TemperatureColumns> temperatureColumns(std::string_view text);

enum class TemperatureScale { Celsius, Fahrenheit };

//! Mean of one day [degC]; (min + max) / 2 where the table gives those.
struct DailyTemperature {
    Date date;
    double meanC;
};

//! Reads a CSV table (commas, semicolons or tabs, told by its header line) of daily temperatures. Dates are YYYY-MM-DD
//! or YYYY/MM/DD. An empty cell or NA is a day without a reading: a gap, no fault. Every bad row is listed with line
//! and column: a date that is none or stands twice, a reading that is no number or outside -90..60 degC, a minimum
//! above its maximum. Column names match without regard to case. Tested: tests/exchange/daily_temperatures_test.cpp.
Outcome<std::vector<DailyTemperature>> readDailyTemperatures(std::string_view text, const std::string& file,
                                                             const TemperatureColumns& columns, TemperatureScale scale);

} // namespace winterlarder::exchange
