// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/due_looks.h"

#include "answer/style_of_place.h"
#include "support/caught.h"
#include "text/task_words.h"
#include "winter/question.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace winterlarder::answer {

namespace {

// Events of one colony.
class Due {
public:
    Due(const std::string& mark, const FollowReading& asked, const text::WordStyle& style,
        std::vector<exchange::DueOn>& due)
        : mark_(mark), reading_(asked), style_(style), due_(due) {}

    void speak(const text::WordStyle& style) { style_ = style; }

    bool gone() const {
        const auto& fates = reading_.records.fates;
        return std::any_of(fates.begin(), fates.end(),
                           [&](const book::Fate& fate) { return fate.date <= reading_.asOf; });
    }
    // A feed whose day has passed is due today, a second one when the keeper comes next.
    void visits(const std::vector<book::PlannedVisit>& open, bool feedNothing) {
        Date missed = reading_.asOf;
        for (const auto& visit : inShownAmounts(open)) {
            if (feedNothing) continue;
            planned_.insert(report::taskKindOf(visit.what));
            if (visit.date >= reading_.asOf) {
                addVisit(visit, visit.date, {});
                continue;
            }
            addVisit(visit, missed, text::dueSince(visit.date, style_));
            missed = missed.plusDays(std::max(1, reading_.now.wish.visitEveryDays));
        }
    }
    std::vector<book::PlannedVisit> ahead() const {
        auto visits = reading_.records.visits;
        std::erase_if(visits, [&](const book::PlannedVisit& visit) {
            return visit.state != book::VisitState::Planned || visit.date < reading_.asOf;
        });
        return visits;
    }
    // Combs hang in before anything is fed.
    void combs(const AdvisedDue& advised) {
        for (const auto& task : advised.tasks)
            if (task.kind == report::TaskKind::MoveCombs) addTask(task);
    }
    // What is planned of a kind stands in place of what is advised of it.
    void tasks(const std::vector<report::Task>& tasks) {
        for (const auto& task : text::asShown(tasks, style_))
            if (task.kind != report::TaskKind::MoveCombs && !planned_.contains(task.kind)) addTask(task);
    }

private:
    std::vector<book::PlannedVisit> inShownAmounts(std::vector<book::PlannedVisit> visits) const {
        std::vector<report::Task> tasks;
        for (const auto& visit : visits) tasks.push_back(taskOf(visit));
        tasks = text::asShown(std::move(tasks), style_);
        for (std::size_t i = 0; i < visits.size(); ++i) {
            if (visits[i].sugar) visits[i].sugar = tasks[i].sugar;
            if (visits[i].syrup) visits[i].syrup = tasks[i].syrup;
        }
        return visits;
    }
    void addVisit(const book::PlannedVisit& visit, Date day, const QString& since) {
        QStringList details{QString::fromStdString(visit.note), since, text::dueDetails(taskOf(visit), style_)};
        details.removeAll(QString());
        add(fmt::format("visit-{}", visit.id.number), day, text::dueVisit(visit, style_),
            details.join(QLatin1Char('\n')).toStdString());
    }
    void addTask(const report::Task& task) {
        if (task.date && *task.date >= reading_.asOf)
            add(fmt::format("{}-{}-{}", report::idOf(task.kind), ++counted_[task.kind],
                            reading_.records.colony.id.number),
                *task.date, text::dueTask(task, style_), text::dueDetails(task, style_).toStdString());
    }
    void add(const std::string& id, Date day, const QString& what, const std::string& details) {
        due_.push_back({fmt::format("{}@{}.winterlarder", id, mark_), day,
                        fmt::format("{}: {}", reading_.records.colony.name, what.toStdString()), details});
    }

    const std::string& mark_;
    const FollowReading& reading_;
    text::WordStyle style_;
    std::vector<exchange::DueOn>& due_;
    std::set<report::TaskKind> planned_;
    std::map<report::TaskKind, int> counted_;
};

std::string whatIsDue(const std::string& colony) { return fmt::format("what is due for {}", colony); }

Problems namedAfter(const std::string& colony, Problems problems) {
    for (auto& problem : problems)
        if (problem.place.file.empty()) problem.place.file = colony;
    return problems;
}

} // namespace

std::string calendarMark(const book::BookInfo& info) {
    if (!info.mark.empty()) return info.mark;
    return fmt::format("{:016x}",
                       winter::colonyStream((info.madeAt ? info.madeAt->iso() : std::string()) + " " + info.madeBy));
}

