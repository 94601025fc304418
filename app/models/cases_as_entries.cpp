// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/cases_as_entries.h"

#include <fmt/format.h>
#include <utility>

#include <algorithm>

namespace winterlarder::desk {

namespace {

std::optional<book::DayOfYear> dayOfYear(const std::optional<Date>& date) {
    if (!date) return std::nullopt;
    return book::DayOfYear::of(date->month(), date->isLeapDay() ? 28 : date->day());
}

book::YardSeason seasonOf(const book::SeasonRecord& season) {
    return {dayOfYear(season.lastIncome),    dayOfYear(season.broodStop),   dayOfYear(season.broodRestart),
            dayOfYear(season.buildup),       dayOfYear(season.forage),      dayOfYear(season.feedAdvisedBy),
            dayOfYear(season.syrupDeadline), dayOfYear(season.syrupRefused)};
}

book::Yard yardOf(const book::ColonyCase& record) {
    return {.name = record.yard.value_or("Yard"),
            .site = record.site,
            .season = seasonOf(record.season),
            .wish = record.wish,
            .fullCombs = record.fullCombs,
            .units = record.units};
}

bool anythingSeen(const book::ColonyCase& record) {
    return !(record.bees == book::BeesRecord{}) || !std::holds_alternative<std::monostate>(record.combs) ||
           record.moisturePercent || record.honeyKind || record.fedOrTreated;
}

// What a case does not say of the day of the look was seen at it; a book would take it for given afterwards.
template <class Record> Record asInACase(Record record) {
    record.afterLook = record.afterLook.value_or(false);
    return record;
}

class Writer {
public:
    Writer(book::YardId nextYard, book::ColonyId nextColony) : nextYard_(nextYard), nextColony_(nextColony) {}

    void write(const book::ColonyCase& record) {
        const auto yard = standsIn(record);
        const auto id = nextColony_;
        ++nextColony_.number;
        const auto name = record.colony.value_or(fmt::format("Colony {}", ++nameless_));
        step.edits.push_back(
            book::AddColony{{.yard = yard, .name = name, .hive = record.hive, .feeder = record.feeder}});
        if (anythingSeen(record)) {
            book::Look look{.colony = id,
                            .date = record.lookedOn.value_or(record.asOf),
                            .bees = record.bees,
                            .combs = record.combs,
                            .moisturePercent = record.moisturePercent};
            look.honeyKind = record.honeyKind;
            look.fedOrTreated = record.fedOrTreated;
            look.sure = std::exchange(look.bees.sure, false); // a look keeps it for all that was seen
            step.edits.push_back(book::AddLook{std::move(look)});
        }
        for (const auto& weighing : record.weighings)
            step.edits.push_back(book::AddWeighing{{.colony = id, .weighing = weighing}});
        for (auto feed : record.feeds)
            step.edits.push_back(book::AddFeed{{.colony = id, .feed = asInACase(std::move(feed))}});
        for (auto harvest : record.harvests)
            step.edits.push_back(book::AddHarvest{{.colony = id, .harvest = asInACase(std::move(harvest))}});
        for (const auto& treatment : record.treatments)
            step.edits.push_back(book::AddTreatment{
                {.colony = id, .date = treatment.date, .until = treatment.until, .what = treatment.what}});
    }

    book::EditGroup step{"open case files", {}};

private:
    // Colonies of one name of yard and one place, season and wish stand together.
    book::YardId standsIn(const book::ColonyCase& record) {
        const auto wanted = yardOf(record);
        for (const auto& made : yards_) {
            auto same = made;
            same.id = {};
            if (same == wanted) return made.id;
        }
        yards_.push_back(wanted);
        yards_.back().id = nextYard_;
        ++nextYard_.number;
        step.edits.push_back(book::AddYard{wanted});
        return yards_.back().id;
    }

    book::YardId nextYard_;
    book::ColonyId nextColony_;
    std::vector<book::Yard> yards_;
    int nameless_ = 0;
};

} // namespace

book::EditGroup entriesOfCases(const std::vector<book::ColonyCase>& cases, book::YardId nextYard,
                               book::ColonyId nextColony) {
    Writer writer(nextYard, nextColony);
    for (const auto& record : cases) writer.write(record);
    return std::move(writer.step);
}

} // namespace winterlarder::desk
