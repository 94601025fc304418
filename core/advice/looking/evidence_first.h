// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! Two kinds of evidence that contradict: no amount, weigh again. In closing, where both say that it is short, a first visit of 4 kg of sugar does no
//! harm (judgement).
std::optional<Decided> contradictionRule(const Reckoning& reckoning);

//! A lift alone: heavy and fair are left, light gets a portion at once, and each is weighed; no amount and no harvest comes of a word (judgement).
std::optional<Decided> heftRule(const Reckoning& reckoning);

//! The latest word, where nothing but lifts tells of the stores.
std::optional<stores::HeftWord> heftAlone(const ColonyQuestion& question);

} // namespace winterlarder::advice
