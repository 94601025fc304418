// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/columns.h"

#include <QBoxLayout>

#include <algorithm>

namespace winterlarder::desk {

bool besideWhereRoom(QBoxLayout& columns, int width) {
    const QMargins margins = columns.contentsMargins();
    int wanted = margins.left() + margins.right() + (columns.count() - 1) * columns.spacing();
    for (int i = 0; i < columns.count(); ++i) wanted += columns.itemAt(i)->minimumSize().width();
    const auto direction = width >= wanted ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom;
    if (columns.direction() == direction) return false;
    columns.setDirection(direction);
    return true;
}

QSize leastOfColumns(const QBoxLayout& columns) {
    const QMargins margins = columns.contentsMargins();
    int widest = 0;
    for (int i = 0; i < columns.count(); ++i) widest = std::max(widest, columns.itemAt(i)->minimumSize().width());
    return {widest + margins.left() + margins.right(), columns.minimumSize().height()};
}

} // namespace winterlarder::desk
