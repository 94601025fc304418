// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_reading.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

void note(Problems& into, const Problems& from) {
    into.insert(into.end(), from.begin(), from.end());
}

void readYards(YardReading& reading, book::Book& book, book::YardId wanted) {
    auto yards = book.all<book::Yard>();
    if (!yards.ok()) return note(reading.problems, yards.problems());
    reading.yards = std::move(yards).value();
    const bool there = std::any_of(reading.yards.begin(), reading.yards.end(), [wanted](const auto& yard) { return yard.id == wanted; });
    reading.shown = there || reading.yards.empty() ? wanted : reading.yards.front().id;
    if (!there && reading.yards.empty()) reading.shown = {};
}

std::vector<book::ColonyId> standingThere(YardReading& reading, book::Book& book) {
    std::vector<book::ColonyId> ids;
    const auto living = book::livingOn(book, reading.day);
    if (!living.ok()) note(reading.problems, living.problems());
    else
        for (const auto& colony : *living) {
            const auto moves = book.of<book::Move>(colony.id);
            if (!moves.ok()) note(reading.problems, moves.problems());
            else if (book::yardOn(colony, *moves, reading.day) == reading.shown) ids.push_back(colony.id);
        }
    return ids;
}

// All at once for a whole yard, else of each colony.
void readVisits(YardReading& reading, book::Book& book, const std::vector<book::ColonyId>& ids) {
    const auto take = [&reading](const Outcome<std::vector<book::PlannedVisit>>& visits) {
        if (!visits.ok()) return note(reading.problems, visits.problems());
        for (const auto& visit : *visits)
            if (visit.state == book::VisitState::Planned) reading.visits[visit.colony].push_back(visit);
    };
    if (reading.whole) take(book.all<book::PlannedVisit>());
    else
        for (const auto id : ids) take(book.of<book::PlannedVisit>(id));
    for (auto& [id, visits] : reading.visits)
        std::stable_sort(visits.begin(), visits.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
}

} // namespace

YardReading readYard(book::Book& book, const YardRequest& request) {
    YardReading reading{.whole = !request.only, .day = request.day, .yards = {}, .shown = request.yard, .colonies = {}, .visits = {}, .open = {}, .problems = {}};
    std::vector<book::ColonyId> ids;
    if (reading.whole) {
        readYards(reading, book, request.yard);
        ids = standingThere(reading, book);
    } else {
        ids.assign(request.only->begin(), request.only->end());
    }
    for (const auto id : ids) reading.colonies.emplace_back(id, answer::learnedCase(book, id, request.day, request.past ? &request.past->learned : nullptr));
    readVisits(reading, book, ids);
    if (request.open != book::ColonyId{} && (reading.whole || request.only->contains(request.open))) {
        auto records = recordsOf(book, request.open);
        if (records.ok()) reading.open = std::move(records).value();
        else note(reading.problems, records.problems());
    }
    return reading;
}

} // namespace winterlarder::desk
