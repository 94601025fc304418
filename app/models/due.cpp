// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/due.h"

#include "answer/due_looks.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

int rank(advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Feed: return 0;
    case advice::Verdict::Unite: return 1;
    case advice::Verdict::CannotSay: return 2;
    case advice::Verdict::Harvest: return 3;
    case advice::Verdict::Leave: return 4;
    }
    return 5;
}

} // namespace

bool isFedToday(const tracking::Following& following, SeasonDay today) {
    return following.feed && following.feed->begins() <= today;
}

Due dueOf(const AnsweredColony& colony) {
    for (const auto& task : report::tasksOf(colony.question, colony.answer.advice))
        if (task.kind != DueKind::Check) return {task.kind, task.date};
    return {};
}

std::optional<Due> dueOf(const std::vector<book::PlannedVisit>& visits, const AnsweredColony* answered) {
    if (answered && report::feedForbidden(answered->answer.advice)) return std::nullopt;
    for (const auto& visit : visits)
        if (visit.what != book::VisitKind::Check)
            return Due{visit.what == book::VisitKind::Syrup ? DueKind::Syrup : DueKind::Fondant, visit.date};
    return std::nullopt;
}

std::vector<report::Task> tasksOf(const FollowedWinter& followed) { return answer::followedTasks(*followed.following); }

std::optional<report::NoFeed> feedForbidden(const FollowedWinter& followed) {
    return followed.following->state == tracking::FollowState::Dead ? std::optional(report::NoFeed::NoBees)
                                                                    : std::nullopt;
}

report::FollowedPlan plannedOf(const FollowedWinter& followed) {
    const auto& winter = *followed.following;
    return {winter.state, winter.now.today, winter.now.touchReserve, winter.now.runOut, tasksOf(followed)};
}

Due dueOf(const FollowedWinter& followed) {
    const auto tasks = tasksOf(followed);
    return tasks.empty() ? Due{} : Due{tasks.front().kind, tasks.front().date};
}

UrgencyKey urgencyOf(const FollowedWinter& followed) {
    const auto due = dueOf(followed);
    const bool now = due.kind && followed.following->state == tracking::FollowState::ActNow;
    return {!due.date.has_value(), due.date, rank(now ? advice::Verdict::Feed : advice::Verdict::Leave)};
}

UrgencyKey urgencyOf(const AnsweredColony& colony) {
    const auto due = dueOf(colony);
    return {!due.date.has_value(), due.date, rank(colony.answer.advice.verdict)};
}

} // namespace winterlarder::desk
