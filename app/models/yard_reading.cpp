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

} // namespace

YardReading readYard(book::Book& book, const YardRequest& request) {
    YardReading reading{.whole = !request.only, .day = request.day, .yards = {}, .shown = request.yard, .colonies = {}, .open = {}, .problems = {}};
    std::vector<book::ColonyId> ids;
    if (reading.whole) {
        readYards(reading, book, request.yard);
        ids = standingThere(reading, book);
    } else {
        ids.assign(request.only->begin(), request.only->end());
    }
    for (const auto id : ids) reading.colonies.emplace_back(id, answer::learnedCase(book, id, request.day, request.past ? &request.past->learned : nullptr));
    if (request.open != book::ColonyId{} && (reading.whole || request.only->contains(request.open))) {
        auto records = recordsOf(book, request.open);
        if (records.ok()) reading.open = std::move(records).value();
        else note(reading.problems, records.problems());
    }
    return reading;
}

} // namespace winterlarder::desk
