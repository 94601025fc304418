// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/follow.h"

namespace winterlarder::tracking {

//! What rules and remarks of a followed winter go by: everything worked out for it.
struct FollowBasis {
    const FollowQuestion& question;
    const ModelConstants& constants;
    const Tracked& planned;
    const Tracked& tracked;
    const Following& following; //!< as far as it is filled
};

//! Light when lifted, and no weighing says otherwise.
inline bool lightAlone(const Following& following) { return following.light && !following.light->weighed; }

//! Smallest amount of stores, in 0.1 kg steps, that keeps the share of what still lives that comes below the reserve at or under the
//! wished risk, if it lay in the hive today.
Mass missingNow(const FollowBasis& r);

//! What is fed next, by state and time of year: see WinterFeed. Out of reach and act now: one visit today (light when lifted: the most of a visit). Cannot say: the same where food runs short,
//! else nothing. More than needed, and in summer: nothing. In closing up to what is missing; in late small portions, or a board where bees are locked in for
//! long; else one visit, dated so that it is needed within a week at the use of hard winters (`dueDays`), and none within a fortnight of
//! first forage. Less missing than `deadLeast` is enough as it is. Tested: tests/tracking/winter_feed_test.cpp.
std::optional<WinterFeed> feedNow(const FollowBasis& r);

//! What may be wanted after that feed, over what is believed: sugar in summer, else fondant until a fortnight before first forage.
std::optional<LaterFeed> expectedLater(const FollowBasis& r);

//! The first day, weekly from a week on until a week before forage, at which one more weighing would change whether to feed in at
//! least a tenth of what is believed: particles are sorted by what they would weigh (reading error counted) into tenths, in each the
//! decision is found again. Where fondant is planned, laid on or expected, no later than its visit, two weeks after it, or its first day. Lifted light: within three days, or today where a weighing says otherwise. Nothing where no weighing changes anything. Tested: tests/tracking/follow_test.cpp.
std::optional<NextWeighing> nextWeighing(const FollowBasis& r);
inline constexpr double worthWeighing = 0.1;

//! From 45 days before first forage on.
std::optional<SpringAdvice> springAdvice(const FollowBasis& r);

//! Every weighing, heft and estimate so far as stores. Tested: tests/tracking/follow_test.cpp.
std::vector<SeenStores> seenStores(const FollowBasis& r);

//! Why it is said, and what to mind. Details by name:
//!   follow-as-found          day (Date, it is followed from)        follow-not-begun   day (Date; said by answer::asAdvised)
//!   follow-course            stores (Mass, likely now), planned (Mass), class ("well", "short": as expected but not enough, "less": not even as expected)
//!   follow-out-of-reach, follow-gap   day (Date)
//!   follow-dwindling         day (Date), seen, least (double: bees, to the hundred)
//!   follow-less-than-thought thought, now (Mass, at the start), day (Date)
//!   feed-not-recorded        day (Date, the first), stores (Mass, of all)
//!   follow-faster            from, until (Date), lost, expected (Mass)      check-the-scale  day (Date)
//!   follow-more              stores (Mass: nine winters of ten have so much at first forage)
//!   follow-reserve-by        day (Date: half of what is believed), in (double: of 100 that fall below it), reserve (Mass)
//!   follow-act-now           stores (Mass, likely now), days (double: that must be lasted)
//!   follow-light, follow-light-weighed   day (Date), weighed (Date)
//!   follow-heavier           day (Date), seen, low, high (Mass)
//!   follow-dead              day (Date)
//!   weighing-contradicts     day (Date), seen, low, high (Mass)
//!   unexplained-change       day (Date), change (Mass)
//!   sign-contradicts         day (Date)
//!   fits-no-winter           day, decided (Date), had, given, taken (Mass)
//!   drawn-again, few-winters winters (double)
//!   wet-weighing             day (Date)
//!   weather-so-far           days (double)
//!   learned-use, learned-death, learned-forage   as winter::learnedRemarks says
//!   next-weighing, next-weighing-visit   day (Date)       no-more-weighing: none
//!   spring-carries           day (Date)
//!   spring-leave             leave (Mass)
//!   spring-surplus           surplus (Mass: nine springs of ten have so much), class ("take", "bees": treated, so not for people)
//!   queen-room               room (Mass)
//! and cautions look-from-outside temperature (Temperature), class ("closed", "lid", "moment" by it; "fed" where food is laid on today), fondant-on-cluster, fondant-long-hive, feed-inside, robbing-and-wasps, dry-sugar sugar (Mass),
//! comb-against-cluster, when-dwindling, flight-may-be-robbers, spring-not-this-honey, treated-honey, old-feed-stays-down, cold-spell, dead-out, heft, unknown-honey,
//! local-rules as they are shipped.
std::vector<Remark> followReasons(const FollowBasis& r);
//! This winter's danger first.
std::vector<Remark> followCautions(const FollowBasis& r);

} // namespace winterlarder::tracking
