// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/entries/records.h"
#include "reference/reference.h"
#include "text/style.h"

namespace winterlarder::answer {

bool hangsInFrames(const advice::ColonyQuestion& question); //!< its combs, in every box
//! What that colony's combs and feed are called at its place.
text::Wording wordingOf(const advice::ColonyQuestion& question);
//! The same of a hive at a place, as they are written down: before there is a question.
text::Wording wordingOf(const book::SiteRecord& place, const book::HiveRecord& hive, const ReferenceData& reference);

//! Whether keepers of that place want pounds beside kilograms of stores: in Canada and Britain.
bool wantsPoundsBeside(const advice::ColonyQuestion& question);

//! How an answer on that colony is told: in the words of its place, and in its units unless others were chosen by hand; in Canada and Britain
//! stores have pounds beside them. Tested: tests/answer/usual_of_place_test.cpp, wording_test.cpp.
text::WordStyle styleFor(text::WordStyle style, const advice::ColonyQuestion& question);

} // namespace winterlarder::answer
