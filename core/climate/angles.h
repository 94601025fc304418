// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <numbers>

namespace winterlarder::climate {

//! Of an angle in degrees.
constexpr double radians(double degrees) { return degrees * std::numbers::pi / 180.0; }

} // namespace winterlarder::climate
