// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/row.h"

namespace SQLite {
class Statement;
}

namespace winterlarder::book {

//! Binds a value at a place counted from 1.
void bindValue(SQLite::Statement& statement, int place, const Value& value);
void bindValues(SQLite::Statement& statement, int first, const Values& values);
//! The value of a result column counted from 0. A blob, which no book holds, comes as text that is not UTF-8 or not of its form
//! and is refused where the row is read.
Value valueAt(SQLite::Statement& statement, int column);

} // namespace winterlarder::book
