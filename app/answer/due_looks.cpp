// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/due_looks.h"

#include "support/caught.h"
#include "text/follow_words.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

class Due {
public:
    Due(const FollowReading& asked, const text::WordStyle& style) : reading(asked), colony(asked.records.colony), style_(style) {}

    void visits(std::vector<exchange::DueOn>& due) const {
        for (const auto& visit : reading.records.visits)
            if (visit.state == book::VisitState::Planned && visit.date >= reading.asOf)
                due.push_back({fmt::format("visit-{}@winterlarder", visit.id.number), visit.date, titled(text::dueVisit(visit, style_)), visit.note});
    }
    void looks(std::vector<exchange::DueOn>& due, const tracking::FollowQuestion& q, const tracking::Following& f) const {
        const std::string headline = text::followHeadline(q, f, style_).toStdString();
        if (f.nextWeighing) due.push_back({id("weighing"), f.nextWeighing->date, titled(text::dueWeighing()), headline});
        if (f.feed) due.push_back({id("feed"), q.year.date(f.feed->begins()), titled(text::dueFeeding()), headline});
    }

private:
    std::string titled(const QString& what) const { return fmt::format("{}: {}", colony.name, what.toStdString()); }
    std::string id(const char* what) const { return fmt::format("{}-{}@winterlarder", what, colony.id.number); }

    const FollowReading& reading;
    const book::Colony& colony;
    const text::WordStyle& style_;
};

std::string whatIsDue(const std::string& colony) { return fmt::format("what is due for {}", colony); }

Problems namedAfter(const std::string& colony, Problems problems) {
    for (auto& problem : problems)
        if (problem.place.file.empty()) problem.place.file = colony;
    return problems;
}

} // namespace

Outcome<FollowReading> readDue(book::Book& from, book::ColonyId colony, const std::string& name, Date asOf, const BookLearned* learned) {
    auto reading = caught({}, whatIsDue(name), [&] { return readToFollow(from, colony, asOf, learned); });
    if (!reading) return namedAfter(name, reading.problems());
    return reading;
}

DueLooks dueLooks(const std::vector<FollowReading>& readings, const ReferenceData& reference, winter::Sampling sampling, int threads,
                  const text::WordStyle& style, std::stop_token stop) {
    DueLooks result;
    for (const auto& reading : readings) {
        const Due one(reading, style);
        const std::string& name = reading.records.colony.name;
        one.visits(result.due);
        const auto done = caught({}, whatIsDue(name), [&]() -> Outcome<bool> {
            const auto colony = followedColony(reading, reference, sampling, threads, EndOfWinter::Counts, stop);
            if (!colony) return colony.problems();
            if (!colony->question) return true;
            const auto following = tracking::follow(*colony->question, reference.constants, sampling, threads, stop);
            if (following) one.looks(result.due, *colony->question, *following);
            return !following || !following->fitsNoWinter;
        });
        if (!done)
            for (auto& problem : namedAfter(name, done.problems())) result.problems.push_back(std::move(problem));
        else if (!*done) result.notes.push_back(text::nothingDue(name).toStdString());
    }
    std::stable_sort(result.due.begin(), result.due.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return result;
}

} // namespace winterlarder::answer
