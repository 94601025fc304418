// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

//! The whole book as one JSON document. Its keys are the tables of the book ("yards" .. "winter_outcomes"), each a list of entries with
//! their ids; an entry's keys are the columns, units in their names, what is not said left out. One entry a line, entries by id, columns
//! in one order: the same book gives the same bytes. The document holds what the keeper recorded; the history of
//! edits and photographs stay where they are. shared/reference/book.schema.json describes it.
namespace winterlarder::exchange {

//! The form of document this program writes and reads: the value of its key "larder".
inline constexpr int bookDocumentForm = 1;

//! Writes the document part by part.
Outcome<Done> writeBook(book::Book& from, const std::function<void(std::string_view)>& part);
Outcome<std::string> writeBook(book::Book& from);

//! Reads a document strictly: unknown and doubled keys, wrong types, values outside the limits of shared/fields.csv, ids given twice and
//! references to entries that are not in it - every fault with file, line and column.
//! Tested: tests/exchange/book_document_test.cpp.
//! `places`, where wanted: of each entry.
Outcome<std::vector<book::Target>> readBook(std::string_view text, const std::string& file,
                                            const ReferenceData& reference, std::vector<Place>* places = nullptr);

//! Makes the book hold what the document says, no more and no less: one step of the history, undoable; where the book held anything a
//! backup is made first.
Outcome<book::Applied> importBook(book::Book& into, std::string_view text, const std::string& file, book::Timestamp now,
                                  const std::string& who);
//! The same of a document that was read before.
Outcome<book::Applied> importBook(book::Book& into, std::vector<book::Target> entries, book::Timestamp now,
                                  const std::string& who);

//! The JSON Schema (draft 2020-12) of the document, from the description of the entries and their limits.
std::string bookSchema(const std::vector<FieldLimits>& fields);

} // namespace winterlarder::exchange
