// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "text/style.h"

namespace winterlarder::answer {

//! Units of a colony's place: those chosen for it, else pounds in the United States, kilograms elsewhere. Tested: tests/answer/usual_of_place_test.cpp.
advice::UnitSystem unitsOf(const advice::ColonyQuestion& question);

//! In which steps sugar is bought and fondant cut there: 4 lb and 1 lb where pounds are counted, else whole and half kilograms.
feeding::Steps stepsFor(advice::UnitSystem units);

//! How numbers look in an answer on that colony: in the units of its place; in Canada and Britain stores have pounds beside them.
text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question);

} // namespace winterlarder::answer
