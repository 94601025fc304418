// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "cli/session.h"

#include <optional>
#include <string>

namespace winterlarder::cli {

//! A colony of a book and how its winter goes; nothing of that where its autumn cannot be answered.
struct Followed {
    answer::FollowedColony colony;
    std::optional<tracking::Following> following;
};

//! Follows a colony to a day; `learned` of the book, may be nothing. Problems: those of its case. Tested: tests/cli/follow_test.cpp.
Outcome<Followed> followOne(const Session& session, book::Book& from, const answer::BookLearned* learned,
                            const book::Colony& colony, Date asOf);
Outcome<Followed> followOne(const Session& session, const answer::FollowReading& reading);

//! As a line of JSON or as text; `daily`: with the days of both forecasts.
std::string spoken(const Session& session, const Followed& followed, Date asOf, bool daily);

} // namespace winterlarder::cli
