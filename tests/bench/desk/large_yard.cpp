// SPDX-License-Identifier: GPL-3.0-or-later
#include "large_yard.h"

#include "book/book.h"

#include <fmt/format.h>
#include <stdexcept>

namespace winterlarder::bench {

namespace {

constexpr int combsOfAHive = 20;
constexpr double fullCombKg = 2.6, emptyHiveKg = 24; // of one comb; of two boxes with combs, floor and roof
const book::Timestamp written{1789000000};

template <class T> T must(Outcome<T> outcome) {
    if (!outcome.ok()) throw std::runtime_error(describe(outcome.problems().front()));
    return std::move(outcome).value();
}

// A number from 0 to below `end` that looks random and is the same each time.
int pick(int colony, int place, int end) { return (colony * 7919 + place * 104729 + colony * place * 31) % 9973 % end; }

//! How much of a good year's honey the colony has, 0.5 to 1.1.
double plenty(int colony) { return 0.5 + 0.1 * pick(colony, 1, 7); }

//! Honey in the upper box and at the sides of the lower, the nest in its middle.
book::CombRecord combOf(int colony, int place, double ripe) {
    const bool nest = place >= 2 && place < 8;
    book::CombRecord comb;
    comb.capped = std::min(0.9, ripe * plenty(colony) * (nest ? 0.25 : 0.65 + 0.05 * pick(colony, place, 5)));
    comb.open = 0.05;
    comb.brood = nest ? 0.3 + 0.05 * pick(colony, place, 4) : 0.0;
    comb.pollen = nest ? 0.1 : 0.0;
    return comb;
}

book::Look lookAt(book::ColonyId id, int colony, Date date, double ripe) {
    book::Look look{.colony = id, .date = date};
    look.bees.coveredCombs = 9 + 0.5 * pick(colony, 2, 9);
    look.bees.eggsSeen = true;
    std::vector<book::CombRecord> combs;
    for (int place = 0; place < combsOfAHive; ++place) combs.push_back(combOf(colony, place, ripe));
    look.combs = std::move(combs);
    return look;
}

book::Weighing weighingOf(book::ColonyId id, int colony, Date date, double ripe) {
    double honey = 0;
    for (int place = 0; place < combsOfAHive; ++place) honey += fullCombKg * *combOf(colony, place, ripe).capped;
    return {.colony = id, .weighing = {date, book::ScaleReading{kilograms(emptyHiveKg + honey)}}};
}

void writeSeason(book::EditGroup& step, book::ColonyId id, int colony) {
    const auto day = [](int month, int dayOfMonth) { return *Date::of(2026, month, dayOfMonth); };
    step.edits.push_back(book::AddLook{lookAt(id, colony, day(5, 12), 0.2)});
    step.edits.push_back(book::AddLook{lookAt(id, colony, day(6, 20), 0.6)});
    step.edits.push_back(book::AddLook{lookAt(id, colony, day(8, 10), 0.8)});
    step.edits.push_back(book::AddHarvest{{.colony = id, .harvest = {day(8, 10), kilograms(8)}}});
    step.edits.push_back(book::AddWeighing{weighingOf(id, colony, day(8, 24), 0.8)});
    step.edits.push_back(
        book::AddFeed{{.colony = id, .feed = {day(9, 2), book::FeedKind::Syrup, kilograms(2), {}, "3:2", {}}}});
    step.edits.push_back(book::AddWeighing{weighingOf(id, colony, day(9, 10), 1)});
    step.edits.push_back(book::AddLook{lookAt(id, colony, day(9, 8 + pick(colony, 3, 6)), 1)});
}

void writeLastWinter(book::EditGroup& step, book::ColonyId id, int colony) {
    step.edits.push_back(book::AddLook{lookAt(id, colony, *Date::of(2025, 9, 14), 1)});
    step.edits.push_back(book::AddWeighing{weighingOf(id, colony, *Date::of(2025, 9, 14), 1)});
    step.edits.push_back(book::AddWeighing{weighingOf(id, colony, *Date::of(2026, 2, 20), 0.6)});
    step.edits.push_back(book::AddWinterOutcome{
        {.colony = id, .date = *Date::of(2026, 4, 20), .alive = true, .storesLeft = kilograms(6)}});
}

book::Colony colonyCalled(std::string name, book::YardId yard) {
    book::Colony colony{.yard = yard, .name = std::move(name)};
    const book::BoxRecord deep{std::string("langstroth-deep"), 10, false};
    colony.hive.boxes = {deep, deep};
    colony.since = *Date::of(2025, 5, 1);
    return colony;
}

} // namespace

void writeLargeYard(const std::filesystem::path& file, int colonies, const ReferenceData& reference) {
    auto book = must(book::Book::create(file, reference, {{"keeper", "bench", written}}));
    book::YardId yard{must(book.nextId(book::Kind::Yard))};
    book::ColonyId id{must(book.nextId(book::Kind::Colony))};
    book::EditGroup step{"write down the yard",
                         {book::AddYard{{.name = "Long meadow",
                                         .site = {std::string("ca-halifax"), 60.0, book::FlowStrength::Trickle}}}}};
    for (int colony = 0; colony < colonies; ++colony, ++id.number) {
        step.edits.push_back(
            book::AddColony{colonyCalled(fmt::format("Row {} hive {}", colony / 20 + 1, colony % 20 + 1), yard)});
        if (colony % 6 == 0) writeLastWinter(step, id, colony);
        writeSeason(step, id, colony);
    }
    must(book.apply(std::move(step), written, "keeper"));
}

} // namespace winterlarder::bench
