// SPDX-License-Identifier: GPL-3.0-or-later
// Entries of a book are judged as records of a case that holds what else is known of the colony around their day.
#include "answer/doubts.h"

#include "answer/question_of_case.h"
#include "book/case_of.h"
#include "book/entries/date_of.h"
#include "exchange/case/hive_room.h"

#include <algorithm>
#include <cstdlib>

namespace winterlarder::answer {

namespace {

//! Others of the kind near the day.
template <class Entry>
std::vector<Entry> othersNear(const std::vector<Entry>& all, Date day, book::Id<Entry> except,
                              const DecisionConstants& rules) {
    std::vector<Entry> result;
    for (const auto& entry : all)
        if (entry.id != except && std::abs(book::dateOf(entry).daysSince(day)) <= rules.oldestSight)
            result.push_back(entry);
    return result;
}

//! The hive on a day. On a day on which it changed the larger one counts: it may have been emptied, or filled, before.
const book::HiveRecord& largestHiveOn(const Surroundings& known, Date day, const ReferenceData& reference) {
    const auto& now = book::hiveOn(known.colony, known.housings, day);
    const auto& before = book::hiveOn(known.colony, known.housings, day.plusDays(-1));
    return exchange::placesOf(before, reference) > exchange::placesOf(now, reference) ? before : now;
}

std::vector<HiveChange> hiveChanges(const Surroundings& known) {
    auto changes = hivesOf(known.colony, known.housings);
    for (const auto& work : known.manipulations)
        if (work.what == book::ManipulationKind::BoxesAdded || work.what == book::ManipulationKind::BoxesRemoved)
            changes.push_back({work.date, {}});
    return changes;
}

const book::Look* lookBefore(const Surroundings& known, Date day, const DecisionConstants& rules) {
    const book::Look* last = nullptr;
    for (const auto& look : known.looks)
        if (look.date < day && day.daysSince(look.date) <= rules.oldestSight &&
            !std::holds_alternative<std::monostate>(look.combs) && (!last || look.date >= last->date))
            last = &look;
    return last;
}

book::ColonyCase emptyCase(const book::SiteRecord& site, const book::HiveRecord& hive, Date day) {
    return {.asOf = day, .site = site, .hive = hive};
}

book::ColonyCase caseOfHive(const Surroundings& known, Date day, const ReferenceData& reference) {
    return emptyCase(known.site, largestHiveOn(known, day, reference), day);
}

//! The entry that is judged, and so is none of what is known around it.
struct Judged {
    book::WeighingId weighing{};
    book::FeedId feed{};
    book::HarvestId harvest{};
};

//! What is known around a day, the entry's own kind without itself.
book::ColonyCase caseAround(const Surroundings& known, Date day, const ReferenceData& reference, const Judged& judged) {
    const auto& rules = reference.decisions;
    auto record = caseOfHive(known, day, reference);
    for (const auto& other : othersNear(known.weighings, day, judged.weighing, rules))
        record.weighings.push_back(other.weighing);
    for (const auto& other : othersNear(known.feeds, day, judged.feed, rules)) record.feeds.push_back(other.feed);
    for (const auto& other : othersNear(known.harvests, day, judged.harvest, rules))
        record.harvests.push_back(other.harvest);
    if (const auto* look = lookBefore(known, day, rules);
        look && book::hiveOn(known.colony, known.housings, look->date) == record.hive) {
        record.lookedOn = look->date;
        record.combs = look->combs;
        record.bees.sure = true;
    }
    return record;
}

std::optional<stores::Doubt> gravest(std::vector<stores::Doubt> doubts) {
    if (doubts.empty()) return std::nullopt;
    const auto grave =
        std::find_if(doubts.begin(), doubts.end(), [](const stores::Doubt& doubt) { return doubt.impossible; });
    return std::move(grave == doubts.end() ? doubts.front() : *grave);
}

//! The doubts of one record of the case, and of its day.
std::optional<stores::Doubt> doubtOfRecord(const book::ColonyCase& record, DoubtedPart part, std::size_t index,
                                           Date day, const Surroundings& known, Date today,
                                           const ReferenceData& reference) {
    std::vector<stores::Doubt> doubts;
    for (auto& each : doubtsOf(record, reference, hiveChanges(known)))
        if (each.part == part && each.index == index) doubts.push_back(std::move(each.doubt));
    if (auto doubt = stores::doubtOfDay(day, today, known.colony.since)) doubts.push_back(std::move(*doubt));
    return gravest(std::move(doubts));
}

} // namespace

std::vector<HiveChange> hivesOf(const book::Colony& colony, const std::vector<book::Housing>& housings) {
    std::vector<HiveChange> hives{{*Date::of(firstKnownYear, 1, 1), colony.hive}};
    for (const auto& housing : housings) hives.push_back({housing.date, housing.hive});
    return hives;
}

std::optional<stores::Doubt> doubtOf(const book::Weighing& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    auto record = caseAround(known, entry.weighing.date, reference, {.weighing = entry.id});
    record.weighings.push_back(entry.weighing);
    record.weighings.back().sure = false;
    return doubtOfRecord(record, DoubtedPart::Weighing, record.weighings.size() - 1, entry.weighing.date, known, today,
                         reference);
}

std::optional<stores::Doubt> doubtOf(const book::Feed& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    auto record = caseAround(known, entry.feed.date, reference, {.feed = entry.id});
    record.feeds.push_back(entry.feed);
    return doubtOfRecord(record, DoubtedPart::Feed, record.feeds.size() - 1, entry.feed.date, known, today, reference);
}

std::optional<stores::Doubt> doubtOf(const book::Harvest& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    auto record = caseAround(known, entry.harvest.date, reference, {.harvest = entry.id});
    std::erase_if(record.harvests, [&](const book::HarvestRecord& other) { return other.date > entry.harvest.date; });
    record.harvests.push_back(entry.harvest);
    auto doubt = doubtOfRecord(record, DoubtedPart::Harvest, record.harvests.size() - 1, entry.harvest.date, known,
                               today, reference);
    if (doubt || !entry.moisturePercent) return doubt;
    return stores::doubtOfMoisture(*entry.moisturePercent, reference.constants);
}

std::optional<stores::Doubt> doubtOf(const book::Look& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    auto record = caseOfHive(known, entry.date, reference);
    record.bees = entry.bees;
    record.combs = entry.combs;
    record.moisturePercent = entry.moisturePercent;
    std::vector<stores::Doubt> doubts;
    for (auto& each : doubtsOf(record, reference)) doubts.push_back(std::move(each.doubt));
    if (auto doubt = stores::doubtOfDay(entry.date, today, known.colony.since)) doubts.push_back(std::move(*doubt));
    return gravest(std::move(doubts));
}

std::optional<stores::Doubt> doubtOf(const book::Sighting& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    book::Look seen{.colony = entry.colony, .date = entry.date};
    seen.bees.seams = entry.seams;
    return doubtOf(seen, known, today, reference);
}

std::optional<stores::Doubt> doubtOf(const book::WinterOutcome& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    book::Look seen{.colony = entry.colony, .date = entry.date};
    seen.bees.coveredCombs = entry.coveredCombs;
    auto doubt = doubtOf(seen, known, today, reference);
    if (doubt || !entry.storesLeft) return doubt;
    const auto record = caseOfHive(known, entry.date, reference);
    return stores::doubtOfStoresLeft(*entry.storesLeft, boundsOfCase(record, reference), reference.constants);
}

namespace {

std::optional<stores::Doubt> doubtOfTareOf(const book::HiveRecord& hive, Date day, const ReferenceData& reference) {
    const auto bare = emptyCase({}, hive, day);
    // A table may give a colony before its boxes; a foreign book may name hives nobody ships.
    if (!hive.tare || hive.boxes.empty() || !unknownFormats(bare, {}, reference).empty()) return std::nullopt;
    return stores::doubtOfTare(*hive.tare, partsOf(bare, reference), reference.constants);
}

} // namespace

std::optional<stores::Doubt> doubtOf(const book::Colony& entry, const Surroundings&, Date today,
                                     const ReferenceData& reference) {
    const Date day = entry.since.value_or(today);
    auto doubt = doubtOfTareOf(entry.hive, day, reference);
    return doubt ? doubt : stores::doubtOfDay(day, today, {});
}

std::optional<stores::Doubt> doubtOf(const book::Housing& entry, const Surroundings& known, Date today,
                                     const ReferenceData& reference) {
    auto doubt = doubtOfTareOf(entry.hive, entry.date, reference);
    return doubt ? doubt : stores::doubtOfDay(entry.date, today, known.colony.since);
}

} // namespace winterlarder::answer
