// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/asked.h"
#include "text/style.h"
#include "tracking/follow.h"

#include <QString>

#include <string>
#include <string_view>

//! Words of a winter that is followed, the same on the command line and in the window. Tested: tests/cli/follow_test.cpp,
//! tests/app/following_test.cpp.
namespace winterlarder::text {

//! How it goes and what is fed next: "On course.", "Act now: 2.5 kg of fondant on the bees today, then weigh again."
QString followHeadline(const tracking::FollowQuestion& question, const tracking::Following& following,
                       const WordStyle& style, NumberForm form = plainly);
//! The state in two words.
QString followState(tracking::FollowState state);
//! What may be wanted after that, and when; nothing where nothing is.
QString expectedLaterSentence(const tracking::FollowQuestion& question, const tracking::Following& following,
                              const WordStyle& style);
//! How often it goes wrong from here, as forecast in autumn and now.
QString followRisk(const tracking::FollowQuestion& question, const tracking::Following& following,
                   const WordStyle& style, NumberForm form = plainly);
//! When to look next; why not, where no look is worth it.
QString followNext(const tracking::FollowQuestion& question, const tracking::Following& following,
                   const WordStyle& style, NumberForm form = plainly);
//! One of the five questions after a death, by its id (answer::deathQuestions).
QString deathQuestion(std::string_view id);

} // namespace winterlarder::text
