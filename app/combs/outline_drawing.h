// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"

#include <QWidget>

#include <optional>

namespace winterlarder::desk {

//! A comb face on in its true proportions, hanging from its bar, with its measures on it. Tested: tests/app/own_measures_test.cpp.
class OutlineDrawing : public QWidget {
    Q_OBJECT

public:
    explicit OutlineDrawing(QWidget* parent = nullptr);

    //! Nothing where a measure is missing: then nothing is drawn.
    void show(const std::optional<hive::Outline>& outline);
    QRectF face() const; //!< where the comb is drawn, its wider side across; empty where none is

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override; //!< measures in other units

private:
    void speak();
    int margin() const; //!< room for a measure beside the comb
    std::optional<hive::Outline> outline_;
};

} // namespace winterlarder::desk
