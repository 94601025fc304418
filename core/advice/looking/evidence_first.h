// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! Two kinds of evidence that contradict: no amount, weigh again. In closing, where both say that it is short, a first visit of 4 kg of sugar does no
//! harm (judgement).
std::optional<Decided> contradictionRule(const AdviceBasis& basis);

//! A lift alone: heavy and fair are left, light gets a portion at once, and each is weighed; no amount and no harvest comes of a word (judgement).
std::optional<Decided> heftRule(const AdviceBasis& basis);

//! Light when lifted in winter or spring, and nobody knows how many bees there are: one portion today, at most what lies on a cluster at a time, as nobody
//! counts bees in the cold and it does no harm; all else is not known before it is weighed. Only where nothing but the bees' number keeps the answer back, of a lift
//! not older than such a portion lasts, after which nothing was fed. Signs of disease: nothing (judgement).
std::optional<feeding::FeedingPlan> portionWithoutBees(const ColonyQuestion& question,
                                                       const std::vector<RefusalKind>& refusals,
                                                       const ModelConstants& constants);

//! The weighing or lift of the latest day; of one day the last; nothing where there is none.
const WeighedHive* lastWeighing(const ColonyQuestion& question);

//! The latest word, where nothing but lifts tells of the stores.
std::optional<stores::HeftWord> heftAlone(const ColonyQuestion& question);

} // namespace winterlarder::advice
