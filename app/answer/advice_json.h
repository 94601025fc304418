// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "book/entries/records.h"
#include "exchange/json/json_output.h"
#include "reference/reference.h"
#include "text/style.h"

namespace winterlarder::answer {

//! An answer in the keys of the manual.
exchange::Json adviceJson(const book::ColonyCase& record, const advice::ColonyQuestion& question,
                          const advice::Advice& advice, const ReferenceData& reference, const text::WordStyle& style);

//! A feeding plan; null where there is none.
exchange::Json feedJson(const std::optional<feeding::FeedingPlan>& plan, const Winter& winter);

//! Reasons or cautions: {"id", "text", "source"}.
exchange::Json remarksJson(const std::vector<Remark>& remarks, const ReferenceData& reference,
                           const text::WordStyle& style);

} // namespace winterlarder::answer
