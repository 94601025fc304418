// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/scale_answer.h"

#include "text/scale_words.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

using exchange::Json;
using exchange::LogColumn;

Json toTheGram(Mass mass) {
    const double grams = std::round(mass.value() * 1000);
    return {grams == 0 ? 0.0 : grams / 1000};
}
Json toTheGram(const std::optional<Mass>& mass) { return mass ? toTheGram(*mass) : Json(); }

std::string shownColumn(const LogColumn& column) {
    return column.name.empty() ? fmt::format("{}", column.number) : column.name;
}

Json columnsJson(const ScaleAnswer& answer) {
    const exchange::ScaleLogColumns& columns = answer.columns;
    Json object = Json::object();
    if (columns.date) object.add("date", shownColumn(*columns.date));
    object.add("time", shownColumn(columns.time))
        .add("weight", shownColumn(columns.weight))
        .add("unit", symbol(columns.unit));
    if (columns.date) object.add("date_column", columns.date->number);
    object.add("time_column", columns.time.number).add("weight_column", columns.weight.number);
    object.add("delimiter", columns.delimiter == '\t' ? std::string("tab") : std::string(1, columns.delimiter))
        .add("decimal", std::string(1, columns.decimal))
        .add("header_line", columns.headerLine > 0 ? Json(columns.headerLine) : Json())
        .add("date_order", columns.dateOrder ? Json(exchange::word(*columns.dateOrder)) : Json())
        .add("time_form", columns.timeForm == exchange::TimeForm::UnixTime     ? "unix"
                          : columns.timeForm == exchange::TimeForm::WithOffset ? "with_offset"
                                                                               : "clock")
        .add("days_only", columns.daysOnly)
        .add("days_of_utc", answer.utcDays);
    Json told = Json::object();
    told.add("time", word(columns.time.told))
        .add("weight", word(columns.weight.told))
        .add("unit", word(columns.unitTold));
    if (columns.dateOrder) told.add("date_order", word(columns.dateOrderTold));
    object.add("told_by", std::move(told));
    return object;
}

Json daysJson(const scale::Summary& summary) {
    Json list = Json::list();
    for (const scale::DayWeight& day : summary.days) {
        Json object = Json::object();
        object.add("date", day.date.iso()).add("weight_kg", toTheGram(day.weight)).add("basis", word(day.basis));
        object.add("readings", day.readings).add("wet", day.wet).add("change_kg", toTheGram(day.change));
        object.add("kind", day.kind ? Json(word(*day.kind)) : Json());
        list.push(std::move(object));
    }
    return list;
}

Json monthsJson(const scale::Summary& summary) {
    Json list = Json::list();
    for (const scale::MonthChange& month : summary.months) {
        Json object = Json::object();
        object.add("month", fmt::format("{:04}-{:02}", month.year, month.month))
            .add("change_kg", toTheGram(month.change));
        if (!month.change) object.add("why", word(month.ends));
        object.add("nectar_days", month.nectarDays).add("nectar_kg", toTheGram(month.nectar));
        object.add("eating_days", month.eatingDays).add("eaten_kg", toTheGram(month.eaten));
        object.add("wet_days", month.wetDays).add("unknown_days", month.unknownDays);
        object.add("end_by_day", month.byDay).add("end_wet", month.wet);
        list.push(std::move(object));
    }
    return list;
}

Json stepsJson(const scale::Summary& summary) {
    Json list = Json::list();
    for (const scale::Step& step : summary.steps) {
        Json object = Json::object();
        object.add("date", step.date.iso()).add("kg", toTheGram(step.jump.change)).add("kind", word(step.kind));
        object.add("time", localTime(step.local)).add("why", word(step.rule));
        object.add("within_minutes", static_cast<double>(step.jump.end - step.jump.begin) / 60);
        list.push(std::move(object));
    }
    return list;
}

