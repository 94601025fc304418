// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/flow_layout.h"

#include <QWidget>

#include <algorithm>

namespace winterlarder::desk {

FlowLayout::FlowLayout(QWidget* parent, int across, int down) : QLayout(parent), across_(across), down_(down) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    for (auto* item : items_) delete item;
}

void FlowLayout::addItem(QLayoutItem* item) { items_.push_back(item); }

int FlowLayout::count() const { return static_cast<int>(items_.size()); }

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    auto* item = itemAt(index);
    if (item) items_.erase(items_.begin() + index);
    return item;
}

int FlowLayout::heightForWidth(int width) const { return place(QRect(0, 0, width, 0), false); }

QSize FlowLayout::sizeHint() const {
    QSize size;
    for (const auto* item : items_) {
        if (item->isEmpty()) continue;
        size.rwidth() += item->sizeHint().width() + across_;
        size.setHeight(std::max(size.height(), item->sizeHint().height()));
    }
    return size;
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const auto* item : items_)
        if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
    return size;
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    place(rect, true);
}

int FlowLayout::place(const QRect& rect, bool really) const {
    int x = rect.x(), y = rect.y();
    const int tall = sizeHint().height();
    for (auto* item : items_) {
        if (item->isEmpty()) continue;
        const QSize size = item->sizeHint();
        if (x > rect.x() && x + size.width() > rect.right() + 1) {
            x = rect.x();
            y += tall + down_;
        }
        if (really) item->setGeometry(QRect(x, y, size.width(), tall));
        x += size.width() + across_;
    }
    return y + tall - rect.y();
}

} // namespace winterlarder::desk
