// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "numerics/quantile.h"
#include "quantity/quantity.h"
#include "winter/demand.h"

#include <vector>

namespace winterlarder::winter {

//! Autumn income as the keeper describes it: strength 0 none, 0.1 trickle, 0.3 fair, 1 strong. What weeds and ivy bring
//! every autumn (DemandEnsemble::autumnTrickle) comes in whatever the flow; only what is beyond it counts here.
struct AutumnFlow {
    double strength = 0;
    std::optional<SeasonDay> lastDay; //!< a strong flow stops 14 days after the asking day
    std::optional<Mass> room; //!< cumulative income beyond the trickle is cut here in each winter; nothing = no cut
};

//! What a flow brings beyond the trickle, as a share of the autumn income: max(0, strength - trickle).
double beyondTrickle(const AutumnFlow& flow, const DemandEnsemble& ensemble);

//! A change of the stores on a day: a feed (> 0) or a harvest (< 0), in kg of ripe stores, counted from that day on.
struct StoresStep {
    SeasonDay day;
    Mass change;
};

//! Per winter, loss counted from the start of the asking day [kg]: net of income, feeds taken off.
struct WinterLosses {
    std::vector<double> largest;             //!< max(0, largest net loss) to the end of the run
    std::vector<double> largestBeforeForage; //!< the same to the last day before that winter's forage
    std::vector<double> atForage;            //!< net loss at the last day before forage
    std::vector<double> used;                //!< food eaten to forage
};

//! Losses of every winter from `from` on under a flow, with dated steps laid in. With `touchFrom` only days from there
//! on count towards the largest loss (a feed under way must not count as a shortage yet).
WinterLosses lossesFrom(const DemandEnsemble& ensemble, SeasonDay from, const AutumnFlow& flow,
                        const std::vector<StoresStep>& steps = {}, std::optional<SeasonDay> touchFrom = {});

//! Net loss of every winter from the start of one day to the start of a later one, autumn flow counted [kg].
std::vector<double> netLossBetween(const DemandEnsemble& ensemble, const AutumnFlow& flow, SeasonDay from,
                                   SeasonDay to);

//! Largest net loss of every winter from the start of a day to the end of a later one, autumn flow counted [kg]; at least 0, and 0 where
//! the later day comes first. Days beyond the run count as its last.
std::vector<double> largestLossUntil(const DemandEnsemble& ensemble, const AutumnFlow& flow, SeasonDay from,
                                     SeasonDay last);

//! Whether stores that come down to a margin exactly are short.
enum class Short { Reached, Undercut };
//! Mean over winters of P(S <= loss + margin), S normal with the level's mean and SD, cut at 0; its standard error is the
//! SD of the winters' values over sqrt(n). Undercut asks P(S < loss + margin), which differs only where SD is 0.
Share shareShort(const std::vector<double>& largestLoss, Mass mean, Mass sd, Mass margin, Short when);

//! 10th, 50th and 90th percentile of max(0, S - loss at forage) over winters and S together; a starved winter counts 0.
Spread<Mass> storesAtForage(const WinterLosses& losses, Mass mean, Mass sd);

//! One level of stores for each winter out of a normal law cut at 0, spread evenly over it and independent of the winters (a golden-ratio
//! sequence): quantiles over winters and stores together come from adding them [kg].
std::vector<double> storesDrawn(std::size_t winters, Mass mean, Mass sd);

using numerics::quantile;
using numerics::sortedQuantile;
//! Percentiles 10, 50 and 90 of masses over winters [kg], by the same rule.
Spread<Mass> massSpread(std::vector<double> kg);

//! What becomes of one level of stores over those winters.
struct LarderOutcome {
    Share runsOut;
    Share touchesReserve;
    Spread<Mass> atForage;
};
LarderOutcome follow(const WinterLosses& losses, Mass mean, Mass sd, Mass reserve);

} // namespace winterlarder::winter
