// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/answer_parts.h"
#include "models/colony.h"

#include <QString>

#include <vector>

//! The answers to the question an advice asks back, and where each is kept: in the yard, the hive or the look. Tested: tests/app/ask_test.cpp.
namespace winterlarder::desk {

class Yard;

struct AskChoice {
    QString words;
    double value = 0; //!< handed to answerAsked()
};
//! What may be chosen; none where a number is typed.
std::vector<AskChoice> choicesOf(advice::AskKind kind);
//! Of a number: the field of shared/fields.csv that bounds it, or nothing.
const char* fieldOf(advice::AskKind kind);

//! Writes the answer into the book as one step: a choice's value, or the number [kg, combs]. Nothing happens where the colony is not shown.
void answerAsked(Yard& yard, ColonyId colony, advice::AskKind kind, double value);

} // namespace winterlarder::desk
