// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/colony_history.h"
#include "reference/reference.h"
#include "tracking/follow_question.h"

namespace winterlarder::answer {

//! The records of a winter from the day of its decision to a day; everything outlives the call.
struct WinterSpan {
    const book::ColonyHistory& records;
    const book::ColonyCase& autumn; //!< of the decision, see asDecided
    const Winter& winter;
    Date decided, asOf;
    const ReferenceData& reference;
    const winter::DemandEnsemble* demand = nullptr; //!< the winters of the decision, by which a lift's word is read
};

//! Lays what was written down after the decision into the question: steps (feeds, harvests, weights changed) and observations (weighings, sightings,
//! later looks, a death). `asked`: the autumn's question; combs its plan moved are in the stores, so an entry of those is no more than their weight beyond it. Problems: those of the records. Tested: tests/answer/followed_colony_test.cpp.
Problems fillAfterwards(tracking::FollowQuestion& question, const advice::ColonyQuestion& asked,
                        const WinterSpan& span);

//! Lays the plan into it, once the steps are in: visits of the advice acted on, else what was fed and taken before the solstice; and planned feeds that
//! are past and not written down as given. Tested: tests/answer/acted_on_test.cpp.
Problems fillPlan(tracking::FollowQuestion& question, const WinterSpan& span);

//! Planned visits that are still to be made, by day: those from today on, and while feeds of a plan are still to come also those of the plan acted on (or of
//! the keeper's own visits) whose day is past; but no feed up to today that is made up for by what is written down as fed since the decision. Once the
//! last feed of the plan is past none of it is still to be made: feedNotRecorded asks about it. Tested: tests/cli/calendar_test.cpp, tests/answer/acted_on_test.cpp.
std::vector<book::PlannedVisit> openVisits(const WinterSpan& span);

//! What to ask about feeds of the plan whose day is past and that are not written down, as of follow-remarks (feed-not-recorded: day, stores); nothing where
//! there are none. Tested: tests/answer/acted_on_test.cpp.
std::optional<Remark> feedNotRecorded(const WinterSpan& span);

} // namespace winterlarder::answer
