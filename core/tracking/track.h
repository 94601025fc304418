// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/belief.h"

#include <memory>
#include <optional>
#include <stop_token>

namespace winterlarder::tracking {

//! Winters, their paths, and what is believed of them.
struct Tracked {
    std::shared_ptr<const winter::DemandEnsemble> ensemble;
    std::shared_ptr<const HivePaths> paths;
    Belief belief;
    int drawnAgain = 0; //!< times the winters were drawn again around what was learned
};

//! Reweighs an ensemble by the observations, and draws it again where too few winters are left to count.
//! Winters are equal to begin with (a proposal may be given in `luck` terms only from inside). While the effective number of winters is
//! below redrawBelow of all, at most five times: the likelihood is tempered until a quarter of the winters count (half as many in each
//! further round), a normal is fitted
//! to their luck (winter::WinterLuck; covariance widened by a fifth, shrunk towards none between parts), nine tenths of the winters are
//! drawn from it and one tenth as at first (a defensive mixture: weights stay bounded by ten; Hesterberg 1995, Technometrics 37:185),
//! simulated, and weighted by likelihood x prior / mixture. The result says how many count and how often it drew again.
//! `question.winter.keepBrood` is taken as set; days after the run's end count as its last. Nothing where stopped. Tested: tests/tracking/track_test.cpp.
std::optional<Tracked> track(const FollowQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                             int threads = 1, std::stop_token stop = {});

//! The question with its today not after the end of the run: nothing is known of later days. track() and trackPlan() ask so themselves;
//! whoever reads a day off the question beside what was tracked must ask so too.
FollowQuestion withinRun(FollowQuestion question, const ModelConstants& constants);

//! What was believed on the day of the decision: the same winters before any observation, with the steps planned then. `tracked` must
//! come from the same question; its first ensemble is simulated again where it was drawn anew.
std::optional<Tracked> trackPlan(const FollowQuestion& question, const ModelConstants& constants,
                                 winter::Sampling sampling, const Tracked& tracked, int threads = 1,
                                 std::stop_token stop = {});

} // namespace winterlarder::tracking
