// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/timestamp.h"
#include "calendar/date.h"

#include <string>
#include <vector>

namespace winterlarder::exchange {

//! One thing that is due on a day.
struct DueOn {
    std::string id; //!< the same for the same thing whenever it is written, so that a calendar replaces it
    Date day;
    std::string summary; //!< one line
    std::string details; //!< may be empty
};

//! An iCalendar file (RFC 5545): one all-day event for each, with a reminder at 18:00 the day before. Lines are folded at 75 bytes,
//! text is escaped. `written` becomes DTSTAMP. Tested: tests/exchange/calendar_file_test.cpp (read back by another parser).
std::string calendarFile(const std::string& name, const std::vector<DueOn>& due, book::Timestamp written);

} // namespace winterlarder::exchange
