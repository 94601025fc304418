// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"

namespace winterlarder::advice {

//! Every piece of evidence about the stores as it was seen on its own day. Weighings need to know the bees and brood of
//! that day: from the ensemble where there is one, else those of the look.
std::vector<stores::Evidence> evidenceSeen(const ColonyQuestion& question, const ModelConstants& constants,
                                           const winter::DemandEnsemble* ensemble);

//! Stores a lift's word stands for on its day in a winter that is followed. Light and heavy stand for what they do in an answer; fair for as much as is
//! usual for the month (heftFairFollowed): a hive lifted in winter and called fair is as it should be. Judgement.
Mass heftFollowed(const WeighedHive& lift, const ColonyQuestion& question, const ModelConstants& constants,
                  const winter::DemandEnsemble* ensemble);

//! Honey on the hive that day which does not count as stores: what the look found in supers for people, with what came off between that day and
//! the look, or less what came off since [kg].
Mass honeyApart(const ColonyQuestion& question, SeasonDay day);

//! Stores in supers [kg]; 0 where no comb was looked at.
Mass honeyInSupers(const ColonyQuestion& question);

//! The combs whose stores the bees keep: not those of supers that are for people; none where supers alone were looked at.
std::vector<stores::Comb> combsForBees(const ColonyQuestion& question);

//! The pieces carried to the asking day: less the median of the model's net loss since, its spread in quadrature, plus feeds, less harvests
//! dated after the observation.
std::vector<stores::Evidence> carriedToAsking(const ColonyQuestion& question, std::vector<stores::Evidence> seen,
                                              const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow);

//! Median net loss between the starts of two days, and half its 10-90 % band over 1.2816 as SD.
struct LossBetween {
    Mass median;
    Mass sd;
};
LossBetween lossBetween(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow, SeasonDay from,
                        SeasonDay to);

//! Free room of the combs on the day of the look; nothing where no comb is listed.
std::optional<Mass> freeRoomAtLook(const ColonyQuestion& question);

} // namespace winterlarder::advice
