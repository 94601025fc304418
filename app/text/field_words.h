// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/style.h"

#include <QString>
#include <string>

namespace winterlarder::text {

//! What a value of the book is called, by its column: "gross_kg" -> "weight"; a comb's column as "combs.3.capped" -> "comb 4: capped".
//! A column without words gives its own name; a test holds that every column of the book has words.
//! Tested: tests/app/step_words_test.cpp.
QString fieldName(const std::string& column, const WordStyle& style = {});
bool hasFieldName(const std::string& column);

//! The value as the history keeps it (book/canonical.h), for people: "0.8" of a comb -> "80 %", "41.5" kg -> "41.5 kg".
QString fieldValue(const std::string& column, const std::string& text, const WordStyle& style);

} // namespace winterlarder::text
