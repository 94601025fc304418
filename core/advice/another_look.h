// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/reckoning.h"

namespace winterlarder::advice {

//! Is another look worth it? The verdict is found again at the low, typical and high end of each uncertain input: stores known
//! exactly at their 10th, 50th and 90th percentile; bees and first forage as the lowest, middle and highest fifth of the
//! same winters; autumn flow one step lower and higher. If it never changes, the colony can be left alone. If it does, the
//! cheapest observation is named that would settle it (else the one that narrows most), with the width of the 10-90 % band
//! before and after. A spring that cannot be seen yet settles nothing: forage alone never makes a look worth it.
AnotherLook anotherLook(const Reckoning& reckoning, Verdict verdict);

} // namespace winterlarder::advice
