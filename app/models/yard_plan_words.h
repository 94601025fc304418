// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard_plan.h"

#include <QString>

//! The plan of a yard in words, for the window and for paper.
namespace winterlarder::desk {

//! The yard's state in a sentence.
QString yardSentence(const YardPlan& plan);
//! What to buy and by when; empty where nothing is fed.
QString yardSmallLine(const YardPlan& plan);
//! In how many bags it comes and what it costs, as far as the yard says so.
QString costWords(const book::Yard& yard, Mass sugar);
//! Combs that could go from one colony to another.
QString giftWords(const advice::CombGift& gift);

} // namespace winterlarder::desk
