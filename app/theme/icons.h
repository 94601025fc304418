// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QIcon>
#include <QPixmap>
#include <QString>

namespace winterlarder::desk {

//! Makes the drawings compiled into the program known to Qt; call once before any is used.
void openResources();

//! A drawing of resources/icons by name, in one colour, sharp at any scale. An unknown name is a programmer's error.
QPixmap drawnIcon(const QString& name, const QColor& colour, int size, double pixelRatio);

QIcon applicationIcon();

} // namespace winterlarder::desk
