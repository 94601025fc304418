// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/outcome.h"

#include <QString>

namespace winterlarder::desk {

//! Whether something of it is an error of ours (kind Internal), not of what was written.
bool isOurs(const Problems& problems);

//! A problem as the window says it: where, what is wrong, what would be right. An error of ours is told as one, with what to do.
QString problemWords(const Problem& problem);
//! A line each.
QString problemWords(const Problems& problems);

// Tested: tests/app/words_test.cpp.

} // namespace winterlarder::desk
