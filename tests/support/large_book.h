// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book_folder.h"
#include "random_entries.h"

//! A large book from a seed: as many colonies over as many years as said, ten looks of fifteen combs, four weighings, three feeds, a
//! harvest and a winter's outcome a colony and year. 500 colonies over 20 years are 100,000 looks and 1.5 million combs.
namespace winterlarder::book::support {

inline CombRecord someComb(Dice& dice) {
    CombRecord record;
    record.capped = static_cast<double>(dice.below(11)) / 20;
    record.open = static_cast<double>(dice.below(5)) / 20;
    if (dice.once(2)) record.brood = static_cast<double>(dice.below(5)) / 20;
    return record;
}

inline Look someLook(Dice& dice, ColonyId colony, Date date) {
    Look look{.colony = colony, .date = date};
    look.bees.coveredCombs = static_cast<double>(dice.below(20)) / 2;
    std::vector<CombRecord> combs;
    for (int place = 0; place < 15; ++place) combs.push_back(someComb(dice));
    look.combs = std::move(combs);
    return look;
}

//! The records of one colony in one year.
inline void addYear(Dice& dice, EditGroup& step, ColonyId colony, int year) {
    const auto first = *Date::of(year, 3, 20);
    for (int look = 0; look < 10; ++look)
        step.edits.emplace_back(AddLook{someLook(dice, colony, first.plusDays(look * 20))});
    for (int weighing = 0; weighing < 4; ++weighing)
        step.edits.emplace_back(AddWeighing{
            weighingOf(colony, first.plusDays(150 + weighing * 14), 40 + static_cast<double>(dice.below(200)) / 10)});
    for (int feed = 0; feed < 3; ++feed)
        step.edits.emplace_back(AddFeed{
            {.colony = colony, .feed = {first.plusDays(160 + feed * 3), FeedKind::Syrup, kilograms(4), {}, {}, {}}}});
    step.edits.emplace_back(AddHarvest{{.colony = colony, .harvest = {first.plusDays(120), kilograms(15)}}});
    step.edits.emplace_back(AddWinterOutcome{{.colony = colony, .date = first.plusDays(10)}});
}

//! A step a colony, dated as if written down in that year. Yards of 25 colonies.
inline void fillLarge(Book& book, int colonies, int years, std::uint64_t seed) {
    Dice dice(seed);
    for (int number = 1; number <= colonies; ++number) {
        if (number % 25 == 1) {
            auto yard = orchard();
            yard.name = "Yard " + std::to_string(number / 25 + 1);
            edit(book, AddYard{yard});
        }
        const auto colony = edit(book, AddColony{colonyIn({(number - 1) / 25 + 1}, "Colony " + std::to_string(number))})
                                .added<Colony>()
                                .value();
        EditGroup step{"write down the years", {}};
        for (int year = 2026 - years; year < 2026; ++year) addYear(dice, step, colony, year);
        must(book.apply(step, morning, "Ada"));
    }
}

} // namespace winterlarder::book::support
