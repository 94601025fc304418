// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! The one question not answered yet whose answer would move the advice most [kg of stores, judged]; nothing where none moves it. An answer that is
//! missing is unknown, never no. First of all whether the queen lays, where no brood was seen; then whom a super is for, where that moves what is missing by
//! more than 3 kg. Judgement. Tested: tests/advice/told_test.cpp.
std::optional<Ask> nextQuestion(const AdviceBasis& basis, const Decided& decided);

} // namespace winterlarder::advice
