// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "cli/session.h"

namespace winterlarder::cli {

//! How a colony's winter goes, for a person: what to do (`headline`), forecast then and now, dates, feeding, what was seen, reasons, cautions.
QString followText(const answer::FollowedColony& colony, const tracking::Following& following, const QString& headline,
                   Date asOf, const Session& session);
//! A colony that cannot be followed, and why.
QString notFollowedText(const answer::FollowedColony& colony, Date asOf, const Session& session);

} // namespace winterlarder::cli
