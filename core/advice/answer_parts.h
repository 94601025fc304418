// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/phases.h"
#include "calendar/date.h"
#include "quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace winterlarder::advice {

//! The rule that gave the verdict: the first that applies, in this order.
enum class DecidedBy {
    CannotSay,
    Disease,
    NoFoodInReach,
    ActNow,
    NoQueen,
    Contradiction,
    Heft, //!< nothing but a lift tells what stores there are
    Weak,
    SummerPortion, //!< below the safety amount
    SummerHarvest,
    SummerSafe,
    Full,
    Feed,          //!< in closing: up to the target
    SmallPortions, //!< in late, and on warm days of a dearth
    Board,         //!< fondant laid on when the hive is wrapped
    LateBoard,     //!< the same after its last day, since most winters starve the colony
    WinterVisit,   //!< one portion of fondant that is due
    ShortLater,    //!< missing, but nothing is to be fed today
    Harvest,
    Enough,
};

//! The three parts of the need, which add up to it.
struct NeedParts {
    Mass typicalUse{0};
    Mass harderWinter{0};
    Mass reserve{0};
};

//! What is usual here: stores that keepers of the place are told to winter on [kg of honey in the hive].
struct UsualHere {
    Mass low{0}, high{0};
    std::string source; //!< id of a source, or of the row's
    std::string place;
    char quality = 'C';       //!< C: shown, and holds back no harvest
    bool ofElsewhere = false; //!< of the nearest place with such winters, not of this one
    bool operator==(const UsualHere&) const = default;
};

//! What the hive should hold on the day winter begins for it.
struct Target {
    Date date;
    SeasonDay day;
    Mass stores{0};
    double combs = 0; //!< full combs of this hive, to half a comb
    Mass gross{0};    //!< with the empty hive, bees, bee bread and brood
    Mass tare{0};
    bool tareGiven = false;
    bool withoutSuper = false; //!< a super for people is on now, and neither it nor its honey is in the weights
    std::optional<UsualHere> usual;
};

//! From the asking day to the target's: what is eaten, and what the bees find.
struct UntilTarget {
    Spread<Mass> eaten, found;
};

struct WeighPoint {
    Date date;
    Spread<Mass> gross;
};

//! What is likely to be wanted after what is planned now.
struct ExpectedLater {
    Spread<Mass> sugar, fondant;
    Date from, until;
};

enum class NextLookAt { Weigh, CountMites, CheckFeed, Inspector, QueenCells };
struct NextLook {
    Date date;
    NextLookAt what = NextLookAt::Weigh;
};

//! A question to the keeper whose answer would move the advice most, and by how much [kg].
enum class AskKind { Queen, Mites, FedOrTreated, SuperFor, Tare, FlowToCome, FullCombs, WinterVisits, FoodBesideBees };
struct Ask {
    AskKind kind = AskKind::Mites;
    double movesKg = 0;
    std::vector<std::string> flows{}; //!< of FlowToCome: what is usual near the place, the nearest first
};

//! Uniting: onto which colony (empty: none is known), and the last day of it.
struct UniteAdvice {
    std::string partner;
    Date by;
    bool longHive = false;  //!< combs are brought side by side, nothing goes on top
    bool queenless = false; //!< there is one queen at the most: the partner's
};

//! Where a comb hangs: its box from the floor and its place from the left, from 0.
struct CombPlace {
    int box = 0, place = 0;
    bool operator==(const CombPlace&) const = default;
};

//! Combs of stores from a colony of the yard that can spare them.
struct CombGift {
    std::string from, to;
    std::vector<int> combs;          //!< positions in the giver's combs
    Mass honey{0};                   //!< what the receiver gains: those combs less the ones that go back
    std::vector<CombPlace> places{}; //!< of those combs in the giver's hive
    int boxes = 1;                   //!< of the giver's hive
    //! positions in the receiver's combs, which take those places; fewer where it has free ones
    std::vector<int> back{};
    bool operator==(const CombGift&) const = default;
};

//! What the plan of its yard does with a colony on the asking day.
struct PartInYard {
    std::vector<CombGift> given, received;
    std::string uniteWith; //!< the colony it becomes one with; empty: none
    std::optional<Date> uniteBy;
    BeeCount joinedBees{0}; //!< of a colony united onto this one, on the asking day ...
    Mass joinedStores{0};   //!< ... and its stores
    Mass brought() const;   //!< stores that the combs bring; negative: take away
    bool operator==(const PartInYard&) const = default;
};

//! What is in a hive today, before another colony is united onto it.
struct AloneToday {
    Spread<Mass> stores;
    Spread<BeeCount> bees;
};

//! Whether a colony has the bees for a winter alone, and how many it typically has on the day that tells.
struct Strength {
    BeeCount bees;
    bool enough = false;
};

} // namespace winterlarder::advice
