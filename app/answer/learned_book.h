// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "learning/scores.h"

#include <stop_token>
#include <string>
#include <vector>

namespace winterlarder::answer {

//! One past winter of a colony, ready to be learned from.
struct PastColonyWinter {
    book::ColonyId colony{};
    std::string name;
    book::YardId yard{};
    int autumn = 0; //!< year the winter began
    learning::PastWinter winter;
};

//! The winters before the one that contains a day, of all colonies, in yards that learn and not before their learnSince. A winter counts
//! where it can be followed and something was seen after the decision, or its end is known.
Outcome<std::vector<PastColonyWinter>> pastWintersOf(book::Book& from, Date asOf, winter::Sampling sampling, int threads);

//! Winters simulated for learning: a thousand tell as much as the answer's own number does.
inline constexpr int learningWinters = 1000;

//! Learns from them. Nothing where stopped. Tested: tests/answer/followed_colony_test.cpp.
std::optional<BookLearned> learnedFrom(const std::vector<PastColonyWinter>& winters, const ModelConstants& constants,
                                       winter::Sampling sampling, int threads, std::stop_token stop = {});

//! How good the forecasts of those winters were, nothing learned; winters without a weighing are left out.
struct ScoredWinter {
    const PastColonyWinter* winter = nullptr;
    learning::ForecastScore score;
};
std::vector<ScoredWinter> scoredFrom(const std::vector<PastColonyWinter>& winters, const ModelConstants& constants,
                                     winter::Sampling sampling, int threads);

//! What a handbook gives for the food of a winter: the sum of Bocquet's monthly figures from October to April (source bocquet).
inline constexpr Mass handbookUse = kilograms(13.1);

} // namespace winterlarder::answer
