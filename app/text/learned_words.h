// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "learning/keeper.h"
#include "learning/scores.h"
#include "text/style.h"

#include <QString>
#include <QStringList>

#include <string>

//! Words of what past winters taught, the same on the command line and in the window. Tested: tests/cli/follow_test.cpp.
namespace winterlarder::text {

QString nothingLearned();
QString learnedHeading(int winters); //!< "Learned from 12 winters of colonies"
QStringList learnedLines(const learning::LastingPair& keeper,
                         const WordStyle& style); //!< what the bees eat, what they lose
//! Above the table of colonies, whose factors are not the keeper's alone.
QString learnedOfColonies();
QString forageShiftLine(const learning::ForageShift& shift, const WordStyle& style); //!< of one yard
//! Why a winter is left out: its records fit none that was simulated.
QString learnedNothingFrom(const std::string& colony, int autumn);
//! How many of the past forecasts' bands of nine in ten held, and their mean score beside the handbook's.
QString scoreSentence(const learning::ScoreSummary& summary, const WordStyle& style);

} // namespace winterlarder::text
