// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/surroundings.h"

#include "book/case_of.h"

namespace winterlarder::answer {

Surroundings surroundingsOf(const book::ColonyHistory& history, const book::SiteRecord& site) {
    return {history.colony,    site,          history.housings, history.looks,
            history.weighings, history.feeds, history.harvests, history.manipulations};
}

Outcome<Surroundings> surroundingsOf(book::Book& from, book::ColonyId id) {
    if (id == book::ColonyId{}) return Surroundings{};
    const auto history = book::historyOf(from, id);
    if (!history) return history.problems();
    const auto yard = from.find(book::yardOn(history->colony, history->moves, *Date::of(lastKnownYear, 12, 31)));
    if (!yard) return yard.problems();
    return surroundingsOf(*history, *yard ? (*yard)->site : book::SiteRecord{});
}

} // namespace winterlarder::answer
