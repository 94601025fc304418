// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "reference/remark.h"

#include <array>
#include <string_view>
#include <vector>

namespace winterlarder::answer {

//! What is asked after a death, in this order: keys of an outcome.
inline constexpr std::array<std::string_view, 5> deathQuestions{"food_left", "heads_in_cells", "mites_on_floor",
                                                                "brood_pattern", "queen"};

//! What the answer to one of them points to.
struct PointsTo {
    std::string_view question;
    Remark says;
};
//! One for each question that was answered, in their order; none for a hive that lives. Common practice. Tested: tests/answer/dead_hive_test.cpp.
std::vector<PointsTo> pointsTo(const book::WinterOutcome& outcome);

} // namespace winterlarder::answer
