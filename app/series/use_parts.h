// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "series/winter_series.h"
#include "text/grounds/grounds.h"

#include <optional>

namespace winterlarder::desk {

//! What is eaten from the picture's first day to the median first forage, by cause; nothing where there is no picture or no forage.
//! Tested: tests/app/asked_test.cpp.
std::optional<text::UseParts> usePartsOf(const WinterPicture& picture, const climate::SeasonDates& season);

} // namespace winterlarder::desk
