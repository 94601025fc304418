// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

//! Marks of the normal law.
namespace winterlarder {

inline constexpr double tenthPercentile = 1.2816; //!< SDs from the middle to the 10th and the 90th percentile
inline constexpr double normalScatter = 1.4826;   //!< standard deviation over median deviation

} // namespace winterlarder
