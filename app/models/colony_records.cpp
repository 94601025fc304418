// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/colony_records.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

template <class Entry>
void readInto(std::vector<Entry>& into, book::Book& book, book::ColonyId id, Problems& problems) {
    auto read = book.of<Entry>(id);
    if (read.ok()) into = std::move(read).value();
    else problems.insert(problems.end(), read.problems().begin(), read.problems().end());
}

bool restsOn(const book::Look& look, const book::ColonyCase& record) {
    auto bees = look.bees;
    if (!bees.kind) bees.kind = record.bees.kind;
    bees.sure = look.sure;
    return look.date == record.lookedOn && bees == record.bees && look.combs == record.combs;
}

template <class Entry>
std::optional<book::ColonyId> ownerOf(book::Book& book, std::int64_t id) {
    const auto found = book.find(book::Id<Entry>{id});
    if (!found.ok() || !*found) return std::nullopt;
    return (**found).colony;
}

std::optional<book::ColonyId> ownerOf(book::Book& book, const book::Touched& touched) {
    using book::Kind;
    switch (touched.kind) {
    case Kind::Yard: return std::nullopt;
    case Kind::Colony: return touched.how == book::ChangeHow::Change ? std::optional(book::ColonyId{touched.id}) : std::nullopt;
    case Kind::Move:
    case Kind::Fate: return std::nullopt; // another colony may come or go with it
    case Kind::Housing: return ownerOf<book::Housing>(book, touched.id);
    case Kind::Look: return ownerOf<book::Look>(book, touched.id);
    case Kind::Weighing: return ownerOf<book::Weighing>(book, touched.id);
    case Kind::Feed: return ownerOf<book::Feed>(book, touched.id);
    case Kind::Harvest: return ownerOf<book::Harvest>(book, touched.id);
    case Kind::Treatment: return ownerOf<book::Treatment>(book, touched.id);
    case Kind::Manipulation: return ownerOf<book::Manipulation>(book, touched.id);
    case Kind::ActedAdvice: return ownerOf<book::ActedAdvice>(book, touched.id);
    case Kind::PlannedVisit: return ownerOf<book::PlannedVisit>(book, touched.id);
    case Kind::WinterOutcome: return ownerOf<book::WinterOutcome>(book, touched.id);
    case Kind::Sighting: return ownerOf<book::Sighting>(book, touched.id);
    case Kind::WeatherLog: return std::nullopt;
    }
    return std::nullopt;
}

} // namespace

Outcome<std::optional<ColonyRecords>> recordsOf(book::Book& book, book::ColonyId id) {
    std::optional<ColonyRecords> records;
    Problems problems;
    const auto read = book.together([&] {
        auto colony = book.find(id);
        if (!colony.ok()) problems = colony.problems();
        if (!colony.ok() || !*colony) return;
        records.emplace();
        records->colony = std::move(**colony);
        readInto(records->moves, book, id, problems);
        readInto(records->fates, book, id, problems);
        readInto(records->housings, book, id, problems);
        readInto(records->looks, book, id, problems);
        readInto(records->weighings, book, id, problems);
        readInto(records->feeds, book, id, problems);
        readInto(records->harvests, book, id, problems);
        readInto(records->treatments, book, id, problems);
        readInto(records->manipulations, book, id, problems);
        readInto(records->advices, book, id, problems);
        readInto(records->visits, book, id, problems);
        readInto(records->outcomes, book, id, problems);
        readInto(records->sightings, book, id, problems);
    });
    if (!read.ok()) return read.problems();
    if (!problems.empty()) return problems;
    return records;
}

const book::Look* lookOfCase(const ColonyRecords& records, const book::ColonyCase& record) {
    const auto found = std::find_if(records.looks.rbegin(), records.looks.rend(), [&](const auto& look) { return restsOn(look, record); });
    return found == records.looks.rend() ? nullptr : &*found;
}

const book::Weighing* newestWeighing(const ColonyRecords& records, Date asOf) {
    const book::Weighing* newest = nullptr;
    for (const auto& entry : records.weighings)
        if (entry.weighing.date <= asOf && asOf.daysSince(entry.weighing.date) <= book::oldestObservation) newest = &entry;
    return newest;
}

const book::Look* lastLook(const ColonyRecords& records, Date day) {
    const book::Look* last = nullptr;
    for (const auto& look : records.looks)
        if (look.date <= day) last = &look;
    return last;
}

std::optional<std::set<book::ColonyId>> coloniesOf(book::Book& book, const std::vector<book::Touched>& touched) {
    std::set<book::ColonyId> colonies;
    for (const auto& one : touched) {
        const auto owner = ownerOf(book, one);
        if (!owner) return std::nullopt;
        colonies.insert(*owner);
    }
    return colonies;
}

} // namespace winterlarder::desk
