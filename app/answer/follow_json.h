// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "exchange/json/json_output.h"
#include "reference/reference.h"
#include "text/style.h"

namespace winterlarder::answer {

//! How a colony's winter goes, in the keys of the manual; `days` with every day instead of every seventh.
exchange::Json followJson(const FollowedColony& colony, const tracking::Following& following, Date asOf, bool daily,
                          const ReferenceData& reference, const text::WordStyle& style);
//! The same for a colony that cannot be followed: state cannot_say, the reasons of its autumn's answer.
exchange::Json notFollowedJson(const FollowedColony& colony, Date asOf, const ReferenceData& reference,
                               const text::WordStyle& style);

//! The answer of a day in a followed winter (answer::followedAdvice) in the keys of an advice: headline and why to look are those of the followed winter, which
//! stands whole under `follow`. `question`: of that day; `alone`: what can be said of it by itself.
exchange::Json followedAdviceJson(const book::ColonyCase& record, const advice::ColonyQuestion& question,
                                  const advice::Advice& alone, const FollowedColony& colony,
                                  const tracking::Following& following, const ReferenceData& reference,
                                  const text::WordStyle& style);

//! A lasting multiplier: 10th, 50th and 90th percentile.
exchange::Json multiplierJson(const learning::Lasting& lasting);

} // namespace winterlarder::answer
