// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/remark.h"
#include "tracking/forecast.h"

#include <optional>
#include <stop_token>
#include <vector>

namespace winterlarder::tracking {

enum class FollowState { OnCourse, EatingFaster, EatingSlower, ActNow, Dead, CannotSay };

//! One lot of fondant to lay on.
struct FondantLot {
    SeasonDay day;
    Date date;
    Mass fondant{0};
};

//! Feeding in or after winter. Syrup where it can still be ripened (a plan of core/feeding), else fondant touching the cluster in lots
//! of at most 2.5 kg (National Bee Unit) 15 days apart (western Switzerland), larger where that would not do before forage; or dry
//! sugar, in need only. Lots go on until first forage.
struct WinterFeed {
    Mass stores{0};                           //!< to be gained, of ripe stores
    std::optional<feeding::FeedingPlan> plan; //!< while syrup is possible
    Mass fondant{0};                          //!< else, in all
    Mass drySugar{0};                         //!< instead of fondant
    std::vector<FondantLot> lots;
    SeasonDay by;                             //!< lay the first lot (or begin) by this day
    SeasonDay until;                          //!< a tenth of the winters have first forage later
};

//! When and why one more weighing is worth it.
struct NextWeighing {
    SeasonDay day;
    Date date;
    double changes = 0; //!< share of what is believed in which it would change whether to feed
};

//! What to do when forage carries the colony. Missing where spring is far.
struct SpringAdvice {
    Spread<SeasonDay> carries;      //!< first forage
    Mass leave{0};                  //!< for a cold spell: the larger of the reserve and 14 days' food at that time
    Spread<Mass> surplus;           //!< stores at forage above that
    std::optional<Mass> queenRoom;  //!< to take out so that the brood of a month later finds comb
    std::vector<int> combs;         //!< that may be taken, positions in the question's combs
    bool mayTake = true;            //!< false: the hive was treated meanwhile
};

//! A weighing or an estimate as stores: the reading less what else is believed to hang on it, with one standard deviation.
struct SeenStores {
    std::size_t observation = 0; //!< place in the question's list
    SeasonDay day;
    Mass stores{0}, sd{0};
};

//! How a colony's winter goes.
struct Following {
    FollowState state = FollowState::CannotSay;
    Forecast autumn; //!< as it was forecast, its figures read from today on
    Forecast now;
    double position = 0.5; //!< share of the autumn's forecast for today that lies below what is likely now
    std::optional<WinterFeed> feed;
    std::optional<NextWeighing> nextWeighing;
    std::optional<SpringAdvice> spring;
    std::vector<Judged> judged;
    bool fitsNoWinter = false; //!< see Belief; `now` is then the autumn's forecast, and nothing is proposed
    std::vector<SeenStores> seen; //!< the weighed ones among them, by date
    double effectiveWinters = 0;
    int winters = 0;
    int drawnAgain = 0;
    std::vector<Remark> reasons, cautions;
};

//! Follows a colony. Order of states: dead; cannot say (a weighing contradicts every winter and none has confirmed it, or a sign of
//! life does, or all records together fit none); act now (it must be fed: likely below the reserve, or below it within 21 days in a tenth of what is believed, or out of
//! stores within 42 days in a tenth); else by `position`: below 0.2 eating faster than planned, above 0.8 slower, else on course.
//! Nothing where stopped. Tested: tests/tracking/follow_test.cpp.
std::optional<Following> follow(const FollowQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                                int threads = 1, std::stop_token stop = {});

} // namespace winterlarder::tracking
