// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

//! The words of every choice in a book or a case, in the order of its enumerators: what the file, CSV, JSON and case files
//! write; as in shared/fields.csv. Tested: tests/book/tables_test.cpp, tests/exchange/case_description_test.cpp.
namespace winterlarder::book {

template <class Choice> inline constexpr std::array<std::string_view, 0> wordsOf{};
template <> inline constexpr std::array<std::string_view, 4> wordsOf<FlowStrength>{"none", "trickle", "fair", "strong"};
template <>
inline constexpr std::array<std::string_view, 5> wordsOf<Shell>{"timber", "thick-timber", "wrapped", "polystyrene",
                                                                "straw"};
template <>
inline constexpr std::array<std::string_view, 4> wordsOf<BeeKind>{"dark", "carniolan", "buckfast", "italian"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<HeftWord>{"light", "fair", "heavy"};
template <>
inline constexpr std::array<std::string_view, 6> wordsOf<FeederKind>{"round", "top", "box", "contact", "frame", "end"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<FeedKind>{"syrup", "fondant", "dry-sugar"};
template <> inline constexpr std::array<std::string_view, 2> wordsOf<SupersFor>{"people", "bees"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<HoneyKind>{"blossom", "honeydew", "heather"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<UnitSystem>{"metric", "us", "imperial"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<BroodPattern>{"none", "solid", "patchy"};
template <>
inline constexpr std::array<std::string_view, 5> wordsOf<QueenColour>{"white", "yellow", "red", "green", "blue"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<FateKind>{"united", "sold", "dead"};
template <> inline constexpr std::array<std::string_view, 4> wordsOf<Temper>{"gentle", "calm", "nervous", "fierce"};
template <>
inline constexpr std::array<std::string_view, 6> wordsOf<ManipulationKind>{
    "combs-added", "combs-removed", "combs-moved", "boxes-added", "boxes-removed", "boxes-moved"};
template <>
inline constexpr std::array<std::string_view, 4> wordsOf<SightingKind>{"flying", "cluster", "stores", "dead"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<VisitKind>{"syrup", "fondant", "check"};
template <> inline constexpr std::array<std::string_view, 3> wordsOf<VisitState>{"planned", "done", "skipped"};

template <class Choice> std::string wordOf(Choice choice) {
    return std::string(wordsOf<Choice>.at(static_cast<std::size_t>(choice)));
}

template <class Choice> std::optional<Choice> choiceOf(std::string_view word) {
    for (std::size_t at = 0; at < wordsOf<Choice>.size(); ++at)
        if (wordsOf<Choice>[at] == word) return static_cast<Choice>(at);
    return std::nullopt;
}

template <class Choice> std::vector<std::string> allWords() { return {wordsOf<Choice>.begin(), wordsOf<Choice>.end()}; }

} // namespace winterlarder::book
