// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/scale_records.h"
#include "text/style.h"

namespace winterlarder::answer {

//! What is in doubt of the records, held against the book and each other, by kind and day.
struct ScaleDoubts {
    Problems problems;
    bool impossible = false; //!< some are of what cannot be
};
//! `sure`: the records that are not likely are right, and keep that; impossible ones stay. Problems: those of the book.
//! Tested: tests/cli/doubts_test.cpp, tests/app/entry_doubts_test.cpp.
Outcome<ScaleDoubts> judge(book::Book& from, ScaleRecords& records, const std::string& file, Date today, bool sure,
                           const std::string& whereSure, const text::WordStyle& style = {});

} // namespace winterlarder::answer
