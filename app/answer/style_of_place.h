// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "text/style.h"

namespace winterlarder::answer {

//! How numbers look in an answer on that colony: in the units of its place; in Canada and Britain stores have pounds beside them.
//! Tested: tests/answer/usual_of_place_test.cpp.
text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question);

} // namespace winterlarder::answer
