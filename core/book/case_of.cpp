// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/case_of.h"

#include <algorithm>

namespace winterlarder::book {
namespace {

bool countedCombs(const Look& look) { return !std::holds_alternative<std::monostate>(look.combs); }

Hemisphere hemisphereOfSite(const SiteRecord& site, const ReferenceData& reference) {
    if (const auto* id = std::get_if<std::string>(&site.where)) {
        const auto* station = reference.station(*id);
        return hemisphereOf(station ? station->latitude : 0);
    }
    if (const auto* place = std::get_if<Coordinates>(&site.where)) return hemisphereOf(place->latitude);
    return hemisphereOf(std::get<OwnClimateRecord>(site.where).latitude);
}

// Treatments that had not ended when this honey was begun.
std::vector<TreatmentRecord> treatmentsSince(const std::vector<Treatment>& treatments, Date since, Date asOf) {
    std::vector<TreatmentRecord> given;
    for (const auto& each : treatments)
        if (each.date <= asOf && each.until.value_or(asOf) >= since)
            given.push_back({each.date, each.until, each.what});
    return given;
}

std::optional<Date> dayIn(const std::optional<DayOfYear>& day, const Winter& winter) {
    if (!day) return std::nullopt;
    for (int year = winter.autumn() - 1; year <= winter.autumn() + 1; ++year) {
        const auto date = Date::of(year, day->month, day->day);
        if (date && winter.contains(*date)) return date;
    }
    return std::nullopt;
}

// A heft is of the food, whatever the boxes.
bool otherHive(const WeighingRecord& weighing, const HiveRecord& asked, const HiveRecord& then) {
    return !std::holds_alternative<HeftWord>(weighing.reading) &&
           (asked.boxes != then.boxes || asked.tare != then.tare);
}

// Whether a feed or harvest came after the look matters on the day of the look alone.
FeedRecord feedFor(const ColonyCase& record, const FeedRecord& given) {
    FeedRecord feed = oneAmount(given);
    if (feed.date != record.lookedOn) feed.afterLook.reset();
    else if (!feed.afterLook)
        feed.afterLook = true; // books did not always ask: a hive is fed in the evening, once it was looked at
    return feed;
}

HarvestRecord harvestFor(const ColonyCase& record, HarvestRecord harvest) {
    if (harvest.date != record.lookedOn) harvest.afterLook.reset();
    return harvest;
}

// Feeds from the day this honey was begun: those before the look change no stores, but what took them is not honey for people.
void addRecords(ColonyCase& record, const ColonyHistory& from, Date honeyBegins, Date asOf) {
    const Date oldest = asOf.plusDays(-oldestObservationDays);
    const Date since = record.lookedOn.value_or(oldest);
    Date first = record.lookedOn.value_or(asOf);
    for (const auto& entry : from.weighings) {
        if (entry.weighing.date < since || entry.weighing.date > asOf) continue;
        if (otherHive(entry.weighing, record.hive, hiveOn(from.colony, from.housings, entry.weighing.date))) {
            record.weighedInOtherHive.push_back(entry.weighing.date);
            continue;
        }
        record.weighings.push_back(entry.weighing);
        first = std::min(first, entry.weighing.date);
    }
    for (const auto& entry : from.feeds)
        if (entry.feed.date >= std::min(first, honeyBegins) && entry.feed.date <= asOf)
            record.feeds.push_back(feedFor(record, entry.feed));
    for (const auto& entry : from.harvests)
        if (entry.harvest.date >= first && entry.harvest.date <= asOf)
            record.harvests.push_back(harvestFor(record, entry.harvest));
}

Yard yardAmong(const std::vector<Yard>& yards, YardId id) {
    const auto found = std::find_if(yards.begin(), yards.end(), [id](const Yard& yard) { return yard.id == id; });
    return found == yards.end() ? Yard{} : *found;
}

} // namespace

FeedRecord oneAmount(FeedRecord feed) {
    if (feed.kind != FeedKind::Fondant) feed.fondant.reset();
    if (feed.kind == FeedKind::Fondant) feed.sugar.reset();
    if (feed.kind != FeedKind::Syrup || feed.sugar) feed.syrup.reset();
    if (!feed.syrup) feed.ratio.reset();
    return feed;
}

Date honeySince(Date asOf, Hemisphere hemisphere) {
    constexpr int daysFromApril =
        122; // 1 April to 1 August, the first day of the season year; 1 October to 29 January is two days less
    return Winter::containing(asOf, hemisphere).date(firstSeasonDay).plusDays(-daysFromApril);
}

YardId yardOn(const Colony& colony, const std::vector<Move>& moves, Date day) {
    YardId yard = colony.yard;
    for (const auto& move : moves)
        if (move.date <= day) yard = move.yard;
    return yard;
}

const HiveRecord& hiveOn(const Colony& colony, const std::vector<Housing>& housings, Date day) {
    const HiveRecord* hive = &colony.hive;
    for (const auto& housing : housings)
        if (housing.date <= day) hive = &housing.hive;
    return *hive;
}

std::optional<Fate> fateOn(const std::vector<Fate>& fates, Date day) {
    for (const auto& fate : fates)
        if (fate.date <= day) return fate;
    return std::nullopt;
}

SeasonRecord seasonIn(const YardSeason& season, Hemisphere hemisphere, Date asOf) {
    const auto winter = Winter::containing(asOf, hemisphere);
    return {dayIn(season.lastIncome, winter),    dayIn(season.broodStop, winter),   dayIn(season.broodRestart, winter),
            dayIn(season.buildup, winter),       dayIn(season.forage, winter),      dayIn(season.feedAdvisedBy, winter),
            dayIn(season.syrupDeadline, winter), dayIn(season.syrupRefused, winter)};
}

const Look* lookOfCase(const ColonyHistory& history, Date asOf) {
    const Look* either = nullptr;
    for (auto look = history.looks.rbegin(); look != history.looks.rend(); ++look) {
        if (look->date > asOf || asOf.daysSince(look->date) > oldestObservationDays) continue;
        if (look->bees.known() && countedCombs(*look)) return &*look;
        if (!either && (look->bees.known() || countedCombs(*look))) either = &*look;
    }
    return either;
}

// Signs of disease seen at any look since the one the case rests on, whatever else was looked at.
bool troubleSince(const ColonyHistory& history, const Look* look, Date asOf) {
    bool since = look == nullptr, trouble = false;
    for (const auto& each : history.looks) {
        since = since || &each == look;
        if (since && each.date <= asOf && asOf.daysSince(each.date) <= oldestObservationDays)
            trouble = trouble || each.bees.trouble;
    }
    return trouble;
}

const Weighing* newestWeighing(const ColonyHistory& history, Date asOf) {
    const Weighing* newest = nullptr;
    for (const auto& entry : history.weighings)
        if (entry.weighing.date <= asOf && asOf.daysSince(entry.weighing.date) <= oldestObservationDays)
            newest = &entry;
    return newest;
}

const Look* lastLook(const ColonyHistory& history, Date day) {
    const Look* last = nullptr;
    for (const auto& look : history.looks)
        if (look.date <= day) last = &look;
    return last;
}

ColonyCase caseOf(const ColonyHistory& history, const std::vector<Yard>& yards, const ReferenceData& reference,
                  Date asOf) {
    const Look* look = lookOfCase(history, asOf);
    const Yard yard = yardAmong(yards, yardOn(history.colony, history.moves, asOf));
    ColonyCase record{.colony = history.colony.name,
                      .yard = yard.name,
                      .asOf = asOf,
                      .site = yard.site,
                      .feeder = history.colony.feeder,
                      .wish = yard.wish};
    record.fullCombs = yard.fullCombs;
    record.units = yard.units;
    record.hive = hiveOn(history.colony, history.housings, look && countedCombs(*look) ? look->date : asOf);
    const auto hemisphere = hemisphereOfSite(yard.site, reference);
    const Date honeyBegins = honeySince(asOf, hemisphere);
    record.treatments = treatmentsSince(history.treatments, honeyBegins, asOf);
    record.season = seasonIn(yard.season, hemisphere, asOf);
    if (look) {
        record.lookedOn = look->date;
        record.bees = look->bees;
        record.combs = look->combs;
        record.moisturePercent = look->moisturePercent;
        record.honeyKind = look->honeyKind;
        record.fedOrTreated = look->fedOrTreated;
        record.bees.sure = look->sure;
    }
    record.bees.trouble = troubleSince(history, look, asOf);
    if (!record.bees.kind) record.bees.kind = history.colony.beeKind;
    addRecords(record, history, honeyBegins, asOf);
    return record;
}

Outcome<ColonyCase> caseOf(Book& book, ColonyId id, Date asOf) {
    return readTogether(book, [&]() -> Outcome<ColonyCase> {
        const auto history = historyOf(book, id);
        if (!history) return history.problems();
        const auto yards = book.all<Yard>();
        if (!yards) return yards.problems();
        return caseOf(*history, *yards, book.reference(), asOf);
    });
}

} // namespace winterlarder::book
