// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/reading.h"

#include <cstddef>
#include <vector>

namespace winterlarder::scale {

//! What the readings on one side of a disturbance say of the weight in its middle.
struct Side {
    std::size_t near = 0; //!< the reading next to the disturbance
    std::size_t far = 0;  //!< the last that may be used on that side; far < near: the side before it
};

struct ToldWeight {
    Mass weight{0};
    Mass error{0}; //!< standard error
};

enum class Carry { On, Not };
//! Robust lines through longer and longer stretches of the side, an hour (two and a half intervals of a sparse log) and two, four, eight times
//! as much, each carried on to `moment`; the longest is taken that agrees with every shorter one within 1.5 of that one's standard errors
//! (Lepski 1990). So a quiet winter night is averaged over hours and the return of foragers is not. Scatter: from second differences,
//! which a slope does not touch. Otherwise (Carry::Not) lines are not carried on beyond the near reading.
//! Tested: tests/scale/side_test.cpp.
ToldWeight weightToldBy(const std::vector<Reading>& readings, const Side& side, std::int64_t moment,
                        std::int64_t interval, Carry carry);

} // namespace winterlarder::scale
