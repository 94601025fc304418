// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/demand.h"

namespace winterlarder::winter {

//! What fate deals one winter: standard normals of the dates, the season's offset [K] and the burst of early brood.
struct DateLuck {
    double seasonOffsetK = 0;
    double springEarliness = 0, forage = 0, lastIncome = 0, broodStop = 0, broodRestart = 0;
};

//! Dates of one winter after drawing, shifting (spring and forage by -ph per K of offset), ordering and rounding half to
//! even. An exact date is neither drawn nor shifted, and the others give way to it. Laying that never stops: stop =
//! restart = -11, undrawn. Fills the date members of the draw only.
void drawDates(const WinterQuestion& question, const ModelConstants& constants, const DateLuck& luck, WinterDraw& draw);

} // namespace winterlarder::winter
