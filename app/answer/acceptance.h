// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "book/form/edits.h"
#include "reference/reference.h"
#include "text/style.h"

namespace winterlarder::answer {

//! The advice as it is frozen in the book when a keeper acts on it: the case it was computed from, its answer as the command line
//! writes it, seed, winters and this program's version; its visits planned. Tested: tests/answer/acceptance_test.cpp.
book::AcceptAdvice acceptanceOf(book::ColonyId colony, const book::ColonyCase& record,
                                const advice::ColonyQuestion& question, const advice::Advice& advice,
                                const ReferenceData& reference, const text::WordStyle& style);

} // namespace winterlarder::answer
