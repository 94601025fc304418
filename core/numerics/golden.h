// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder::numerics {

//! The smaller part of the golden section, (sqrt 5 - 1) / 2: multiples of it, whole parts left out, lie evenly in 0 to 1 however many there are.
inline constexpr double goldenPart = 0.6180339887498949;

} // namespace winterlarder::numerics
