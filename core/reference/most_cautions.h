// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace winterlarder {

//! So many cautions are told of one answer, an autumn's or a followed winter's; what is beyond them is told as good practice.
inline constexpr std::size_t mostCautions = 5;

} // namespace winterlarder
