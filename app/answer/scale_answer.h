// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/json/json_output.h"
#include "exchange/logs/scale_log.h"
#include "scale/proposals.h"
#include "scale/summary.h"
#include "scale/time_zone.h"

#include <optional>
#include <string>
#include <vector>

//! Where a log as read and what it tells meet. Tested: tests/answer/scale_answer_test.cpp, tests/cli/scale_test.cpp.
namespace winterlarder::answer {

//! Clocks of the log and of the place, by name: "America/Halifax", "UTC", "+02:00". Nothing said: times are taken as they are written.
struct ScaleClocks {
    std::optional<std::string> place; //!< days are days there
    std::optional<std::string> log;   //!< times without an offset are of this clock; that of the place where not said
};

//! Everything a log tells, with what was understood of its file.
struct ScaleAnswer {
    exchange::ScaleLogColumns columns;
    std::vector<exchange::ScaleLogFault> faults; //!< of rows that could not be read
    std::int64_t lines = 0;
    scale::Summary summary;
    scale::Proposals proposals;
    bool utcDays = false; //!< times are UTC and nobody said where the place is: days are days of UTC
};

//! The clocks of a place between two moments. Problem: no such place.
Outcome<scale::TimeZone> timeZoneNamed(const std::string& name, std::int64_t from, std::int64_t to);

Outcome<ScaleAnswer> answerOf(exchange::ScaleLog log, const ScaleClocks& clocks);

//! In the keys of the manual; weights to the gram.
exchange::Json json(const ScaleAnswer& answer);

//! "2018-10-28T02:55:00" of a local time.
std::string localTime(std::int64_t local);

//! The words of documents, never translated.
std::string_view word(scale::StepKind kind);
std::string_view word(scale::StepRule rule);
std::string_view word(scale::Basis basis);
std::string_view word(scale::DayKind kind);
std::string_view word(scale::MonthEnd ends);
std::string_view word(scale::KeepWhy why);
std::string_view word(scale::ProposedRecord::Sort sort);
std::string_view word(exchange::ToldBy told);

} // namespace winterlarder::answer
