// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/answer_parts.h"
#include "calendar/season_day.h"
#include "climate/season.h"
#include "climate/site.h"
#include "feeding/schedule.h"
#include "feeding/visits.h"
#include "hive/hive.h"
#include "quantity/quantity.h"
#include "quantity/text.h"
#include "reference/reference.h"
#include "reference/remark.h"
#include "stores/estimate.h"
#include "stores/evidence.h"
#include "stores/weighing.h"
#include "support/choices.h"
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
    FarFromStations, //!< farther than 600 km from any station
    NoColony,        //!< 0 bees
    BeesUnknown,
    StoresUnknown,
    OutOfSeason, //!< season day 181..211
    SeasonNotDerivable,
    AfterForage,
};

//! One weighing as it was made; becomes evidence once the model tells how many bees there were that day.
struct WeighedHive {
    stores::WeighingKind kind = stores::WeighingKind::Scale;
    SeasonDay day;
    Date date;
    Mass reading{0};       //!< gross; sum of both sides; one side doubled
    bool longHive = false; //!< one-sided lift errs less
    //! Lifted and judged by hand alone, with no reading: what it stands for on its day follows from the winters.
    std::optional<stores::HeftWord> heft{};
};

struct GivenFeed {
    SeasonDay day;
    Mass stores; //!< what it became
    bool liquid = true;
    //! as written down; `day` begins with the season and is later by one where it came after the look
    std::optional<Date> date{};
};
struct TakenHarvest {
    SeasonDay day;
    Mass honey;
    std::optional<Date> date{};
};

//! Medicine: honey that was in the hive from `date` to `until` (nothing: to this day) is not for people.
struct GivenMedicine {
    Date date;
    std::optional<Date> until;
};

//! What a box of the hive is for; one for each of `boxes`.
struct BoxUse {
    bool super = false;
    std::optional<Date> putOn; //!< the day it was put on, empty of honey; nothing: not known
};

//! Where the bees stand, as far as tables of places need it.
struct Whereabouts {
    double latitude = 0;             //!< degrees
    std::optional<double> longitude; //!< nothing: an own climate without one
    std::string country;             //!< ISO 3166, as of the station used; empty: none
};

using winterlarder::HoneyKind;
using winterlarder::SupersFor;

//! What only the keeper knows and is asked (the case key stands beside each). Nothing: not answered, which is never no.
//! Beside these: queenSeen, eggsSeen and tareSd of the question.
struct KeepersAnswers {
    //! bees.mites_counted (true with a number), bees.mites_treated (or a treatment)
    std::optional<bool> mitesCounted, mitesTreated;
    std::optional<double> mitesPer100;  //!< bees.mites_per_100_bees
    std::optional<bool> fedOrTreated;   //!< fed_or_treated: sugar or medicine while this honey was made
    std::optional<SupersFor> supersFor; //!< hive.supers_for
    std::optional<double> autumnFlow;   //!< site.autumn_flow: 0, 0.1, 0.3, 1
    std::optional<double> fullCombs;    //!< full_combs in store, for all of the yard
    std::optional<bool> visitsInWinter; //!< wish.visits_in_winter
    std::optional<bool> foodBeside;     //!< bees.food_beside
    std::optional<double> shortRisk;    //!< wish.short_risk
    std::optional<Mass> reserve;        //!< wish.reserve_kg
    std::optional<HoneyKind> honeyKind; //!< honey_kind
    std::optional<UnitSystem> units;    //!< units
};

//! A colony whose bees, brood and stores were added to these (its bees and brood are in those of the question).
struct JoinedColony {
    std::string name;
    stores::StoresEstimate together; //!< stores of both on the asking day
    Mass capacity{0};                //!< of the combs it brings
};

