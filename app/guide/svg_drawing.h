// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/colours.h"

#include <QByteArray>
#include <QFontMetricsF>
#include <QPainterPath>
#include <QTransform>

#include <vector>

namespace winterlarder::desk {

//! How a shape is painted; an invalid colour paints nothing.
struct Ink {
    QColor fill{}, line{};
    double width = 1.2;
    bool dashed = false;
    double opacity = 1; //!< of the fill
};

//! A drawing as it is shown: SVG, its size in units of its own, and where words stand on it.
struct DrawnGuide {
    QByteArray svg;
    QSizeF size;
    std::vector<QRectF> labels;
};

//! Writes one drawing of the guide as SVG, shape after shape. Words stand only in rooms of their own, in the colours of text, broken into
//! lines there, so that a longer language has place. Tested: tests/guide/drawings_test.cpp.
class SvgDrawing {
public:
    SvgDrawing(QSizeF size, const Colours& colours, const QFont& font);

    void shape(const QPainterPath& path, const Ink& ink);
    void box(const QRectF& rect, const Ink& ink, double rounded = 0);
    void oval(QPointF centre, double across, double down, const Ink& ink); //!< half axes
    void line(QPointF from, QPointF to, const QColor& colour, double width = 1.2, bool dashed = false);
    void arrow(QPointF from, QPointF to, const QColor& colour);
    enum class Weight { Usual, Strong, Quiet };
    void label(const QRectF& room, const QString& words, Qt::Alignment where = Qt::AlignCenter,
               Weight weight = Weight::Usual);
    //! What follows is turned about a point; 0 degrees ends it. Words stay upright.
    void turn(QPointF about, double degrees);

    const Colours& colours() const { return colours_; }
    DrawnGuide drawn() const;

private:
    QStringList lines(const QString& words, const QFontMetricsF& metrics, double width) const;

    QSizeF size_;
    const Colours& colours_;
    QFont font_;
    QTransform turned_;
    QString body_;
    std::vector<QRectF> labels_;
};

} // namespace winterlarder::desk
