// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/grounds.h"

//! What the grounds of both kinds of answer are made of.
namespace winterlarder::text {

inline constexpr double bandHalfWidth = 1.2816; //!< standard deviations: ten to ninety of a hundred

//! A reason in words with the sources it has in shared/rules/cautions.csv.
GroundsLine lineOf(const Remark& remark, const ReferenceData& reference, const WordStyle& style);
//! Where it is written how exact such evidence is.
std::vector<std::string> sourcesOfEvidence(const std::string& kind);
QString temperatureAt(double degreesC, const WordStyle& style); //!< "34.5 \u00b0C"
QString smallMass(double gram, const WordStyle& style);         //!< "0.15 g"

} // namespace winterlarder::text
