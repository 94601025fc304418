// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/follow.h"

namespace winterlarder::tracking {

//! Everything worked out on the way to what is said of a winter.
struct Reckoned {
    const FollowQuestion& question;
    const ModelConstants& constants;
    const Tracked& planned;
    const Tracked& tracked;
    const Following& following; //!< as far as it is filled
};

//! Smallest amount of stores, in 0.1 kg steps, that keeps the share of what still lives that comes below the reserve at or under the
//! wished risk, if it lay in the hive today.
Mass missingNow(const Reckoned& r);

//! How so much is fed today: see WinterFeed.
WinterFeed feedNow(const Reckoned& r, Mass stores);

//! The first day, weekly from a week on until a week before forage, at which one more weighing would change whether to feed in at
//! least a tenth of what is believed: particles are sorted by what they would weigh (reading error counted) into tenths, in each the
//! decision is found again. Nothing where no weighing changes anything. Tested: tests/tracking/follow_test.cpp.
std::optional<NextWeighing> nextWeighing(const Reckoned& r);
inline constexpr double worthWeighing = 0.1;

//! From 45 days before first forage on.
std::optional<SpringAdvice> springAdvice(const Reckoned& r);

//! Every weighing, heft and estimate so far as stores. Tested: tests/tracking/follow_test.cpp.
std::vector<SeenStores> seenStores(const Reckoned& r);

//! Why it is said, and what to mind. Details by name:
//!   follow-course, follow-faster, follow-slower   stores (Mass, likely now), planned (Mass)
//!   follow-reserve-by        day (Date: half of what is believed), in (double: of 100 that touch it)
//!   follow-act-now           stores (Mass, to give), day (Date, by)
//!   follow-dead              day (Date)
//!   weighing-contradicts     day (Date), seen, low, high (Mass)
//!   unexplained-change       day (Date), change (Mass)
//!   sign-contradicts         day (Date)
//!   fits-no-winter           day, decided (Date), had, given, taken (Mass)
//!   drawn-again, few-winters winters (double)
//!   wet-weighing             day (Date)
//!   weather-so-far           days (double)
//!   learned-use, learned-death, learned-forage   as winter::learnedRemarks says
//!   next-weighing            day (Date)       no-more-weighing: none
//!   spring-carries           day (Date)
//!   spring-leave             leave (Mass)
//!   spring-surplus           surplus (Mass)
//!   queen-room               room (Mass)
//! and cautions look-from-outside temperature (Temperature), fondant-on-cluster, fondant-long-hive, dry-sugar sugar (Mass),
//! flight-may-be-robbers, spring-not-this-honey, treated-honey, old-feed-stays-down, cold-spell, dead-out, emergency, heft,
//! opening-cold, unknown-honey, varroa-first, local-rules as they are shipped.
std::vector<Remark> followReasons(const Reckoned& r);
std::vector<Remark> followCautions(const Reckoned& r);

} // namespace winterlarder::tracking
