// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"
#include "models/followed_winter.h"
#include "report/visits.h"
#include "report/yard_plan.h"

#include <optional>
#include <vector>

namespace winterlarder::desk {

using DueKind = report::TaskKind;

//! What a colony wants next, and when.
struct Due {
    std::optional<DueKind> kind; //!< nothing: nothing is due
    std::optional<Date> date;    //!< nothing: no day is pressing
};

//! The first of the tasks of report::tasksOf that is more than a check. Tested: tests/app/models_test.cpp.
Due dueOf(const AnsweredColony& colony);

//! The first of the visits planned that is more than a check; nothing where none is, or the answer (may be nothing) forbids them. Tested:
//! tests/app/models_test.cpp, plan/forbidden_feed_test.cpp.
std::optional<Due> dueOf(const std::vector<book::PlannedVisit>& visits, const AnsweredColony* answered);

//! What a followed winter asks for, by day: the lots to lay on, and the next weighing that is worth it. Tested: tests/app/following_test.cpp.
std::vector<report::Task> tasksOf(const FollowedWinter& followed);
//! See report::feedForbidden.
std::optional<report::NoFeed> feedForbidden(const FollowedWinter& followed);
//! The followed winter as the printed plan shows it.
report::FollowedPlan plannedOf(const FollowedWinter& followed);
//! The first of them.
Due dueOf(const FollowedWinter& followed);

//! Whether what a followed winter wants fed is to be given today, or was to be given before.
bool isFedToday(const tracking::Following& following, SeasonDay today);

//! Order of urgency, smaller first: earliest due day, then feed, unite, cannot say, harvest, leave.
struct UrgencyKey {
    bool noDay = true;
    std::optional<Date> day;
    int rank = 0;
    auto operator<=>(const UrgencyKey&) const = default;
    static UrgencyKey last() { return {true, std::nullopt, 99}; } //!< of a colony without an answer
};
UrgencyKey urgencyOf(const AnsweredColony& colony);
UrgencyKey urgencyOf(const FollowedWinter& followed);

} // namespace winterlarder::desk
