// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "reference/reference.h"

#include <filesystem>

namespace winterlarder::bench {

//! The day the yard is looked at: that of its last looks.
inline const Date yardDay = *Date::of(2026, 9, 14);

//! Writes a book of one yard, the same each time: colonies in two boxes, each looked at four times and weighed twice this season, a feed
//! and a harvest among them; every sixth with a look of last autumn and how its winter went.
void writeLargeYard(const std::filesystem::path& file, int colonies, const ReferenceData& reference);

} // namespace winterlarder::bench
