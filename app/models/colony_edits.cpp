// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/colony_edits.h"

#include <algorithm>
#include <cstdlib>

namespace winterlarder::desk {

namespace {

constexpr int daysBesidePlan = 3;

book::VisitKind visitKindOf(book::FeedKind kind) {
    return kind == book::FeedKind::Fondant ? book::VisitKind::Fondant : book::VisitKind::Syrup;
}

// The nearest open visit of its kind; nothing where none is near.
const book::PlannedVisit* visitOf(const book::Feed& feed, const std::vector<book::PlannedVisit>& visits) {
    const auto daysOff = [&](const book::PlannedVisit& visit) {
        return std::abs(visit.date.daysSince(feed.feed.date));
    };
    const book::PlannedVisit* nearest = nullptr;
    for (const auto& visit : visits) {
        const bool fits = visit.colony == feed.colony && visit.state == book::VisitState::Planned &&
                          visit.what == visitKindOf(feed.feed.kind);
        if (fits && daysOff(visit) <= daysBesidePlan && (!nearest || daysOff(visit) < daysOff(*nearest)))
            nearest = &visit;
    }
    return nearest;
}

} // namespace

BeesToldBy beesToldBy(const book::BeesRecord& bees) {
    if (bees.coveredCombs) return BeesToldBy::CoveredCombs;
    if (bees.seams) return BeesToldBy::Seams;
    if (bees.count) return BeesToldBy::Count;
    return BeesToldBy::NotTold;
}

double beesTold(const book::BeesRecord& bees) {
    return bees.coveredCombs.value_or(bees.seams.value_or(bees.count.value_or(0)));
}

book::BeesRecord withBees(book::BeesRecord bees, BeesToldBy kind, double value) {
    if (beesToldBy(bees) != kind) bees.logSd.reset();
    bees.coveredCombs.reset();
    bees.seams.reset();
    bees.count.reset();
    if (kind == BeesToldBy::CoveredCombs) bees.coveredCombs = value;
    if (kind == BeesToldBy::Seams) bees.seams = value;
    if (kind == BeesToldBy::Count) bees.count = value;
    return bees;
}

WeighedBy weighedBy(const std::optional<book::WeighingRecord>& weighing) {
    if (!weighing) return WeighedBy::NotWeighed;
    if (std::holds_alternative<book::ScaleReading>(weighing->reading)) return WeighedBy::Scale;
    if (std::holds_alternative<book::HeftWord>(weighing->reading)) return WeighedBy::Heft;
    return std::get<book::LiftReading>(weighing->reading).sides.size() == 2 ? WeighedBy::BothSides : WeighedBy::OneSide;
}

book::Edit planInstead(const book::AcceptAdvice& accepted, const book::ColonyHistory& records, Date asOf) {
    book::EditGroup step{"accept advice", {}};
    for (const auto& visit : records.visits)
        if (visit.state == book::VisitState::Planned && visit.date >= asOf)
            step.edits.emplace_back(book::RemovePlannedVisit{visit.id});
    step.edits.emplace_back(accepted);
    return step;
}

bool isPlan(const book::AcceptAdvice& accepted, const book::ColonyHistory& records) {
    return std::any_of(records.advices.begin(), records.advices.end(), [&](const book::ActedAdvice& kept) {
        auto same = accepted.advice;
        same.id = kept.id;
        same.note = kept.note;
        same.by = kept.by;
        if (!(same == kept)) return false;
        const auto visits = std::count_if(records.visits.begin(), records.visits.end(),
                                          [&](const book::PlannedVisit& visit) { return visit.advice == kept.id; });
        return visits == static_cast<std::ptrdiff_t>(accepted.visits.size());
    });
}

book::Edit feedGiven(const book::Feed& feed, const std::vector<book::PlannedVisit>& visits) {
    if (feed.id != book::FeedId{}) return book::SingleEdit(book::ChangeFeed{feed});
    const auto* visit = visitOf(feed, visits);
    if (!visit) return book::SingleEdit(book::AddFeed{feed});
    auto made = *visit;
    made.state = book::VisitState::Done;
    made.doneOn = feed.feed.date;
    return book::EditGroup{book::verbOf(book::SingleEdit(book::AddFeed{feed})),
                           {book::AddFeed{feed}, book::ChangePlannedVisit{made}}};
}

book::MarkVisitDone madeOnItsDay(book::PlannedVisitId visit, Date planned, std::optional<Date> asOf) {
    return {visit, std::min(planned, asOf.value_or(planned)), std::nullopt};
}

} // namespace winterlarder::desk
