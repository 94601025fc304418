// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"

#include <QSharedPointer>

class QCPAxisTickerText;

namespace winterlarder::desk {

//! A tick at the first of each month between two season days, named by the month; January carries its year, on small plots below it.
QSharedPointer<QCPAxisTickerText> monthTicks(const Winter& winter, int first, int last, bool yearBelow = false);

//! The same where few days are seen: every week's day, or every other day, by its date, as close as no more than `most` allow.
//! Tested: tests/app/day_window_test.cpp.
QSharedPointer<QCPAxisTickerText> dayTicks(const Winter& winter, int first, int last, int most);

} // namespace winterlarder::desk
