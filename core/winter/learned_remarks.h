// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/remark.h"
#include "winter/question.h"

#include <optional>
#include <vector>

namespace winterlarder::winter {

//! What a question's learned part was learned from, to be said with it.
struct LearnedFrom {
    int winters = 0;            //!< of the keeper's bees
    int forageYears = 0;        //!< springs of the yard
    double forageShiftDays = 0; //!< first forage later than the climate says; already in the season's dates
    bool operator==(const LearnedFrom&) const = default;
};

//! What was learned, in remarks: use always where a winter told of it ("same" within 2 %), deaths from 2 %, forage from half a day.
//! Empty where nothing was learned. Tested: tests/winter/learned_test.cpp.
std::vector<Remark> learnedRemarks(const std::optional<LearnedMultipliers>& learned, const LearnedFrom& from);

} // namespace winterlarder::winter
