// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "feeding/syrup.h"
#include "scale/proposals.h"

#include <optional>
#include <vector>

namespace winterlarder::answer {

//! What a scale's log adds to the book of a colony: a few weighings and every feed, harvest and change of equipment, as one step.
struct ScaleRecords {
    book::ColonyId colony{};
    std::vector<book::Weighing> weighings{};
    std::vector<book::Feed> feeds{};
    std::vector<book::Harvest> harvests{};
    std::vector<book::Manipulation> works{};
    int left = 0; //!< on days of which the book has such a record already: not added twice
    bool empty() const { return weighings.empty() && feeds.empty() && harvests.empty() && works.empty(); }
    book::EditGroup asOneStep() const;
};

//! A feed is syrup of the ratio; where none is said only its weight is known, and it stays a change of weight. Problems: those of the book.
//! Tested: tests/cli/book_test.cpp, tests/app/following_test.cpp.
Outcome<ScaleRecords> scaleRecordsOf(book::Book& from, book::ColonyId colony, const scale::Proposals& proposals,
                                     const std::optional<feeding::Ratio>& ratio);

} // namespace winterlarder::answer