//! A colony's records made into plain values: all that weigh() needs, and nothing of files, books or words.
struct ColonyQuestion {
    std::string colony; //!< may be empty
    std::string yard;   //!< empty: alone
    Winter winter{Hemisphere::North, 2000};
    SeasonDay asOf; //!< may lie outside what can be answered; refusal says so
    SeasonDay lookedOn;
    std::vector<RefusalKind> refusals; //!< found while the records were made into values
    std::optional<climate::Site> site; //!< nothing only with a refusal
    Whereabouts place;
    climate::SeasonDates season;
    double flowStrength = 0; //!< 0, 0.1, 0.3, 1; 0 where it was not asked
    std::optional<SeasonDay> flowLastDay;

    // hive
    std::vector<hive::CombFormat> boxes; //!< from the floor up, with combsPerBox = places
    std::vector<BoxUse> boxUses;         //!< one for each box
    double shellFactor = 1;
    double raceFactor = 1;
    bool treated = false, nucleus = false; //!< treated: said of the hive (without a day), or by a treatment
    bool longHive = false;                 //!< a box of 16 combs or more
    Mass tare{0};
    Mass tareSd{0};     //!< 0 when weighed by the keeper
    Mass supersTare{0}; //!< what of the tare are supers, from handbook figures

    // bees
    std::optional<BeeCount> bees;
    double beesLogSd = 0.15; //!< of the count itself: widens what is told of the bees and the doubt of the amount
    double drawnBeesLogSd =
        0.15; //!< what the winters are drawn with: that of a usual count, or the spread the keeper gave
    std::optional<BeeCount> brood;
    double coveredCombs = 0; //!< given or computed from bees
    std::optional<bool> queenSeen, eggsSeen;
    bool trouble = false;

    // stores
    std::vector<stores::Comb> combs; //!< empty: none listed
    std::optional<stores::QuickCount> quick;
    std::optional<Mass> quickFullComb; //!< honey of one full comb of the hive's first box at phi 0.78
    std::vector<WeighedHive> weighings;
    std::vector<GivenFeed> feeds;
    std::vector<TakenHarvest> harvests;
    std::vector<GivenMedicine> treatments;
    bool treatedWithoutDay = false; //!< hive.treated: medicine, nobody says when
    std::optional<double> moisturePercent;
    bool freshlyFilled = false;   //!< open stores under 7 days old
    std::vector<Remark> setAside; //!< records that are in doubt: not counted here, and said in the reasons
    std::vector<Remark> united;   //!< what to say of colonies that were united onto it and are counted here
    std::optional<Mass> beeBread; //!< from pollen shares; nothing = not recorded
    Mass usualStores{0};          //!< for the heft word

    // the keeper's ways
    feeding::Feeder feeder;
    KeepersAnswers answers;
    feeding::Steps steps; //!< in which sugar is bought and fondant cut
    int visitEveryDays = 3;
    std::vector<int> visitWeekdays;

    // what is shipped of this place, and the numbers advice is decided by
    std::optional<UsualHere> usual;     //!< what keepers here are told to winter on
    bool lateFlowNear = false;          //!< a flow after the asking day is usual near the place
    std::vector<std::string> lateFlows; //!< what flows then, as keepers call it, the nearest first; at most two
    DecisionConstants decisions{};      //!< from the shipped table: without them no question can be weighed

    // what the plan of its yard does first; nothing: weighed alone
    std::optional<PartInYard> plan;
    std::optional<JoinedColony> joined;

    std::uint64_t stream = 0;
    std::optional<winter::LearnedMultipliers> learned; //!< from past winters of these bees; nothing: as the model says
    winter::LearnedFrom learnedFrom;                   //!< what to say of that
};

//! Whether honey in supers counts as stores: not where it is for people.
inline bool superForPeople(const ColonyQuestion& question) {
    return question.answers.supersFor == SupersFor::People && question.supersTare > Mass(0);
}
inline bool supersCount(const ColonyQuestion& question) { return question.answers.supersFor != SupersFor::People; }

} // namespace winterlarder::advice
