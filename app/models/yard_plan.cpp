// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_plan.h"

#include "models/due.h"

#include <algorithm>
#include <tuple>

namespace winterlarder::desk {

namespace {

void count(YardPlan& plan, advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Feed: ++plan.feed; break;
    case advice::Verdict::Harvest: ++plan.harvest; break;
    case advice::Verdict::Leave: ++plan.leave; break;
    case advice::Verdict::Unite: ++plan.unite; break;
    case advice::Verdict::CannotSay: ++plan.cannotSay; break;
    }
}

void addColony(YardPlan& plan, const ColonyEntry& colony) {
    if (!colony.answered) {
        ++plan.waiting;
        return;
    }
    const auto& advice = colony.answered->answer.advice;
    const QString name = QString::fromStdString(colony.record.colony.value_or(""));
    count(plan, advice.verdict);
    report::add(plan.totals, {&colony.answered->question, &advice});
    for (const auto& task : report::tasksOf(colony.answered->question, advice)) plan.jobs.push_back({task, colony.id, name});
    for (const auto& gift : advice.gifts)
        if (gift.to == colony.record.colony.value_or("")) plan.gifts.push_back(gift);
}

void addFollowed(YardPlan& plan, const ColonyEntry& colony, const FollowedWinter& followed) {
    ++plan.followed[followed.following->state];
    const QString name = QString::fromStdString(colony.record.colony.value_or(""));
    const report::PlannedColony planned{nullptr, nullptr, plannedOf(followed)};
    report::add(plan.totals, planned);
    for (const auto& task : planned.followed->tasks) plan.jobs.push_back({task, colony.id, name});
}

void sortByDay(std::vector<PlannedJob>& jobs) {
    const auto key = [](const PlannedJob& job) { return std::tuple(!job.date.has_value(), job.date); };
    std::stable_sort(jobs.begin(), jobs.end(), [&key](const auto& a, const auto& b) { return key(a) < key(b); });
}

} // namespace

YardPlan planOf(const Yard& yard) {
    YardPlan plan;
    for (const auto& colony : yard.colonies()) {
        if (const auto followed = yard.leading(colony.id)) addFollowed(plan, colony, *followed);
        else if (yard.awaitsFollowing(colony.id)) ++plan.waiting;
        else addColony(plan, colony);
    }
    sortByDay(plan.jobs);
    return plan;
}

std::vector<PlannedJob> jobsOf(const ColonyEntry& colony) {
    YardPlan plan;
    addColony(plan, colony);
    sortByDay(plan.jobs);
    return std::move(plan.jobs);
}

std::vector<PlannedJob> jobsOf(const FollowedWinter& followed, ColonyId id) {
    std::vector<PlannedJob> jobs;
    for (const auto& task : tasksOf(followed)) jobs.push_back({task, id, {}});
    sortByDay(jobs);
    return jobs;
}

} // namespace winterlarder::desk
