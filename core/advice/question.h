// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "climate/season.h"
#include "climate/site.h"
#include "feeding/schedule.h"
#include "hive/hive.h"
#include "quantity/quantity.h"
#include "reference/reference.h"
#include "reference/remark.h"
#include "stores/evidence.h"
#include "winter/larder.h"
#include "winter/learned_remarks.h"
#include "winter/question.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace winterlarder::advice {

//! Why no answer may be given. Order of evaluation = order here.
enum class RefusalKind {
    FarFromStations,   //!< farther than 600 km from any station
    NoColony,          //!< 0 bees
    BeesUnknown,
    StoresUnknown,
    OutOfSeason,       //!< season day 181..211
    SeasonNotDerivable,
    AfterForage,
};

//! One weighing as it was made; becomes evidence once the model tells how many bees there were that day.
struct WeighedHive {
    enum class Kind { Scale, TwoSidedLift, OneSidedLift, Heft } kind = Kind::Scale;
    SeasonDay day;
    Date date;
    Mass reading{0};        //!< gross; sum of both sides; one side doubled
    double heftFactor = 0;  //!< 0.5 light, 0.9 fair, 1.3 heavy
    bool longHive = false;  //!< one-sided lift errs less
};

struct GivenFeed {
    SeasonDay day;
    Mass stores; //!< what it became
    bool liquid = true;
};
struct TakenHarvest {
    SeasonDay day;
    Mass honey;
};

//! A colony's records made into plain values: all that weigh() needs, and nothing of files, books or words.
struct ColonyQuestion {
    std::string colony; //!< may be empty
    std::string yard;   //!< empty: alone
    Winter winter{Hemisphere::North, 2000};
    SeasonDay asOf;     //!< may lie outside what can be answered; refusal says so
    SeasonDay lookedOn;
    std::vector<RefusalKind> refusals; //!< found while the records were made into values
    std::optional<climate::Site> site; //!< nothing only with a refusal
    climate::SeasonDates season;
    double flowStrength = 0;           //!< 0, 0.1, 0.3, 1
    std::optional<SeasonDay> flowLastDay;

    // hive
    std::vector<hive::CombFormat> boxes; //!< from the floor up, with combsPerBox = places
    double shellFactor = 1;
    double raceFactor = 1;
    bool treated = false, nucleus = false;
    bool longHive = false;               //!< a box of 16 combs or more
    Mass tare{0};
    Mass tareSd{0};                      //!< 0 when weighed by the keeper

    // bees
    std::optional<BeeCount> bees;
    double beesLogSd = 0.15;
    std::optional<BeeCount> brood;
    double coveredCombs = 0;             //!< given or computed from bees
    std::optional<bool> queenSeen, eggsSeen;
    bool trouble = false;

    // stores
    std::vector<stores::Comb> combs;     //!< empty: none listed
    std::optional<stores::QuickCount> quick;
    std::optional<Mass> quickFullComb;   //!< honey of one full comb of the hive's first box at phi 0.78
    std::vector<WeighedHive> weighings;
    std::vector<GivenFeed> feeds;
    std::vector<TakenHarvest> harvests;
    std::optional<double> moisturePercent;
    bool freshlyFilled = false;          //!< open stores under 7 days old
    std::vector<Remark> setAside;        //!< records that are in doubt: not counted here, and said in the reasons
    std::optional<Mass> beeBread;        //!< from pollen shares; nothing = not recorded
    Mass usualStores{0};                 //!< for the heft word

    // the keeper's ways
    feeding::Feeder feeder;
    double shortRisk = 0.2;
    Mass reserve = kilograms(4);
    int visitEveryDays = 3;
    std::vector<int> visitWeekdays;

    std::uint64_t stream = 0;
    std::optional<winter::LearnedMultipliers> learned; //!< from past winters of these bees; nothing: as the model says
    winter::LearnedFrom learnedFrom;                   //!< what to say of that
};

} // namespace winterlarder::advice
