// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/decided_on.h"

#include "climate/season.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

bool sawCombs(const book::Look& look) { return !std::holds_alternative<std::monostate>(look.combs); }

// A weight tells the stores of a look that saw bees alone: the first from its day on, else the last of the fortnights before it.
std::optional<Date> weighedAbout(const book::ColonyHistory& records, Date look) {
    std::optional<Date> before, after;
    for (const auto& entry : records.weighings) {
        const Date date = entry.weighing.date;
        if (std::holds_alternative<HeftWord>(entry.weighing.reading)) continue;
        const bool near = date < look ? look.daysSince(date) <= book::oldestObservationDays / 2
                                      : date.daysSince(look) <= book::oldestObservationDays / 2;
        if (!near) continue;
        if (date < look) before = before ? std::max(*before, date) : date;
        else after = after ? std::min(*after, date) : date;
    }
    return after ? after : before;
}

// The day on which bees and stores of a look are known.
std::optional<Date> knownAll(const book::ColonyHistory& records, const book::Look& look) {
    if (!look.bees.known()) return std::nullopt;
    if (sawCombs(look)) return look.date;
    const auto weighed = weighedAbout(records, look.date);
    return weighed ? std::optional(std::max(*weighed, look.date)) : std::nullopt;
}

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
        const auto known = winter.contains(look.date) ? knownAll(records, look) : std::nullopt;
        if (!known || !winter.contains(*known)) continue;
        if (winter.seasonDay(*known) <= climate::solstice) autumn = *known;
        else if (!later) later = *known;
    }
    const Date decided = acted ? *acted : autumn ? *autumn : later.value_or(asOf);
    return std::max(decided, lastUnion(records, winter).value_or(decided));
}

std::optional<Date> weighedOnceUnited(const book::ColonyHistory& records, const book::ColonyCase& autumn) {
    const auto unknown = [](const book::UnitedRecord& each) { return !each.stores; };
    if (std::none_of(autumn.united.begin(), autumn.united.end(), unknown)) return std::nullopt;
    std::optional<Date> first;
    for (const auto& entry : records.weighings) {
        const Date date = entry.weighing.date;
        const bool soon = date > autumn.asOf && date.daysSince(autumn.asOf) <= book::oldestObservationDays;
        if (soon && !std::holds_alternative<HeftWord>(entry.weighing.reading))
            first = first ? std::min(*first, date) : date;
    }
    return first;
}

} // namespace winterlarder::answer
