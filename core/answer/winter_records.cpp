// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/winter_records.h"

#include "book/case_of.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace winterlarder::answer {

namespace {

template <class Entry>
Date dateOf(const Entry& entry) {
    if constexpr (requires { entry.weighing.date; })
        return entry.weighing.date;
    else if constexpr (requires { entry.feed.date; })
        return entry.feed.date;
    else if constexpr (requires { entry.harvest.date; })
        return entry.harvest.date;
    else
        return entry.date;
}

class Reading {
public:
    Reading(book::Book& from, book::ColonyId colony, Date until) : from_(from), colony_(colony), until_(until) {}

    template <class Entry>
    void read(std::vector<Entry>& into) {
        auto all = from_.of<Entry>(colony_);
        if (!all) return fail(all.problems());
        for (auto& entry : *all)
            if (dateOf(entry) <= until_) into.push_back(std::move(entry));
    }
    // Planned visits lie ahead of the day they were planned on.
    void readVisits(std::vector<book::PlannedVisit>& into) {
        auto all = from_.of<book::PlannedVisit>(colony_);
        if (!all) return fail(all.problems());
        into = std::move(all).value();
    }
    std::optional<book::Colony> colony() {
        auto found = from_.find(colony_);
        if (!found) fail(found.problems());
        return found ? *found : std::nullopt;
    }
    book::YardId yard(const book::Colony& colony) {
        std::vector<book::Move> moves;
        read(moves);
        return book::yardOn(colony, moves, until_);
    }
    std::vector<book::DayTemperature> weather(book::YardId yard) {
        auto logs = from_.all<book::WeatherLog>();
        std::map<Date, double> days;
        if (!logs) fail(logs.problems());
        else
            for (const auto& log : *logs)
                if (log.yard == yard)
                    for (const auto& day : log.days)
                        if (day.date <= until_) days[day.date] = day.meanC;
        std::vector<book::DayTemperature> result;
        for (const auto& [date, mean] : days) result.push_back({date, mean});
        return result;
    }
    void fail(const Problems& more) { problems.insert(problems.end(), more.begin(), more.end()); }
    Problems problems;

private:
    book::Book& from_;
    book::ColonyId colony_;
    Date until_;
};

} // namespace

Outcome<WinterRecords> winterRecordsOf(book::Book& from, book::ColonyId colony, Date until) {
    Reading reading(from, colony, until);
    WinterRecords records;
    bool found = false;
    const auto read = from.together([&] {
        auto entry = reading.colony();
        if (!entry) return;
        found = true;
        records.colony = std::move(*entry);
        records.yard = reading.yard(records.colony);
        reading.read(records.housings);
        reading.read(records.looks);
        reading.read(records.weighings);
        reading.read(records.feeds);
        reading.read(records.harvests);
        reading.read(records.manipulations);
        reading.read(records.advices);
        reading.readVisits(records.visits);
        reading.read(records.outcomes);
        reading.read(records.sightings);
        reading.read(records.fates);
        records.weather = reading.weather(records.yard);
    });
    if (!read) return read.problems();
    if (!reading.problems.empty()) return reading.problems;
    if (!found) return Problem{ProblemKind::Input, {}, fmt::format("there is no colony {}", colony.number), "check its number"};
    return records;
}

} // namespace winterlarder::answer
