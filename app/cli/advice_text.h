// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "book/entries/records.h"
#include "cli/session.h"

namespace winterlarder::cli {

//! An answer for a person: what to do, the figures with their spreads, options side by side, visits, reasons, cautions.
QString adviceText(const book::ColonyCase& record, const advice::ColonyQuestion& question, const advice::Advice& advice,
                   const Session& session);

} // namespace winterlarder::cli
