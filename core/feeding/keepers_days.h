// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"

#include <optional>
#include <vector>

namespace winterlarder::feeding {

//! Day of the week of a date, ISO 8601: 1 Monday .. 7 Sunday.
int isoWeekday(Date date);

//! The days of one winter on which a keeper comes: any, or some days of the week only. Never later than the end of the
//! season year. Tested: tests/feeding/keepers_days_test.cpp.
class KeepersDays {
public:
    //! weekdays ISO 1..7, empty = any. ContractViolation outside.
    KeepersDays(Winter winter, std::vector<int> weekdays);

    bool comesOn(SeasonDay day) const;
    //! The first of the keeper's days that is not before `earliest`; nothing where the season year ends before it.
    std::optional<SeasonDay> onOrAfter(SeasonDay earliest) const;
    //! The last of the keeper's days in first..last; nothing where there is none.
    std::optional<SeasonDay> lastWithin(SeasonDay first, SeasonDay last) const;

private:
    Winter winter_;
    std::vector<int> weekdays_;
};

} // namespace winterlarder::feeding
