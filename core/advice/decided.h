// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/basis.h"

namespace winterlarder::advice {

//! What a rule decides. A rule that does not apply decides nothing, and the next is asked.
struct Decided {
    Verdict verdict = Verdict::Leave;
    DecidedBy by = DecidedBy::Enough;
    std::optional<feeding::FeedingPlan> feed;
    std::optional<HarvestAdvice> harvest;
    std::optional<UniteAdvice> unite;
};

//! The rules in their order of precedence; what stands earlier also empties feed, harvest and the options that disagree. The order is judgement, each
//! rule's source stands with it. Tested: tests/advice/decide_test.cpp.
Decided decide(const AdviceBasis& basis);

//! Whether a plan feeds anything.
bool feedsAnything(const feeding::FeedingPlan& plan);

} // namespace winterlarder::advice
