// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/style.h"
#include "tracking/follow.h"

#include <QString>

//! What was seen of a winter that is followed, as a table shows it. Tested: tests/cli/follow_test.cpp.
namespace winterlarder::text {

//! What was seen.
QString seenKind(tracking::SeenKind kind, const WordStyle& style);
//! What was read: a weight as the scale or the lifts showed it, a heft's word, stores estimated; nothing where nothing is weighed.
QString seenRead(const tracking::Observation& seen, const WordStyle& style);
//! What was expected instead, as it would have been read: "23.1 kg to 30.0 kg", "fair (light to heavy)"; less than nothing is nothing.
QString seenExpected(const tracking::FollowQuestion& question, const tracking::Observation& seen,
                     const tracking::Judged& judged, const WordStyle& style);

} // namespace winterlarder::text
