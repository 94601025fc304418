// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "keeper.h"

namespace winterlarder::bench {

//! About two minutes of a keeper's work in a large yard whose answers are still being worked out; shows how long turns of the interface
//! thread were, over all and by step.
void showSession(Keeper& keeper);

} // namespace winterlarder::bench
