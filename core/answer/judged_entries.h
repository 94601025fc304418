// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"

#include <type_traits>

//! Which entries of a book are judged (answer/doubts.h), and how each says whose it is and whether the keeper is sure of it.
namespace winterlarder::answer {

//! Held against their hive, their day and each other; each keeps whether the keeper is sure of it.
template <class Entry>
inline constexpr bool isHeldAgainstHive =
    std::is_same_v<Entry, book::Look> || std::is_same_v<Entry, book::Weighing> || std::is_same_v<Entry, book::Feed> ||
    std::is_same_v<Entry, book::Harvest> || std::is_same_v<Entry, book::Sighting> ||
    std::is_same_v<Entry, book::WinterOutcome>;
//! Only their day is judged, and the empty weight where a hive goes with them. Frozen advice and planned visits may lie ahead.
template <class Entry>
inline constexpr bool isHeldAgainstDay =
    std::is_same_v<Entry, book::Colony> || std::is_same_v<Entry, book::Housing> ||
    std::is_same_v<Entry, book::Treatment> || std::is_same_v<Entry, book::Manipulation> ||
    std::is_same_v<Entry, book::Move> || std::is_same_v<Entry, book::Fate>;
template <class Entry> inline constexpr bool isJudged = isHeldAgainstHive<Entry> || isHeldAgainstDay<Entry>;

//! The colony an entry is of.
template <class Entry> book::ColonyId colonyOf(const Entry& entry) {
    if constexpr (std::is_same_v<Entry, book::Colony>) return entry.id;
    else return entry.colony;
}

//! Where an entry keeps that the keeper is sure of it; nothing where it has no place for that.
template <class Entry> bool* sureIn(Entry& entry) {
    if constexpr (std::is_same_v<Entry, book::Weighing>) return &entry.weighing.sure;
    else if constexpr (std::is_same_v<Entry, book::Feed>) return &entry.feed.sure;
    else if constexpr (std::is_same_v<Entry, book::Harvest>) return &entry.harvest.sure;
    else if constexpr (requires { entry.sure; }) return &entry.sure;
    else return nullptr;
}

} // namespace winterlarder::answer
