// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/measured_days.h"

#include "answer/doubt_words.h"
#include "cli/open_book.h"
#include "exchange/json/json_tree.h"

#include <fmt/format.h>

namespace winterlarder::cli {

Outcome<exchange::TemperatureScale> temperatureScale(const std::string& unit) {
    if (unit == "c") return exchange::TemperatureScale::Celsius;
    if (unit == "f") return exchange::TemperatureScale::Fahrenheit;
    return argumentProblem(fmt::format("--unit is {}", exchange::inQuotes(unit)), "c or f");
}

Outcome<std::vector<exchange::DailyTemperature>> measuredDays(const Session& session, const std::string& source,
                                                              const exchange::TemperatureColumns& columns,
                                                              exchange::TemperatureScale scale, bool sure) {
    const auto text = textOf(source, session.in, limits::tableText);
    if (!text) return text.problems();
    auto days = exchange::readDailyTemperatures(*text, shownName(source), columns, scale);
    if (!days || sure) return days;
    const auto doubt = answer::doubtOfDays(*days, session.moment.today);
    if (doubt) return answer::problemOf(*doubt, {shownName(source), 0, 0}, ifSure, session.style);
    return days;
}

} // namespace winterlarder::cli
