// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "book/form/row.h"
#include "support/outcome.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <variant>
#include <vector>

//! Everything a keeper can do to a book, one plain struct per verb. Book::apply carries one out in one transaction, gives back what
//! changed and the edit that takes it back, and writes both into the history.
//! A test walks the list (tests/book/edits_test.cpp) and fails on a verb whose inverse does not restore the book.
namespace winterlarder::book {

// ---- three verbs that every kind of entry has -----------------------------------------------------------------------------

//! A new entry. Its id is left 0: the book gives one.
template <class Entry> struct Add { Entry entry; };
//! The entry of that id becomes this one.
template <class Entry> struct Change { Entry entry; };
//! The entry goes; with a colony go all of its records. With a yard go its weather logs; it goes only when no colony stands in
//! it or came from it.
template <class Entry> struct Remove { Id<Entry> id; };

using AddYard = Add<Yard>;
using ChangeYard = Change<Yard>;
using RemoveYard = Remove<Yard>;
using AddColony = Add<Colony>;
using ChangeColony = Change<Colony>;
using RemoveColony = Remove<Colony>;
using AddMove = Add<Move>;
using ChangeMove = Change<Move>;
using RemoveMove = Remove<Move>;
using AddFate = Add<Fate>;
using ChangeFate = Change<Fate>;
using RemoveFate = Remove<Fate>;
using AddHousing = Add<Housing>;
using ChangeHousing = Change<Housing>;
using RemoveHousing = Remove<Housing>;
using AddLook = Add<Look>;
using ChangeLook = Change<Look>;
using RemoveLook = Remove<Look>;
using AddWeighing = Add<Weighing>;
using ChangeWeighing = Change<Weighing>;
using RemoveWeighing = Remove<Weighing>;
using AddFeed = Add<Feed>;
using ChangeFeed = Change<Feed>;
using RemoveFeed = Remove<Feed>;
using AddHarvest = Add<Harvest>;
using ChangeHarvest = Change<Harvest>;
using RemoveHarvest = Remove<Harvest>;
using AddTreatment = Add<Treatment>;
using ChangeTreatment = Change<Treatment>;
using RemoveTreatment = Remove<Treatment>;
using AddManipulation = Add<Manipulation>;
using ChangeManipulation = Change<Manipulation>;
using RemoveManipulation = Remove<Manipulation>;
using AddActedAdvice = Add<ActedAdvice>;
using ChangeActedAdvice = Change<ActedAdvice>;
using RemoveActedAdvice = Remove<ActedAdvice>;
using AddPlannedVisit = Add<PlannedVisit>;
using ChangePlannedVisit = Change<PlannedVisit>;
using RemovePlannedVisit = Remove<PlannedVisit>;
using AddWinterOutcome = Add<WinterOutcome>;
using ChangeWinterOutcome = Change<WinterOutcome>;
using RemoveWinterOutcome = Remove<WinterOutcome>;
using AddSighting = Add<Sighting>;
using ChangeSighting = Change<Sighting>;
using RemoveSighting = Remove<Sighting>;
using AddWeatherLog = Add<WeatherLog>;
using ChangeWeatherLog = Change<WeatherLog>;
using RemoveWeatherLog = Remove<WeatherLog>;

// ---- verbs of their own ---------------------------------------------------------------------------------------------------

//! One comb of a look, counted from 0 as the look lists them. Dragging a boundary on the comb drawing is many of these; they merge.
struct ChangeComb {
    LookId look;
    std::size_t place = 0;
    CombRecord comb;
};
//! A planned visit was made on that day; a feeding visit is written down as the feed it was (kg of sugar, L of syrup, fondant).
struct MarkVisitDone {
    PlannedVisitId visit;
    Date on;
    std::optional<std::string> ratio{};
};
struct SkipVisit {
    PlannedVisitId visit;
};
//! The advice is acted on: frozen in the book, its visits planned. Their `advice` is filled in.
struct AcceptAdvice {
    ActedAdvice advice;
    std::vector<PlannedVisit> visits;
};
//! Boxes or combs change: what was done, and the hive as it is from that day on.
struct ChangeHive {
    Manipulation done;
    Housing hive;
};
//! Combs or boxes go from one colony to another; both hives as they are afterwards where the keeper says so.
struct MoveCombs {
    Manipulation done;
    std::optional<Housing> from{}, to{};
};
//! The first colony is united into the second on that day.
struct UniteColonies {
    ColonyId from, into;
    Date on;
    std::string note{};
};

using AnyVerb =
    std::variant<AddYard, ChangeYard, RemoveYard, AddColony, ChangeColony, RemoveColony, AddMove, ChangeMove,
                 RemoveMove, AddFate, ChangeFate, RemoveFate, AddHousing, ChangeHousing, RemoveHousing, AddLook,
                 ChangeLook, RemoveLook, AddWeighing, ChangeWeighing, RemoveWeighing, AddFeed, ChangeFeed, RemoveFeed,
                 AddHarvest, ChangeHarvest, RemoveHarvest, AddTreatment, ChangeTreatment, RemoveTreatment,
                 AddManipulation, ChangeManipulation, RemoveManipulation, AddActedAdvice, ChangeActedAdvice,
                 RemoveActedAdvice, AddPlannedVisit, ChangePlannedVisit, RemovePlannedVisit, AddWinterOutcome,
                 ChangeWinterOutcome, RemoveWinterOutcome, AddSighting, ChangeSighting, RemoveSighting, AddWeatherLog,
                 ChangeWeatherLog, RemoveWeatherLog, ChangeComb, MarkVisitDone, SkipVisit, AcceptAdvice, ChangeHive,
                 MoveCombs, UniteColonies>;

template <class Verb, class Verbs> inline constexpr bool isAmong = false;
template <class Verb, class... Verbs>
inline constexpr bool isAmong<Verb, std::variant<Verbs...>> = (std::is_same_v<Verb, Verbs> || ...);

//! A single verb. Made, copied and dropped in edits.cpp only: so many alternatives take a compiler seconds wherever they are.
struct SingleEdit : AnyVerb {
    template <class Verb>
    requires isAmong<Verb, AnyVerb> SingleEdit(Verb verb);
    SingleEdit(const SingleEdit& other);
    SingleEdit(SingleEdit&& other) noexcept;
    SingleEdit& operator=(const SingleEdit& other);
    SingleEdit& operator=(SingleEdit&& other) noexcept;
    ~SingleEdit();
};

//! Several verbs as one step of the history ("remove the five marked looks").
struct EditGroup {
    std::string verb;
    std::vector<SingleEdit> edits;
};
//! Entries become, one by one, what is written here: imports, restored backups, and the inverse of every edit.
struct PutEntries {
    std::string verb;
    std::vector<Target> targets;
};

using Edit = std::variant<SingleEdit, EditGroup, PutEntries>;

//! The verb as the history keeps it: "add look", "change comb", "unite colonies". Words for people are in app/text.
std::string verbOf(const Edit& edit);

//! What working out an edit needs to know of the book as it is.
class EditReader {
public:
    virtual ~EditReader() = default;
    //! The entry now, or nothing where it is gone.
    virtual std::optional<Row> row(Kind kind, std::int64_t id) = 0;
    //! Ids of the entries of `kind` whose reference `column` is that number.
    virtual std::vector<std::int64_t> referring(Kind kind, const std::string& column, std::int64_t to) = 0;
    //! A number no entry of the kind ever had; another one at each call.
    virtual std::int64_t newId(Kind kind) = 0;
};

//! The edit as what each entry is to become, in order. `who` is written into entries that do not say who wrote them.
//! Problems: an entry that is gone, a comb that is not there, a yard still in use.
Outcome<std::vector<Target>> targetsOf(const Edit& edit, const std::string& who, EditReader& reader);

} // namespace winterlarder::book
