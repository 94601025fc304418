// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "learning/evidence.h"

#include <optional>
#include <vector>

//! How good past forecasts were.
namespace winterlarder::learning {

//! Continuous ranked probability score of a weighted sample: E|X - y| - 1/2 E|X - X'| (Gneiting and Raftery 2007, J Am Stat Assoc
//! 102:359, equation 21), in the unit of the values; smaller is better, a single value scores its distance. Weights need not sum to 1.
//! Tested: tests/learning/scores_test.cpp (by hand; closed form of a normal).
double rankedScore(std::vector<double> values, std::vector<double> weights, double observed);

//! One forecast of autumn beside what a weighing or the end of winter showed.
struct ForecastScore {
    SeasonDay day;                         //!< of the observation
    double observed = 0;                   //!< kg, as read
    double low = 0, typical = 0, high = 0; //!< 5, 50 and 95 % of the forecast of that reading, its own error counted
    double place = 0;                      //!< share of the forecast below it
    double score = 0;                      //!< ranked score of the forecast [kg]
    double handbookScore = 0;              //!< of the handbook's one number [kg]
    bool inside() const { return observed >= low && observed <= high; }
};

//! Scores the autumn's forecast of a past winter at its last weighing or stores left; what was fed and taken since is known to it.
//! `handbookUse` is the kilograms a handbook gives for a winter of the region, spread evenly from the decision to first forage.
//! Nothing where nothing was weighed by the end of the simulated run, the colony was dead by then, or it was stopped.
std::optional<ForecastScore> scoreOf(const PastWinter& winter, Mass handbookUse, const ModelConstants& constants,
                                     winter::Sampling sampling, int threads = 1, std::stop_token stop = {});

//! All scores together.
struct ScoreSummary {
    int forecasts = 0;
    double inside = 0;        //!< share of observations within the 90 % band
    double score = 0;         //!< mean ranked score [kg]
    double handbookScore = 0; //!< of the handbook
};
ScoreSummary summarise(const std::vector<ForecastScore>& scores);

} // namespace winterlarder::learning
