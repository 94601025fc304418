// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/answer_parts.h"

namespace winterlarder::tracking {

//! The last count of bees (a cluster seen, combs looked through) is under 0.6 of the 10th percentile of what autumn expected for its day (judgement).
std::optional<Dwindled> dwindled(const FollowBasis& r);

//! The last weighing and the first of its kind, or the one before it, show a loss above the 90th percentile of what the autumn's winters lose between these
//! days, with what was fed and taken meanwhile and the errors of both readings. A weighing in doubt is not compared with, nor one before a change nobody
//! recorded that a later one confirmed. One weighing alone never says it (judgement).
std::optional<EatenFaster> eatenFaster(const FollowBasis& r);

//! The last weighing on a scale lies twice as far above the middle of what was expected as its 90th percentile: a feed, a box or bees that are not written
//! down, or the scale. Not asked of one that contradicts every winter, which is said as such (judgement).
std::optional<Heavier> heavierThanExpected(const FollowBasis& r);

//! The middle of what is now believed of the stores at the start lies below the 10th percentile of what was believed then (judgement). Asked where
//! the bees do not eat faster.
bool lessThanThought(const FollowBasis& r);

//! After the first weighing: at first forage nine winters of ten leave four full combs or more above the spring reserve; two from 30 days before
//! forage on (judgement).
bool moreThanNeeded(const FollowBasis& r);

} // namespace winterlarder::tracking
