// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/input_limits.h"

#include <cstddef>
#include <istream>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

//! Lines and cells of a log, one line at a time whatever its length.
namespace winterlarder::exchange {

//! One line without its end; numbers count from 1.
struct LogLine {
    int number = 0;
    std::string_view text; //!< good until the next line is asked for; empty where too long
    bool tooLong = false;
};

//! Lines of a stream, ended by LF, CR LF, or CR where the first part of the file has no LF. A byte-order mark is taken off.
class LogLines {
public:
    explicit LogLines(std::istream& stream) : stream_(stream) {}
    //! False at the end, and once one line is longer than limits::passedOver.
    bool next(LogLine& line);
    //! The file has a byte 0: no text, or text of two bytes a letter.
    bool sawZero() const { return sawZero_; }

private:
    bool fill();
    void keep(std::string_view part);
    bool finish(LogLine& line);
    std::istream& stream_;
    std::string buffer_, line_;
    std::size_t at_ = 0;
    int number_ = 0;
    char end_ = 0;           //!< of lines, 0 = not known yet
    std::size_t length_ = 0; //!< of the line so far, kept or not
    bool tooLong_ = false, pending_ = false, sawZero_ = false;
};

//! Splits lines into cells; quotation marks are read by libcsv, which is asked only where there are any.
class CellSplitter {
public:
    explicit CellSplitter(char delimiter);
    ~CellSplitter();
    CellSplitter(const CellSplitter&) = delete;
    CellSplitter& operator=(const CellSplitter&) = delete;
    //! Cells without blanks round them, good until the next call. False: quotation marks do not balance.
    bool split(std::string_view line, std::vector<std::string_view>& cells);

private:
    struct Quoted;
    char delimiter_;
    std::unique_ptr<Quoted> quoted_;
};

} // namespace winterlarder::exchange
