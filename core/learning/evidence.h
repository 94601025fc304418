// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/track.h"

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

//! What past winters tell of the keeper's own bees.
namespace winterlarder::learning {

//! What one colony's winter says of its two lasting multipliers: a normal likelihood on (u, d) = (ln use, ln death), in information
//! form (precision and precision x mean), so that winters add up. All 0: the winter says nothing.
struct WinterEvidence {
    double useUse = 0, useDeath = 0, deathDeath = 0; //!< precision
    double use = 0, death = 0;                       //!< precision x mean
    bool fitsNoWinter = false;                       //!< its records contradict each other, see tracking::Belief
    bool saysAnything() const { return useUse > 0 || deathDeath > 0; }
    WinterEvidence& operator+=(const WinterEvidence& other);
};

//! How a winter ended.
struct WinterEnd {
    SeasonDay day; //!< the day it was found out
    Date date;
    bool alive = true;
    std::optional<BeeCount> bees;   //!< of a living colony, from covered combs
    double beesLogSd = 0;           //!< SD of their logarithm, said with them
    std::optional<Mass> storesLeft; //!< of a dead one: 0 says that it starved
};

//! A winter that is past: what was asked in autumn, all that was seen, and how it ended.
struct PastWinter {
    tracking::FollowQuestion question;
    std::optional<WinterEnd> end;
};

//! The question with the end among its observations, ready to be tracked. A living colony: alive, its bees, its stores left (15 %
//! and half a kilogram, judgement). A dead one is never taken for one that ate little: what was seen after the last sign of life
//! does not count, and the death itself says at most that the stores were gone by then, where none were left. No end: what was seen.
tracking::FollowQuestion asTold(const PastWinter& winter);

//! Spread of a keeper's multipliers before anything is known: medians 1, SD of the logarithm from the constants.
winter::LearnedMultipliers unknownKeeper(const ModelConstants& constants);

//! What a belief over winters drawn with unknownKeeper() says of their multipliers: the moments of (u, d) with and without the
//! likelihood, their difference in information form, no direction with less than none; what few effective winters cannot tell is taken
//! off; records that fit no winter say nothing. Tested: tests/learning/evidence_test.cpp.
WinterEvidence evidenceIn(const tracking::Belief& belief, std::span<const winter::WinterDraw> draws,
                          const ModelConstants& constants);

//! Tracks a past winter and reads its evidence. Nothing where stopped.
std::optional<WinterEvidence> evidenceOf(const PastWinter& winter, const ModelConstants& constants,
                                         winter::Sampling sampling, int threads = 1, std::stop_token stop = {});

} // namespace winterlarder::learning
