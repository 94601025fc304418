// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QSharedPointer>

#include <vector>

class QCPAxis;
class QCPAxisTickerText;
class QCustomPlot;

namespace winterlarder::desk {

//! Figures along the axes of a plot that never lie on each other: where there is little room fewer of them stand there.
//! Tested: tests/app/layout/window_layout_test.cpp.

//! Names of days along an axis: of `all` every one, or every second, third ... counted from the longest.
void showDays(QCPAxis& axis, const QSharedPointer<QCPAxisTickerText>& all);

//! Whether figures so many units of the axis apart have room above each other; always, before the axis was laid out.
bool roomForLines(const QCPAxis& axis, double apart, double shown);

//! Has every layout of the plot choose its figures by the room there is then.
void keepFiguresApart(QCustomPlot& plot);

//! Where the figures of an axis are painted, in pixels of its plot.
std::vector<QRectF> figuresOf(const QCPAxis& axis);

} // namespace winterlarder::desk
