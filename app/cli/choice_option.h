// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/open_book.h"

#include "book/entries/words.h"
#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"

#include <fmt/format.h>

namespace winterlarder::cli {

//! One of a choice's words, as the case file has them; a problem where it is none.
template <class Choice>
std::optional<Choice> choiceOption(const char* option, const std::optional<std::string>& word, Problems& problems) {
    if (!word) return std::nullopt;
    const auto choice = book::choiceOf<Choice>(*word);
    if (!choice)
        problems.push_back(argumentProblem(fmt::format("{} is {}", option, exchange::inQuotes(*word)),
                                           exchange::suggestion(*word, book::allWords<Choice>())));
    return choice;
}

//! The value; where there is none its problems are added.
template <class T> std::optional<T> orTell(Outcome<T> outcome, Problems& problems) {
    if (outcome) return std::move(outcome).value();
    problems.insert(problems.end(), outcome.problems().begin(), outcome.problems().end());
    return std::nullopt;
}

//! The ids of shipped things, to suggest from.
std::vector<std::string> idsOf(const auto& shipped) {
    std::vector<std::string> ids;
    for (const auto& each : shipped) ids.push_back(each.id);
    return ids;
}

} // namespace winterlarder::cli
