// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "answer/winter_records.h"
#include "learning/evidence.h"
#include "learning/keeper.h"
#include "tracking/follow.h"

#include <map>
#include <optional>

namespace winterlarder::answer {

//! What was learned out of a book: of the keeper's bees, and of first forage yard by yard.
struct BookLearned {
    learning::KeeperLearned bees;
    std::map<std::int64_t, learning::ForageShift> forage; //!< by the yard's number
};

//! A colony of the book made ready to be followed through the winter that contains a day.
struct FollowedColony {
    book::Colony colony;
    advice::ColonyQuestion autumn;                    //!< the question the winter is followed from
    advice::Advice advice;                            //!< its answer; where it cannot be answered its reasons say why
    std::optional<tracking::FollowQuestion> question; //!< nothing where the autumn's question cannot be answered
    std::optional<learning::WinterEnd> end;           //!< how that winter ended, where it is written down
};

//! Followed from the day of the last advice acted on in that winter, else from the last look before the solstice that saw bees and
//! combs, else from the first after it. What was written down later, up to the day, becomes steps (feeds, harvests, weights changed) and
//! observations: weighings (where there are more than one in ten days, the last of them), sightings, later looks, a death. The
//! plan is the visits of that advice; without one, what was fed and taken before the solstice. The winter's end is an observation too unless
//! `withEnd` is false. Measured days of the yard's weather count from the season's first day on.
//! Problems: those of the book and of the case. Tested: tests/answer/followed_colony_test.cpp.
Outcome<FollowedColony> followedColony(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned,
                                       winter::Sampling sampling, int threads, bool withEnd = true);

//! Lays what was learned into a question about a colony of a yard.
void useLearned(advice::ColonyQuestion& question, const BookLearned& learned, book::YardId yard, book::ColonyId colony,
                const ModelConstants& constants);

} // namespace winterlarder::answer
