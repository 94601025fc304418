// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "calendar/season_day.h"
#include "climate/climate_curve.h"
#include "climate/season.h"
#include "feeding/syrup.h"
#include "quantity/quantity.h"
#include "support/choices.h"

#include <optional>
#include <vector>

namespace winterlarder::feeding {

//! How a feeder offers food; contact, frame and end feeders are emptied half as fast.
struct Feeder {
    Volume capacity{6};
    bool top = false;            //!< the wide feeder across the hive: no 5 L limit a visit
    bool touchesCluster = false; //!< contact, frame, end: bees reach it down to a daily maximum of 10 C, else 13 C
    bool slow = false;           //!< contact, frame, end
};

//! Litres a day at a daily maximum of 18 C and more by bees: linear between 2,000: 0.1, 5,000: 0.3, 10,000: 2, 20,000 and
//! more: 4 (common practice), 0 at 0 bees; falling linearly to nothing at 13 C (10 C where the feeder touches the cluster).
//! Half of it where the feeder is slow. Tested: tests/feeding/uptake_test.cpp.
Volume uptakePerDay(BeeCount bees, Temperature dailyMaximum, const Feeder& feeder);

//! The ratio advised for winter stores and why: 3:2 while at least five weeks of days with a normal daily maximum (mean + 4 K)
//! above 15 C remain up to the last day, else 2:1. No last day: the whole year counts. Tested: tests/feeding/uptake_test.cpp.
struct RatioAdvice {
    Ratio ratio;
    int warmDaysLeft = 0;
    bool thin = true; //!< 3:2
};
RatioAdvice adviseRatio(const climate::ClimateCurve& curve, SeasonDay today, std::optional<SeasonDay> lastDay,
                        TemperatureDifference diurnalHalfRange);

using winterlarder::VisitKind;
struct Visit {
    SeasonDay day{};
    Date date;
    VisitKind kind = VisitKind::Syrup;
    Mass sugar{0};
    Volume syrup{0};
    Mass fondant{0};
    Mass stores{0}; //!< what it becomes
};

//! Everything a feeding plan depends on.
struct FeedingQuestion {
    Mass storesWanted{0}; //!< kg of ripe stores to be gained, > 0
    Winter winter{Hemisphere::North, 2000};
    SeasonDay today{}; //!< -153..180
    const climate::ClimateCurve* curve = nullptr;
    climate::SeasonDates season{};
    BeeCount bees{};
    Feeder feeder{};
    std::optional<Mass> freeRoom{};   //!< ripe stores the combs still hold; nothing = not known
    int visitEveryDays = 3;           //!< days from one visit to the next at least; under 1 counts as 1
    std::vector<int> visitWeekdays{}; //!< ISO 1..7, empty = any
    std::optional<Ratio> ratio{};     //!< the keeper's own; nothing = advised
    TemperatureDifference diurnalHalfRange{4};
};

//! Who or what limited the plan.
struct FeedingLimits {
    bool roomFull = false;       //!< the combs cannot take more: say so
    bool deadlinePassed = false; //!< no syrup any more
    bool tooSlow = false;        //!< not all could be taken as syrup by the last day
    bool afterAdvised = false;   //!< syrup is still planned after feedAdvisedBy
    bool smallLotsOnly =
        false; //!< between syrupDeadline and syrupRefused: thick syrup in lots of at most 1 L might be taken, may stay open
};

struct FeedingPlan {
    Ratio ratio;
    RatioAdvice advised;
    Syrup syrup; //!< the whole of it (sugar 0: none)
    Mass fondant{0};
    std::optional<SeasonDay> lastDay; //!< syrupDeadline; nothing = syrup all winter
    std::vector<Visit> visits; //!< by day; a check 10 days after the last syrup dose, not later than syrupRefused
    FeedingLimits limits;
    double crystallisingGPerKg =
        0; //!< up to, at the lowest likely daily minimum (normal - 4 - 1.2816 SD of a day's mean over all years) from the
           //!< first visit to the last day
    Mass stores{0}; //!< planned in all
};

//! Syrup first, then fondant for what cannot be had as syrup; the stores planned are those wanted, to 0.05 kg.
//! - A dose is min(feeder, 5 L unless the top feeder, what is left, room left, what is still taken by the last day at the uptake of
//!   the normal daily maximum). Sugar of a full feeder is weighed out in steps of 0.1 kg. A dose the last day cuts below
//!   0.5 L is left out (judgement).
//! - The next visit comes when a dose is gone, not sooner than visitEveryDays and on the keeper's weekdays; the first
//!   today or on the next such weekday.
//! - Nothing liquid after syrupDeadline; without one the plan ends with first forage.
//! - Fondant lies on when the last syrup is gone, today where there is none, in lots of 15 kg, each for three weeks.
//! - The check comes 10 days after the last dose or when it is gone, not later than syrupRefused.
//! ContractViolation without a curve, for stores of 0 or less, for a day outside -153..180, for a ratio mixForSugar refuses.
//! Tested: tests/feeding/schedule_test.cpp (by hand), schedule_properties_test.cpp, calendar_rules_test.cpp (last days).
FeedingPlan planFeeding(const FeedingQuestion& question);

} // namespace winterlarder::feeding
