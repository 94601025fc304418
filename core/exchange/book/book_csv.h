// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

//! CSV both ways for every kind of entry, and for the combs, boxes and photographs that belong to one. Header names are those of
//! shared/fields.csv ("weighings.gross_kg"; reading takes "gross_kg" as well), UTF-8, decimal points, ISO dates, whatever the locale.
//! A colony or yard is named; "#7" is the one of number 7, which is also written where a name is there twice.
//! Text that a spreadsheet would take for a formula (its first sign =, +, -, @, a tab or a line break) is written with an apostrophe before
//! it, which reading takes away again, so that what goes out comes back the same; numbers are never touched.
namespace winterlarder::exchange {

//! Every table that can be written and read: "yards", "looks", "look_combs", ...
std::vector<std::string> csvTables();

//! The table as CSV, entries by id.
Outcome<std::string> writeCsv(book::Book& from, const std::string& table);

//! What an import would do; importing it does exactly this.
struct CsvPreview {
    book::PutEntries edit;
    std::vector<int> added;   //!< lines of the file that become new entries
    std::vector<int> changed; //!< lines that change the entry of their id
    std::vector<int> lines;   //!< of each entry of the edit, where the file says it
    //! lines that say what an entry of the book, or an earlier line, says already: left out
    std::vector<int> duplicates;
};

//! Reads the file against the book: all or nothing, every bad cell with line and column. A row with an id changes that entry (columns the
//! file lacks stay as they are); without one it is new. Rows of an entry's list ("look_combs") replace the
//! list of each owner they name. Tested: tests/exchange/book_csv_test.cpp.
Outcome<CsvPreview> previewCsv(book::Book& into, const std::string& table, std::string_view text,
                               const std::string& file, const std::string& who);

//! Carries the preview out as one step; a backup is made first.
Outcome<book::Applied> importCsv(book::Book& into, const CsvPreview& preview, book::Timestamp now,
                                 const std::string& who);

} // namespace winterlarder::exchange
