// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"

#include <type_traits>
#include <utility>
#include <vector>

namespace winterlarder::answer {

//! What a new or changed entry of a book is held against: everything else the book has of its colony that tells of its hive.
struct Surroundings {
    book::Colony colony;
    book::SiteRecord site{};
    std::vector<book::Housing> housings{};
    std::vector<book::Look> looks{};
    std::vector<book::Weighing> weighings{};
    std::vector<book::Feed> feeds{};
    std::vector<book::Harvest> harvests{};
    std::vector<book::Manipulation> manipulations{};
};

//! Out of a colony's history, and the place it stands in.
Surroundings surroundingsOf(const book::ColonyHistory& history, const book::SiteRecord& site);
//! The same read from a book, in the yard it was moved to last. Of a colony that is not in the book yet (number 0) there is nothing.
//! Problems: those of the book, no such colony. Tested: tests/answer/surroundings_test.cpp.
Outcome<Surroundings> surroundingsOf(book::Book& from, book::ColonyId colony);

//! The surroundings with this entry, in place of the one of its number. Entries nothing is held against change nothing.
template <class Entry> void put(Surroundings& known, const Entry& entry) {
    const auto into = [&](auto& list) {
        if constexpr (std::is_same_v<typename std::remove_cvref_t<decltype(list)>::value_type, Entry>) {
            std::erase_if(list, [&](const Entry& other) { return other.id == entry.id; });
            list.push_back(entry);
        }
    };
    into(known.housings), into(known.looks), into(known.weighings), into(known.feeds), into(known.harvests),
        into(known.manipulations);
}

} // namespace winterlarder::answer
