// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/quantity.h"
#include "quantity/text.h"
#include "support/choices.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

//! What a keeper records, as plain values: no computation, no database. The case file, the book and the window all speak in
//! these. Field names, units and limits are those of shared/fields.csv.
namespace winterlarder::book {

//! Nothing observed longer before the day asked for than this says anything about it.
inline constexpr int oldestObservationDays = 60;

enum class FlowStrength { None, Trickle, Fair, Strong };
enum class Shell { Timber, ThickTimber, Wrapped, Polystyrene, Straw };
enum class BeeKind { Dark, Carniolan, Buckfast, Italian };
enum class FeederKind { Round, Top, Box, Contact, Frame, End };
enum class FeedKind { Syrup, Fondant, DrySugar };
using winterlarder::HeftWord;
using winterlarder::HoneyKind;
using winterlarder::SupersFor;
using winterlarder::UnitSystem;
using winterlarder::VisitKind;

//! Where the bees stand: exactly one of a station, coordinates, or an own climate.
struct OwnClimateRecord {
    double latitude = 0;
    std::array<double, 12> monthlyMeanC{};
    std::optional<double> longitude, dailySdWinter, dailySdSummer, lag1, seasonOffsetSd;
    bool operator==(const OwnClimateRecord&) const = default;
};
struct Coordinates {
    double latitude = 0, longitude = 0;
    bool operator==(const Coordinates&) const = default;
};
struct SiteRecord {
    std::variant<std::string, Coordinates, OwnClimateRecord> where; //!< the string is a station id
    std::optional<double> elevationM;
    std::optional<FlowStrength> autumnFlow; //!< nothing: not asked; reckoned as none
    bool operator==(const SiteRecord&) const = default;
};

//! Own comb measures of a hive nobody ships a format for.
struct OwnFormat {
    Length combWidth, combHeight;
    std::optional<Length> bottomWidth;
    int combsPerBox = 0;
    Length pitch;
    bool operator==(const OwnFormat&) const = default;
};
using FormatChoice = std::variant<std::string, OwnFormat>; //!< the string is an id of the shipped formats

struct BoxRecord {
    FormatChoice format;
    std::optional<int> combs; //!< places in this box; nothing = the format's combs per box
    bool super = false;
    std::optional<Date> putOn{}; //!< the day it was put on, empty of honey
    bool operator==(const BoxRecord&) const = default;
};
struct HiveRecord {
    std::vector<BoxRecord> boxes; //!< from the floor up, at least one
    Shell shell = Shell::Timber;
    bool topInsulation = false;
    bool treated = false; //!< medicine was given while this honey was in the hive
    bool nucleus = false; //!< kept small on purpose
    std::optional<Mass> tare;
    std::optional<SupersFor> supersFor{}; //!< whom the honey of its supers is for
    bool operator==(const HiveRecord&) const = default;
};

struct BeesRecord {
    //! Exactly one is given, or none: then the bees are not known.
    std::optional<double> count, coveredCombs, seams;
    std::optional<double> logSd; //!< replaces the default of the kind of count
    std::optional<double> broodCells;
    std::optional<BeeKind> kind;
    std::optional<bool> queenSeen, eggsSeen;
    std::optional<bool> mitesCounted, mitesTreated; //!< counted at this look or shortly before; treated this season
    std::optional<double> mitesPer100;              //!< mites on 100 bees, as counted
    std::optional<bool> foodBeside;                 //!< food is beside, or right above, the bees
    bool trouble = false;                           //!< signs of disease
    bool sure = false; //!< the keeper was asked, and said that what was seen at this look is right
    bool operator==(const BeesRecord&) const = default;
    bool known() const { return count || coveredCombs || seams; }
};

//! One built comb as looked at. Shares of the face area; nothing = the key was not written (0 for the arithmetic, except that
//! unsaid brood is not zero brood).
struct CombRecord {
    std::optional<double> capped, open, brood, pollen;
    std::optional<std::string> format; //!< another outline than the box's
    std::optional<Length> width;       //!< bar pitch
    double built = 1;
    int facesSeen = 2;          //!< 0 = present but not looked at
    bool throughWindow = false; //!< seen only through a window in the hive
    bool measured = false;      //!< shares traced on a photograph, not judged by eye
    bool inSuper = false;
    bool fed = false;
    bool oldNest = false;
    bool operator==(const CombRecord&) const = default;
};
struct QuickCountRecord {
    double fullOfStores = 0, half = 0, cappedShare = 1;
    bool operator==(const QuickCountRecord&) const = default;
};
using CombsRecord = std::variant<std::monostate, std::vector<CombRecord>, QuickCountRecord>;

struct ScaleReading {
    Mass gross;
    bool operator==(const ScaleReading&) const = default;
};
struct LiftReading {
    std::vector<Mass> sides; //!< one or two
    bool operator==(const LiftReading&) const = default;
};
struct WeighingRecord {
    Date date;
    std::variant<ScaleReading, LiftReading, HeftWord> reading;
    bool sure = false; //!< unlikely as it may be, the keeper said that it is right; so in feeds and harvests
    bool operator==(const WeighingRecord&) const = default;
};

struct FeedRecord {
    Date date;
    FeedKind kind = FeedKind::Syrup;
    std::optional<Mass> sugar;
    std::optional<Volume> syrup;
    std::optional<std::string> ratio; //!< "3:2", by mass; with syrup
    std::optional<Mass> fondant;
    bool sure = false;
    std::optional<bool> afterLook{}; //!< of a feed on the day of the look: given after it, so not in what was seen
    bool operator==(const FeedRecord&) const = default;
};
struct HarvestRecord {
    Date date;
    Mass honey;
    bool sure = false;
    std::optional<bool> afterLook{}; //!< as FeedRecord::afterLook
    bool operator==(const HarvestRecord&) const = default;
};
//! Medicine given: from its day until the last day honey taken from the hive is not for people, as the label says.
struct TreatmentRecord {
    Date date;
    std::optional<Date> until{}; //!< nothing: not ended yet
    std::string what{};
    bool operator==(const TreatmentRecord&) const = default;
};

struct SeasonRecord {
    std::optional<Date> lastIncome, broodStop, broodRestart, buildup, forage, feedAdvisedBy, syrupDeadline,
        syrupRefused;
    bool operator==(const SeasonRecord&) const = default;
};
struct FeederRecord {
    FeederKind kind = FeederKind::Round;
    std::optional<Volume> capacity;
    bool operator==(const FeederRecord&) const = default;
};
struct WishRecord {
    std::optional<double> shortRisk; //!< nothing: what is usual; so with the reserve
    std::optional<Mass> reserve;
    int visitEveryDays = 3;
    std::vector<int> visitWeekdays{};     //!< ISO 8601, 1 = Monday .. 7 = Sunday; empty = any day
    std::optional<bool> visitsInWinter{}; //!< the keeper can get there from January to March
    bool operator==(const WishRecord&) const = default;
};

//! What past winters taught of a colony and its yard, as it goes into a question: lasting multipliers on the food eaten and on bees lost
//! with the SD of their logarithms, and how much later than its climate's date first forage comes.
struct LearnedRecord {
    int winters = 0; //!< that were learned from; 0: the multipliers do not count
    double use = 1, useLogSd = 0;
    double death = 1, deathLogSd = 0;
    int forageYears = 0; //!< springs the shift was learned from; 0: it does not count
    double forageShiftDays = 0, forageShiftSdDays = 0;
    bool operator==(const LearnedRecord&) const = default;
};

//! A colony that was united onto that of a case, and what of it the case counts.
struct UnitedRecord {
    std::string colony;
    Date date;
    std::optional<Date> lookedOn{};    //!< the look it is counted by
    bool bees = false, stores = false; //!< whether that look told them, so that they are counted
    bool boxesOnTop = false;           //!< nobody wrote down the hive since: its boxes are taken to stand on top
    bool operator==(const UnitedRecord&) const = default;
};

//! One colony, one question: what a case file holds.
struct ColonyCase {
    std::optional<std::string> colony, yard;
    Date asOf;
    std::optional<Date> lookedOn;
    SiteRecord site;
    HiveRecord hive;
    BeesRecord bees;
    CombsRecord combs;
    std::vector<WeighingRecord> weighings;
    std::optional<double> moisturePercent;
    std::vector<FeedRecord> feeds;
    std::vector<HarvestRecord> harvests;
    SeasonRecord season;
    std::optional<FeederRecord> feeder;
    WishRecord wish;
    std::optional<LearnedRecord> learned{}; //!< out of a book whose yard learns; nothing: the model as it stands
    bool sure = false;                      //!< all of this case: see BeesRecord::sure
    //! Days after the look on which it was weighed with other boxes than `hive`: those weights are not among `weighings`. Not in a file.
    std::vector<Date> weighedInOtherHive{};
    //! Counted with it since the look, by date. Not in a file, where they are in the numbers.
    std::vector<UnitedRecord> united{};
    std::vector<TreatmentRecord> treatments{};
    std::optional<HoneyKind> honeyKind{};
    std::optional<bool> fedOrTreated{}; //!< sugar or medicine was in the hive while this honey was made
    std::optional<double> fullCombs{};  //!< combs full of honey that lie in store, for all of the yard
    std::optional<UnitSystem> units{};  //!< nothing: those of the country
    bool operator==(const ColonyCase&) const = default;
};

} // namespace winterlarder::book
