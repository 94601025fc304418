// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/icons.h"

#include "support/require.h"

#include <QFile>
#include <QPainter>
#include <QPixmapCache>
#include <QSvgRenderer>
#include <QtMath>

static void initialiseResources() { Q_INIT_RESOURCE(desk); }

namespace winterlarder::desk {

void openResources() { initialiseResources(); }

QPixmap drawnIcon(const QString& name, const QColor& colour, int size, double pixelRatio) {
    const QString key = QStringLiteral("winterlarder/%1/%2/%3/%4").arg(name, colour.name()).arg(size).arg(pixelRatio);
    QPixmap pixmap;
    if (QPixmapCache::find(key, &pixmap)) return pixmap;
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    require(file.open(QIODevice::ReadOnly), "there is no drawing called {}", name.toStdString());
    QByteArray drawing = file.readAll();
    drawing.replace("#123456", colour.name().toUtf8());
    QSvgRenderer renderer(drawing);
    const int pixels = qCeil(size * pixelRatio);
    pixmap = QPixmap(pixels, pixels);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    renderer.render(&painter);
    painter.end();
    pixmap.setDevicePixelRatio(pixelRatio);
    QPixmapCache::insert(key, pixmap);
    return pixmap;
}

QIcon applicationIcon() { return QIcon(QStringLiteral(":/icons/winterlarder.svg")); }

} // namespace winterlarder::desk
