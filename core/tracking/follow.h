// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/remark.h"
#include "tracking/food_reach.h"
#include "tracking/forecast.h"
#include "tracking/lifted_light.h"

#include <optional>
#include <stop_token>
#include <string_view>
#include <vector>

namespace winterlarder::tracking {

//! In the order in which they are asked.
enum class FollowState {
    Dead,
    CannotSay,
    FoodOutOfReach,
    ActNow,
    Dwindling,
    LessThanThought,
    FeedNotRecorded,
    EatingFaster,
    MoreThanNeeded,
    OnCourse,
};
//! Its name in answers: "on_course".
std::string_view word(FollowState state);

//! One lot of fondant to lay on.
struct FondantLot {
    SeasonDay day;
    Date date;
    Mass fondant{0};
};

//! What is fed next. In closing syrup in usual visits, after it small warm portions while they are taken; then one visit with fondant touching the
//! cluster, at most 2.5 kg (National Bee Unit; a nucleus 1 kg), dated a week before it is needed; or dry sugar, in need only. What may be wanted after it is
//! an expectation (LaterFeed).
struct WinterFeed {
    Mass stores{0};                           //!< what it becomes, of ripe stores
    std::optional<feeding::FeedingPlan> plan; //!< of syrup
    Mass fondant{0};                          //!< else, the one visit's
    Mass drySugar{0};                         //!< instead of fondant
    std::vector<FondantLot> lots;             //!< that visit
    SeasonDay by;                             //!< the day it is needed; of a plan its first visit
    SeasonDay until;                          //!< a tenth of the winters have first forage later

    SeasonDay begins() const {
        return !lots.empty() ? lots.front().day : plan && !plan->visits.empty() ? plan->visits.front().day : by;
    }
};

//! What is likely to be wanted after the next feed.
struct LaterFeed {
    Spread<Mass> sugar, fondant; //!< sugar in summer, else fondant
    SeasonDay from, until;
};

//! When and why one more weighing is worth it.
struct NextWeighing {
    SeasonDay day;
    Date date;
    double changes = 0; //!< share of what is believed in which it would change whether to feed
    bool forAVisit =
        false; //!< wanted whatever it changes: before fondant that is planned, or two weeks after fondant of today
};

//! What to do when forage carries the colony. Missing where spring is far.
struct SpringAdvice {
    Spread<SeasonDay> carries; //!< first forage
    Mass leave{0};             //!< for a cold spell: the larger of the reserve and 14 days' food at that time
    //! Stores at forage above that, where they may come out: more is there than needed, and no more winters fall short than may. Else 0.
    Spread<Mass> surplus;
    std::optional<Mass>
        queenRoom;          //!< to take out so that the brood of a month later finds comb; under the same condition
    std::vector<int> combs; //!< that may be taken up to the surplus's low end, positions in the question's combs
    bool mayTake = true;    //!< false: the hive was treated meanwhile
};

//! A weighing or an estimate as stores: the reading less what else is believed to hang on it, with one standard deviation.
struct SeenStores {
    std::size_t observation = 0; //!< place in the question's list
    SeasonDay day;
    Mass stores{0}, sd{0};
};

//! Fewer bees than a poor winter leaves.
struct Dwindled {
    Date day;
    BeeCount seen, least; //!< seen; the 10th percentile of what autumn expected for that day
};

//! What a hive lost between two weighings on one scale, beside what was expected.
struct EatenFaster {
    std::size_t second = 0; //!< place of the later weighing in the question's list
    Date from, until;
    Mass lost{0}, expected{0};
    bool checkScale = false; //!< no simulated winter comes near the later one
};

//! The last weighing, where it lies as far above what was expected again as the 90th percentile does.
struct Heavier {
    Date day;
    Mass seen{0}, low{0}, high{0}; //!< the reading; 10th and 90th percentile of what was expected
};

//! How a colony's winter goes.
struct Following {
    FollowState state = FollowState::CannotSay;
    Forecast autumn; //!< as it was forecast, its figures read from today on
    Forecast now;
    double position = 0.5; //!< share of the autumn's forecast for today that lies below what is likely now
    Mass missing{0};       //!< see missingNow; 0 where it is dead or fits no winter
    //! more of what is believed falls below the reserve than may (FollowQuestion::shortRisk): it will not do without feeding
    bool fallsShort = false;
    std::optional<WinterFeed> feed;
    std::optional<LaterFeed> expectedLater; //!< nothing where it is under half a kilogram even at its high end
    std::optional<OutOfReach> outOfReach;
    std::optional<Dwindled> dwindled;
    std::optional<EatenFaster> faster;
    std::optional<LiftedLight> light;
    std::optional<Heavier> heavier;
    std::optional<NextWeighing> nextWeighing;
    std::optional<SpringAdvice> spring;
    std::vector<Judged> judged;
    bool fitsNoWinter = false;    //!< see Belief; `now` is then the autumn's forecast, and nothing is proposed
    std::vector<SeenStores> seen; //!< the weighed ones among them, by date
    double effectiveWinters = 0;
    int winters = 0;
    int drawnAgain = 0;
    std::vector<Remark> reasons;
    std::vector<Remark> cautions, goodPractice; //!< at most five; the rest
};

//! Follows a colony. The state is the first that applies: dead; cannot say (a weighing contradicts every winter, none has confirmed it and no other on
//! its scale shows it eaten; or it is far heavier than can be explained (heavier); or a sign of life does; or all records together fit none); food out of reach
//! (foodOutOfReach); act now (less than 21 days of food at the 80th percentile of use, or light when lifted and not weighed lately: LiftedLight); dwindling; less than thought; feed not recorded (asked about: no feed is taken for given);
//! eating faster; more than needed (see course.h); on course. Nothing where stopped. Tested: tests/tracking/follow_states_test.cpp,
//! follow_test.cpp.
std::optional<Following> follow(const FollowQuestion& question, const ModelConstants& constants,
                                winter::Sampling sampling, int threads = 1, std::stop_token stop = {});

} // namespace winterlarder::tracking
