// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/doubts.h"
#include "exchange/book/book_csv.h"

namespace winterlarder::answer {

//! What is to be asked about the rows of a table before they come into the book, each with its line; rows are held against
//! the book and against each other. `sure`: those not likely are right, and keep that; impossible ones stay problems.
//! Tested: tests/answer/doubts_test.cpp, tests/cli/doubts_test.cpp.
Problems doubtsOfRows(book::Book& into, exchange::CsvPreview& preview, const std::string& file, Date today, bool sure,
                      const std::string& whereSure);

//! The same of a whole book's document, whose entries are held against each other alone. Nothing is changed in it: it may be
//! a book that already stood, and what is in doubt in it no answer believes. `whereSure`: how it is taken nevertheless.
Problems doubtsOfDocument(const std::vector<book::Target>& document, const std::vector<Place>& places, Date today,
                          const ReferenceData& reference, const std::string& whereSure);

} // namespace winterlarder::answer
