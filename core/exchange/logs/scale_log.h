// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/logs/scale_log_time.h"
#include "quantity/text.h"
#include "support/outcome.h"

#include <cstdint>
#include <istream>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace winterlarder::exchange {

//! What somebody says about a log; what is not said is found in the file. Columns are named as in the header (case does not matter)
//! or by their number, counted from 1.
struct ScaleLogOptions {
    std::optional<char> delimiter, decimal;
    std::string date, time, weight; //!< date: only where it stands apart from the time of day
    std::optional<MassUnit> unit;   //!< kilogram, gram or pound
    std::optional<DateOrder> dateOrder;
};

//! How a thing was settled.
enum class ToldBy {
    Option,  //!< somebody said so
    Header,  //!< the header names it
    Content, //!< the values have its form, and no others
    Size,    //!< the values are of a likely size
};

struct LogColumn {
    int number = 0;   //!< from 1
    std::string name; //!< in the header, empty where there is none
    ToldBy told = ToldBy::Content;
};

enum class TimeForm { WallClock, WithOffset, UnixTime };

//! What was understood of a log, to be shown before it is used.
struct ScaleLogColumns {
    char delimiter = ',', decimal = '.';
    int headerLine = 0; //!< 0 = none
    std::optional<LogColumn> date;
    LogColumn time, weight;
    TimeForm timeForm = TimeForm::WallClock;
    bool daysOnly = false;              //!< dates without a time of day, taken as noon
    std::optional<DateOrder> dateOrder; //!< nothing where times are Unix times
    ToldBy dateOrderTold = ToldBy::Content;
    MassUnit unit = MassUnit::Kilogram;
    ToldBy unitTold = ToldBy::Size;
};

//! One reading as the file has it. `seconds`: since 1970-01-01 00:00 UTC where an offset is known, else of the clock the log was kept by.
struct ScaleLogRow {
    static constexpr std::int32_t noOffset = std::numeric_limits<std::int32_t>::min();
    std::int64_t seconds = 0;
    double kg = 0;
    std::int32_t offset = noOffset; //!< seconds ahead of UTC, as written
    std::int32_t line = 0;
};

enum class RowFault {
    NoTime,        //!< the cell of the time is empty, or not there
    BadTime,       //!< it is no time
    NoSuchDay,     //!< 30 February, year 20180
    OtherTimeForm, //!< with an offset among times without, or the other way round
    NoWeight,      //!< empty, or a word for missing: NA, NaN, null
    BadWeight,     //!< no number
    WeightOutside, //!< below -50 kg or above 1000 kg
    Quotes,        //!< quotation marks do not balance
    TooLong,       //!< the line is longer than limits::logLine
};
struct ScaleLogFault {
    std::int32_t line = 0;
    RowFault why = RowFault::NoTime;
    std::string cell; //!< what stood there, shortened
    bool operator==(const ScaleLogFault&) const = default;
};

struct ScaleLog {
    ScaleLogColumns columns;
    std::vector<ScaleLogRow> rows;     //!< in the order of the file
    std::vector<ScaleLogFault> faults; //!< rows left out, by line
    std::int64_t lines = 0;            //!< with anything in them, header included
};

inline constexpr double lightestKg = -50,
                        heaviestKg = 1000; //!< a tared scale may stand below nothing; no hive is heavier

//! Reads a table of times and weights in whatever form a logger or spreadsheet wrote it, line by line; memory holds the readings only.
//! - Delimiter comma, semicolon, tab or bar: the one under which a time and a weight are found. Lines above the header, blank lines and
//!   lines that begin with # are passed over.
//! - Time: one column, or two of date and time of day, or a date alone. Weight: the column whose header says so, else the only one of
//!   numbers that is no counter and does not stand still.
//! - Decimal comma or point: as the weights show. Unit: from the header, else from a cell ("52.1 kg"), else from the size of the
//!   weights (median under 200: kg; from 2000: g; between: asked).
//! - Date order: a first part above 12 somewhere in the file is a day, a second part above 12 shows the month first; four digits
//!   are a year; points between the parts put the day first. Two-digit years: the end of the date that varies less.
//! Whatever cannot be told is a problem that names the option to settle it; nothing is guessed. A file without a single reading
//! is a problem; rows that cannot be read are left out and listed. Tested: tests/exchange/scale_log_test.cpp.
Outcome<ScaleLog> readScaleLog(std::istream& stream, const std::string& file, const ScaleLogOptions& options = {});

//! "dmy", "mdy", "ymd".
std::string_view word(DateOrder order);
std::optional<DateOrder> dateOrderOf(std::string_view word);

} // namespace winterlarder::exchange
