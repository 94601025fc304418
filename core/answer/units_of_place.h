// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"

namespace winterlarder::answer {

//! Units of a colony's place: those chosen for it, else pounds in the United States, kilograms elsewhere. Tested: tests/answer/usual_of_place_test.cpp.
UnitSystem unitsOf(const advice::ColonyQuestion& question);

//! In which steps sugar is bought and fondant cut there: 4 lb and 1 lb where pounds are counted, else whole and half kilograms.
feeding::Steps stepsFor(UnitSystem units);

} // namespace winterlarder::answer
