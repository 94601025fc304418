// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "reference/reference.h"

namespace winterlarder::answer {

//! Lays what is usual at the colony's place into its question: the stores keepers there are told to winter on, for a hive of this size, and whether a flow is
//! usual there after the asking day. A gross figure becomes stores with this hive's tare and the bees seen. Tested: tests/answer/usual_of_place_test.cpp.
void fillUsual(advice::ColonyQuestion& question, const ReferenceData& reference);

} // namespace winterlarder::answer