AdvisedDue advisedDue(const advice::ColonyQuestion& question, const advice::Advice& advice,
                      const text::WordStyle& style) {
    AdvisedDue due{report::tasksOf(question, advice), styleFor(style, question)};
    due.feedNothing = report::feedForbidden(advice).has_value();
    return due;
}

report::Task taskOf(const book::PlannedVisit& visit) {
    report::Task task;
    task.kind = report::taskKindOf(visit.what);
    task.date = visit.date;
    task.sugar = visit.sugar.value_or(Mass(0));
    task.syrup = visit.syrup.value_or(Volume(0));
    task.fondant = visit.fondant.value_or(Mass(0));
    return task;
}

std::vector<report::Task> plannedFirst(const std::vector<book::PlannedVisit>& visits,
                                       const std::vector<report::Task>& advised) {
    std::vector<report::Task> tasks;
    std::set<report::TaskKind> planned;
    for (const auto& visit : visits) {
        tasks.push_back(taskOf(visit));
        planned.insert(tasks.back().kind);
    }
    for (const auto& task : advised)
        if (!planned.contains(task.kind)) tasks.push_back(task);
    return tasks;
}

std::vector<report::Task> followedTasks(const tracking::Following& winter) {
    using State = tracking::FollowState;
    std::vector<report::Task> tasks;
    if (winter.state == State::Dead) return tasks;
    if (winter.feed)
        for (const auto& lot : winter.feed->lots) {
            report::Task& task = tasks.emplace_back();
            task.kind = report::TaskKind::Fondant;
            task.date = lot.date;
            task.fondant = lot.fondant;
            task.cannotWait = winter.state == State::ActNow || winter.state == State::FoodOutOfReach ||
                              winter.state == State::CannotSay;
        }
    if (winter.feed && winter.feed->plan)
        for (const auto& visit : winter.feed->plan->visits) tasks.push_back(report::taskOf(visit));
    if (winter.nextWeighing) {
        report::Task& task = tasks.emplace_back();
        task.kind = report::TaskKind::WeighAgain;
        task.date = winter.nextWeighing->date;
    }
    return tasks;
}

Outcome<FollowReading> readDue(book::Book& from, book::ColonyId colony, const std::string& name, Date asOf,
                               const BookLearned* learned) {
    auto reading = caught({}, whatIsDue(name), [&] { return readToFollow(from, colony, asOf, learned); });
    if (!reading) return namedAfter(name, reading.problems());
    return reading;
}

DueLooks dueLooks(const std::string& mark, const std::vector<ReadDue>& colonies, const ReferenceData& reference,
                  winter::Sampling sampling, int threads, const text::WordStyle& style, std::stop_token stop) {
    DueLooks result;
    for (const auto& due : colonies) {
        const FollowReading& reading = due.reading;
        const auto& advised = due.advised;
        Due one(mark, reading, advised ? advised->style : style, result.due);
        if (one.gone()) continue;
        const std::string& name = reading.records.colony.name;
        if (!followLeads(reading)) {
            if (advised) one.combs(*advised);
            const bool feedNothing = advised && advised->feedNothing;
            one.visits(openVisits(reading, reference), feedNothing);
            if (advised) one.tasks(advised->tasks);
            continue;
        }
        const auto done = caught({}, whatIsDue(name), [&]() -> Outcome<bool> {
            const auto colony = followedColony(reading, reference, sampling, threads, EndOfWinter::Counts, stop);
            if (!colony) return colony.problems();
            const auto told = styleFor(style, colony->autumn);
            one.speak(told);
            const auto following =
                colony->question ? tracking::follow(*colony->question, reference.constants, sampling, threads, stop)
                                 : std::nullopt;
            if (following && following->state == tracking::FollowState::Dead) return true;
            one.visits(one.ahead(), false);
            if (following) one.tasks(followedTasks(*following));
            return !following || !following->fitsNoWinter;
        });
        if (!done) {
            one.visits(one.ahead(), false);
            for (auto& problem : namedAfter(name, done.problems())) result.problems.push_back(std::move(problem));
        } else if (!*done) result.notes.push_back(text::nothingDue(name).toStdString());
    }
    std::stable_sort(result.due.begin(), result.due.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return result;
}

} // namespace winterlarder::answer
