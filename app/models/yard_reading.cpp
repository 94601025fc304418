// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_reading.h"

#include "book/case_of.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

void note(Problems& into, const Problems& from) { into.insert(into.end(), from.begin(), from.end()); }

// The one asked for, else the first; 0 where the book has none.
book::YardId shownAmong(const std::vector<book::Yard>& yards, book::YardId wanted) {
    const bool there =
        std::any_of(yards.begin(), yards.end(), [wanted](const auto& yard) { return yard.id == wanted; });
    return there ? wanted : yards.empty() ? book::YardId{} : yards.front().id;
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

std::vector<book::PlannedVisit> stillPlanned(std::vector<book::PlannedVisit> visits) {
    std::erase_if(visits, [](const book::PlannedVisit& visit) { return visit.state != book::VisitState::Planned; });
    return visits;
}

void readColony(YardReading& reading, book::Book& book, book::ColonyId id, const YardRequest& request) {
    auto history = book::historyOf(book, id);
    if (!history.ok()) return reading.colonies.emplace_back(id, history.problems()), void();
    const auto* learned = request.past ? &request.past->learned : nullptr;
    reading.colonies.emplace_back(id,
                                  answer::learnedCase(*history, reading.yards, book.reference(), request.day, learned));
    if (auto visits = stillPlanned(history->visits); !visits.empty()) reading.visits[id] = std::move(visits);
    if (id == request.open) reading.open = std::move(history).value();
}

// One that no longer stands in the yard on the day is still looked at.
void readOpen(YardReading& reading, book::Book& book, book::ColonyId id) {
    auto history = book::findHistory(book, id);
    if (history.ok()) reading.open = std::move(history).value();
    else note(reading.problems, history.problems());
}

Outcome<YardReading> readNow(book::Book& book, const YardRequest& request) {
    auto yards = book.all<book::Yard>();
    if (!yards.ok()) return yards.problems();
    YardReading reading{.whole = !request.only,
                        .day = request.day,
                        .yards = std::move(yards).value(),
                        .shown = {},
                        .colonies = {},
                        .visits = {},
                        .open = {},
                        .problems = {}};
    reading.shown = shownAmong(reading.yards, request.yard);
    const auto ids = reading.whole ? standingThere(reading, book)
                                   : std::vector<book::ColonyId>(request.only->begin(), request.only->end());
    for (const auto id : ids) readColony(reading, book, id, request);
    if (reading.whole && !reading.open && request.open != book::ColonyId{}) readOpen(reading, book, request.open);
    return reading;
}

} // namespace

Outcome<YardReading> readYard(book::Book& book, const YardRequest& request) {
    return book::readTogether(book, [&] { return readNow(book, request); });
}

} // namespace winterlarder::desk
