// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/cases_as_entries.h"

#include "support/input_limits.h"
#include "support/require.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

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

    //! `file`: where the case stands; empty where that is not known.
    void write(const book::ColonyCase& record, const std::string& file) {
        const auto id = nextColony_;
        ++nextColony_.number;
        const auto name = record.colony.value_or(fmt::format("Colony {}", ++nameless_));
        const auto yard = standsIn(record, file.empty() ? name : file);
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

    void nameYardsApart() {
        std::set<std::string> taken;
        for (const auto& yard : yards_) taken.insert(yard.written.name);
        for (const auto& yard : yards_)
            if (namesakes(yard) > 1) std::get<book::AddYard>(step.edits[yard.edit]).entry.name = freeName(yard, taken);
    }

    book::EditGroup step{"open case files", {}};

private:
    struct MadeYard {
        book::YardId id;
        book::Yard written;            //!< without its number
        std::size_t edit = 0;          //!< the one of the step that adds it
        std::vector<std::string> from; //!< files or colonies
    };

    std::ptrdiff_t namesakes(const MadeYard& yard) const {
        return std::count_if(yards_.begin(), yards_.end(),
                             [&](const MadeYard& other) { return other.written.name == yard.written.name; });
    }

    // Files of one name may lie in two folders, and a long one may leave no room.
    static std::string freeName(const MadeYard& yard, std::set<std::string>& taken) {
        const auto& from = yard.from;
        std::string name = from.size() == 1
                               ? fmt::format("{} ({})", yard.written.name, from.front())
                               : fmt::format("{} ({} and {} more)", yard.written.name, from.front(), from.size() - 1);
        if (name.size() > limits::nameCharacters) name = yard.written.name;
        std::string free = name;
        for (int number = 2; !taken.insert(free).second; ++number) free = fmt::format("{} {}", name, number);
        return free;
    }

    // Colonies of one name of yard and one place, season and wish stand together.
    book::YardId standsIn(const book::ColonyCase& record, const std::string& from) {
        const auto wanted = yardOf(record);
        auto made =
            std::find_if(yards_.begin(), yards_.end(), [&](const MadeYard& yard) { return yard.written == wanted; });
        if (made == yards_.end()) {
            made = yards_.insert(made, MadeYard{nextYard_, wanted, step.edits.size(), {}});
            ++nextYard_.number;
            step.edits.push_back(book::AddYard{wanted});
        }
        made->from.push_back(from);
        return made->id;
    }

    book::YardId nextYard_;
    book::ColonyId nextColony_;
    std::vector<MadeYard> yards_;
    int nameless_ = 0;
};

} // namespace

book::EditGroup entriesOfCases(const std::vector<book::ColonyCase>& cases, book::YardId nextYard,
                               book::ColonyId nextColony, const std::vector<std::string>& files) {
    require(files.empty() || files.size() == cases.size(), "{} cases come from {} files", cases.size(), files.size());
    Writer writer(nextYard, nextColony);
    for (std::size_t i = 0; i < cases.size(); ++i) writer.write(cases[i], files.empty() ? std::string() : files[i]);
    writer.nameYardsApart();
    return std::move(writer.step);
}

} // namespace winterlarder::desk
