// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "feeding/keepers_days.h"
#include "feeding/schedule.h"

//! What every plan of visits is made of. Internal to core/feeding. Tested: tests/feeding/schedule_test.cpp, visits_test.cpp.
namespace winterlarder::feeding {

inline constexpr Volume portionOfAVisit{5}; //!< at a visit, but for the top feeder

Temperature usualMaximum(const FeedingQuestion& question, SeasonDay day);
Volume uptakeOn(const FeedingQuestion& question, SeasonDay day);
Volume takenBetween(const FeedingQuestion& question, SeasonDay first, SeasonDay last);
//! The day on which a dose given on `given` is gone; at the latest `last`.
SeasonDay dayTaken(const FeedingQuestion& question, SeasonDay given, Volume dose, SeasonDay last);
std::optional<SeasonDay> dayOf(const std::optional<climate::SeasonDate>& date);
//! First forage, at the latest the last simulated day.
SeasonDay firstForage(const FeedingQuestion& question);
//! Where syrup is taken all winter a plan still ends with the first forage.
SeasonDay lastLiquidDay(const FeedingQuestion& question);
//! The earliest day of the next visit after one whose dose is gone on `emptied`.
SeasonDay earliestNext(const FeedingQuestion& question, SeasonDay visit, SeasonDay emptied);

struct PerKgSugar {
    double litres;
    double stores;
};
PerKgSugar perKgSugar(const Ratio& ratio);

Visit syrupVisit(const FeedingQuestion& question, SeasonDay day, Mass sugar, PerKgSugar gives);
Visit fondantVisit(const FeedingQuestion& question, SeasonDay day, Mass fondant);
Visit checkVisit(const FeedingQuestion& question, const KeepersDays& keeper, SeasonDay lastDose, SeasonDay taken);
//! Grams per kg of sugar on the coldest likely night of these days.
double mostCrystals(const FeedingQuestion& question, double massPercent, SeasonDay first, SeasonDay last);
void requireAnswerable(const FeedingQuestion& question);

} // namespace winterlarder::feeding
