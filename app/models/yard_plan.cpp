// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_plan.h"

#include "models/due.h"

#include <algorithm>
#include <tuple>

namespace winterlarder::desk {

namespace {

JobKind jobKind(feeding::VisitKind kind) {
    switch (kind) {
    case feeding::VisitKind::Syrup: return JobKind::Syrup;
    case feeding::VisitKind::Fondant: return JobKind::Fondant;
    case feeding::VisitKind::Check: return JobKind::Check;
    }
    return JobKind::Check;
}

std::optional<JobKind> jobKind(DueKind kind) {
    switch (kind) {
    case DueKind::TakeHoney: return JobKind::TakeHoney;
    case DueKind::Unite: return JobKind::Unite;
    case DueKind::Weigh: return JobKind::Weigh;
    case DueKind::CountBees: return JobKind::CountBees;
    case DueKind::RecordStores: return JobKind::RecordStores;
    default: return std::nullopt;
    }
}

void count(YardPlan& plan, advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Feed: ++plan.feed; break;
    case advice::Verdict::Harvest: ++plan.harvest; break;
    case advice::Verdict::Leave: ++plan.leave; break;
    case advice::Verdict::Unite: ++plan.unite; break;
    case advice::Verdict::CannotSay: ++plan.cannotSay; break;
    }
}

void addFeeding(YardPlan& plan, const ColonyEntry& colony, const QString& name) {
    const auto& feed = *colony.answered->answer.advice.feed;
    plan.sugar = plan.sugar + feed.syrup.sugar;
    plan.water = plan.water + feed.syrup.water;
    plan.fondant = plan.fondant + feed.fondant;
    if (feed.lastDay && feed.syrup.sugar > Mass(0)) {
        const Date last = colony.answered->question.winter.date(*feed.lastDay);
        plan.lastSyrupDay = plan.lastSyrupDay ? std::min(*plan.lastSyrupDay, last) : last;
    }
    for (const auto& visit : feed.visits)
        plan.jobs.push_back({visit.date, colony.id, name, jobKind(visit.kind), visit.sugar, visit.syrup, visit.fondant, Mass(0)});
}

void addColony(YardPlan& plan, const ColonyEntry& colony) {
    if (!colony.answered) {
        ++plan.waiting;
        return;
    }
    const auto& advice = colony.answered->answer.advice;
    const QString name = QString::fromStdString(colony.record.colony.value_or(""));
    count(plan, advice.verdict);
    // A colony that is to be united is not fed on its own.
    if (advice.verdict == advice::Verdict::Feed && advice.feed) addFeeding(plan, colony, name);
    const Mass honey = advice.verdict == advice::Verdict::Harvest && advice.harvest ? advice.harvest->upTo : Mass(0);
    plan.honey = plan.honey + honey;
    const auto due = dueOf(*colony.answered);
    if (const auto kind = jobKind(due.kind)) plan.jobs.push_back({due.date, colony.id, name, *kind, Mass(0), Volume(0), Mass(0), honey});
    for (const auto& gift : advice.gifts)
        if (gift.to == colony.record.colony.value_or("")) plan.gifts.push_back(gift);
}

void sortByDay(std::vector<PlannedJob>& jobs) {
    const auto key = [](const PlannedJob& job) { return std::tuple(!job.date.has_value(), job.date ? job.date->iso() : std::string()); };
    std::stable_sort(jobs.begin(), jobs.end(), [&key](const auto& a, const auto& b) { return key(a) < key(b); });
}

} // namespace

YardPlan planOf(const Yard& yard) {
    YardPlan plan;
    for (const auto& colony : yard.colonies()) addColony(plan, colony);
    sortByDay(plan.jobs);
    return plan;
}

std::vector<PlannedJob> jobsOf(const ColonyEntry& colony) {
    YardPlan plan;
    addColony(plan, colony);
    sortByDay(plan.jobs);
    return std::move(plan.jobs);
}

} // namespace winterlarder::desk
