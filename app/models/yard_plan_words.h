// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard_plan.h"

#include <QString>

//! The plan of a yard in words, for the window and for paper.
namespace winterlarder::desk {

//! The yard's state in a sentence.
QString yardSentence(const YardPlan& plan);
//! What to buy and by when, and that combs stay where they are, if the keeper chose so; empty where nothing is fed and combs may move.
QString yardSmallLine(const YardPlan& plan);
//! In how many bags it comes and what it costs, as far as the yard says so.
QString costWords(const book::Yard& yard, Mass sugar);
//! Combs that go from one colony to another, named as people find them.
QString giftWords(const advice::CombGift& gift, const YardPlan& plan);
QString giftPlaces(const advice::CombGift& gift, const YardPlan& plan); //!< of the combs alone
//! All of them, or why none moves.
QString movedCombsWords(const YardPlan& plan);

} // namespace winterlarder::desk
