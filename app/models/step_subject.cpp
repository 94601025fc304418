// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/step_subject.h"

#include "text/contexts.h"

#include <QStringList>

#include <charconv>
#include <set>

namespace winterlarder::desk {

namespace {

constexpr int fewNames = 3;

template <class Entry> std::optional<book::ColonyId> colonyOfEntry(book::Book& book, std::int64_t id) {
    const auto found = book.find<Entry>({id});
    return found.ok() && *found ? std::optional((*found)->colony) : std::nullopt;
}

// An entry that is gone is still named by what the step kept of it.
std::optional<book::ColonyId> colonyKept(const book::StepChange& change) {
    for (const auto* values : {&change.before, &change.after}) {
        const auto found = values->find("colony");
        if (found == values->end() || !found->second) continue;
        std::int64_t number = 0;
        const auto& text = *found->second;
        if (std::from_chars(text.data(), text.data() + text.size(), number).ec == std::errc{})
            return book::ColonyId{number};
    }
    return std::nullopt;
}

std::optional<book::ColonyId> colonyThere(book::Book& book, const book::StepChange& change) {
    using namespace book;
    const auto id = change.entry;
    switch (change.kind) {
    case Kind::Colony: return ColonyId{id};
    case Kind::Move: return colonyOfEntry<Move>(book, id);
    case Kind::Fate: return colonyOfEntry<Fate>(book, id);
    case Kind::Housing: return colonyOfEntry<Housing>(book, id);
    case Kind::Look: return colonyOfEntry<Look>(book, id);
    case Kind::Weighing: return colonyOfEntry<Weighing>(book, id);
    case Kind::Feed: return colonyOfEntry<Feed>(book, id);
    case Kind::Harvest: return colonyOfEntry<Harvest>(book, id);
    case Kind::Treatment: return colonyOfEntry<Treatment>(book, id);
    case Kind::Manipulation: return colonyOfEntry<Manipulation>(book, id);
    case Kind::ActedAdvice: return colonyOfEntry<ActedAdvice>(book, id);
    case Kind::PlannedVisit: return colonyOfEntry<PlannedVisit>(book, id);
    case Kind::WinterOutcome: return colonyOfEntry<WinterOutcome>(book, id);
    case Kind::Sighting: return colonyOfEntry<Sighting>(book, id);
    case Kind::Yard:
    case Kind::WeatherLog: return std::nullopt;
    }
    return std::nullopt;
}

template <class Entry> void addName(QStringList& names, book::Book& book, book::Id<Entry> id) {
    const auto found = book.find(id);
    if (found.ok() && *found) names << QString::fromStdString((*found)->name);
}

} // namespace

QString subjectOf(book::Book& book, const book::Step& step) {
    std::set<std::int64_t> colonies, yards;
    for (const auto& change : step.changes) {
        const auto there = colonyThere(book, change);
        if (const auto colony = there ? there : colonyKept(change)) colonies.insert(colony->number);
        if (change.kind == book::Kind::Yard) yards.insert(change.entry);
        if (colonies.size() > fewNames) break;
    }
    QStringList names;
    for (const auto id : colonies) addName(names, book, book::ColonyId{id});
    if (colonies.empty())
        for (const auto id : yards) addName(names, book, book::YardId{id});
    if (names.size() <= fewNames) return names.join(QStringLiteral(", "));
    names = names.mid(0, fewNames);
    return say::Steps::tr("%1 and more").arg(names.join(QStringLiteral(", ")));
}

} // namespace winterlarder::desk
