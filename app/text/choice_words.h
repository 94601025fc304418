// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "book/entries/words.h"
#include "text/style.h"

#include <QString>

#include <utility>
#include <vector>

//! The choices a keeper has in the book, in words. Tested: tests/app/step_words_test.cpp.
namespace winterlarder::text {

QString choice(book::FlowStrength flow);
QString choice(book::Shell shell);
QString choice(book::BeeKind kind);
QString choice(book::HeftWord heft);
QString choice(book::FeederKind kind);
QString choice(book::FeedKind kind);
QString choice(book::QueenColour colour);
QString choice(book::FateKind fate);
QString choice(book::Temper temper);
QString choice(book::ManipulationKind what, const WordStyle& style = {});
QString choice(book::VisitKind what);
QString choice(book::VisitState state);
QString choice(book::SightingKind saw);
QString choice(book::BroodPattern brood);

//! Every choice with its words, in the order of its enumerators.
template <class Choice> std::vector<std::pair<QString, Choice>> choices() {
    std::vector<std::pair<QString, Choice>> all;
    for (std::size_t at = 0; at < book::wordsOf<Choice>.size(); ++at) {
        const auto each = static_cast<Choice>(at);
        all.emplace_back(choice(each), each);
    }
    return all;
}

} // namespace winterlarder::text
