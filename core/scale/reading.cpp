// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/reading.h"

namespace winterlarder::scale {

namespace {

Date firstDay() { return *Date::of(1970, 1, 1); }

} // namespace

Date dateOfDay(std::int32_t day) { return firstDay().plusDays(day); }

std::int32_t dayOf(Date date) { return date.daysSince(firstDay()); }

} // namespace winterlarder::scale
