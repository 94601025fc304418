// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "report/sheet.h"
#include "report/visits.h"

namespace winterlarder::report {

//! One colony on one page. Sections, each only where there is something to say:
//!   answer    facts verdict, stores, needed, reserve, bees, first-forage, touches-reserve, runs-out; take or feed amounts; by
//!   picture   the winter picture
//!   options   table option, stores-changed (ripe stores, not sugar), touches-reserve, runs-out, at-first-forage
//!   evidence  table evidence, day, says
//!   take      the combs that may come off: table box, comb; fact combs-hold
//!   feeding   facts ratio, sugar, water, syrup, fondant, last-day; table day, what, syrup, sugar, fondant, done
//!   season    facts by date, each with what it may be off by
//!   reasons, cautions  with their sources
//! Tested: tests/report/sheets_test.cpp.
Sheet colonySheet(const advice::ColonyQuestion& question, const advice::Advice& advice, const ReferenceData& reference,
                  const std::optional<std::vector<Task>>& planned = {});

//! Remarks with the first source of each.
std::vector<SourcedRemark> withSources(const std::vector<Remark>& remarks, const ReferenceData& reference);
//! Fills in Sheet::sources.
void gatherSources(Sheet& sheet);
//! Id of a verdict: "harvest", "leave", "feed", "unite", "cannot-say".
std::string idOf(advice::Verdict verdict);

} // namespace winterlarder::report
