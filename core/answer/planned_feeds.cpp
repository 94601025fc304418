// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/afterwards.h"

#include "answer/evening_feeds.h"
#include "answer/events_of_case.h"
#include "answer/question_of_case.h"
#include "book/case_of.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

std::optional<book::FeedRecord> feedOf(const book::PlannedVisit& visit) {
    if (visit.fondant)
        return book::FeedRecord{.date = visit.date, .kind = book::FeedKind::Fondant, .fondant = visit.fondant};
    if (visit.sugar) return book::FeedRecord{.date = visit.date, .kind = book::FeedKind::Syrup, .sugar = visit.sugar};
    return std::nullopt;
}

bool ofTheAdvice(const book::PlannedVisit& visit, const WinterSpan& span) {
    const auto* advice = actedOn(span.records, span.decided);
    return visit.advice && advice && advice->id == *visit.advice;
}

bool withinSpan(const book::PlannedVisit& visit, const WinterSpan& span) {
    return span.winter.contains(visit.date) && visit.date >= span.decided;
}

// Visits of the plan acted on, and those of the keeper's own.
bool ofThePlan(const book::PlannedVisit& visit, const WinterSpan& span) {
    return withinSpan(visit, span) && (!visit.advice || ofTheAdvice(visit, span));
}

bool isPast(const book::PlannedVisit& visit, const WinterSpan& span) {
    return ofThePlan(visit, span) && visit.date < span.asOf && visit.state != book::VisitState::Skipped;
}

// What was given beyond the visits ticked off counts for the earliest of the others.
void fillUnticked(tracking::FollowQuestion& question, const WinterSpan& span) {
    Mass planned{0}, given{0};
    for (const auto& step : question.steps)
        if (step.kind == tracking::KnownStep::Kind::Feed) given += step.change;
    std::vector<tracking::UntickedVisit> open;
    for (const auto& visit : span.records.visits) {
        const auto feed = feedOf(visit);
        if (!feed || !isPast(visit, span)) continue;
        if (visit.state != book::VisitState::Planned) given -= storesOfFeed(*feed);
        else open.push_back({span.winter.seasonDay(visit.date), visit.date, storesOfFeed(*feed)});
    }
    given = std::max(given, kilograms(0));
    std::stable_sort(open.begin(), open.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    for (auto& visit : open) {
        planned += visit.stores;
        visit.stores = std::min(visit.stores, planned - given);
        if (visit.stores >= kilograms(question.decisions.deadLeast)) question.unticked.push_back(visit);
    }
}

// Nothing was planned in the book: what was fed and taken before the solstice is what the keeper had in mind.
void planWhatWasDone(tracking::FollowQuestion& question) {
    for (const auto& step : question.steps)
        if (step.kind != tracking::KnownStep::Kind::Equipment && step.day <= climate::solstice)
            question.planned.push_back({step.day, step.change});
}

} // namespace

namespace {

// Feeds planned up to the day that what is written down as fed since the decision does not make up for.
std::vector<book::PlannedVisit> unfed(const WinterSpan& span) {
    Mass planned{0}, given{0};
    for (const auto& entry : span.records.feeds)
        if (entry.feed.date >= span.decided && entry.feed.date <= span.asOf)
            given += storesOfFeed(book::oneAmount(entry.feed));
    std::vector<book::PlannedVisit> open;
    for (const auto& visit : span.records.visits) {
        const auto feed = feedOf(visit);
        if (!feed || visit.date > span.asOf || !ofThePlan(visit, span) || visit.state == book::VisitState::Skipped)
            continue;
        planned += storesOfFeed(*feed);
        const bool missed = planned - given >= kilograms(span.reference.decisions.deadLeast);
        if (missed && visit.state == book::VisitState::Planned) open.push_back(visit);
    }
    return open;
}

// After its last day a plan is no plan any more: what it left undone is asked about, and the answer of the day says what is fed.
bool planIsOver(const WinterSpan& span) {
    return std::none_of(span.records.visits.begin(), span.records.visits.end(), [&](const book::PlannedVisit& visit) {
        return feedOf(visit) && visit.date >= span.asOf && visit.state == book::VisitState::Planned &&
               ofThePlan(visit, span);
    });
}

} // namespace

std::vector<book::PlannedVisit> openVisits(const WinterSpan& span) {
    std::vector<book::PlannedVisit> open = unfed(span);
    if (planIsOver(span)) open.clear();
    for (const auto& visit : span.records.visits) {
        const bool feedOfToday = feedOf(visit) && visit.date == span.asOf && ofThePlan(visit, span);
        if (visit.date >= span.asOf && !feedOfToday && visit.state == book::VisitState::Planned) open.push_back(visit);
    }
    std::stable_sort(open.begin(), open.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return open;
}

std::optional<Remark> feedNotRecorded(const WinterSpan& span) {
    Mass stores{0};
    std::optional<Date> first;
    for (const auto& visit : unfed(span)) {
        if (visit.date >= span.asOf) continue;
        if (!first) first = visit.date;
        stores += storesOfFeed(*feedOf(visit));
    }
    if (!first) return std::nullopt;
    return Remark{"feed-not-recorded", {{"day", *first}, {"stores", stores}}};
}

Problems fillPlan(tracking::FollowQuestion& question, const WinterSpan& span) {
    book::ColonyCase planned = span.autumn;
    planned.weighings.clear();
    planned.harvests.clear();
    planned.weighedInOtherHive.clear();
    planned.feeds.clear();
    for (const auto& visit : span.records.visits)
        if (const auto feed = feedOf(visit); feed && ofTheAdvice(visit, span) && withinSpan(visit, span))
            planned.feeds.push_back(*feed);
    const auto plain = questionOf(planned, {}, span.reference, 0);
    if (!plain) return plain.problems();
    for (const auto& feed : plain->feeds) question.planned.push_back({feed.day, feed.stores});
    fillUnticked(question, span);
    if (!actedOn(span.records, span.decided)) planWhatWasDone(question);
    const auto& advices = span.records.advices;
    question.asFound = std::none_of(advices.begin(), advices.end(), [&](const book::ActedAdvice& each) {
        return span.winter.contains(each.date) && each.date <= span.asOf;
    });
    return {};
}

} // namespace winterlarder::answer
