// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/history.h"

#include <QString>
#include <string_view>

//! Words for what a book holds. Tested: tests/answer/kind_words_test.cpp.
namespace winterlarder::text {

QString kindPlural(book::Kind kind); //!< "looks"
QString stepState(book::StepState state);

//! The words of documents, never translated: "done", "undone", "abandoned"; "add", "change", "remove".
std::string_view wordOf(book::StepState state);
std::string_view wordOf(book::ChangeHow how);

} // namespace winterlarder::text
