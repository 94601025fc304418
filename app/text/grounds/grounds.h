// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "reference/reference.h"
#include "stores/evidence.h"
#include "text/asked.h"
#include "text/style.h"
#include "tracking/follow.h"

#include <optional>
#include <string>
#include <vector>

//! How a number was got: from what, by which rule, and where that is written. Tested: tests/app/grounds_test.cpp.
namespace winterlarder::text {

struct GroundsLine {
    QString said;
    //! ids of shared/sources.csv, the first is the one shown; none: it speaks of the keeper's own entries
    std::vector<std::string> sources;
};
struct Grounds {
    QString title; //!< the number with its name, its spread and its day
    std::vector<GroundsLine> lines;
};

//! What is eaten from the asking day to first forage, by cause, as means over the winters; and what comes in meanwhile.
struct UseParts {
    Mass adults{0}, broodWarmth{0}, broodFood{0}, income{0};
};

//! Everything the grounds of an autumn's answer are taken from.
struct AutumnGrounds {
    const advice::ColonyQuestion& question;
    const advice::Advice& advice;
    std::optional<UseParts> use;
};
//! Nothing where the number is not of such an answer, or the answer does not have it.
std::optional<Grounds> groundsOf(AskedNumber number, const AutumnGrounds& of, const ReferenceData& reference,
                                 const WordStyle& style);

//! How the stores of one comb were got. `holds`: its kilograms as shown; `name`: "Comb 4 of box 2".
Grounds groundsOfComb(const QString& name, const QString& holds, const stores::Comb& comb, double openFactor,
                      const stores::CombSpreads& spreads, const WordStyle& style);

//! The same for a winter that is followed.
std::optional<Grounds> groundsOf(AskedNumber number, const tracking::FollowQuestion& question,
                                 const tracking::Following& following, const ReferenceData& reference,
                                 const WordStyle& style);

} // namespace winterlarder::text
