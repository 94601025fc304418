// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "report/sheet.h"
#include "text/style.h"

#include <QString>

namespace winterlarder::desk::print {

//! Heading of a section, name of a fact, heading of a column, by their ids; an id without words gives the id itself. Tested:
//! every id of both sheets has words, tests/app/paper_test.cpp.
QString headingOf(const std::string& section, const text::WordStyle& style);
QString nameOf(const std::string& fact, const text::WordStyle& style);
QString wordOf(const std::string& id, const text::WordStyle& style);

//! What stands in a place of the sheet, in the window's units and locale.
QString textOf(const report::Cell& cell, const text::WordStyle& style);
//! Numbers stand to the right.
bool standsRight(const report::Cell& cell);

} // namespace winterlarder::desk::print
