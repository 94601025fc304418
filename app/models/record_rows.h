// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/colony_history.h"

#include <QString>

#include <functional>
#include <vector>

namespace winterlarder::desk {

//! One entry of a colony's story, in words.
struct RecordRow {
    Date date;
    book::Kind kind{};
    std::int64_t id = 0;
    QString what;    //!< "look", "weighing"
    QString details; //!< "on a scale: 41.5 kg"
};

//! Everything recorded of a colony, newest first; of one day in the order of writing, the last one first.
//! Tested: tests/app/fields_test.cpp.
std::vector<RecordRow> recordRows(const book::ColonyHistory& records);
//! Of these kinds only.
std::vector<RecordRow> recordRows(const book::ColonyHistory& records, const std::vector<book::Kind>& kinds);

} // namespace winterlarder::desk
