// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/history.h"
#include "text/style.h"

#include <QString>
#include <QStringList>
#include <string>

namespace winterlarder::text {

//! What a step did, by its verb: "look added", also for what only the window does. Tested: tests/app/step_words_test.cpp.
QString verbName(const std::string& verb, const WordStyle& style = {});

//! The step for a menu: what it did, and where at most three values changed, which: "comb 4: capped 80 %".
QString stepName(const book::Step& step, const WordStyle& style);

//! What the step changed, a line a value: "comb 4: capped, from 60 % to 80 %"; at most `most` lines, the last says how many more.
QStringList stepLines(const book::Step& step, const WordStyle& style, int most = 12);

} // namespace winterlarder::text
