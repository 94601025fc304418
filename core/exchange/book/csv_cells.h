// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

//! Cells of the CSV this program writes. Tested: tests/exchange/book_csv_test.cpp.
namespace winterlarder::exchange {

//! A line of cells, each in quotation marks where it must be, with a line feed at its end.
std::string csvLine(const std::vector<std::string>& cells);

//! Text with an apostrophe before it where a spreadsheet would take it for a formula: its first sign but for apostrophes is =, +, -, @, a
//! tab or a line break. Different texts stay different.
std::string guarded(const std::string& text);
//! What the text was before it was guarded.
std::string withoutGuard(const std::string& text);

} // namespace winterlarder::exchange
