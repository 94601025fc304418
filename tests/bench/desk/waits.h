// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "keeper.h"

namespace winterlarder::bench {

//! What a keeper waits for in a settled window: an edit's answers, and the picture under a slider; medians, and the longest.
void showWaits(Keeper& keeper);

} // namespace winterlarder::bench
