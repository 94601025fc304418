// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "reference/reference.h"
#include "support/outcome.h"

#include <string>
#include <string_view>

namespace winterlarder::exchange {

//! The combs of one look from a file of their own: what stands under the key `combs` of a case file (a list of combs, or the quick form),
//! or an object with that key alone. The same faults as in a case, each with file, line and column; more combs than the hive has
//! places is one. Tested: tests/exchange/combs_file_test.cpp.
Outcome<book::CombsRecord> readCombsFile(std::string_view text, const std::string& file, const book::HiveRecord& hive,
                                         const ReferenceData& reference);

} // namespace winterlarder::exchange
