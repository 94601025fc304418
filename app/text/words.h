// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "climate/season.h"
#include "text/asked.h"
#include "text/style.h"

#include <QString>
#include <string>
#include <vector>

//! Names and whole sentences for what the core says in ids and numbers. Every text can be translated; none is glued
//! from pieces. Tested: tests/app/words_test.cpp.
namespace winterlarder::text {

//! As a sentence or a table with room says it; as the window's lists, buttons and drawings do.
enum class Register { Whole, Brief };

QString verdict(advice::Verdict verdict, Register how = Register::Whole); //!< "harvest", or "take"
//! "leave it as it is", or "leave".
QString option(advice::OptionKind kind, const WordStyle& style, Register how = Register::Whole);
//! "feed 9 kg of sugar": what is bought, where the option's own amount is the stores it becomes.
QString option(const advice::Option& option, const advice::Advice& advice, const WordStyle& style);
QString look(advice::LookKind look, const WordStyle& style); //!< "heft the hive"
//! "check: combs sealed? weigh, feeder off, mouse guard on", or "check".
QString visit(feeding::VisitKind kind, const WordStyle& style, Register how);
QString winterClass(climate::WinterClass kind); //!< "a confined winter"
//! Name of a date of the season by its key in the case file: "forage" -> "the start of spring forage".
QString seasonDate(const std::string& key);
//! Name of a kind of evidence: "scale" -> "the weight on the scale", or "scale".
QString evidence(const std::string& kind, const WordStyle& style, Register how = Register::Whole);
//! Name of an autumn flow by its word in the case file.
QString flow(const std::string& word);
//! The town a station stands in, by the station's id: "ca-halifax" -> "Halifax".
QString town(const std::string& stationId);
//! Where a date comes from: "climate", "climate, moved", "case".
QString origin(climate::DateOrigin origin);

//! "one full comb", "2.5 full combs"
QString fullCombs(double count, const WordStyle& style);

// The sentences of an answer, in the order they are said. `form`: of the numbers in them that can be asked about.
//! What to do next, in one sentence a person would say, with its day.
QString headline(const advice::Advice& advice, const WordStyle& style, NumberForm form = plainly);
//! What the hive should hold on the day winter begins for it: stores, full combs, gross weight; empty where it cannot be said.
QString targetSentence(const advice::Advice& advice, const WordStyle& style, NumberForm form = plainly);
//! Stores and bees of today, with what they are known to; empty where they are not known.
QString thereSentence(const advice::Advice& advice, const WordStyle& style, NumberForm form = plainly);
//! How winters end if left alone and as advised, out of 100 simulated ones; empty where it cannot be said.
QString riskSentence(const advice::Advice& advice, const WordStyle& style, NumberForm form = plainly);
//! Where today's stores and the feed are more than the combs hold: that part of them is eaten before winter; empty else.
QString fitsSentence(const advice::Advice& advice, const WordStyle& style);
//! What is likely to be wanted later.
QString laterSentence(const advice::ExpectedLater& later, const WordStyle& style);
//! Combs named as people find them: "top box, combs 1, 2 and 10 from the left". `boxes` of the hive.
QString combPlaces(const std::vector<advice::CombPlace>& places, std::size_t boxes, const WordStyle& style);
QString combPlaces(const std::vector<int>& positions, const std::vector<stores::Comb>& combs, std::size_t boxes,
                   const WordStyle& style);
//! Whether another look is worth it, which, and what need not wait for it.
QString lookSentence(const advice::Advice& advice, const WordStyle& style, NumberForm form = plainly);

} // namespace winterlarder::text
