// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "answer/handbook.h"
#include "learning/scores.h"

#include <set>
#include <stop_token>
#include <string>
#include <vector>

namespace winterlarder::answer {

//! One past winter of a colony as the book tells of it.
struct PastReading {
    book::ColonyId colony{};
    std::string name;
    book::YardId yard{};
    int autumn = 0; //!< year the winter began
    FollowReading reading;
    bool operator==(const PastReading&) const = default;
};

//! All a book tells of past winters, and the yards that learn.
struct BookPast {
    std::vector<PastReading> winters; //!< by autumn
    std::set<std::int64_t> yards;
    Problems problems; //!< colonies whose records cannot be read; they are left out
};

//! The winters before the one that contains a day, of all colonies, in yards that learn and not before their learnSince. Reads only:
//! nothing is simulated. Records that contradict each other are told where they are asked about, not here.
Outcome<BookPast> readPast(book::Book& from, Date asOf);

//! One past winter of a colony, ready to be learned from.
struct PastColonyWinter {
    book::ColonyId colony{};
    std::string name;
    book::YardId yard{};
    int autumn = 0; //!< year the winter began
    learning::PastWinter winter;
    HandbookFigure handbook; //!< of its region
};

//! A winter counts where it can be followed and something was seen after the decision, or its end is known; nothing else.
std::optional<PastColonyWinter> pastWinterOf(const PastReading& past, const ReferenceData& reference,
                                             winter::Sampling sampling, int threads, std::stop_token stop = {});

//! Winters simulated for learning: learningWinters, fewer where fewer are asked for.
winter::Sampling forLearning(winter::Sampling asked, const DecisionConstants& rules);

//! What one winter tells: of the bees, of first forage, and how good its forecast was (nothing learned; nothing where it was not weighed).
struct WinterTold {
    learning::WinterEvidence evidence;
    std::optional<learning::ForageSeen> turn;
    std::optional<learning::ForecastScore> score;
};
enum class Score { LeftOut, Told };
//! Nothing where stopped.
std::optional<WinterTold> toldBy(const PastColonyWinter& past, const ReferenceData& reference,
                                 winter::Sampling sampling, int threads, Score score, std::stop_token stop = {});

//! A past winter and what it tells.
struct ToldWinter {
    PastColonyWinter winter;
    WinterTold told;
};
//! Nothing where it says nothing, or was stopped. An exception is a problem of kind Internal that names the winter, so that one that breaks
//! never ends the others. `file`: of the book, for the problem.
Outcome<std::optional<ToldWinter>> toldWinter(const PastReading& past, const ReferenceData& reference,
                                              winter::Sampling sampling, int threads, Score score,
                                              const std::string& file, std::stop_token stop = {});

//! Adds up what winters told, in the order they came; `told` beside `winters`. Used in the yards that learn.
BookLearned addUp(const std::vector<const PastColonyWinter*>& winters, const std::vector<WinterTold>& told,
                  const std::set<std::int64_t>& yards, const ModelConstants& constants);

//! A winter whose records fit none that was simulated, so that nothing was learned from it.
struct WinterThatFitsNone {
    std::string colony;
    int autumn = 0; //!< year it began in
};

//! A book's past and what it taught.
struct LearnedBook {
    std::vector<PastColonyWinter> winters;
    BookLearned learned;
    Problems problems; //!< winters that could not be computed; they are left out of the rest
    std::vector<WinterThatFitsNone> fitNone{};
};
//! Problems: those of the book. A winter that breaks never ends the others. Tested: tests/answer/followed_colony_test.cpp.
Outcome<LearnedBook> learnOf(book::Book& from, Date asOf, winter::Sampling sampling, int threads);

//! How good the forecasts of those winters were, nothing learned; winters without a weighing are left out.
struct ScoredWinter {
    const PastColonyWinter* winter = nullptr;
    learning::ForecastScore score;
};
struct ScoredWinters {
    std::vector<ScoredWinter> winters;
    Problems problems; //!< of winters that could not be computed
};
ScoredWinters scoredFrom(const std::vector<PastColonyWinter>& winters, const ReferenceData& reference,
                         winter::Sampling sampling, int threads);

} // namespace winterlarder::answer
