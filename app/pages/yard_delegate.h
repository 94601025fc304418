// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace winterlarder::desk {

//! Paints a row of the yard list: name and verdict; the stores as a bar whose end is as soft as the estimate, a tick for the need;
//! what is due, and the verdict's drawing.
class YardDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    //! A list no wider shows each colony by its drawing and its name alone.
    static int stripWidth(const QFont& font);

    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace winterlarder::desk
