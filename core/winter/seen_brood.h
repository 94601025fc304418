// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"
#include "reference/model_constants.h"
#include "winter/question.h"

namespace winterlarder::winter {

inline constexpr int broodAges = hive::broodDays;

//! Brood the keeper saw, as the winters take it in at the start of its day.
struct SeenBrood {
    int day = 0;                     //!< season day
    double perAge = 0;               //!< cells of every day of age, from then on
    bool stopped = false;            //!< hardly any: laying has stopped
    double logShift = 0, zScale = 1; //!< luck of laying from then on: exp(logShift + zScale x its logarithm before)
};

//! What the brood seen says (B0 cells; the question must have some). Expected before the usual stop:
//! B = 21 e_a N clamp((stop - day + d_o) / d_a). From the stop on: B0, and nothing else. Under f_s B: laying has stopped.
//! Else a count whose logarithm errs by s_o: sqrt(B B0) cells, and the luck's logarithm s z becomes w r + sqrt(1 - w) s z
//! with r = ln(B0 / B) within +-1, w = s^2 / (s^2 + s_o^2). Tested: tests/winter/seen_brood_test.cpp.
SeenBrood seenBrood(const WinterQuestion& question, const ModelConstants& constants);

//! Whether brood was seen, and so little before laying usually stops that the colony is taken to have stopped.
bool seenToHaveStopped(const WinterQuestion& question, const ModelConstants& constants);

//! Spread s of the luck of laying from winter to winter, SD of the logarithm: less where a lasting part was learned.
double yearlyBroodSd(const WinterQuestion& question, const ModelConstants& constants);

//! Bees on the start day. Where they were seen later: as many as one noiseless run without seen brood needs to have the
//! seen ones that day.
double beesAtStart(const WinterQuestion& question, const ModelConstants& constants);

} // namespace winterlarder::winter
