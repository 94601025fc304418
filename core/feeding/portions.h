// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "feeding/visits.h"
#include "reference/decision_constants.h"

//! How much is given at a time, reckoned alike for an answer and for a winter that is followed. Tested: tests/feeding/portions_test.cpp.
namespace winterlarder::feeding {

//! Fondant of one visit: at least and at most so much, in steps as it is cut. A nucleus gets less: its least is one step, or half a kilogram.
struct FondantVisits {
    Mass least{0}, most{0}, step{0};
};
FondantVisits fondantVisits(const DecisionConstants& rules, bool nucleus, Mass step);

//! One visit's fondant for so much of stores: whole steps, up, within what a visit allows.
Mass fondantFor(Mass stores, const FondantVisits& visits);

//! The board laid on when a hive is wrapped, for so much of stores: whole steps, up, to at most what a board holds.
Mass boardFor(Mass stores, const DecisionConstants& rules, Mass step);

//! Sugar for so much of stores in whole steps, up; down where the combs have no room for so much. `gives`: stores of a kilogram of sugar; no room: not known.
Mass sugarFor(Mass stores, double gives, std::optional<Mass> room, Mass step);

//! The first day of a plan made on `today`: that day, or where a feed was given that day the next one that is usual.
SeasonDay firstVisit(SeasonDay today, bool fedToday, int visitEveryDays);

//! The last days of small portions: late autumn's, or in a dearth the last before the quiet time ahead of spring forage.
struct PortionDays {
    SeasonDay late, quietFrom;
    bool dearth = false;
    SeasonDay last() const { return dearth ? quietFrom : late; }
};

//! Small portions (planSmallPortions) of at most `lateLitres`, while `lateUptake` or more is taken a day.
FeedingPlan smallPortions(const FeedingQuestion& question, Mass sugar, Mass step, const PortionDays& days,
                          const DecisionConstants& rules);
//! Whether a portion given that day is taken, and still in its time.
bool portionTaken(const FeedingQuestion& question, SeasonDay day, const PortionDays& days,
                  const DecisionConstants& rules);

//! From when fondant after today's feed may be wanted: up to late autumn not before mid January, and a fortnight after what was laid on.
SeasonDay fondantFrom(SeasonDay today, std::optional<SeasonDay> laidOn, bool upToLate, const DecisionConstants& rules);

} // namespace winterlarder::feeding
