// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/case_of.h"
#include "cli/open_book.h"

//! What the commands that write one record of a colony share.
namespace winterlarder::cli {

//! The colony and day a record is about.
struct About {
    book::ColonyId colony;
    Date date;
};

//! Opens the book, finds colony and day, and lets `write` add the record.
template <class Write> Status withColony(Session& session, const RecordOf& options, Write write) {
    const auto date = dayOf("--date", options.date);
    if (!date) return session.fail(date.problems());
    auto opened = openBook(session, options, For::Writing);
    if (!opened) return session.fail(opened.problems());
    const auto colony = colonyOf(*opened, options.colony);
    if (!colony) return session.fail(colony.problems());
    return write(*opened, About{colony->id, *date});
}

inline Outcome<book::HiveRecord> hiveOnDay(book::Book& from, const About& about) {
    const auto colony = from.find(about.colony);
    if (!colony) return colony.problems();
    const auto housings = from.of<book::Housing>(about.colony);
    if (!housings) return housings.problems();
    return book::hiveOn(**colony, *housings, about.date);
}

} // namespace winterlarder::cli
