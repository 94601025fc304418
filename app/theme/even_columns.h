// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <vector>

class QGridLayout;

namespace winterlarder::desk {

//! Widgets of equal width beside each other, in as many columns as leave each the width it needs. Tested:
//! tests/app/layout/parts_layout_test.cpp.
class EvenColumns : public QWidget {
public:
    EvenColumns(QWidget* parent, int leastWidth, int spacing);

    void add(QWidget* widget);
    int columns() const { return columns_; }
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();

    QGridLayout* grid_;
    std::vector<QWidget*> widgets_;
    int leastWidth_, columns_ = 0;
};

} // namespace winterlarder::desk
