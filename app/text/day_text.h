// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"

#include <QLocale>
#include <QString>

#include <optional>

//! Days as people type them. Tested: tests/app/day_text_test.cpp.
namespace winterlarder::text {

//! Which days a field takes, and what words such as "today" mean in it.
struct DayLimits {
    std::optional<Date> first, last; //!< the days permitted; nothing: no limit
    Date today;                      //!< what "today" means
    Date recent; //!< a day without a year is the last such day up to here, or up to `last` where that is earlier
    bool everyYear =
        false; //!< a day of every year: a year is neither asked for nor heard, the answer is of the year of `recent`
};

//! A day that may be taken, or what is wrong with what was typed and what would be right.
struct DayRead {
    std::optional<Date> day;
    QString fault;
};

//! Reads "2026-09-05", "5 September 2026", "Sep 5, 2026", "5 Sep", "5.9.2026" or "9/5/2026" (in the order of the locale; the other where
//! only that is a day), the locale's own forms, "today" and "yesterday". Months are known in English and in the locale's language, from
//! three letters on; names of weekdays are passed over. A day without a year that would lie before `first` is the next one after it.
DayRead readDay(const QString& typed, const DayLimits& limits, const QLocale& locale);

} // namespace winterlarder::text
