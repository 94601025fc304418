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

//! A label that shows its words as they are. One that guesses whether they are markup would read what a book or a file says of itself as
//! such, and open files it names: so every label is made by this, by quietLabel() or is an AskableLabel, which escapes.
inline QLabel* plainLabel(QWidget* parent, const QString& words = {}) {
    auto* label = new QLabel(words, parent);
    label->setTextFormat(Qt::PlainText);
    return label;
}

//! A label in bold type that breaks its lines, over what it is the name of.
inline QLabel* boldLabel(QWidget* parent, const QString& words = {}) {
    auto* label = plainLabel(parent, words);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(true);
    return label;
}

enum class Lines { Broken, One };
//! A label in the quiet colour.
inline QLabel* quietLabel(QWidget* parent, Lines lines = Lines::Broken) {
    auto* label = plainLabel(parent);
    label->setProperty("quiet", true);
    label->setWordWrap(lines == Lines::Broken);
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
