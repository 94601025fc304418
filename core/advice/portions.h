// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/basis.h"

namespace winterlarder::advice {

//! What every feeding plan of the answer depends on; the first visit on the asking day, or where a feed was given that day when the next is usual.
feeding::FeedingQuestion feedingQuestion(const AdviceBasis& basis);

//! Share of stores a kilogram of sugar becomes at the ratio advised today.
double storesPerKgSugar(const AdviceBasis& basis);

//! Sugar for so much of stores in whole steps, up; down where the room does not take so much.
Mass sugarFor(const AdviceBasis& basis, Mass stores);

//! Sugar as syrup in usual visits from today, within the room; a check after it while closing lasts.
feeding::FeedingPlan syrupInVisits(const AdviceBasis& basis, Mass sugar);

//! Small warm portions over the cluster for so much of stores, up to the day syrup is refused, or in a dearth to a fortnight before forage.
feeding::FeedingPlan smallPortions(const AdviceBasis& basis, Mass stores);
//! Whether a portion given today would be taken.
bool takesPortions(const AdviceBasis& basis);

//! One visit with fondant for so much of stores, at most what lies on a cluster at a time (2.5 kg, a nucleus 1 kg; a handbook's figure).
feeding::FeedingPlan fondantVisit(const AdviceBasis& basis, Mass stores);

//! One portion of what is fed at this time of year: syrup up to the deadline, small portions after it while they are taken, then fondant.
feeding::FeedingPlan onePortion(const AdviceBasis& basis, Mass stores, Mass mostSugar);

//! What hard winters (80th percentile) use of the stores within so many days from the asking day.
Mass hardUseOf(const AdviceBasis& basis, double days);

//! What is missing of food for so many days at the use of hard winters (80th percentile); not below 0.
Mass missingFor(const AdviceBasis& basis, double days);

} // namespace winterlarder::advice
