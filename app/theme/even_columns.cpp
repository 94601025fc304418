// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/even_columns.h"

#include <QGridLayout>

#include <algorithm>

namespace winterlarder::desk {

EvenColumns::EvenColumns(QWidget* parent, int leastWidth, int spacing)
    : QWidget(parent), grid_(new QGridLayout(this)), leastWidth_(leastWidth) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setSpacing(spacing);
}

void EvenColumns::add(QWidget* widget) {
    widgets_.push_back(widget);
    columns_ = 0;
    arrange();
}

QSize EvenColumns::minimumSizeHint() const { return {leastWidth_, QWidget::minimumSizeHint().height()}; }

void EvenColumns::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

// As many rows as are wanted, each as full as the others can be.
void EvenColumns::arrange() {
    const int all = static_cast<int>(widgets_.size());
    const int most = std::clamp((width() + grid_->spacing()) / (leastWidth_ + grid_->spacing()), 1, all);
    const int rows = (all + most - 1) / most, wanted = (all + rows - 1) / rows;
    if (wanted == columns_) return;
    for (int column = 0; column < columns_; ++column) grid_->setColumnStretch(column, 0);
    columns_ = wanted;
    for (int i = 0; i < all; ++i) grid_->addWidget(widgets_[static_cast<std::size_t>(i)], i / columns_, i % columns_);
    for (int column = 0; column < columns_; ++column) grid_->setColumnStretch(column, 1);
    updateGeometry();
}

} // namespace winterlarder::desk
