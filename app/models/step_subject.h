// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <QString>

namespace winterlarder::desk {

//! What a step of the history was about, by name: its colonies, or its yards where it names none; the first few of many. Empty where all
//! of it is gone. Tested: tests/app/fields_test.cpp.
QString subjectOf(book::Book& book, const book::Step& step);

} // namespace winterlarder::desk