Json faultsJson(const ScaleAnswer& answer) {
    std::vector<std::pair<int, Json>> faults;
    for (const exchange::ScaleLogFault& fault : answer.faults) {
        Json object = Json::object();
        object.add("line", fault.line).add("why", text::rowFault(fault.why).toStdString());
        if (!fault.cell.empty()) object.add("cell", text::printable(fault.cell).toStdString());
        faults.emplace_back(fault.line, std::move(object));
    }
    for (const scale::LeftOut& left : answer.summary.leftOut) {
        Json object = Json::object();
        object.add("line", left.line).add("why", text::leftOut(left).toStdString());
        faults.emplace_back(left.line, std::move(object));
    }
    std::stable_sort(faults.begin(), faults.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    Json list = Json::list();
    for (auto& fault : faults) list.push(std::move(fault.second));
    return list;
}

Json disturbedJson(const scale::Summary& summary) {
    Json list = Json::list();
    for (const scale::Stretch& stretch : summary.disturbed) {
        Json object = Json::object();
        object.add("from", localTime(stretch.begin))
            .add("to", localTime(stretch.end))
            .add("most_kg", toTheGram(stretch.most));
        object.add("kind", stretch.kind == scale::Stretch::Kind::Wet ? "wet" : "disturbed");
        list.push(std::move(object));
    }
    return list;
}

Json gapsJson(const scale::Summary& summary) {
    Json list = Json::list();
    for (const scale::Gap& gap : summary.gaps) {
        Json object = Json::object();
        object.add("from", localTime(gap.from)).add("to", localTime(gap.to));
        list.push(std::move(object));
    }
    return list;
}

Json clockJson(const scale::Summary& summary) {
    Json list = Json::list();
    for (const scale::ClockJump& jump : summary.jumps) {
        Json object = Json::object();
        object.add("time", localTime(jump.local))
            .add("seconds", static_cast<double>(jump.seconds))
            .add("line", jump.line);
        object.add("kind", jump.kind == scale::ClockJump::Kind::DaylightSaving ? "daylight_saving" : "back");
        list.push(std::move(object));
    }
    return list;
}

Json readingsJson(const ScaleAnswer& answer) {
    const scale::Summary& summary = answer.summary;
    Json object = Json::object();
    object.add("used", static_cast<std::uint64_t>(summary.readings))
        .add("lines", static_cast<std::uint64_t>(answer.lines));
    object.add("merged", static_cast<std::uint64_t>(summary.merged))
        .add("interval_seconds", static_cast<double>(summary.interval));
    object.add("order", summary.order == scale::RowOrder::ByTime        ? "by_time"
                        : summary.order == scale::RowOrder::NewestFirst ? "newest_first"
                                                                        : "mixed");
    return object;
}

Json proposalsJson(const scale::Proposals& proposals) {
    Json weighings = Json::list(), records = Json::list();
    for (const scale::ProposedWeighing& one : proposals.weighings) {
        Json object = Json::object();
        object.add("date", one.date.iso())
            .add("gross_kg", toTheGram(one.gross))
            .add("wet", one.wet)
            .add("why", word(one.why));
        weighings.push(std::move(object));
    }
    for (const scale::ProposedRecord& one : proposals.records) {
        Json object = Json::object();
        object.add("date", one.date.iso())
            .add("kg", toTheGram(one.change))
            .add("record", word(one.sort))
            .add("certain", one.certain);
        records.push(std::move(object));
    }
    Json object = Json::object();
    object.add("weighings", std::move(weighings)).add("records", std::move(records));
    return object;
}

} // namespace

Json json(const ScaleAnswer& answer) {
    Json object = Json::object();
    object.add("columns", columnsJson(answer)).add("readings", readingsJson(answer));
    object.add("days", daysJson(answer.summary))
        .add("months", monthsJson(answer.summary))
        .add("steps", stepsJson(answer.summary));
    object.add("faults", faultsJson(answer))
        .add("disturbed", disturbedJson(answer.summary))
        .add("gaps", gapsJson(answer.summary));
    object.add("clock", clockJson(answer.summary)).add("proposals", proposalsJson(answer.proposals));
    return object;
}

std::string_view word(scale::StepKind kind) {
    constexpr std::string_view words[] = {"equipment", "feed", "harvest", "unknown"};
    return words[static_cast<std::size_t>(kind)];
}
std::string_view word(scale::StepRule rule) {
    constexpr std::string_view words[] = {
        "came_and_went",     "after_feed",        "shrank_like_syrup", "nothing_comes_in", "room_in_a_flow",
        "too_much_for_food", "took_what_came_in", "like_a_swarm",      "in_a_gap",         "no_rule"};
    return words[static_cast<std::size_t>(rule)];
}
std::string_view word(scale::Basis basis) {
    constexpr std::string_view words[] = {"night", "near_night", "day"};
    return words[static_cast<std::size_t>(basis)];
}
std::string_view word(scale::DayKind kind) {
    constexpr std::string_view words[] = {"nectar", "eating", "wet"};
    return words[static_cast<std::size_t>(kind)];
}
std::string_view word(scale::MonthEnd ends) {
    constexpr std::string_view words[] = {"", "no weight on the first of the month",
                                          "no weight on the first of the next month",
                                          "no weight on the first of the month, nor of the next"};
    return words[static_cast<std::size_t>(ends)];
}
std::string_view word(scale::KeepWhy why) {
    constexpr std::string_view words[] = {"first", "last", "first_of_month", "before_step", "after_step"};
    return words[static_cast<std::size_t>(why)];
}
std::string_view word(scale::ProposedRecord::Sort sort) {
    constexpr std::string_view words[] = {"feed", "harvest", "manipulation"};
    return words[static_cast<std::size_t>(sort)];
}
std::string_view word(exchange::ToldBy told) {
    constexpr std::string_view words[] = {"option", "header", "content", "size"};
    return words[static_cast<std::size_t>(told)];
}

} // namespace winterlarder::answer
