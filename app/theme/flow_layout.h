// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>

#include <vector>

namespace winterlarder::desk {

//! Lays widgets in a line and goes on in the next when it is full, as words do. All lines are as tall as the tallest widget; one
//! that is wider than a line is laid out in the line's width.
class FlowLayout : public QLayout {
public:
    explicit FlowLayout(QWidget* parent, int across = 14, int down = 6);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    void insert(int index, QWidget* widget); //!< before the item that stands there
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    int place(const QRect& rect, bool really) const;

    int across_, down_;
    std::vector<QLayoutItem*> items_;
};

} // namespace winterlarder::desk
