// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"
#include "reference/reference.h"

#include <optional>

namespace winterlarder::desk {

//! What a keeper tries out; nothing of it is written down.
struct WhatIf {
    // amounts: laid over the winters at hand
    Mass take{0};  //!< taken off on the day asked about
    Mass sugar{0}; //!< fed as the visits allow
    // demand: the winters are simulated anew
    bool wrapped = false;
    double beesPercent = 0; //!< more (> 0) or fewer bees
    int forageDaysLater = 0;
    bool operator==(const WhatIf&) const = default;

    bool changesAmounts() const { return take > Mass(0) || sugar > Mass(0); }
    bool changesDemand() const { return wrapped || beesPercent != 0 || forageDaysLater != 0; }
};

//! The records as they would be with another demand. First forage is moved from where the answer has it.
book::ColonyCase caseWith(const book::ColonyCase& record, const advice::ColonyQuestion& question, const WhatIf& wish);

//! One answer's winters, made ready for amounts to be laid over them many times a second.
class Trials {
public:
    //! Nothing can be tried where no answer could be given, or its winters were let go.
    static std::optional<Trials> of(AnsweredPointer base, const ModelConstants& constants);

    struct Trial {
        advice::Option option;
        std::optional<feeding::FeedingPlan> plan;
        std::shared_ptr<const WinterPicture> picture; //!< left alone, and tried; days are not read out of the tried one
    };
    Trial tryOut(const WhatIf& wish) const;
    const AnsweredColony& base() const { return *base_; }

private:
    Trials(AnsweredPointer base, std::shared_ptr<const winter::DemandEnsemble> winters, double diurnalHalfRange);
    std::optional<feeding::FeedingPlan> planFor(Mass sugar) const;

    AnsweredPointer base_;
    std::shared_ptr<const winter::DemandEnsemble> winters_;
    double diurnalHalfRange_;
    std::vector<PairedWinter> pairs_, drawn_;
    winter::WinterLosses losses_;
};

//! The advice that would be acted on if the trial became the plan: its visits, its honey.
advice::Advice adviceOf(const Trials::Trial& trial, const AnsweredColony& base, const WhatIf& wish);

// Tested: tests/app/what_if_test.cpp.

} // namespace winterlarder::desk
