// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"

namespace winterlarder::advice {

//! What the colony has and what the keeper wishes to be left, of the asking day.
struct Wish {
    Mass mean; //!< stores at the asking day
    Mass sd;
    double shortRisk = 0.2;
    Mass reserve;
};

} // namespace winterlarder::advice
