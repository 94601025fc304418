// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/ids.h"
#include "calendar/date.h"
#include "quantity/quantity.h"

#include <optional>
#include <string>

//! What is written down of a winter: a glance from outside, and how it ended. Part of entries.h.
namespace winterlarder::book {

enum class BroodPattern { None, Solid, Patchy };

struct WinterOutcome {
    WinterOutcomeId id{};
    ColonyId colony{};
    Date date; //!< the day it was found out
    bool alive = true;
    std::optional<double> coveredCombs{};
    std::optional<Mass> storesLeft{};
    //! What was found in a dead hive; nothing = not answered.
    std::optional<bool> foodLeft{};     //!< within reach of the bees
    std::optional<bool> headsInCells{}; //!< dead bees head down in the cells
    std::optional<bool> mitesOnFloor{}; //!< many mites on the floor
    std::optional<BroodPattern> broodPattern{};
    std::optional<bool> queen{}; //!< found among the dead
    bool sure = false;
    std::string note{};
    std::string by{};
    bool operator==(const WinterOutcome&) const = default;
};

//! What a glance from outside, or under the crown board, told in winter.
enum class SightingKind { Flying, Cluster, Stores, Dead };

struct Sighting {
    SightingId id{};
    ColonyId colony{};
    Date date;
    SightingKind saw = SightingKind::Flying;
    std::optional<double> seams{};    //!< the cluster filled; with Cluster
    std::optional<bool> stores{};     //!< sealed stores were in sight beside the bees
    std::optional<int> clusterFrom{}; //!< the first comb with bees of the cluster, counted from 1 as a look lists them
    bool sure = false;
    std::string note{};
    std::string by{};
    bool operator==(const Sighting&) const = default;
};

} // namespace winterlarder::book
