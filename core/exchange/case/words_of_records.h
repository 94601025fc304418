// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

//! The words case files use for the choices of book/records.h: one table each, read and written from the same rows.
namespace winterlarder::exchange {

template <class Choice, std::size_t N> using Words = std::array<std::pair<std::string_view, Choice>, N>;

inline constexpr Words<book::FlowStrength, 4> flowWords{{{"none", book::FlowStrength::None},
                                                         {"trickle", book::FlowStrength::Trickle},
                                                         {"fair", book::FlowStrength::Fair},
                                                         {"strong", book::FlowStrength::Strong}}};
inline constexpr Words<book::Shell, 5> shellWords{{{"timber", book::Shell::Timber},
                                                   {"thick-timber", book::Shell::ThickTimber},
                                                   {"wrapped", book::Shell::Wrapped},
                                                   {"polystyrene", book::Shell::Polystyrene},
                                                   {"straw", book::Shell::Straw}}};
inline constexpr Words<book::BeeKind, 4> beeKindWords{{{"dark", book::BeeKind::Dark},
                                                       {"carniolan", book::BeeKind::Carniolan},
                                                       {"buckfast", book::BeeKind::Buckfast},
                                                       {"italian", book::BeeKind::Italian}}};
inline constexpr Words<book::HeftWord, 3> heftWords{
    {{"light", book::HeftWord::Light}, {"fair", book::HeftWord::Fair}, {"heavy", book::HeftWord::Heavy}}};
inline constexpr Words<book::FeederKind, 6> feederWords{{{"round", book::FeederKind::Round},
                                                         {"top", book::FeederKind::Top},
                                                         {"box", book::FeederKind::Box},
                                                         {"contact", book::FeederKind::Contact},
                                                         {"frame", book::FeederKind::Frame},
                                                         {"end", book::FeederKind::End}}};
inline constexpr Words<book::FeedKind, 3> feedWords{
    {{"syrup", book::FeedKind::Syrup}, {"fondant", book::FeedKind::Fondant}, {"dry-sugar", book::FeedKind::DrySugar}}};
inline constexpr Words<book::SupersFor, 2> supersForWords{{{"people", book::SupersFor::People}, {"bees", book::SupersFor::Bees}}};
inline constexpr Words<book::HoneyKind, 3> honeyWords{
    {{"blossom", book::HoneyKind::Blossom}, {"honeydew", book::HoneyKind::Honeydew}, {"heather", book::HoneyKind::Heather}}};
inline constexpr Words<book::UnitSystem, 3> unitWords{
    {{"metric", book::UnitSystem::Metric}, {"us", book::UnitSystem::UnitedStates}, {"imperial", book::UnitSystem::Imperial}}};

template <class Choice, std::size_t N>
constexpr std::optional<Choice> choiceOf(const Words<Choice, N>& words, std::string_view word) {
    for (const auto& [text, choice] : words)
        if (text == word) return choice;
    return std::nullopt;
}

template <class Choice, std::size_t N> constexpr std::string_view wordOf(const Words<Choice, N>& words, Choice choice) {
    for (const auto& [text, candidate] : words)
        if (candidate == choice) return text;
    return {};
}

template <class Choice, std::size_t N> std::vector<std::string> allWords(const Words<Choice, N>& words) {
    std::vector<std::string> result;
    for (const auto& row : words)
        result.emplace_back(row.first);
    return result;
}

} // namespace winterlarder::exchange
