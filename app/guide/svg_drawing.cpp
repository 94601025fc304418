// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/svg_drawing.h"

#include <QLineF>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr int letterSize = 13; // units of the drawing

QString written(double number) { return QString::number(number, 'f', 2); }
QString written(QPointF point) { return QStringLiteral("%1 %2").arg(written(point.x()), written(point.y())); }

QString pathData(const QPainterPath& path) {
    QString data;
    for (int at = 0; at < path.elementCount(); ++at) {
        const QPainterPath::Element each = path.elementAt(at);
        if (each.isMoveTo()) data += QLatin1Char('M');
        else if (each.isLineTo()) data += QLatin1Char('L');
        else if (each.type == QPainterPath::CurveToElement) data += QLatin1Char('C');
        else data += QLatin1Char(' '); // the other two points of a curve
        data += written(QPointF(each.x, each.y));
    }
    return data;
}

QString paint(const char* what, const QColor& colour) {
    return QStringLiteral(" %1='%2'")
        .arg(QLatin1String(what), colour.isValid() ? colour.name() : QStringLiteral("none"));
}

} // namespace

SvgDrawing::SvgDrawing(QSizeF size, const Colours& colours, const QFont& font)
    : size_(size), colours_(colours), font_(font) {
    font_.setPixelSize(letterSize);
}

void SvgDrawing::turn(QPointF about, double degrees) {
    turned_ = QTransform::fromTranslate(about.x(), about.y()).rotate(degrees).translate(-about.x(), -about.y());
}

void SvgDrawing::shape(const QPainterPath& path, const Ink& ink) {
    body_ += QStringLiteral("<path d='%1'").arg(pathData(turned_.map(path))) + paint("fill", ink.fill) +
             paint("stroke", ink.line);
    if (ink.line.isValid())
        body_ +=
            QStringLiteral(" stroke-width='%1' stroke-linecap='round' stroke-linejoin='round'").arg(written(ink.width));
    if (ink.dashed) body_ += QStringLiteral(" stroke-dasharray='5 4'");
    if (ink.opacity < 1) body_ += QStringLiteral(" fill-opacity='%1'").arg(written(ink.opacity));
    body_ += QStringLiteral("/>\n");
}

void SvgDrawing::box(const QRectF& rect, const Ink& ink, double rounded) {
    QPainterPath path;
    if (rounded > 0) path.addRoundedRect(rect, rounded, rounded);
    else path.addRect(rect);
    shape(path, ink);
}

void SvgDrawing::oval(QPointF centre, double across, double down, const Ink& ink) {
    QPainterPath path;
    path.addEllipse(centre, across, down);
    shape(path, ink);
}

void SvgDrawing::line(QPointF from, QPointF to, const QColor& colour, double width, bool dashed) {
    QPainterPath path(from);
    path.lineTo(to);
    shape(path, {{}, colour, width, dashed});
}

void SvgDrawing::arrow(QPointF from, QPointF to, const QColor& colour) {
    constexpr double head = 7, narrow = 150; // degrees from the shaft
    line(from, to, colour, 1.8);
    QLineF shaft(to, from);
    shaft.setLength(head);
    for (const double side : {180 - narrow, narrow - 180}) {
        QLineF barb = shaft;
        barb.setAngle(shaft.angle() + side);
        line(to, barb.p2(), colour, 1.8);
    }
}

QStringList SvgDrawing::lines(const QString& words, const QFontMetricsF& metrics, double width) const {
    QStringList all;
    for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const bool fits = !all.isEmpty() && metrics.horizontalAdvance(all.back() + QLatin1Char(' ') + word) <= width;
        if (fits) all.back() += QLatin1Char(' ') + word;
        else all << word;
    }
    return all;
}

void SvgDrawing::label(const QRectF& room, const QString& words, Qt::Alignment where, Weight weight) {
    QFont font = font_;
    font.setBold(weight == Weight::Strong);
    const QFontMetricsF metrics(font);
    const QStringList broken = lines(words, metrics, room.width());
    const double height = metrics.height() * static_cast<double>(broken.size());
    double top = room.top();
    if (where & Qt::AlignVCenter) top = room.center().y() - height / 2;
    if (where & Qt::AlignBottom) top = room.bottom() - height;
    for (const QString& each : broken) {
        const double width = metrics.horizontalAdvance(each);
        const double left = where & Qt::AlignLeft    ? room.left()
                            : where & Qt::AlignRight ? room.right() - width
                                                     : room.center().x() - width / 2;
        labels_.emplace_back(left, top, width, metrics.height());
        body_ +=
            QStringLiteral("<text x='%1' y='%2' font-family='%3' font-size='%4'%5%6>%7</text>\n")
                .arg(written(left), written(top + metrics.ascent()), font.family().toHtmlEscaped())
                .arg(letterSize)
                .arg(font.bold() ? QStringLiteral(" font-weight='bold'") : QString(),
                     paint("fill", weight == Weight::Quiet ? colours_.quietText : colours_.text), each.toHtmlEscaped());
        top += metrics.height();
    }
}

DrawnGuide SvgDrawing::drawn() const {
    const QString head =
        QStringLiteral("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %1 %2' width='%1' height='%2'>\n")
            .arg(written(size_.width()), written(size_.height()));
    return {(head + body_ + QStringLiteral("</svg>\n")).toUtf8(), size_, labels_};
}

} // namespace winterlarder::desk
