// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/input_limits.h"
#include "support/outcome.h"

#include <cstddef>
#include <filesystem>
#include <iosfwd>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder {

//! One cell as it stands in a file, and where: line and column count from 1, columns in bytes from the start of the line.
struct CsvCell {
    std::string text;
    int line = 0;
    int column = 0;
};

//! A comma-separated table with a header row, read strictly: lines that open with # before the header are kept aside as the
//! file's description, every row has as many cells as the header, no column is named twice, quotation marks balance,
//! no more than limits::tableText and limits::tableColumns.
//! Empty lines are passed over; a byte order mark and CR LF are accepted. Immutable. Tested: tests/reference/csv_table_test.cpp.
class CsvTable {
public:
    //! `file` is the name used in places; `delimiter` may be ';' or a tab in tables from elsewhere.
    static Outcome<CsvTable> parse(std::string_view text, std::string file, char delimiter = ',');
    //! Reads the whole file; a file that cannot be read is a problem of kind File.
    static Outcome<CsvTable> read(const std::filesystem::path& path, char delimiter = ',');

    const std::string& file() const { return file_; }
    //! The lines above the header without their '#' and the blanks round them.
    const std::vector<std::string>& description() const { return description_; }
    const std::vector<CsvCell>& header() const { return header_; }
    std::size_t rows() const { return header_.empty() ? 0 : cells_.size() / header_.size(); }
    //! Position of a column by its name; nothing where there is none.
    std::optional<std::size_t> column(std::string_view name) const;
    //! Throws ContractViolation outside the table.
    const CsvCell& cell(std::size_t row, std::size_t column) const;
    //! By name; ContractViolation where there is no such column.
    const CsvCell& cell(std::size_t row, std::string_view column) const;
    Place place(const CsvCell& cell) const { return {file_, cell.line, cell.column}; }

private:
    CsvTable() = default;
    std::string file_;
    std::vector<std::string> description_;
    std::vector<CsvCell> header_;
    std::vector<CsvCell> cells_; //!< row after row
};

//! A whole number or decimal fraction written with a point, nothing before or after it; nothing for anything else.
std::optional<double> numberFrom(std::string_view text);

//! The whole text of a file, or why it cannot be read. Reading ends where the text is larger than allowed, so no file fills the memory.
Outcome<std::string> textOfFile(const std::filesystem::path& path, const limits::TextSize& most = limits::tableText);

//! The same of a stream that has `file` for a name.
Outcome<std::string> textOfStream(std::istream& stream, const std::string& file, const limits::TextSize& most);

} // namespace winterlarder
