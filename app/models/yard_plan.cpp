// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_plan.h"

#include "answer/due_looks.h"
#include "answer/style_of_place.h"
#include "models/due.h"
#include "models/words.h"
#include "text/task_words.h"

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

PlannedJob jobOf(const book::PlannedVisit& visit, const QString& colony, Date today) {
    return {answer::taskOf(visit), visit.colony, colony, visit.id, visit.date < today};
}

std::optional<CombExchange> exchangeOf(const report::Task& task, const AnsweredColony& colony) {
    for (const auto& gift : colony.answer.advice.gifts) {
        if (gift.to != colony.question.colony || gift.from != task.from || gift.honey != task.honey) continue;
        CombExchange exchange{gift, {}, static_cast<int>(colony.question.boxes.size())};
        for (const int position : gift.back) {
            const auto& comb = colony.question.combs.at(static_cast<std::size_t>(position));
            exchange.back.push_back({comb.box, comb.place});
        }
        return exchange;
    }
    return std::nullopt;
}

PlannedJob advisedJob(const report::Task& task, const ColonyEntry& colony, const QString& name) {
    PlannedJob job{task, colony.id, name};
    if (!colony.answered) return job;
    job.framed = answer::hangsInFrames(colony.answered->question);
    const auto& advice = colony.answered->answer.advice;
    if (task.kind == JobKind::MoveCombs) job.exchange = exchangeOf(task, *colony.answered);
    if (task.kind == JobKind::Unite && advice.unite) job.partner = QString::fromStdString(advice.unite->partner);
    return job;
}

// In the amounts that are printed, which add up to what is bought.
void showAmounts(std::vector<PlannedJob>& jobs) {
    std::vector<report::Task> tasks(jobs.begin(), jobs.end());
    tasks = text::asShown(std::move(tasks), words::style());
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        jobs[i].sugar = tasks[i].sugar;
        jobs[i].syrup = tasks[i].syrup;
    }
}

// What is planned, struck out where nothing is to be fed, then what is advised beyond it.
void addJobs(YardPlan& plan, const ColonyEntry& colony, const std::vector<report::Task>& advised,
             const FollowedWinter* leading) {
    const auto forbidden = forbiddenOf(colony, leading);
    const QString name = QString::fromStdString(colony.record.colony.value_or(""));
    std::set<JobKind> planned;
    std::vector<PlannedJob> plans, jobs;
    for (const auto& visit : colony.visits) {
        plans.push_back(jobOf(visit, name, colony.record.asOf));
        plans.back().forbidden = forbidden;
        if (!forbidden) planned.insert(plans.back().kind);
    }
    for (const auto& task : advised)
        if (!planned.contains(task.kind)) jobs.push_back(advisedJob(task, colony, name));
    for (auto* part : {&plans, &jobs}) {
        showAmounts(*part);
        plan.jobs.insert(plan.jobs.end(), part->begin(), part->end());
    }
}

std::vector<report::Task> tasksAmong(const std::vector<PlannedJob>& jobs, ColonyId colony) {
    std::vector<report::Task> tasks;
    for (const auto& job : jobs)
        if (job.id == colony && !job.forbidden) tasks.push_back(job);
    return tasks;
}

void addColony(YardPlan& plan, const ColonyEntry& colony) {
    if (!colony.answered) {
        ++plan.waiting;
        return;
    }
    const auto& advice = colony.answered->answer.advice;
    if (!answer::hangsInFrames(colony.answered->question)) plan.bareBars.insert(colony.record.colony.value_or(""));
    plan.disease = plan.disease || colony.answered->question.trouble;
    count(plan, advice.verdict);
    addJobs(plan, colony, report::tasksOf(colony.answered->question, advice), nullptr);
    report::add(plan.totals, plannedColony(colony, plan.jobs, nullptr));
    for (const auto& gift : advice.gifts)
        if (gift.to == colony.record.colony.value_or("")) plan.gifts.push_back(gift);
}

void addFollowed(YardPlan& plan, const ColonyEntry& colony, const FollowedWinter& followed) {
    ++plan.followed[followed.following->state];
    addJobs(plan, colony, tasksOf(followed), &followed);
    report::PlannedColony planned;
    planned.followed = plannedOf(followed);
    planned.followed->tasks = tasksAmong(plan.jobs, colony.id);
    report::add(plan.totals, planned);
}

void sortByDay(std::vector<PlannedJob>& jobs) {
    const auto key = [](const PlannedJob& job) { return std::tuple(!job.date.has_value(), job.date); };
    std::stable_sort(jobs.begin(), jobs.end(), [&key](const auto& a, const auto& b) { return key(a) < key(b); });
}

} // namespace

report::PlannedColony plannedColony(const ColonyEntry& colony, const std::vector<PlannedJob>& jobs,
                                    const FollowedWinter* leading) {
    report::PlannedColony planned{&colony.answered->question, &colony.answered->answer.advice};
    if (leading) planned.followed = plannedOf(*leading);
    if (leading) planned.followed->tasks = tasksAmong(jobs, colony.id);
    else if (!colony.visits.empty()) planned.tasks = tasksAmong(jobs, colony.id);
    return planned;
}

std::optional<report::NoFeed> forbiddenOf(const ColonyEntry& colony, const FollowedWinter* leading) {
    if (leading) return feedForbidden(*leading);
    return colony.answered ? report::feedForbidden(colony.answered->answer.advice) : std::nullopt;
}

YardPlan planOf(const Yard& yard) {
    YardPlan plan;
    plan.moving = yard.state().moving;
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
    if (colony.answered)
        addJobs(plan, colony, report::tasksOf(colony.answered->question, colony.answered->answer.advice), nullptr);
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
