// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_plan.h"
#include "models/colony.h"
#include "models/followed_winter.h"
#include "models/yard_reading.h"
#include "text/wording.h"

#include <map>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace winterlarder::desk {

//! One colony of the yard as the window holds it: what the book knows of it on the day, and the newest answer that belongs to that.
struct ColonyEntry {
    ColonyId id;
    book::ColonyCase record;
    AnsweredPointer answered;                 //!< of an earlier record while `pending`
    bool pending = true;                      //!< the records changed after the answer was made
    Problems problems{};                      //!< why there is no answer, where the records contradict each other
    std::vector<book::PlannedVisit> visits{}; //!< planned, neither made nor skipped, by day
};

//! What changed of a yard: of one colony, or (number 0) of all.
enum class YardChange {
    Colonies, //!< other colonies, another yard or another day; of all
    Record,   //!< what the book knows of it on the day
    Answer,
    History,  //!< the whole history of the colony being looked at was read anew
    Followed, //!< how its winter goes is known anew, or no longer
    Visits,   //!< planned visits; of all
    Moving,   //!< whether combs may be moved between hives; of all
    Plan,     //!< whether the answers stand in the plan of the yard; of all
    Past,     //!< what past winters taught; of all
    Read,     //!< read anew, whether it changed or not: how its winter goes is to be worked out again
};
using YardChanges = std::vector<std::pair<YardChange, ColonyId>>;

//! Whether past winters are the same for both days, whichever the hemisphere.
bool inSameWinter(Date one, Date other);

//! What the window shows of one yard on one day, as a plain value: nothing is read, written or told here. Whatever comes is taken by a
//! function that says what it changed. Tested: tests/app/yard_state_test.cpp.
struct YardState {
    std::vector<ColonyEntry> colonies{};
    std::vector<book::Yard> yards{};
    book::YardId shown{};
    std::optional<Date> day{};
    ColonyId open{};                                //!< the colony being looked at
    std::optional<book::ColonyHistory> history{};   //!< of that colony, edits shown at once among it
    std::map<ColonyId, FollowedPointer> followed{}; //!< as far as they are worked out
    std::set<ColonyId> awaited{};                   //!< whose winter is being worked out
    PastPointer past{};
    bool pastFailed = false; //!< it was to be worked out anew and could not be
    advice::MovingCombs moving =
        advice::MovingCombs::Allowed; //!< whether the plan of the yard may move combs between hives
    bool planAwaited = false;         //!< it is being made of the answers: till then each may still change by it

    const ColonyEntry* find(ColonyId id) const; //!< nothing where the colony is gone
    int position(ColonyId id) const;            //!< -1 where the colony is gone
    const book::Yard* shownYard() const;        //!< nothing where the book has none
    const book::ColonyHistory* historyOf(ColonyId id) const;
    FollowedPointer followedOf(ColonyId id) const;
    bool awaitsFollowing(ColonyId id) const;
    //! What combs and feed are called at the place of the answered colonies: frames where any of their hives has them.
    text::Wording wording() const;

    void forgetBook(); //!< another book, or none: all but the day and what the plan may do
    YardChanges showDay(Date day);
    void look(ColonyId id);
    YardChanges take(YardReading reading);
    //! The history of the colony being looked at as an edit makes it, and the case that follows from it.
    YardChanges showHistory(book::ColonyHistory after, const ReferenceData& reference);
    //! Nothing changes where they were made of other records than those shown now.
    YardChanges takeAnswer(ColonyId id, const AnsweredPointer& answered);
    YardChanges takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems);
    YardChanges takeFollowed(ColonyId id, const FollowedPointer& winter);
    YardChanges forgetFollowed(ColonyId id);
    YardChanges followedTold(ColonyId id);
    YardChanges takePast(const PastPointer& learned);
    YardChanges takePastFailure();
    YardChanges moveCombs(advice::MovingCombs combs);
    YardChanges awaitPlan(bool wanted); //!< whether it is being made

private:
    ColonyEntry* entry(ColonyId id);
};

} // namespace winterlarder::desk
