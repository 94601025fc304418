// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "quantity/quantity.h"
#include "stores/weighing.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

//! What is seen of a colony after the decision of autumn, as plain values.
namespace winterlarder::tracking {

//! A scale, the sum of two sides lifted, or one side doubled [kg gross].
struct WeightSeen {
    stores::WeighingKind kind = stores::WeighingKind::Scale;
    Mass reading{0};
};
//! A hive lifted and judged: what the word stands for [kg of stores], see advice::heftFollowed. Light says that no more is there, heavy that no less is:
//! neither pulls what is believed the other way.
struct HeftSeen {
    Mass standsFor{0};
    std::optional<stores::HeftWord> word{};
    std::optional<double> relativeSd{}; //!< of the whole error, as a share of standsFor; nothing: heftSd
};
//! Stores estimated by looking at combs, with one standard deviation.
struct StoresSeen {
    Mass typical{0};
    Mass sd{0};
};
//! Living bees counted or estimated; spread as SD of the logarithm.
struct BeesSeen {
    BeeCount bees;
    double logSd = 0.15;
};
//! A cluster seen through the crown board without opening: alive, and roughly so many bees. It touches one comb more than it fills seams.
struct ClusterSeen {
    std::optional<BeeCount> bees;
    std::optional<double> seams{};
    std::optional<std::size_t> firstComb{}; //!< the first comb with bees, place in the question's combs
};
//! Bees seen flying: most likely alive.
struct FlyingSeen {};
//! A comb beside the cluster glimpsed through a window: stores on it or none.
struct CombGlimpsed {
    bool stores = true;
};
//! The colony is dead.
struct DeadOut {};

//! Dead with no stores left: it ran out before that day. Counts for learning; a winter that is followed ends with DeadOut.
struct StarvedOut {};

struct Observation {
    SeasonDay day; //!< counted at the start of the day; feeds and harvests of the same day are in it
    Date date;
    std::variant<WeightSeen, HeftSeen, StoresSeen, BeesSeen, ClusterSeen, FlyingSeen, CombGlimpsed, DeadOut, StarvedOut>
        what;
    bool wet = false; //!< rain or snow lay on the hive; weighings only
};

//! Something done to the hive on a day, of known size. Equipment changes its weight, feeds and harvests its stores as well.
struct KnownStep {
    SeasonDay day;
    enum class Kind { Feed, Harvest, Equipment } kind = Kind::Feed;
    Mass change{0};         //!< feed > 0, harvest < 0 [kg of ripe stores]; equipment either way [kg]
    std::optional<Mass> sd; //!< nothing: as a rule of its kind, see stepSd()
};

//! What an observation is of, as people tell them apart.
enum class SeenKind { Scale, TwoSidedLift, OneSidedLift, Heft, Combs, Bees, Cluster, Flying, Glimpse, Dead };
SeenKind seenKind(const Observation& observation);

//! Whether an observation is of a weight or of stores, so that it has a value on the kilogram scale.
bool isWeighed(const Observation& observation);
//! Whether it shows the colony alive for certain (a flight may be robbers').
bool showsAlive(const Observation& observation);
bool isDead(const Observation& observation);

} // namespace winterlarder::tracking
