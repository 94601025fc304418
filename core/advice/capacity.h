// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/basis.h"

namespace winterlarder::advice {

//! What the built combs that stay can hold of stores: 85 % of their full honey, less the comb still under brood on the day winter begins (mean over
//! winters). Combs that are not listed: every place of the boxes. Supers kept for people do not count. Judgement. Tested: tests/advice/decide_test.cpp.
Mass capacityOf(const AdviceBasis& basis);

//! Stores that are held against it: once the syrup is over those of today, before it what will be there when winter begins.
Mass levelFor(const AdviceBasis& basis);

//! Nothing is fed to a hive that is full (95 % of what it can hold), whatever the sum says. Judgement.
bool isFull(const AdviceBasis& basis);

//! Full honey of one comb of this hive, with rims: what a keeper calls a full comb [kg].
Mass oneFullComb(const ColonyQuestion& question);

} // namespace winterlarder::advice
