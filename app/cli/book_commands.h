// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "cli/book_options.h"
#include "cli/commands.h"
#include "cli/session.h"

//! The commands of `book`. Those that write print the id of what is new, once it is on disk; those that only read open the book
//! read-only, so they work while a window has it open. Tested: tests/cli/book_test.cpp.
namespace winterlarder::cli {

Status newBook(Session& session, const NewBook& options);
Status addYard(Session& session, const NewYard& options);
Status addColony(Session& session, const NewColony& options);
Status addBoxes(Session& session, const NewBoxes& options);
Status renameColony(Session& session, const RenamedColony& options);
Status addLook(Session& session, const NewLook& options);
Status addWeighing(Session& session, const NewWeighing& options);
Status addFeed(Session& session, const NewFeed& options);
Status addHarvest(Session& session, const NewHarvest& options);
Status addTreatment(Session& session, const NewTreatment& options);
Status addSighting(Session& session, const NewSighting& options);
Status addWeather(Session& session, const NewWeather& options);
Status addScaleLog(Session& session, const NewScaleLog& options, const ScaleOptions& log);
Status addFate(Session& session, const NewFate& options);

Status adviseBook(Session& session, const BookAnswers& options);
Status bookCase(Session& session, const BookAnswers& options);
//! Freezes the advice of one colony in the book and plans its visits.
Status acceptAdvice(Session& session, const BookAnswers& options);

//! How the winter of every living colony goes. Tested: tests/cli/follow_test.cpp.
Status followBook(Session& session, const BookFollow& options);
Status addOutcome(Session& session, const NewOutcome& options);
//! What past winters taught, and how good their forecasts were.
Status learnedBook(Session& session, const BookAnswers& options);
//! What is due, as an iCalendar file.
Status bookCalendar(Session& session, const BookAnswers& options);

Status bookStory(Session& session, const BookStory& options);
Status bookInfo(Session& session, const BookFile& options);
Status checkBook(Session& session, const BookFile& options);
Status turnBook(Session& session, const BookFile& options, book::Turned turned);

Status exportBook(Session& session, const BookExport& options);
Status importBook(Session& session, const BookImport& options);
Status copyBook(Session& session, const BookAndFile& options);
Status bookBackups(Session& session, const BookBackups& options);
Status restoreBook(Session& session, const BookAndFile& options);
Status salvageBook(Session& session, const BookAndFile& options);

} // namespace winterlarder::cli
