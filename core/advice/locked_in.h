// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/reckoning.h"

namespace winterlarder::advice {

//! Mean use a day in the coldest 30 days of the normal that are simulated [kg/d]: what a cluster that cannot move needs within reach,
//! times the days it is locked in.
Mass coldestUsePerDay(const Reckoning& reckoning);

} // namespace winterlarder::advice
