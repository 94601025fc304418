// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/history.h"
#include "text/style.h"

#include <QString>
#include <string_view>

//! Words for a book's history. Tested: tests/app/step_words_test.cpp, tests/cli/book_test.cpp.
namespace winterlarder::text {

//! What a verb did: "look added". A verb this program does not know is shown as it is.
QString verbTitle(const std::string& verb, const WordStyle& style = {});
QString stepState(book::StepState state);
QString kindName(book::Kind kind);   //!< "look"
QString kindPlural(book::Kind kind); //!< "looks"

//! The words of documents, never translated: "done", "undone", "abandoned"; "add", "change", "remove".
std::string_view wordOf(book::StepState state);
std::string_view wordOf(book::ChangeHow how);

} // namespace winterlarder::text
