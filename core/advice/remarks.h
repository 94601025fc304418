// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/reckoning.h"

#include <vector>

namespace winterlarder::advice {

//! Why the verdict is what it is, most telling first. Details each reason carries, by name (missing ones: none):
//!   need                 need (Mass), reserve (Mass), in (double: 100 x short risk), forage (Date)
//!   surplus              spare (Mass)
//!   short-of-stores      missing (Mass)
//!   nothing-to-spare, enough   stores (Mass), need (Mass)
//!   weak-colony, small-colony  bees (double)
//!   date-moved           which (text: key of the season, "buildup"), to (Date)
//!   contradiction        first, second (text: kinds of evidence)
//!   ratio-thin           days (double)        warm days left
//!   ratio-thick          days (double)
//!   ratio-own            ratio (text)
//!   room-full            room (Mass)
//!   deadline-passed, after-advised   day (Date)
//!   too-slow             fondant (Mass)
//!   small-lots           day (Date)           syrup refused from then on
//!   moist-honey          water (double)       percent
//!   take-in-spring       spare (Mass)         typical surplus at first forage
//!   move-combs-first     from (text), kg (Mass), combs (double)
//!   locked-in-long       days (double)
//!   narrow-nest          built, covered (double)
//!   open-stores-late     open (Mass)
//!   station-used         station (text: id), km (double; absent at the station itself)
//!   height-shift         kelvin (double)
//!   flow-assumed         strength (text: none, trickle, fair, strong)
//!   stores-carried-forward   days (double), used (Mass)
//!   middle-winter-class  stores (Mass), class (text: feed, watch, fine)
//!   and, for refusals, far-from-stations km (double).
std::vector<Remark> reasonsOf(const Reckoning& reckoning, const Advice& advice);

//! Cautions that apply, in the order of the work: opening, feeding, harvest, colony, winter. Details: crystallising g (double: g per
//! kg sugar); moisture water (double) where measured; lifting none; cluster-gap within (Mass), needed (Mass);
//! pollen-short pollen (Mass); laying-stopped day (Date); heft none; early-look none.
std::vector<Remark> cautionsOf(const Reckoning& reckoning, const Advice& advice);

//! The refusals as reasons, for an answer that cannot be given.
std::vector<Remark> refusalRemarks(const ColonyQuestion& question, const std::vector<RefusalKind>& refusals);

//! Id of a refusal in shared/rules/cautions.csv.
std::string_view idOf(RefusalKind kind);

} // namespace winterlarder::advice
