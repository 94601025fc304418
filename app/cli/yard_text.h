// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/batch.h"
#include "report/visits.h"

#include <string>
#include <vector>

namespace winterlarder::cli {

//! A colony of a yard with its answer in the yard's plan, and the visits that are planned in the book.
struct ColonyOfYard {
    WeighedColony weighed;
    std::vector<book::PlannedVisit> visits;
};

//! What the answers of a yard add up to, for a person: what to buy, the combs to move first, and what is to be done, by day. Planned visits stand in place of what is
//! advised of their kind, as on the page Plan (report::add, report::tasksOf). Empty for fewer than two colonies. Tested: tests/cli/book_together_test.cpp.
QString yardText(const std::string& yard, const std::vector<ColonyOfYard>& colonies, const Session& session);

} // namespace winterlarder::cli
