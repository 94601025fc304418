// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "support/book_folder.h"

#include <gmock/gmock.h>

namespace winterlarder::answer {

using namespace book::support;
using book::ColonyId;

inline const winter::Sampling few{1, 300};

//! A book of one colony, looked at on 20 September 2026, whose winter is followed.
class FollowedColonyTest : public ::testing::Test {
protected:
    BookFolder folder;
    book::Book book = newBook(folder / "a.larder");
    ColonyId colony;

    void SetUp() override {
        edit(book, book::AddYard{orchard()});
        auto kept = colonyIn({1}, "Pear");
        kept.hive.tare = kilograms(24);
        colony = *edit(book, book::AddColony{kept}).added<book::Colony>();
        look("2026-09-20");
    }
    void look(const char* date) {
        auto seen = lookAt(colony, day(date));
        seen.combs = std::vector<book::CombRecord>(11, comb(0.8));
        edit(book, book::AddLook{seen});
    }
    FollowedColony on(const char* date, EndOfWinter end = EndOfWinter::Counts) {
        return must(followedColony(book, colony, day(date), nullptr, few, 2, end));
    }
    tracking::FollowQuestion questionOn(const char* date) { return *on(date).question; }
};

} // namespace winterlarder::answer
