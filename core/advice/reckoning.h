// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "advice/amounts.h"

#include <optional>

namespace winterlarder::advice {

//! Everything worked out on the way to an answer, in the order it is worked out.
struct Reckoning {
    const ColonyQuestion& question;
    const ModelConstants& constants;
    const winter::DemandEnsemble& ensemble;
    winter::AutumnFlow flow;
    std::optional<std::vector<stores::CombStores>> combs; //!< as looked at
    std::optional<Mass> freeRoom;                          //!< on the day of the look
    std::optional<Mass> roomNow;                           //!< on the asking day
    stores::StoresEstimate estimate;                       //!< on the asking day
    Mass carried{0};                                       //!< median net loss from the look to the asking day
    winter::WinterLosses withFlow, withoutFlow;
    Wish wish;
    Amounts amounts;
    bool harvestable = false; //!< see mayHarvest()
};

//! The winter to simulate for a question that may be answered: from the earliest observation, at most to the season's first day.
winter::WinterQuestion winterQuestion(const ColonyQuestion& question);

//! Autumn flow of the question, cut at the free room of the look.
winter::AutumnFlow autumnFlow(const ColonyQuestion& question, std::optional<Mass> freeRoom);

//! Why no answer may be given; empty when it may. The first rule evaluated.
std::vector<RefusalKind> refusalsOf(const ColonyQuestion& question);

} // namespace winterlarder::advice
