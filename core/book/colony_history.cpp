// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/colony_history.h"

#include "book/case_of.h"
#include "book/entries/date_of.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace winterlarder::book {
namespace {

//! Reads of a book whose problems come into one list.
class Reading {
public:
    explicit Reading(Book& book) : book_(book) {}
    template <class Entry> std::vector<Entry> all() { return keep(book_.all<Entry>(), std::vector<Entry>{}); }
    std::vector<Fate> unitedInto(ColonyId colony) { return keep(book_.unitedInto(colony), std::vector<Fate>{}); }
    template <class Entry> std::vector<Entry> of(ColonyId colony) {
        return keep(book_.of<Entry>(colony), std::vector<Entry>{});
    }
    template <class Entry> std::optional<Entry> find(Id<Entry> id) {
        return keep(book_.find(id), std::optional<Entry>{});
    }
    //! Makes a value by such reads in one transaction.
    template <class Make> auto together(Make make) -> Outcome<decltype(make())> {
        return readTogether(book_, [&]() -> Outcome<decltype(make())> {
            auto made = make();
            if (!problems_.empty()) return problems_;
            return made;
        });
    }

private:
    template <class T> T keep(Outcome<T> outcome, T otherwise) {
        if (outcome) return std::move(outcome).value();
        problems_.insert(problems_.end(), outcome.problems().begin(), outcome.problems().end());
        return otherwise;
    }
    Book& book_;
    Problems problems_;
};

template <class Entry> void readInto(std::vector<Entry>& list, Reading& reading, ColonyId colony) {
    list = reading.of<Entry>(colony);
}

template <class Entry> void cutAfter(std::vector<Entry>& list, Date day) {
    if constexpr (!std::is_same_v<Entry, PlannedVisit>)
        std::erase_if(list, [day](const Entry& entry) { return dateOf(entry) > day; });
}

// A winter's outcome tells a death too; a month later the colony is no longer asked about, unless it was looked at since.
bool diedInWinter(Reading& reading, ColonyId colony, Date day) {
    constexpr int daysShown = 30;
    std::optional<Date> died;
    for (const auto& outcome : reading.of<WinterOutcome>(colony))
        if (!outcome.alive && outcome.date.plusDays(daysShown) < day) died = outcome.date;
    if (!died) return false;
    const auto looks = reading.of<Look>(colony);
    return std::none_of(looks.begin(), looks.end(),
                        [&](const Look& look) { return look.date > *died && look.date <= day; });
}

std::optional<Date> unitedOn(const std::vector<Fate>& fates, ColonyId into) {
    for (const auto& fate : fates)
        if (fate.fate == FateKind::United && fate.into == into) return fate.date;
    return std::nullopt;
}

// A book may say that two colonies were united into each other: none is read twice.
std::optional<ColonyHistory> readHistory(Reading& reading, ColonyId id, std::set<ColonyId> above) {
    auto colony = reading.find(id);
    if (!colony || !above.insert(id).second) return std::nullopt;
    ColonyHistory history{.colony = std::move(*colony)};
    eachList(history, [&](auto& list) { readInto(list, reading, id); });
    for (const Fate& fate : reading.unitedInto(id)) {
        if (fate.fate != FateKind::United) continue;
        if (auto other = readHistory(reading, fate.colony, above); other && above.insert(fate.colony).second) {
            const Date day = *unitedOn(other->fates, id);
            history.united.push_back(historyUntil(std::move(*other), day));
        }
    }
    std::stable_sort(history.united.begin(), history.united.end(),
                     [&](const auto& a, const auto& b) { return unitedOn(a, id) < unitedOn(b, id); });
    return history;
}

bool livesOn(Reading& reading, const Colony& colony, Date day) {
    return colony.since.value_or(day) <= day && !fateOn(reading.of<Fate>(colony.id), day) &&
           !diedInWinter(reading, colony.id, day);
}

} // namespace

Outcome<std::optional<ColonyHistory>> findHistory(Book& book, ColonyId id) {
    Reading reading(book);
    return reading.together([&] { return readHistory(reading, id, {}); });
}

Outcome<ColonyHistory> historyOf(Book& book, ColonyId id) {
    auto found = findHistory(book, id);
    if (!found) return found.problems();
    if (!*found)
        return Problem{ProblemKind::Input, {}, fmt::format("there is no colony {}", id.number), "check its number"};
    return **std::move(found);
}

std::optional<Date> unitedOn(const ColonyHistory& history, ColonyId into) { return unitedOn(history.fates, into); }

ColonyHistory historyUntil(ColonyHistory history, Date day) {
    eachList(history, [day](auto& list) { cutAfter(list, day); });
    std::erase_if(history.united,
                  [&](const ColonyHistory& joined) { return *unitedOn(joined, history.colony.id) > day; });
    return history;
}

std::vector<DayTemperature> YardsOfBook::measuredIn(YardId yard, Date until) const {
    std::map<Date, double> days;
    for (const auto& log : weather)
        if (log.yard == yard)
            for (const auto& day : log.days)
                if (day.date <= until) days[day.date] = day.meanC;
    std::vector<DayTemperature> measured;
    for (const auto& [date, mean] : days) measured.push_back({date, mean});
    return measured;
}

Outcome<YardsOfBook> yardsOf(Book& book) {
    Reading reading(book);
    return reading.together([&] { return YardsOfBook{reading.all<Yard>(), reading.all<WeatherLog>()}; });
}

Outcome<std::vector<Colony>> livingOn(Book& book, Date day) {
    Reading reading(book);
    return reading.together([&] {
        auto colonies = reading.all<Colony>();
        std::erase_if(colonies, [&](const Colony& colony) { return !livesOn(reading, colony, day); });
        return colonies;
    });
}

} // namespace winterlarder::book
