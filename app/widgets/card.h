// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QLabel>
#include <QScrollArea>

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

//! A page that can be scrolled where the window is too small for it.
inline QScrollArea* withRoom(QWidget* page, QWidget* parent) {
    auto* room = new QScrollArea(parent);
    room->setWidgetResizable(true);
    room->setFrameShape(QFrame::NoFrame);
    room->setFocusPolicy(Qt::NoFocus);
    page->setObjectName(QStringLiteral("page"));
    room->setWidget(page);
    room->viewport()->setObjectName(QStringLiteral("page"));
    return room;
}

} // namespace winterlarder::desk
