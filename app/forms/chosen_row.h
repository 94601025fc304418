// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

#include <functional>

namespace winterlarder::desk {

//! The row of a table that was chosen, by a click, an arrow key or the space bar; -1 where there is none. Focus alone stands on a row and
//! chooses nothing: what changes or removes an entry asks here. Tested: tests/app/pages_test.cpp.
int chosenRow(const QTableView& table);

//! Calls `fit` when another row is chosen or none any more, also after the table was filled anew, and now. From here on an arrow key
//! chooses the row the focus stands on where none is chosen yet, so that the first is not passed over.
void onChosenRow(QTableView* table, QObject* context, const std::function<void()>& fit);

} // namespace winterlarder::desk
