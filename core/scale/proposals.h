// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/summary.h"

#include <vector>

namespace winterlarder::scale {

//! Why a day's weight is worth keeping as a weighing.
enum class KeepWhy { First, Last, FirstOfMonth, BeforeStep, AfterStep };

struct ProposedWeighing {
    Date date;
    Mass gross{0};
    bool wet = false;
    KeepWhy why = KeepWhy::FirstOfMonth;
    bool operator==(const ProposedWeighing&) const = default;
};

//! What a step would be in a keeper's book.
struct ProposedRecord {
    enum class Sort { Feed, Harvest, Manipulation };
    Date date;
    Sort sort = Sort::Manipulation;
    Mass change{0};       //!< of what stands on the scale: a feed is positive, a harvest negative
    bool certain = false; //!< false: of unknown kind, offered as a manipulation
    bool operator==(const ProposedRecord&) const = default;
};

struct Proposals {
    std::vector<ProposedWeighing> weighings; //!< by date, each date once
    std::vector<ProposedRecord> records;     //!< by date
};

//! A few weighings say as much as the whole log: its first and last day, the first of each month, the day of a step (its night lies before it)
//! and the day after. Only nights are offered (no Basis::Day) unless the log has nothing else; a wet night is, and says so. Records: one for
//! each step, none for what came and went within three days. Tested: tests/scale/kinds_test.cpp.
Proposals propose(const Summary& summary);

} // namespace winterlarder::scale
