// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/doubt_words.h"
#include "book/book.h"
#include "book/form/entry_rows.h"
#include "book/form/limits.h"
#include "cli/book_options.h"
#include "cli/session.h"

#include <optional>
#include <string>

//! What the commands of `book` share: opening, naming colonies, days, writing one edit.
namespace winterlarder::cli {

enum class For { Reading, Writing };

book::Opening openingOf(const Session& session, const BookFile& options, For purpose);
std::string writerOf(const Session& session, const BookFile& options);

//! The book, its notices told. Problem: no such book, damaged, or not writable where it is to be written.
Outcome<book::Book> openBook(Session& session, const BookFile& options, For purpose);

//! The colony of that name, or of that number ("7", "#7") where none has the name.
Outcome<book::Colony> colonyOf(book::Book& from, const std::string& nameOrNumber);

//! The yard of that name; where none is named the only one of the book.
Outcome<book::YardId> yardFor(book::Book& from, const std::optional<std::string>& name);

//! The day an option names. Problem: not a day.
Outcome<Date> dayOf(const char* option, const std::string& text);
Outcome<Date> dayOrToday(const Session& session, const char* option, const std::optional<std::string>& text);

//! Applies the edit; the number of the entry that is new, printed once it is on disk.
template <class Entry> Status addAndPrint(Session& session, book::Book& to, const BookFile& options, Entry entry);

//! Said after a question about an entry that may be right.
inline constexpr const char* ifSure = "If it is right as it stands: --sure";

//! Said after a question about an entry that is taken meanwhile.
inline constexpr const char* takenAsTyped =
    "It is entered as typed; book undo takes it back, --sure says that it is right";

//! What is asked about an entry before it is added.
struct Asked {
    Problems first;     //!< impossible, or not likely and not said to be sure of: not added
    Problems meanwhile; //!< told once it is added
};

//! Of an entry about to be added. One beyond the limits of its fields is the book's to refuse.
template <class Entry> Asked askedAbout(const Session& session, book::Book& to, bool sure, const Entry& entry) {
    const book::Limits limits(session.reference.fields);
    if (!limits.faults(book::tableOf(book::kindOf<Entry>), book::rowOf(entry)).empty()) return {};
    const auto known = answer::surroundingsOf(to, answer::colonyOf(entry));
    if (!known) return {known.problems(), {}};
    const auto doubt = answer::doubtOf(entry, *known, session.moment.today, session.reference);
    if (!doubt || (sure && !doubt->impossible)) return {};
    const Place place{"winterlarder-cli", 0, 0};
    const auto said = answer::problemOf(*doubt, place, doubt->takenMeanwhile ? takenAsTyped : ifSure, known->site,
                                        known->colony.hive, session.reference, session.style);
    return doubt->takenMeanwhile ? Asked{{}, {said}} : Asked{{said}, {}};
}

//! Says what an edit without a new id did: how many entries it touched.
Status printTouched(Session& session, const Outcome<book::Applied>& applied);
//! `place`: what was taken for a place that was named, in the JSON beside the number.
Status printId(Session& session, const Outcome<book::Applied>& applied, book::Kind kind,
               std::optional<exchange::Json> place = {});

//! As addAndPrint, of an entry that is held against its hive first.
template <class Entry, class Options>
Status judgeAndAdd(Session& session, book::Book& to, const Options& options, Entry entry) {
    const auto asked = askedAbout(session, to, options.sure, entry);
    if (!asked.first.empty()) return session.fail(asked.first);
    const Status status = addAndPrint(session, to, options, std::move(entry));
    if (status == Status::Done) session.ask(asked.meanwhile);
    return status;
}

template <class Entry> Status addAndPrint(Session& session, book::Book& to, const BookFile& options, Entry entry) {
    return printId(
        session,
        to.apply(book::SingleEdit(book::Add<Entry>{std::move(entry)}), session.moment.now, writerOf(session, options)),
        book::kindOf<Entry>);
}

} // namespace winterlarder::cli
