// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder::desk {

//! From now on comb drawings speak to screen readers: the drawing is a list, each comb an item of it with its name and all it
//! holds, each zone of a comb a slider whose value is its share in hundredths and can be set. Tested:
//! tests/app/comb_accessible_test.cpp.
void speakCombDrawings();

} // namespace winterlarder::desk
