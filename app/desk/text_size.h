// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder::desk {

//! Makes all letters of the program this large [% of the system's], those too that a part made larger or smaller for itself. What is on
//! paper keeps its own. Tested: tests/desk/settings_test.cpp.
void useTextSize(int percent);

} // namespace winterlarder::desk
