// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/decided_on.h"

#include "climate/season.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

bool sawAll(const book::Look& look) { return look.bees.known() && !std::holds_alternative<std::monostate>(look.combs); }

// What was decided before another colony came to it was decided for fewer bees and less food.
std::optional<Date> lastUnion(const book::ColonyHistory& records, const Winter& winter) {
    std::optional<Date> last;
    for (const auto& joined : records.united)
        if (const auto day = book::unitedOn(joined, records.colony.id); day && winter.contains(*day))
            last = std::max(last, day);
    return last;
}

} // namespace

Date decidedOn(const book::ColonyHistory& records, const Winter& winter, Date asOf) {
    std::optional<Date> acted, autumn, later;
    for (const auto& advice : records.advices)
        if (winter.contains(advice.date)) acted = advice.date;
    for (const auto& look : records.looks) {
        if (!winter.contains(look.date) || !sawAll(look)) continue;
        if (winter.seasonDay(look.date) <= climate::solstice) autumn = look.date;
        else if (!later) later = look.date;
    }
    const Date decided = acted ? *acted : autumn ? *autumn : later.value_or(asOf);
    return std::max(decided, lastUnion(records, winter).value_or(decided));
}

} // namespace winterlarder::answer
