// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/csv_table.h"
#include "reference/reference.h"

#include <initializer_list>
#include <map>

namespace winterlarder {

//! Reads typed cells out of a table whose columns are fixed, and lists every fault with its place and what would be right
//! in the problems it was given. A faulty cell yields an empty or zero value, so that reading goes on to the next fault.
//! Tested: tests/reference/broken_files_test.cpp.
class CheckedTable {
public:
    //! Columns missing from the table or unknown to us are faults; rows() is 0 then.
    CheckedTable(CsvTable table, const std::vector<std::string>& columns, Problems& problems);

    std::size_t rows() const { return columnsAreRight_ ? table_.rows() : 0; }
    const CsvTable& table() const { return table_; }
    const CsvCell& cell(std::size_t row, std::string_view column) const { return table_.cell(row, column); }

    std::string text(std::size_t row, std::string_view column); //!< must not be empty
    std::string optionalText(std::size_t row, std::string_view column) const { return cell(row, column).text; }
    //! Must not be empty, and no earlier row may have the same.
    std::string uniqueId(std::size_t row, std::string_view column);
    double number(std::size_t row, std::string_view column, NumberRange range = {});
    std::optional<double> optionalNumber(std::size_t row, std::string_view column, NumberRange range = {});
    int integer(std::size_t row, std::string_view column, NumberRange range = {});
    std::optional<int> optionalInteger(std::size_t row, std::string_view column, NumberRange range = {});
    //! One of the allowed words; the first of them where it is none.
    std::string oneOf(std::size_t row, std::string_view column, const std::vector<std::string>& allowed);
    Mark mark(std::size_t row, std::string_view column);
    std::string countryCode(std::size_t row, std::string_view column); //!< ISO 3166: two capital letters

    void fault(const CsvCell& at, std::string detail, std::string remedy);
    std::size_t faults() const { return problems_.size(); } //!< listed so far, those of earlier files included

private:
    void checkColumns(const std::vector<std::string>& columns);

    CsvTable table_;
    Problems& problems_;
    bool columnsAreRight_ = true;
    std::map<std::string, int, std::less<>> firstLineOfId_;
};

//! The parts of a cell that lists several things separated by ';', blanks round them taken off.
std::vector<std::string> listedIn(std::string_view text);

//! Which shipped sources there are, and which files name them. Filled while the other files are read.
class SourceUses {
public:
    explicit SourceUses(std::vector<Source>& sources) : sources_(sources) {}
    //! Ids named in a cell, separated by ';'; each must be known. `shown` is the file's path below shared/.
    std::vector<std::string> refer(CheckedTable& table, std::size_t row, std::string_view column,
                                   const std::string& shown);
    bool use(const std::string& id, const std::string& shown);

private:
    std::vector<Source>& sources_;
};

} // namespace winterlarder
