// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! Is another look worth it? Judged by the amount, not by the verdict's word: where the 80 % band of what is missing or to spare is wider than 3 kg and a
//! better measure is at hand. In this order: weigh both sides (a closed hive, no bee disturbed), count combs, count seams. A lift is never the next step.
//! Not where nothing can come of it: signs of disease, or a time of year in which nothing is fed or taken whichever end of the band is true. Judgement.
//! Tested: tests/advice/another_look_test.cpp.
AnotherLook anotherLook(const AdviceBasis& basis, const Decided& decided);

} // namespace winterlarder::advice
