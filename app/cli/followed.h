// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "cli/asked_colonies.h"
#include "cli/session.h"

#include <map>
#include <optional>
#include <string>

namespace winterlarder::cli {

//! A colony of a book and how its winter goes; nothing of that where its autumn cannot be answered.
struct Followed {
    answer::FollowedColony colony;
    std::optional<tracking::Following> following;
    std::optional<WeighedColony>
        leading; //!< the answer of the day, where that says what to do and not the followed winter
};

//! Follows a colony to a day; `learned` of the book, may be nothing. Problems: those of its case. Tested: tests/cli/follow_test.cpp.
Outcome<Followed> followOne(const Session& session, book::Book& from, const answer::BookLearned* learned,
                            const book::Colony& colony, Date asOf);
Outcome<Followed> followOne(const Session& session, const answer::FollowReading& reading);

//! The answers of a day in a book, reckoned once one is wanted; all outlives it. Tested: tests/cli/follow_test.cpp.
class AnswersOfDay {
public:
    AnswersOfDay(Session& session, book::Book& from, const BookAnswers& options, Date asOf,
                 const answer::BookLearned* learned)
        : session_(session), from_(from), options_(options), asOf_(asOf), learned_(learned) {}
    //! Lets the answer of the day lead where it is to (answer::adviceLeads).
    void lead(Followed& followed, const answer::FollowReading& reading);

private:
    const WeighedColony* answerOf(const book::Colony& colony);

    Session& session_;
    book::Book& from_;
    const BookAnswers& options_;
    Date asOf_;
    const answer::BookLearned* learned_;
    std::optional<std::map<std::int64_t, BatchAnswer>> answers_;
};

//! As a line of JSON or as text; `daily`: with the days of both forecasts.
std::string spoken(const Session& session, const Followed& followed, Date asOf, bool daily);

} // namespace winterlarder::cli
