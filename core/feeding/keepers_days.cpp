// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/keepers_days.h"

#include "support/require.h"

#include <algorithm>
#include <utility>

namespace winterlarder::feeding {

int isoWeekday(Date date) {
    const int sinceAMonday = date.daysSince(Date::of(2001, 1, 1).value());
    return 1 + ((sinceAMonday % 7) + 7) % 7;
}

KeepersDays::KeepersDays(Winter winter, std::vector<int> weekdays) : winter_(winter), weekdays_(std::move(weekdays)) {
    for (const int weekday : weekdays_) require(weekday >= 1 && weekday <= 7, "{} is no day of the week", weekday);
}

bool KeepersDays::comesOn(SeasonDay day) const {
    if (weekdays_.empty()) return true;
    return std::find(weekdays_.begin(), weekdays_.end(), isoWeekday(winter_.date(day))) != weekdays_.end();
}

std::optional<SeasonDay> KeepersDays::onOrAfter(SeasonDay earliest) const {
    for (SeasonDay day = earliest; day <= lastSeasonDay; day = day + 1)
        if (comesOn(day)) return day;
    return std::nullopt;
}

std::optional<SeasonDay> KeepersDays::lastWithin(SeasonDay first, SeasonDay last) const {
    for (SeasonDay day = last; day >= first; day = day - 1)
        if (comesOn(day)) return day;
    return std::nullopt;
}

} // namespace winterlarder::feeding
