// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/plain_text.h"

#include <QString>

namespace winterlarder::text {

//! Words somebody wrote, with their control characters written out (plain_text.h): a name can neither steer the terminal nor turn a line
//! of a sheet round.
inline QString shown(const std::string& foreign) { return QString::fromStdString(book::visible(foreign)); }

} // namespace winterlarder::text
