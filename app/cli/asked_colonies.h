// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"
#include "cli/batch.h"
#include "cli/book_options.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

//! Colonies of a book and their answers in the plans of their yards: what advise, accept and calendar of `book` share. Tested: tests/cli/book_together_test.cpp.
namespace winterlarder::cli {

//! The colonies asked for: one by name, living or not; else all that live. Problem: no colony of that name.
Outcome<std::vector<book::Colony>> coloniesAsked(book::Book& from, const std::optional<std::string>& name, Date asOf);

//! A colony and its case, or why there is none. One that is not shown only takes part in the plan of its yard.
struct AskedColony {
    book::Colony colony;
    Outcome<book::ColonyCase> record;
    bool shown = true;
};

//! Whether a colony asked about by name is answered in the plan of its yard, as among all of the book, or stands alone.
enum class Neighbours { Counted, LeftOut };

//! The colonies asked about with their cases; `learned` of the book, may be nothing.
Outcome<std::vector<AskedColony>> coloniesWithCases(book::Book& from, const BookAnswers& options, Date asOf,
                                                    Neighbours neighbours, const answer::BookLearned* learned);

//! Answers all in the plans of their yards; `take` gets those that are shown, in their order. What keeps a neighbour out of the plan is told.
void answerAll(Session& session, const BookAnswers& options, const std::vector<AskedColony>& asked,
               const std::function<void(const AskedColony&, const BatchAnswer&)>& take);

//! The answers of all that are shown, in the plans of their yards, by the colonies' numbers. Problems: of the book.
Outcome<std::map<std::int64_t, BatchAnswer>> answersOfDay(Session& session, book::Book& from,
                                                          const BookAnswers& options, Date asOf,
                                                          const answer::BookLearned* learned);

} // namespace winterlarder::cli
