// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/scale_answer.h"

#include "exchange/json/json_tree.h"
#include "support/as_number.h"

#include <QDateTime>
#include <QTimeZone>
#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

Problem noZone(const std::string& name) {
    return {ProblemKind::Input,
            {},
            fmt::format("{} is no time zone", exchange::inQuotes(name)),
            "a name such as America/Halifax, UTC, or hours ahead of UTC such as +02:00"};
}

// "+02:00", "-0330", "+2"
std::optional<std::int32_t> fixedOffset(const std::string& name) {
    if (name == "UTC" || name == "Z" || name == "utc") return 0;
    if (name.size() < 2 || (name[0] != '+' && name[0] != '-')) return std::nullopt;
    const auto colon = name.find(':');
    const bool fourDigits = colon == std::string::npos && name.size() == 5;
    const std::size_t hoursEnd = colon != std::string::npos ? colon : fourDigits ? 3 : name.size();
    const std::string hourText = name.substr(1, hoursEnd - 1);
    const std::string minuteText = colon != std::string::npos ? name.substr(colon + 1)
                                   : fourDigits               ? name.substr(3)
                                                              : "0";
    const auto number = [](const std::string& text) {
        return text.size() <= 2 ? asNumber<int>(text).value_or(-1) : -1;
    };
    const int hours = number(hourText), minutes = number(minuteText);
    if (hours < 0 || hours > 15 || minutes < 0 || minutes > 59) return std::nullopt;
    return (hours * 3600 + minutes * 60) * (name[0] == '-' ? -1 : 1);
}

QDateTime atMoment(std::int64_t moment) { return QDateTime::fromSecsSinceEpoch(moment, Qt::UTC); }

// Rows of the file as readings with moments.
class ReadingsOf {
public:
    ReadingsOf(const exchange::ScaleLog& log, const ScaleClocks& clocks) : log_(log), clocks_(clocks) {}

    Outcome<std::vector<scale::Reading>> all() {
        const auto [first, last] = std::minmax_element(
            log_.rows.begin(), log_.rows.end(),
            [](const exchange::ScaleLogRow& a, const exchange::ScaleLogRow& b) { return a.seconds < b.seconds; });
        const auto zones =
            zonesBetween(first->seconds - 2 * scale::secondsADay, last->seconds + 2 * scale::secondsADay);
        if (!zones) return zones.problems();
        std::vector<scale::Reading> readings;
        readings.reserve(log_.rows.size());
        std::int64_t before = INT64_MIN;
        for (const exchange::ScaleLogRow& row : log_.rows) {
            readings.push_back(readingOf(row, before));
            before = readings.back().moment;
        }
        return readings;
    }
    //! The times stay those of the clock the log was kept by.
    scale::Times times() const { return absolute() || logZone_ ? scale::Times::Moments : scale::Times::WallClock; }

private:
    bool absolute() const { return log_.columns.timeForm != exchange::TimeForm::WallClock; }

    Outcome<Done> zonesBetween(std::int64_t from, std::int64_t to) {
        Problems problems;
        const auto named = [&](const std::optional<std::string>& name, std::optional<scale::TimeZone>& zone,
                               const char* option) {
            if (!name) return;
            auto found = timeZoneNamed(*name, from, to);
            if (found) zone = std::move(found).value();
            else
                for (Problem problem : found.problems()) {
                    problem.detail = fmt::format("{}: {}", option, problem.detail);
                    problems.push_back(problem);
                }
        };
        if (absolute() && clocks_.log)
            problems.push_back({ProblemKind::Input,
                                {},
                                "--clock: the times of the log say themselves how far from UTC they are",
                                "--time-zone where days of another place are wanted"});
        named(clocks_.place, place_, "--time-zone");
        named(clocks_.log, logZone_, "--clock");
        if (!logZone_) logZone_ = place_;
        if (!problems.empty()) return problems;
        return Done{};
    }

    scale::Reading readingOf(const exchange::ScaleLogRow& row, std::int64_t before) const {
        scale::Reading reading{row.seconds, kilograms(row.kg), 0, row.line};
        if (!absolute() && logZone_) {
            reading.moment = logZone_->momentOf(row.seconds);
            if (reading.moment < before) reading.moment = logZone_->laterMomentOf(row.seconds);
        }
        if (place_) reading.offset = place_->offsetAt(reading.moment);
        else if (absolute()) reading.offset = row.offset;
        else if (logZone_) reading.offset = static_cast<std::int32_t>(row.seconds - reading.moment);
        return reading;
    }

    const exchange::ScaleLog& log_;
    const ScaleClocks& clocks_;
    std::optional<scale::TimeZone> place_, logZone_;
};

bool allUtc(const exchange::ScaleLog& log) {
    return log.columns.timeForm != exchange::TimeForm::WallClock &&
           std::all_of(log.rows.begin(), log.rows.end(),
                       [](const exchange::ScaleLogRow& row) { return row.offset == 0; });
}

} // namespace

Outcome<scale::TimeZone> timeZoneNamed(const std::string& name, std::int64_t from, std::int64_t to) {
    if (const auto offset = fixedOffset(name)) return scale::TimeZone::fixed(*offset);
    // Asked for first: a zone can also be made of a rule, and nearly any word is one.
    const QByteArray id = QByteArray::fromStdString(name);
    if (!QTimeZone::isTimeZoneIdAvailable(id)) return noZone(name);
    const QTimeZone zone(id);
    std::vector<scale::OffsetChange> changes;
    for (const QTimeZone::OffsetData& change : zone.transitions(atMoment(from), atMoment(to))) {
        const scale::OffsetChange next{change.atUtc.toSecsSinceEpoch(), change.offsetFromUtc};
        if (changes.empty() || changes.back().from < next.from) changes.push_back(next);
    }
    return scale::TimeZone(zone.offsetFromUtc(atMoment(from)), std::move(changes));
}

Outcome<ScaleAnswer> answerOf(exchange::ScaleLog log, const ScaleClocks& clocks) {
    ReadingsOf readingsOf(log, clocks);
    auto readings = readingsOf.all();
    if (!readings) return readings.problems();
    ScaleAnswer answer;
    answer.utcDays = allUtc(log) && !clocks.place;
    log.rows = {};
    answer.columns = std::move(log.columns);
    answer.faults = std::move(log.faults);
    answer.lines = log.lines;
    answer.summary = scale::summarise(std::move(readings).value(), readingsOf.times());
    answer.proposals = scale::propose(answer.summary);
    return answer;
}

std::string localTime(std::int64_t local) {
    const std::int32_t second = scale::secondOfDay(local);
    return fmt::format("{}T{:02}:{:02}:{:02}", scale::dateOfDay(scale::dayNumber(local)).iso(), second / 3600,
                       second / 60 % 60, second % 60);
}

} // namespace winterlarder::answer
