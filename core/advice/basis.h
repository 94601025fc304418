// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "advice/phases.h"

#include <optional>

namespace winterlarder::advice {

//! Stores of the asking day, and what is to be left of them: the reserve, and how often winters may fall below it.
struct StoresAndReserve {
    Mass mean; //!< with what the yard's plan brings or takes away
    Mass sd;
    double shortRisk = 0.2;
    Mass reserve;
};

//! What is missing or to spare on the day winter begins for the colony, at the evidence's middle.
struct TargetBasis {
    SeasonDay day{};
    Mass stores{0};              //!< quantile 1 - short risk of the largest net loss from that day on, and the reserve
    std::vector<double> largest; //!< that loss of every winter, with the case's flow [kg]
    Mass netLoss{0};             //!< median from the asking day to that day, with the case's flow
    Spread<Mass> eaten, found;   //!< from the asking day to that day
    Spread<Mass> missing;        //!< target less what will be there; negative: to spare
    Mass deadBand{0};
    Mass toSpare{0};       //!< above the target and the usual, without flow; not below 0
    double perLogBees = 0; //!< by how much the target rises with the logarithm of the bees [kg]
};

//! What rules, options and remarks of one answer go by: everything worked out for it, in the order it is worked out.
struct AdviceBasis {
    const ColonyQuestion& question;
    const ModelConstants& constants;
    const winter::DemandEnsemble& ensemble;
    winter::AutumnFlow flow;
    std::optional<std::vector<stores::CombStores>> combs; //!< as looked at
    std::optional<Mass> freeRoom;                         //!< on the day of the look
    stores::StoresEstimate estimate;                      //!< on the asking day
    Mass carried{0};                                      //!< median net loss from the look to the asking day
    winter::WinterLosses withFlow, withoutFlow;           //!< from the asking day
    StoresAndReserve today;
    PhaseDays days;
    Phase phase = Phase::Closing;
    double lockedInDays = 0;
    TargetBasis target;
    Mass capacity{0}; //!< of the built combs that stay
    Mass level{0};    //!< stores that count for it: at the target's day, or today once that is past
    std::optional<Mass> needIfStopped;

    const DecisionConstants& rules() const { return question.decisions; }
    Mass stores() const { return today.mean; }
    Mass brought() const { return question.plan ? question.plan->brought() : kilograms(0); }
    Mass room() const { return std::max(kilograms(0), capacity - level); }
    Date on(SeasonDay day) const { return question.winter.date(day); }
};

//! The winter to simulate for a question that may be answered: from the earliest observation, at most to the season's first day. Where no
//! brood was seen and nobody knows whether the queen lays, the brood counts as not seen.
winter::WinterQuestion winterQuestion(const ColonyQuestion& question, const ModelConstants& constants);

//! No brood seen before laying is expected to stop, and neither queen nor eggs asked about: it is not known whether she lays.
bool layingInDoubt(const ColonyQuestion& question, const ModelConstants& constants);

//! Autumn flow of the question, cut at the free room of the look.
winter::AutumnFlow autumnFlow(const ColonyQuestion& question, std::optional<Mass> freeRoom);

//! Why no answer may be given; empty when it may. The first rule evaluated.
std::vector<RefusalKind> refusalsOf(const ColonyQuestion& question);

} // namespace winterlarder::advice
