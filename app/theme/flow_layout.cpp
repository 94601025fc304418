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

void FlowLayout::insert(int index, QWidget* widget) {
    addWidget(widget);
    std::rotate(items_.begin() + std::clamp(index, 0, count() - 1), items_.end() - 1, items_.end());
    invalidate();
}

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

namespace {

struct Placed {
    QLayoutItem* item;
    int x, width;
};

// What is wider than the whole line goes over several lines itself, where it can.
int heightOf(const Placed& placed) {
    const QSize wanted = placed.item->sizeHint();
    return placed.width < wanted.width() && placed.item->hasHeightForWidth() ? placed.item->heightForWidth(placed.width)
                                                                             : wanted.height();
}

} // namespace

int FlowLayout::place(const QRect& rect, bool really) const {
    int y = rect.y();
    const int least = sizeHint().height();
    std::vector<Placed> line;
    const auto finish = [&] {
        int tall = least;
        for (const auto& placed : line) tall = std::max(tall, heightOf(placed));
        for (const auto& placed : line)
            if (really) placed.item->setGeometry(QRect(placed.x, y, placed.width, tall));
        line.clear();
        y += tall;
    };
    int x = rect.x();
    for (auto* item : items_) {
        if (item->isEmpty()) continue;
        const int width = std::min(item->sizeHint().width(), std::max(rect.width(), item->minimumSize().width()));
        if (!line.empty() && x + width > rect.right() + 1) {
            finish();
            x = rect.x();
            y += down_;
        }
        line.push_back({item, x, width});
        x += width + across_;
    }
    finish();
    return y - rect.y();
}

} // namespace winterlarder::desk
