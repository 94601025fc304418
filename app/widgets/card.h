// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QLabel>

namespace winterlarder::desk {

//! A panel with a thin rounded edge.
class Card : public QFrame {
public:
    explicit Card(QWidget* parent = nullptr) : QFrame(parent) {
        setObjectName(QStringLiteral("card"));
        setProperty("card", true);
    }
};

//! A label in the quiet colour that breaks its lines.
inline QLabel* quietLabel(QWidget* parent, bool wraps = true) {
    auto* label = new QLabel(parent);
    label->setProperty("quiet", true);
    label->setWordWrap(wraps);
    return label;
}

} // namespace winterlarder::desk
