// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"

namespace winterlarder::advice {

//! The answer where something keeps it back: what does, and what is known all the same; a lift alone stands for no number then. A hive that was light in winter
//! is fed its one portion (portionWithoutBees). Tested: tests/advice/refusals_test.cpp.
Advice refusedAdvice(const ColonyQuestion& question, const std::vector<RefusalKind>& refusals,
                     const ModelConstants& constants, winter::Sampling sampling, int threads);

} // namespace winterlarder::advice
