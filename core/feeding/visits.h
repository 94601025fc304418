// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "feeding/schedule.h"

namespace winterlarder::feeding {

//! In which steps a keeper buys and cuts: kilograms, or where they are counted in pounds 4 lb of sugar and 1 lb of fondant.
struct Steps {
    Mass sugar{1};
    Mass fondant{0.5};
    bool operator==(const Steps&) const = default;
};
inline constexpr Steps poundSteps{kilograms(4 * 0.45359237), kilograms(0.45359237)};

//! The amount in whole steps, up or down; an amount within a gram of a step counts as that step.
Mass stepsUp(Mass amount, Mass step);
Mass stepsDown(Mass amount, Mass step);

//! kg of stores a kilogram of sugar becomes at the ratio advised on that day.
double storesPerKgSugarToday(const FeedingQuestion& question, SeasonDay last);

//! Sugar as syrup in equal visits up to a last day: the fewest that fit the dose, which is what the feeder holds, at most 5 L (`top`:
//! all of it), and what is taken from one visit to the next. The first visit today or on the keeper's next day, the next when a dose is
//! gone, none before `visitEveryDays`. What cannot be taken by the last day is left out in whole steps (`limits.tooSlow`). `question.storesWanted` is
//! not asked. `withCheck`: a check 10 days after the last dose. Sugar 0 where nothing can be taken. Tested: tests/feeding/visits_test.cpp.
FeedingPlan planSyrup(const FeedingQuestion& question, Mass sugar, Mass step, SeasonDay last, bool withCheck);

//! Small warm portions of thick syrup (2:1) over the cluster, at most `litres` each, every `visitEveryDays`, while a usual day's maximum
//! lets the bees take `leastUptake` a day or more (reached down to 10 degC); the last on `last`. As much sugar as that allows, whole steps where it
//! comes to one. Sugar 0 where it is too cold already. Tested: tests/feeding/visits_test.cpp.
FeedingPlan planSmallPortions(const FeedingQuestion& question, Mass sugar, Mass step, SeasonDay last, Volume most,
                              Volume leastUptake);
//! Whether a portion given that day would be taken.
bool portionTaken(const FeedingQuestion& question, SeasonDay day, Volume leastUptake);

//! Fondant on the cluster on one visit, today whatever day of the week it is: it is laid on where it cannot wait.
FeedingPlan planFondant(const FeedingQuestion& question, Mass fondant);

} // namespace winterlarder::feeding
