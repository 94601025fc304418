// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"

namespace winterlarder::advice {

//! A colony of a yard with the answer it has alone. Both outlive the call.
struct YardColony {
    const ColonyQuestion* question = nullptr;
    const Advice* advice = nullptr;
};

//! Whether combs of the first hang in the other's boxes: the same outline.
bool combsFit(const hive::CombFormat& comb, const ColonyQuestion& into);

} // namespace winterlarder::advice
