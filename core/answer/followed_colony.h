// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "book/colony_history.h"
#include "learning/evidence.h"
#include "learning/keeper.h"
#include "tracking/follow.h"

#include <map>
#include <optional>
#include <set>
#include <stop_token>

namespace winterlarder::answer {

//! What was learned out of a book: of the keeper's bees, and of first forage yard by yard. Plain values, to be shown, kept or thrown away.
struct BookLearned {
    learning::KeeperLearned bees;
    std::map<std::int64_t, learning::ForageShift> forage; //!< by the yard's number
    std::set<std::int64_t> yards;                         //!< that learn: what was learned is used there alone
    int winters = 0;                                      //!< years of which some winter told of the bees
};

//! What was learned of a colony in a yard, as it goes into its case; nothing where the yard does not learn or nothing was learned.
std::optional<book::LearnedRecord> learnedOf(const BookLearned& learned, book::YardId yard, book::ColonyId colony);

//! The case of a colony on a day with what was learned of it: the one way from a book to a question. `learned` may be nothing.
book::ColonyCase learnedCase(const book::ColonyHistory& history, const std::vector<book::Yard>& yards,
                             const ReferenceData& reference, Date asOf, const BookLearned* learned);
Outcome<book::ColonyCase> learnedCase(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned);

//! All that following a colony on a day rests on.
struct FollowReading {
    book::ColonyHistory records;               //!< up to the day
    book::YardId yard{};                       //!< where it stands on the day
    std::vector<book::DayTemperature> weather; //!< measured in that yard up to the day, ascending, one a day
    Date asOf, decided;
    Winter winter{Hemisphere::North, 2000};
    book::ColonyCase now, autumn; //!< of the day, and of the day it was decided on
    bool operator==(const FollowReading&) const = default;
};

//! Whether a day is one on which a winter's course is the answer to give: from November (May in the south) on.
bool mayLead(const Winter& winter, Date asOf);
Date leadsFrom(const Winter& winter); //!< the first such day
//! Whether it is: before that, and on the day it is decided, it is still decided.
bool followLeads(const FollowReading& reading);

//! A colony of the book made ready to be followed through the winter that contains a day.
struct FollowedColony {
    book::Colony colony;
    advice::ColonyQuestion autumn;                    //!< the question the winter is followed from
    advice::Advice advice;                            //!< its answer; where it cannot be answered its reasons say why
    std::optional<tracking::FollowQuestion> question; //!< nothing where the autumn's question cannot be answered
    std::optional<learning::WinterEnd> end;           //!< how that winter ended, where it is written down
    std::optional<book::WinterOutcome> deadHive;      //!< what was found in it, where it died
};

//! Followed from the day another colony was united into it, where that was later, else from the day of the last advice acted on in that winter, else from the last look before the solstice that saw bees and
//! combs, else from the first after it. `learned` (of the book, may be nothing) goes into the autumn's case. Problems: those of the case.
Outcome<FollowReading> followReading(const book::ColonyHistory& history, const book::YardsOfBook& yards,
                                     const ReferenceData& reference, Date asOf, const BookLearned* learned);
//! The same, read in one transaction. Problems: those of the book, no such colony.
Outcome<FollowReading> readToFollow(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned);

//! Its planned visits that are still to be made: see openVisits in answer/afterwards.h.
std::vector<book::PlannedVisit> openVisits(const FollowReading& reading, const ReferenceData& reference);
//! Whether feeds of its plan are past and not written down: see feedNotRecorded in answer/afterwards.h.
std::optional<Remark> feedNotRecorded(const FollowReading& reading, const ReferenceData& reference);

enum class EndOfWinter { Counts, LeftOut };
//! What was written down after the decision, up to the day, becomes steps (feeds, harvests, weights changed) and
//! observations: weighings (where there are more than one in ten days, the last of them), sightings, later looks, a death. The
//! plan is the visits of that advice; without one, what was fed and taken before the solstice. Combs that advice moved within its yard's plan, and a colony it
//! united onto this one, are in the stores and bees it is followed from (accepted_plan.h). A feed of the day of the advice that the advice did not know
//! of came after it: it is a step, and not in the stores of that day. Planned feeds whose day is past are asked about (UntickedVisit) where they were
//! neither ticked off nor struck out and what is written down as fed since falls a kilogram or more short of all that was planned by then. The winter's end is an observation too unless
//! it is left out. Measured days of the yard's weather count from the season's first day on.
//! Problems: those of the case. Where stopped there is no question. Tested: tests/answer/followed_colony_test.cpp.
Outcome<FollowedColony> followedColony(const FollowReading& reading, const ReferenceData& reference,
                                       winter::Sampling sampling, int threads, EndOfWinter end = EndOfWinter::Counts,
                                       std::stop_token stop = {});
//! Both in one.
Outcome<FollowedColony> followedColony(book::Book& from, book::ColonyId colony, Date asOf, const BookLearned* learned,
                                       winter::Sampling sampling, int threads, EndOfWinter end = EndOfWinter::Counts);

} // namespace winterlarder::answer
