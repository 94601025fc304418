// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "feeding/visits.h"
#include "reference/decision_constants.h"
#include "stores/evidence.h"
#include "stores/tare.h"
#include "tracking/observation.h"
#include "winter/larder.h"
#include "winter/learned_remarks.h"
#include "winter/question.h"

#include <optional>
#include <vector>

namespace winterlarder::tracking {

//! What was believed of the stores on the day of the decision. Where weighings took part in that belief, later ones share part of
//! their error: the same tare, the same side lifted, the same arms; the shares are the weights those pieces had (0..1, see
//! stores::EvidenceShare). With them S and each lasting error are negatively correlated: cov = -share x variance of that error,
//! all of them made smaller in one measure where S is surer than that allows.
struct StoresAtDecision {
    Mass mean{0};
    Mass sd{0};
    double weighedShare = 0; //!< of scales and lifts together: they share the tare
    double oneSideShare = 0;
    double heftShare = 0;
};

//! The last days of the times of year that say what may be fed, by the median dates of the colony.
struct FollowDays {
    SeasonDay summer;              //!< until then nothing is fed up for winter
    SeasonDay closing;             //!< syrup in usual visits
    SeasonDay late;                //!< small warm portions of syrup
    SeasonDay quietFrom;           //!< no feed from here to first forage, unless the bees would starve
    bool portionsInWinter = false; //!< a place without a winter: small portions on warm days until then
    //! where bees are locked in for long: one board of fondant when the hive is wrapped
    std::optional<SeasonDay> boardUntil;
};

//! A planned feed whose day is past, and that is neither ticked off nor struck out nor covered by what was written down as fed.
struct UntickedVisit {
    SeasonDay day;
    Date date;
    Mass stores{0}; //!< what it would have become
};

//! All that following one colony through one winter needs, as plain values.
struct FollowQuestion {
    winter::WinterQuestion winter;        //!< starts on or before `decided`; keepBrood is set for you
    Winter year{Hemisphere::North, 2000}; //!< for dates
    SeasonDay decided;                    //!< day of the autumn's answer
    SeasonDay today;                      //!< on or after it; no observation or step later than this counts
    StoresAtDecision stores;
    winter::AutumnFlow flow;
    bool asFound = false; //!< no advice of that winter was acted on: it is followed as it was found that day
    std::vector<winter::StoresStep> planned; //!< feeds and harvests the autumn's answer counted on
    std::vector<KnownStep> steps;            //!< what was done since
    std::vector<Observation> observations;   //!< any order

    // the hive on the scale
    stores::Tare tare; //!< SD 0: weighed by the keeper
    Mass beeBread = kilograms(0.7);
    bool longHive = false;

    // the keeper's wish and ways
    double shortRisk = 0.2;
    Mass reserve = kilograms(4);       //!< of today
    Mass springReserve = kilograms(1); //!< at first forage
    FollowDays days;
    feeding::Steps bought;         //!< in which sugar is bought and fondant cut
    DecisionConstants decisions{}; //!< from the shipped table
    bool nucleus = false;
    Mass fullComb{0};                    //!< honey of one full comb of this hive; 0: not known
    std::vector<UntickedVisit> unticked; //!< by date; asked about, and never taken for given
    feeding::Feeder feeder;
    std::optional<Mass> freeRoom; //!< on the day of the decision
    int visitEveryDays = 3;
    std::vector<int> visitWeekdays;

    winter::LearnedFrom learnedFrom; //!< what to say of winter.learned
    std::vector<Remark> setAside;    //!< records in doubt that are not counted here: said first
    std::vector<Remark> united;      //!< what to say of colonies that were united onto it

    // what may be taken in spring
    std::vector<hive::CombFormat> boxes; //!< from the floor up
    std::vector<stores::Comb> combs;     //!< as last looked at; empty: not listed
    double coveredCombs = 0;
    bool treated = false; //!< medicine was given while this honey was in the hive
};

} // namespace winterlarder::tracking
