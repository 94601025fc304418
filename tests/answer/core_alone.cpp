// SPDX-License-Identifier: GPL-3.0-or-later
// core_alone DATA CASE: the answer to a case file from the core library alone, which knows no window and no words.
// Prints stores, need and what is to be fed, in kilograms, as JSON. Run by tests/cli/core_alone_test.cpp.
#include "advice/advice.h"
#include "answer/question_of_case.h"
#include "exchange/json/json_output.h"
#include "reference/reference.h"

#include <fstream>
#include <iostream>
#include <iterator>

using namespace winterlarder;

namespace {

constexpr winter::Sampling sampling{1, 300};

Problem inPlainWords(const stores::Doubt& doubt, Place place, const book::ColonyCase&) {
    return {ProblemKind::Input, std::move(place), "this cannot be: " + doubt.says.id, "what it really was"};
}

int refuse(const Problems& problems) {
    for (const Problem& problem : problems) std::cerr << describe(problem) << '\n';
    return 1;
}

exchange::Json kilogramsOf(const std::optional<Mass>& mass) {
    return mass ? exchange::Json(mass->value()) : exchange::Json();
}

} // namespace

int main(int count, char** words) {
    if (count != 3) {
        std::cerr << "core_alone DATA CASE\n";
        return 2;
    }
    const auto reference = loadReference(words[1]);
    if (!reference) return refuse(reference.problems());
    std::ifstream file(words[2], std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    const auto read = answer::readQuestion(text, words[2], *reference, 0, inPlainWords);
    if (!read) return refuse(read.problems());
    const auto answer = advice::weigh(read->question, reference->constants, sampling, 1);
    const auto& advice = answer->advice;
    auto shown = exchange::Json::object();
    shown.add("stores_kg", kilogramsOf(advice.estimate ? std::optional(advice.estimate->spread.typical) : std::nullopt))
        .add("need_kg", kilogramsOf(advice.need))
        .add("fed_stores_kg", kilogramsOf(advice.feed ? std::optional(advice.feed->stores) : std::nullopt));
    std::cout << shown.pretty();
}
