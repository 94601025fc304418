// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/session.h"
#include "exchange/logs/daily_temperatures.h"

#include <string>
#include <vector>

namespace winterlarder::cli {

//! The scale --unit names; a problem where it is neither c nor f.
Outcome<exchange::TemperatureScale> temperatureScale(const std::string& unit);

//! The daily temperatures of a table; problems of the file too. Where the last day is still to come that is asked about first, unless the
//! keeper is `sure`. Tested: tests/cli/doubts_test.cpp.
Outcome<std::vector<exchange::DailyTemperature>> measuredDays(const Session& session, const std::string& source,
                                                              const exchange::TemperatureColumns& columns,
                                                              exchange::TemperatureScale scale, bool sure);

} // namespace winterlarder::cli
