// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>

class QBoxLayout;

namespace winterlarder::desk {

//! The items of a page's layout beside each other where `width` has room for all, else one below the other; whether that changed.
bool besideWhereRoom(QBoxLayout& columns, int width);

//! As narrow as the widest of them alone: the others go below it.
QSize leastOfColumns(const QBoxLayout& columns);

} // namespace winterlarder::desk
