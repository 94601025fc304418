// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/case_of.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::book {
namespace {

//! Everything of one colony a case is made from, read at one moment.
struct Records {
    Colony colony;
    std::vector<Move> moves;
    std::vector<Housing> housings;
    std::vector<Look> looks;
    std::vector<Weighing> weighings;
    std::vector<Feed> feeds;
    std::vector<Harvest> harvests;
    std::vector<Treatment> treatments;
    std::optional<Yard> yard;
};

class Reading {
public:
    explicit Reading(Book& book) : book_(book) {}
    template <class Entry>
    std::vector<Entry> of(ColonyId colony) {
        return keep(book_.of<Entry>(colony), std::vector<Entry>{});
    }
    template <class Entry>
    std::optional<Entry> find(Id<Entry> id) {
        return keep(book_.find(id), std::optional<Entry>{});
    }
    Problems problems;

private:
    template <class T>
    T keep(Outcome<T> outcome, T otherwise) {
        if (outcome) return std::move(outcome).value();
        problems.insert(problems.end(), outcome.problems().begin(), outcome.problems().end());
        return otherwise;
    }
    Book& book_;
};

Outcome<Records> recordsOf(Book& book, ColonyId id, Date asOf) {
    Reading reading(book);
    std::optional<Records> records;
    const auto read = book.together([&] {
        auto colony = reading.find(id);
        if (!colony) return;
        records = Records{std::move(*colony),          reading.of<Move>(id), reading.of<Housing>(id), reading.of<Look>(id),
                          reading.of<Weighing>(id),    reading.of<Feed>(id), reading.of<Harvest>(id), reading.of<Treatment>(id),
                          std::nullopt};
        records->yard = reading.find(yardOn(records->colony, records->moves, asOf));
    });
    if (!read) return read.problems();
    if (!reading.problems.empty()) return reading.problems;
    if (!records) return Problem{ProblemKind::Input, {}, fmt::format("there is no colony {}", id.number), "check its number"};
    return std::move(*records);
}

bool countedCombs(const Look& look) { return !std::holds_alternative<std::monostate>(look.combs); }

//! The look a case rests on.
const Look* lookFor(const std::vector<Look>& looks, Date asOf) {
    const Look* either = nullptr;
    for (auto look = looks.rbegin(); look != looks.rend(); ++look) {
        if (look->date > asOf || asOf.daysSince(look->date) > oldestObservation) continue;
        if (look->bees.known() && countedCombs(*look)) return &*look;
        if (!either && (look->bees.known() || countedCombs(*look))) either = &*look;
    }
    return either;
}

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
        if (each.date <= asOf && each.until.value_or(asOf) >= since) given.push_back({each.date, each.until, each.what});
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

// Whether a feed or harvest came after the look matters on the day of the look alone.
FeedRecord feedFor(const ColonyCase& record, const FeedRecord& given) {
    FeedRecord feed = oneAmount(given);
    if (feed.date != record.lookedOn) feed.afterLook.reset();
    else if (!feed.afterLook) feed.afterLook = true; // books did not always ask: a hive is fed in the evening, once it was looked at
    return feed;
}

HarvestRecord harvestFor(const ColonyCase& record, HarvestRecord harvest) {
    if (harvest.date != record.lookedOn) harvest.afterLook.reset();
    return harvest;
}

// Feeds from the day this honey was begun: those before the look change no stores, but what took them is not honey for people.
void addRecords(ColonyCase& record, const Records& from, Date honeyBegins, Date asOf) {
    const Date oldest = asOf.plusDays(-oldestObservation);
    const Date since = record.lookedOn.value_or(oldest);
    Date first = record.lookedOn.value_or(asOf);
    for (const auto& entry : from.weighings) {
        if (entry.weighing.date < since || entry.weighing.date > asOf) continue;
        record.weighings.push_back(entry.weighing);
        first = std::min(first, entry.weighing.date);
    }
    for (const auto& entry : from.feeds)
        if (entry.feed.date >= std::min(first, honeyBegins) && entry.feed.date <= asOf) record.feeds.push_back(feedFor(record, entry.feed));
    for (const auto& entry : from.harvests)
        if (entry.harvest.date >= first && entry.harvest.date <= asOf) record.harvests.push_back(harvestFor(record, entry.harvest));
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
    constexpr int daysFromApril = 122; // 1 April to 1 August, the first day of the season year; 1 October to 29 January is two days less
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
    return {dayIn(season.lastIncome, winter),    dayIn(season.broodStop, winter),     dayIn(season.broodRestart, winter),
            dayIn(season.buildup, winter),       dayIn(season.forage, winter),        dayIn(season.feedAdvisedBy, winter),
            dayIn(season.syrupDeadline, winter), dayIn(season.syrupRefused, winter)};
}

Outcome<ColonyCase> caseOf(Book& book, ColonyId id, Date asOf) {
    auto found = recordsOf(book, id, asOf);
    if (!found) return found.problems();
    const Records& from = *found;
    const Look* look = lookFor(from.looks, asOf);
    const Yard yard = from.yard.value_or(Yard{});
    ColonyCase record{.colony = from.colony.name, .yard = yard.name, .asOf = asOf, .lookedOn = {}, .site = yard.site, .hive = {},
                      .bees = {}, .combs = {}, .weighings = {}, .moisturePercent = {}, .feeds = {}, .harvests = {},
                      .season = {}, .feeder = from.colony.feeder, .wish = yard.wish};
    record.fullCombs = yard.fullCombs;
    record.units = yard.units;
    record.hive = hiveOn(from.colony, from.housings, look && countedCombs(*look) ? look->date : asOf);
    const auto hemisphere = hemisphereOfSite(yard.site, book.reference());
    const Date honeyBegins = honeySince(asOf, hemisphere);
    record.treatments = treatmentsSince(from.treatments, honeyBegins, asOf);
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
    if (!record.bees.kind) record.bees.kind = from.colony.beeKind;
    addRecords(record, from, honeyBegins, asOf);
    return record;
}

namespace {

// A winter's outcome tells a death too; a month later the colony is no longer asked about, unless it was looked at since.
bool diedInWinter(Reading& reading, ColonyId colony, Date day) {
    constexpr int daysShown = 30;
    std::optional<Date> died;
    for (const auto& outcome : reading.of<WinterOutcome>(colony))
        if (!outcome.alive && outcome.date.plusDays(daysShown) < day) died = outcome.date;
    if (!died) return false;
    const auto looks = reading.of<Look>(colony);
    return std::none_of(looks.begin(), looks.end(), [&](const Look& look) { return look.date > *died && look.date <= day; });
}

} // namespace

Outcome<std::vector<Colony>> livingOn(Book& book, Date day) {
    Reading reading(book);
    std::vector<Colony> living;
    const auto read = book.together([&] {
        const auto all = book.all<Colony>();
        if (!all) reading.problems = all.problems();
        else
            for (const auto& colony : *all)
                if (colony.since.value_or(day) <= day && !fateOn(reading.of<Fate>(colony.id), day) &&
                    !diedInWinter(reading, colony.id, day))
                    living.push_back(colony);
    });
    if (!read) return read.problems();
    if (!reading.problems.empty()) return reading.problems;
    return living;
}

} // namespace winterlarder::book
