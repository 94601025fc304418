// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/touched_colonies.h"

namespace winterlarder::desk {

namespace {

template <class Entry> std::optional<book::ColonyId> ownerOf(book::Book& book, std::int64_t id) {
    const auto found = book.find(book::Id<Entry>{id});
    if (!found.ok() || !*found) return std::nullopt;
    return (**found).colony;
}

std::optional<book::ColonyId> ownerOf(book::Book& book, const book::Touched& touched) {
    using book::Kind;
    switch (touched.kind) {
    case Kind::Yard: return std::nullopt;
    case Kind::Colony:
        return touched.how == book::ChangeHow::Change ? std::optional(book::ColonyId{touched.id}) : std::nullopt;
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

std::optional<std::set<book::ColonyId>> coloniesOf(book::Book& book, const std::vector<book::Touched>& touched) {
    std::set<book::ColonyId> colonies;
    for (const auto& one : touched) {
        const auto owner = ownerOf(book, one);
        if (!owner) return std::nullopt;
        colonies.insert(*owner);
        const auto fates = book.of<book::Fate>(*owner);
        if (!fates) return std::nullopt;
        for (const auto& fate : *fates)
            if (fate.into) colonies.insert(*fate.into); // which counts what it was
    }
    return colonies;
}

} // namespace winterlarder::desk
