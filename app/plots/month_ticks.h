// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"

#include <QSharedPointer>

class QCPAxisTickerText;

namespace winterlarder::desk {

//! A tick at the first of each month between two season days, named by the month; January carries its year, on small plots below it.
QSharedPointer<QCPAxisTickerText> monthTicks(const Winter& winter, int first, int last, bool yearBelow = false);

} // namespace winterlarder::desk
