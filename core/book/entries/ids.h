// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace winterlarder::book {

//! Names one entry of the book for good: numbers are never given twice within a kind, not even after an undo, so an id that is
//! kept (by a window, by a script) either finds its entry or finds nothing. Number 0 = the book has not given one yet.
template <class Entry> struct Id {
    std::int64_t number = 0;
    auto operator<=>(const Id&) const = default;
};

struct Yard;
struct Colony;
struct Move;
struct Fate;
struct Housing;
struct Look;
struct Weighing;
struct Feed;
struct Harvest;
struct Treatment;
struct Manipulation;
struct PlannedVisit;
struct WinterOutcome;
struct ActedAdvice;
struct Sighting;
struct WeatherLog;
struct Step;

using YardId = Id<Yard>;
using ColonyId = Id<Colony>;
using MoveId = Id<Move>;
using FateId = Id<Fate>;
using HousingId = Id<Housing>;
using LookId = Id<Look>;
using WeighingId = Id<Weighing>;
using FeedId = Id<Feed>;
using HarvestId = Id<Harvest>;
using TreatmentId = Id<Treatment>;
using ManipulationId = Id<Manipulation>;
using PlannedVisitId = Id<PlannedVisit>;
using WinterOutcomeId = Id<WinterOutcome>;
using ActedAdviceId = Id<ActedAdvice>;
using SightingId = Id<Sighting>;
using WeatherLogId = Id<WeatherLog>;
using StepId = Id<Step>; //!< a step of the history

//! The largest number an entry may have, 2^53 - 1: the largest that JSON, and every program that reads it, keeps exactly.
inline constexpr std::int64_t largestId = 9007199254740991;

//! Every kind of entry; what an entry refers to stands before it.
enum class Kind {
    Yard,
    Colony,
    Move,
    Fate,
    Housing,
    Look,
    Weighing,
    Feed,
    Harvest,
    Treatment,
    Manipulation,
    ActedAdvice,
    PlannedVisit,
    WinterOutcome,
    Sighting,
    WeatherLog,
};
inline constexpr int kindCount = 16;

} // namespace winterlarder::book
