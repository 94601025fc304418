// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/json_values.h"
#include "cli/commands.h"
#include "cli/measured_days.h"
#include "cli/table.h"
#include "climate/daily_record.h"
#include "exchange/json/suggestion.h"
#include "text/contexts.h"

#include <fmt/format.h>

namespace winterlarder::cli {

using namespace winterlarder::answer;

namespace {

using exchange::Json;

Json climateJson(const climate::OwnClimate& own) {
    Json object = Json::object();
    object.add("latitude", own.latitude);
    if (own.longitude) object.add("longitude", *own.longitude);
    Json means = Json::list();
    for (double mean : own.monthlyMeanC) means.push(mean);
    object.add("monthly_mean_c", std::move(means))
        .add("daily_sd_winter_c", own.dailySdWinterK)
        .add("daily_sd_summer_c", own.dailySdSummerK)
        .add("lag1", own.lag1)
        .add("season_offset_sd_c", own.seasonOffsetSdK);
    return object;
}

QString climateText(const climate::RecordSummary& summary, const text::WordStyle& style) {
    const climate::OwnClimate& own = summary.climate;
    const auto orUnknown = [&](const std::optional<double>& value, int decimals) {
        return value ? text::number(*value, decimals, style) : say::CommandLine::tr("too few years to tell");
    };
    FactList facts;
    facts.add(say::CommandLine::tr("Days"),
              say::CommandLine::tr("%1 in %2 calendar years, %3 missing between them")
                  .arg(text::count(summary.days, style), text::count(summary.years, style),
                       text::count(summary.gaps, style)));
    facts.add(say::CommandLine::tr("Daily SD in winter, °C"), orUnknown(own.dailySdWinterK, 2));
    facts.add(say::CommandLine::tr("Daily SD in summer, °C"), orUnknown(own.dailySdSummerK, 2));
    facts.add(say::CommandLine::tr("Correlation of consecutive days"), orUnknown(own.lag1, 2));
    facts.add(say::CommandLine::tr("SD of a whole season, °C"), orUnknown(own.seasonOffsetSdK, 2));
    TextTable table({say::CommandLine::tr("Month"), say::CommandLine::tr(">Mean °C")});
    for (int month = 1; month <= 12; ++month)
        table.add({style.locale.standaloneMonthName(month),
                   text::number(own.monthlyMeanC[static_cast<std::size_t>(month - 1)], 2, style)});
    return facts.text() + QLatin1Char('\n') + table.text() +
           wrapped(say::CommandLine::tr("With --json this is printed as a site that a case file accepts."),
                   QStringLiteral("  "));
}

Problems argumentProblems(const ClimateOptions& options) {
    Problems problems;
    if (!(options.latitude >= -90 && options.latitude <= 90))
        problems.push_back(argumentProblem("--latitude is outside -90 to 90", "degrees, north positive"));
    if (options.longitude && !(*options.longitude >= -180 && *options.longitude <= 180))
        problems.push_back(argumentProblem("--longitude is outside -180 to 180", "degrees, east positive"));
    return problems;
}

} // namespace

Status climate(Session& session, const ClimateOptions& options) {
    Problems problems = argumentProblems(options);
    const auto unit = temperatureScale(options.unit);
    if (!unit) problems.insert(problems.end(), unit.problems().begin(), unit.problems().end());
    const auto columns = exchange::temperatureColumns(options.columns);
    if (!columns)
        for (const Problem& problem : columns.problems())
            problems.push_back(argumentProblem("--columns: " + problem.detail, problem.remedy));
    if (!problems.empty()) return session.fail(problems);
    const auto read = measuredDays(session, options.file, *columns, *unit, options.sure);
    if (!read) return session.fail(read.problems());
    std::vector<climate::DailyMean> record;
    for (const exchange::DailyTemperature& day : *read) record.push_back({day.date, day.meanC});
    auto summary = climate::summarise(record, options.latitude);
    if (!summary) {
        Problems found = summary.problems();
        for (Problem& problem : found) problem.place.file = shownName(options.file);
        return session.fail(found);
    }
    summary->climate.longitude = options.longitude;
    if (session.json) session.print(climateJson(summary->climate));
    else session.print(climateText(*summary, session.style));
    return Status::Done;
}

} // namespace winterlarder::cli
