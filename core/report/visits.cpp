// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/visits.h"

#include <algorithm>
#include <utility>

namespace winterlarder::report {

namespace {

using advice::Advice;
using advice::ColonyQuestion;

std::optional<Date> comingDate(const ColonyQuestion& question, const std::optional<climate::SeasonDate>& date) {
    if (!date || date->day < question.asOf) return std::nullopt;
    return question.winter.date(date->day);
}

// Combs from a neighbour hang in before the first feed; where nothing is fed, today.
std::vector<Task> combTasks(const ColonyQuestion& question, const Advice& advice) {
    std::vector<Task> tasks;
    for (const auto& gift : advice.gifts) {
        if (gift.to != question.colony) continue;
        Task& task = tasks.emplace_back();
        task.kind = TaskKind::MoveCombs;
        task.date = advice.feed && !advice.feed->visits.empty() ? advice.feed->visits.front().date
                                                                : question.winter.date(question.asOf);
        task.honey = gift.honey;
        task.combs = static_cast<int>(gift.combs.size());
        task.from = gift.from;
    }
    return tasks;
}

std::vector<Task> feedingTasks(const ColonyQuestion& question, const Advice& advice) {
    std::vector<Task> tasks = combTasks(question, advice);
    if (!advice.feed) return tasks;
    using By = advice::DecidedBy;
    for (const auto& visit : advice.feed->visits) {
        tasks.push_back(taskOf(visit));
        tasks.back().cannotWait =
            advice.decidedBy == By::ActNow || advice.decidedBy == By::NoFoodInReach || advice.decidedBy == By::Heft;
    }
    return tasks;
}

Task task(TaskKind kind, std::optional<Date> date, Mass honey = Mass(0)) {
    Task made;
    made.kind = kind;
    made.date = date;
    made.honey = honey;
    return made;
}

std::vector<Task> whatIsUnknown(const ColonyQuestion& question, const Advice& advice) {
    const Date today = question.winter.date(question.asOf);
    for (const auto refusal : advice.refusals) {
        if (refusal == advice::RefusalKind::BeesUnknown) return {task(TaskKind::CountBees, today)};
        if (refusal == advice::RefusalKind::StoresUnknown) return {task(TaskKind::RecordStores, today)};
    }
    return {};
}

// The look after a feed is its last visit's check already.
std::optional<Task> lookTask(const Advice& advice) {
    if (!advice.nextLook) return std::nullopt;
    switch (advice.nextLook->what) {
    case advice::NextLookAt::Weigh: return task(TaskKind::WeighAgain, advice.nextLook->date);
    case advice::NextLookAt::CountMites: return task(TaskKind::CountMites, advice.nextLook->date);
    case advice::NextLookAt::Inspector: return task(TaskKind::CallInspector, advice.nextLook->date);
    case advice::NextLookAt::CheckFeed:
    case advice::NextLookAt::QueenCells: break; // a task beside the comb with eggs
    }
    return std::nullopt;
}

// Whether there is a queen is seen on a comb with eggs of another colony.
std::vector<Task> queenTest(const ColonyQuestion& question, const Advice& advice) {
    if (advice.decidedBy != advice::DecidedBy::NoQueen || !advice.nextLook) return {};
    return {task(TaskKind::HangInEggs, question.winter.date(question.asOf)),
            task(TaskKind::SeeQueenCells, advice.nextLook->date)};
}

std::vector<Task> actsOf(const ColonyQuestion& question, const Advice& advice) {
    std::vector<Task> tasks = feedingTasks(question, advice);
    for (Task& test : queenTest(question, advice)) tasks.push_back(std::move(test));
    if (advice.verdict == advice::Verdict::Unite) {
        tasks.push_back(task(TaskKind::Unite, advice.unite ? std::optional(advice.unite->by)
                                                           : comingDate(question, advice.season.broodStop)));
        if (advice.unite) {
            tasks.back().from = advice.unite->partner;
            tasks.back().longHive = advice.unite->longHive;
            tasks.back().queenless = advice.unite->queenless;
        }
    }
    if (advice.verdict == advice::Verdict::Harvest)
        tasks.push_back(task(TaskKind::TakeHoney, comingDate(question, advice.season.feedAdvisedBy),
                             advice.harvest ? advice.harvest->upTo : Mass(0)));
    return tasks;
}

} // namespace

TaskKind taskKindOf(VisitKind kind) {
    switch (kind) {
    case VisitKind::Syrup: return TaskKind::Syrup;
    case VisitKind::Fondant: return TaskKind::Fondant;
    case VisitKind::Check: return TaskKind::Check;
    }
    return TaskKind::Check;
}

std::string idOf(TaskKind kind) {
    switch (kind) {
    case TaskKind::Syrup: return "syrup";
    case TaskKind::Fondant: return "fondant";
    case TaskKind::Check: return "check";
    case TaskKind::TakeHoney: return "take-honey";
    case TaskKind::Unite: return "unite";
    case TaskKind::WeighAgain: return "weigh-again";
    case TaskKind::CountMites: return "count-mites";
    case TaskKind::CallInspector: return "call-inspector";
    case TaskKind::CountBees: return "count-bees";
    case TaskKind::RecordStores: return "record-stores";
    case TaskKind::MoveCombs: return "move-combs";
    case TaskKind::HangInEggs: return "hang-in-eggs";
    case TaskKind::SeeQueenCells: return "see-queen-cells";
    }
    return {};
}

Task taskOf(const feeding::Visit& visit) {
    Task task;
    task.date = visit.date;
    task.kind = taskKindOf(visit.kind);
    task.sugar = visit.sugar;
    task.syrup = visit.syrup;
    task.fondant = visit.fondant;
    return task;
}

std::vector<Task> tasksOf(const ColonyQuestion& question, const Advice& advice) {
    if (advice.verdict == advice::Verdict::CannotSay) return whatIsUnknown(question, advice);
    std::vector<Task> tasks = actsOf(question, advice);
    if (auto look = lookTask(advice); look && advice.verdict != advice::Verdict::Unite)
        tasks.push_back(std::move(*look));
    std::stable_sort(tasks.begin(), tasks.end(),
                     [](const Task& a, const Task& b) { return a.date && (!b.date || *a.date < *b.date); });
    return tasks;
}

std::optional<NoFeed> feedForbidden(const Advice& advice) {
    using By = advice::DecidedBy;
    if (advice.feed) return std::nullopt;
    if (advice.decidedBy == By::Disease) return NoFeed::Disease;
    if (advice.verdict == advice::Verdict::Harvest) return NoFeed::HoneyComesOff;
    if (advice.decidedBy == By::Full) return NoFeed::HiveFull;
    return std::nullopt;
}

} // namespace winterlarder::report
