// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/due_looks.h"

#include "answer/style_of_place.h"
#include "support/caught.h"
#include "text/follow_words.h"
#include "text/words.h"
#include "winter/question.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace winterlarder::answer {

namespace {

report::TaskKind kindOf(book::VisitKind what) {
    switch (what) {
    case book::VisitKind::Syrup: return report::TaskKind::Syrup;
    case book::VisitKind::Fondant: return report::TaskKind::Fondant;
    case book::VisitKind::Check: break;
    }
    return report::TaskKind::Check;
}

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
    void visits(const std::string& headline, bool feedNothing) {
        for (const auto& visit : reading_.records.visits) {
            if (visit.state != book::VisitState::Planned || visit.date < reading_.asOf) continue;
            planned_.insert(kindOf(visit.what));
            if (feedNothing) continue;
            const std::string details =
                visit.note.empty() || headline.empty() ? visit.note + headline : visit.note + "\n" + headline;
            add(fmt::format("visit-{}", visit.id.number), visit.date, text::dueVisit(visit, style_), details);
        }
    }
    // Combs hang in before anything is fed.
    void combs(const AdvisedDue& advised) {
        for (const auto& task : advised.tasks)
            if (task.kind == report::TaskKind::MoveCombs) addTask(task, advised.headline);
    }
    // What is planned of a kind stands in place of what is advised of it.
    void tasks(const std::vector<report::Task>& tasks, const std::string& headline) {
        for (const auto& task : tasks)
            if (task.kind != report::TaskKind::MoveCombs && !planned_.contains(task.kind)) addTask(task, headline);
    }

private:
    void addTask(const report::Task& task, const std::string& headline) {
        if (task.date && *task.date >= reading_.asOf)
            add(fmt::format("{}-{}-{}", report::idOf(task.kind), ++counted_[task.kind],
                            reading_.records.colony.id.number),
                *task.date, text::dueTask(task, style_), headline);
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
    return fmt::format("{:016x}",
                       winter::colonyStream((info.madeAt ? info.madeAt->iso() : std::string()) + " " + info.madeBy));
}

AdvisedDue advisedDue(const advice::ColonyQuestion& question, const advice::Advice& advice,
                      const text::WordStyle& style) {
    const auto told = styleFor(style, question);
    AdvisedDue due{report::tasksOf(question, advice), text::headline(advice, told).toStdString(), told};
    using By = advice::DecidedBy;
    due.feedNothing = !advice.feed && (advice.decidedBy == By::Full || advice.decidedBy == By::Disease ||
                                       advice.verdict == advice::Verdict::Harvest);
    return due;
}

std::vector<report::Task> followedTasks(const tracking::Following& winter) {
    std::vector<report::Task> tasks;
    if (winter.state == tracking::FollowState::Dead) return tasks;
    if (winter.feed)
        for (const auto& lot : winter.feed->lots) {
            report::Task& task = tasks.emplace_back();
            task.kind = report::TaskKind::Fondant;
            task.date = lot.date;
            task.fondant = lot.fondant;
        }
    if (winter.feed && winter.feed->plan)
        for (const auto& visit : winter.feed->plan->visits) {
            report::Task& task = tasks.emplace_back();
            task.kind = report::TaskKind::Syrup;
            task.date = visit.date;
            task.sugar = visit.sugar;
            task.syrup = visit.syrup;
        }
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
            one.visits(advised ? advised->headline : std::string(), advised && advised->feedNothing);
            if (advised) one.tasks(advised->tasks, advised->headline);
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
            const std::string headline =
                following ? text::followHeadline(*colony->question, *following, told).toStdString() : std::string();
            one.visits(headline, false);
            if (following) one.tasks(followedTasks(*following), headline);
            return !following || !following->fitsNoWinter;
        });
        if (!done) {
            one.visits({}, false);
            for (auto& problem : namedAfter(name, done.problems())) result.problems.push_back(std::move(problem));
        } else if (!*done) result.notes.push_back(text::nothingDue(name).toStdString());
    }
    std::stable_sort(result.due.begin(), result.due.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return result;
}

} // namespace winterlarder::answer
