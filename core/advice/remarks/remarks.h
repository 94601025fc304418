// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/basis.h"

#include <vector>

namespace winterlarder::advice {

//! Why the verdict is what it is: the rule that gave it first, then the numbers, then feeding, harvest, colony and place. Details each
//! reason carries stand beside where it is said (remarks_decision.cpp, remarks_reasons.cpp); what every detail is called and shown as: shared/rules/cautions.csv
//! with app/text. Texts of refusals: see refusalRemarks.
std::vector<Remark> reasonsOf(const AdviceBasis& basis, const Advice& advice);

//! Reasons that say which rule gave the verdict and what follows from it. Part of reasonsOf.
std::vector<Remark> decisionRemarks(const AdviceBasis& basis, const Advice& advice);

//! Cautions that apply in this season and hemisphere, the most telling first: this case's danger, what to check before acting, robbing and safe feeding,
//! honey safety, the next date, then good practice. See fiveCautions for which of them are shown first.
std::vector<Remark> cautionsOf(const AdviceBasis& basis, const Advice& advice);

//! The refusals as reasons, for an answer that cannot be given.
//! The place a usual figure is of, as it is said.
std::string placeOf(const UsualHere& usual);

std::vector<Remark> refusalRemarks(const ColonyQuestion& question, const std::vector<RefusalKind>& refusals);

//! Id of a refusal in shared/rules/cautions.csv.
std::string_view idOf(RefusalKind kind);

} // namespace winterlarder::advice
