// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/ids.h"
#include "book/entries/records.h"
#include "book/entries/winter_entries.h"

#include <cstdint>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

//! Everything a book holds, one plain struct per kind of entry. Each is described once more, column by column, in
//! book/describe.h; the file, the JSON document, CSV and the canonical text all follow from that description.
namespace winterlarder::book {

//! A day that returns every year. 29 February is not one.
struct DayOfYear {
    int month = 1, day = 1;
    auto operator<=>(const DayOfYear&) const = default;
    static std::optional<DayOfYear> of(int month, int day);
    static std::optional<DayOfYear> parse(std::string_view text); //!< exactly MM-DD
    std::string text() const;                                     //!< MM-DD
};

//! What the keeper knows better than the climate does; each holds for every year.
struct YardSeason {
    std::optional<DayOfYear> lastIncome, broodStop, broodRestart, buildup, forage, feedAdvisedBy, syrupDeadline,
        syrupRefused;
    bool operator==(const YardSeason&) const = default;
};

struct Yard {
    YardId id{};
    std::string name{};
    SiteRecord site{};
    YardSeason season{};
    WishRecord wish{};
    std::string forageNotes{};
    std::optional<std::string> currency{};   //!< ISO 4217, "CAD"
    std::optional<double> sugarPricePerKg{}; //!< in that currency
    std::optional<Mass> bag{};               //!< what one bag of sugar holds
    bool learn = true;                       //!< past winters of these bees correct the forecast
    std::optional<Date> learnSince{};        //!< only winters from this day on are learned from
    std::optional<double> fullCombs{};       //!< combs full of honey in store
    std::optional<UnitSystem> units{};       //!< nothing: those of the country
    std::string note{};
    std::string by{}; //!< who wrote it down; filled in by the book when empty. The same in every entry below
    bool operator==(const Yard&) const = default;
};

//! The international colour code of queens, by the last digit of her year: 1 and 6 white, 2 and 7 yellow, 3 and 8 red,
//! 4 and 9 green, 5 and 0 blue.
enum class QueenColour { White, Yellow, Red, Green, Blue };

struct Colony {
    ColonyId id{};
    YardId yard{}; //!< where it began; see Move
    std::string name{};
    HiveRecord hive{}; //!< as it began; see Housing
    std::optional<FeederRecord> feeder{};
    std::optional<BeeKind> beeKind{};
    std::optional<int> queenYear{};
    std::optional<QueenColour> queenColour{}; //!< where it differs from the code or the year is not known
    std::string origin{};
    std::optional<Date> since{};
    std::string note{};
    std::string by{};
    bool operator==(const Colony&) const = default;
};

//! From this day on the colony stands in another yard.
struct Move {
    MoveId id{};
    ColonyId colony{};
    Date date;
    YardId yard{};
    std::string note{};
    std::string by{};
    bool operator==(const Move&) const = default;
};

enum class FateKind { United, Sold, Dead };

//! How a colony left the book. A colony without one is living.
struct Fate {
    FateId id{};
    ColonyId colony{};
    Date date;
    FateKind fate = FateKind::Dead;
    std::optional<ColonyId> into{}; //!< the colony it was united into
    std::string cause{};            //!< what it died of, as far as is known
    std::string note{};
    std::string by{};
    bool operator==(const Fate&) const = default;
};

//! From this day on the colony lives in this hive: a box put on, other boxes, another shell.
struct Housing {
    HousingId id{};
    ColonyId colony{};
    Date date;
    HiveRecord hive{};
    std::string note{};
    std::string by{};
    bool operator==(const Housing&) const = default;
};

enum class Temper { Gentle, Calm, Nervous, Fierce };

//! One look into a colony. Photographs stay files beside the book (paths from the book's folder), never inside it: ten
//! backups of every picture would make a small, quickly copied record file a large one.
struct Look {
    LookId id{};
    ColonyId colony{};
    Date date;
    BeesRecord bees{};
    CombsRecord combs{};
    std::optional<bool> sealedBrood{}, pollenComingIn{};
    std::optional<Temper> temper{};
    std::optional<double> moisturePercent{};
    std::string troubleSigns{};
    std::optional<HoneyKind> honeyKind{};
    std::optional<bool> fedOrTreated{}; //!< see ColonyCase::fedOrTreated
    std::vector<std::string> photographs{};
    bool sure = false; //!< see WeighingRecord::sure; so in glances and outcomes
    std::string note{};
    std::string by{};
    bool operator==(const Look&) const = default;
};

struct Weighing {
    WeighingId id{};
    ColonyId colony{};
    WeighingRecord weighing;
    bool wet = false; //!< rain or snow lay on the hive
    std::string note{};
    std::string by{};
    bool operator==(const Weighing&) const = default;
};

struct Feed {
    FeedId id{};
    ColonyId colony{};
    FeedRecord feed;
    std::string note{};
    std::string by{};
    bool operator==(const Feed&) const = default;
};

struct Harvest {
    HarvestId id{};
    ColonyId colony{};
    HarvestRecord harvest;
    std::optional<int> combs{};
    std::optional<double> moisturePercent{};
    std::string note{};
    std::string by{};
    bool operator==(const Harvest&) const = default;
};

//! Used only to warn about honey that was in the hive meanwhile.
struct Treatment {
    TreatmentId id{};
    ColonyId colony{};
    Date date;
    std::optional<Date> until{}; //!< last day; nothing = not ended yet
    std::string what{};
    std::string note{};
    std::string by{};
    bool operator==(const Treatment&) const = default;
};

enum class ManipulationKind { CombsAdded, CombsRemoved, CombsMoved, BoxesAdded, BoxesRemoved, BoxesMoved };

//! Combs or boxes put in, taken out, or given to another colony. What the hive is afterwards is a Housing of the same day.
struct Manipulation {
    ManipulationId id{};
    ColonyId colony{};
    Date date;
    ManipulationKind what = ManipulationKind::CombsAdded;
    std::optional<int> count{};
    std::optional<ColonyId> toColony{};
    std::optional<Mass> weightChange{}; //!< what the hive became heavier (> 0) or lighter by, where it was weighed
    std::string note{};
    std::string by{};
    bool operator==(const Manipulation&) const = default;
};

//! An answer that was acted on, frozen with all it was computed from, so that next year one can see what was believed.
struct ActedAdvice {
    ActedAdviceId id{};
    ColonyId colony{};
    Date date; //!< the day the question was asked for
    std::string verdict{};
    std::string inputs{}; //!< the case file
    std::string answer{}; //!< the answer's JSON document
    std::uint64_t seed = 0;
    int winters = 0;
    std::string programVersion{};
    std::string note{};
    std::string by{};
    bool operator==(const ActedAdvice&) const = default;
};

enum class VisitState { Planned, Done, Skipped };

struct PlannedVisit {
    PlannedVisitId id{};
    ColonyId colony{};
    Date date;
    VisitKind what = VisitKind::Check;
    std::optional<Mass> sugar{};
    std::optional<Volume> syrup{};
    std::optional<Mass> fondant{};
    VisitState state = VisitState::Planned;
    std::optional<Date> doneOn{};
    std::optional<ActedAdviceId> advice{}; //!< the advice it was accepted from
    std::string note{};
    std::string by{};
    bool operator==(const PlannedVisit&) const = default;
};

struct DayTemperature {
    Date date;
    double meanC = 0;
    bool operator==(const DayTemperature&) const = default;
};

//! Daily mean temperatures of a yard, as the keeper has them: one import, one log. Where logs overlap the later one counts.
struct WeatherLog {
    WeatherLogId id{};
    YardId yard{};
    std::string origin{}; //!< where they come from: a file, a station
    std::vector<DayTemperature> days{};
    std::string note{};
    std::string by{};
    bool operator==(const WeatherLog&) const = default;
};

//! In the order of Kind.
using EntryTypes = std::tuple<Yard, Colony, Move, Fate, Housing, Look, Weighing, Feed, Harvest, Treatment, Manipulation,
                              ActedAdvice, PlannedVisit, WinterOutcome, Sighting, WeatherLog>;
static_assert(std::tuple_size_v<EntryTypes> == kindCount);

template <class Entry> inline constexpr Kind kindOf{};
template <> inline constexpr Kind kindOf<Yard> = Kind::Yard;
template <> inline constexpr Kind kindOf<Colony> = Kind::Colony;
template <> inline constexpr Kind kindOf<Move> = Kind::Move;
template <> inline constexpr Kind kindOf<Fate> = Kind::Fate;
template <> inline constexpr Kind kindOf<Housing> = Kind::Housing;
template <> inline constexpr Kind kindOf<Look> = Kind::Look;
template <> inline constexpr Kind kindOf<Weighing> = Kind::Weighing;
template <> inline constexpr Kind kindOf<Feed> = Kind::Feed;
template <> inline constexpr Kind kindOf<Harvest> = Kind::Harvest;
template <> inline constexpr Kind kindOf<Treatment> = Kind::Treatment;
template <> inline constexpr Kind kindOf<Manipulation> = Kind::Manipulation;
template <> inline constexpr Kind kindOf<ActedAdvice> = Kind::ActedAdvice;
template <> inline constexpr Kind kindOf<PlannedVisit> = Kind::PlannedVisit;
template <> inline constexpr Kind kindOf<WinterOutcome> = Kind::WinterOutcome;
template <> inline constexpr Kind kindOf<Sighting> = Kind::Sighting;
template <> inline constexpr Kind kindOf<WeatherLog> = Kind::WeatherLog;

} // namespace winterlarder::book

//! For lists of explicit instantiations: apply(Entry) for every record of a colony, and for every entry.
#define WINTERLARDER_FOR_RECORDS(apply)                                                                                \
    apply(Move) apply(Fate) apply(Housing) apply(Look) apply(Weighing) apply(Feed) apply(Harvest) apply(Treatment)     \
        apply(Manipulation) apply(ActedAdvice) apply(PlannedVisit) apply(WinterOutcome) apply(Sighting)
#define WINTERLARDER_FOR_ENTRIES(apply) apply(Yard) apply(Colony) WINTERLARDER_FOR_RECORDS(apply) apply(WeatherLog)
