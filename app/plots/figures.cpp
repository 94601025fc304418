// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/figures.h"

#include <qcustomplot.h>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr double apartAcross = 6; // px between the names of two days
constexpr double apartDown = 1.1; // lines from one figure to the next

double lengthOf(const QCPAxis& axis) {
    return axis.orientation() == Qt::Horizontal ? axis.axisRect()->width() : axis.axisRect()->height();
}

QSizeF sizeOf(const QCPAxis& axis, const QString& figure) {
    return QFontMetricsF(axis.tickLabelFont()).size(0, figure);
}

class DaysWithRoom : public QCPAxisTicker {
public:
    DaysWithRoom(const QCPAxis& axis, QSharedPointer<QCPAxisTickerText> all) : axis_(axis), all_(std::move(all)) {}

    void generate(const QCPRange& range, const QLocale& locale, QChar form, int precision, QVector<double>& ticks,
                  QVector<double>* between, QVector<QString>* labels) override {
        QVector<QString> names;
        all_->generate(range, locale, form, precision, ticks, between, &names);
        int step = 1;
        while (step < names.size() && !haveRoom(range, ticks, names, step)) ++step;
        QVector<double> kept;
        QVector<QString> keptNames;
        for (int i = anchorOf(names) % std::max(1, step); i < names.size(); i += step)
            kept.append(ticks[i]), keptNames.append(names[i]);
        ticks = kept;
        if (labels) *labels = keptNames;
    }

private:
    static int anchorOf(const QVector<QString>& names) {
        const auto longest = std::max_element(names.begin(), names.end(),
                                              [](const auto& a, const auto& b) { return a.size() < b.size(); });
        return names.isEmpty() ? 0 : static_cast<int>(longest - names.begin());
    }
    bool haveRoom(const QCPRange& range, const QVector<double>& ticks, const QVector<QString>& names, int step) const {
        const double length = lengthOf(axis_);
        if (length < 1) return true;
        double free = -1e9;
        for (int i = anchorOf(names) % step; i < names.size(); i += step) {
            const double at = (ticks[i] - range.lower) / range.size() * length;
            const double half = sizeOf(axis_, names[i]).width() / 2;
            if (at - half < free) return false;
            free = at + half + apartAcross;
        }
        return true;
    }

    const QCPAxis& axis_;
    QSharedPointer<QCPAxisTickerText> all_;
};

} // namespace

void showDays(QCPAxis& axis, const QSharedPointer<QCPAxisTickerText>& all) {
    axis.setTicker(QSharedPointer<QCPAxisTicker>(new DaysWithRoom(axis, all)));
}

bool roomForLines(const QCPAxis& axis, double apart, double shown) {
    const double length = lengthOf(axis);
    return length < 1 || apart / shown * length >= apartDown * QFontMetricsF(axis.tickLabelFont()).height();
}

// Ticks are chosen before a layout, so by the room of the one before: once more when the room is known.
void keepFiguresApart(QCustomPlot& plot) {
    QObject::connect(&plot, &QCustomPlot::afterLayout, &plot,
                     [&plot] { plot.plotLayout()->update(QCPLayoutElement::upPreparation); });
}

std::vector<QRectF> figuresOf(const QCPAxis& axis) {
    std::vector<QRectF> figures;
    if (!axis.visible() || !axis.tickLabels()) return figures;
    QVector<double> ticks;
    QVector<QString> labels;
    axis.ticker()->generate(axis.range(), axis.parentPlot()->locale(), QLatin1Char('g'), 6, ticks, nullptr, &labels);
    const QRect inside = axis.axisRect()->rect();
    const double away = axis.tickLengthOut() + axis.tickLabelPadding();
    for (int i = 0; i < labels.size(); ++i) {
        const QSizeF size = sizeOf(axis, labels[i]);
        const double at = axis.coordToPixel(ticks[i]);
        switch (axis.axisType()) {
        case QCPAxis::atLeft:
            figures.emplace_back(inside.left() - away - size.width(), at - size.height() / 2, size.width(),
                                 size.height());
            break;
        case QCPAxis::atRight:
            figures.emplace_back(inside.right() + away, at - size.height() / 2, size.width(), size.height());
            break;
        case QCPAxis::atTop:
            figures.emplace_back(at - size.width() / 2, inside.top() - away - size.height(), size.width(),
                                 size.height());
            break;
        case QCPAxis::atBottom:
            figures.emplace_back(at - size.width() / 2, inside.bottom() + away, size.width(), size.height());
            break;
        }
    }
    return figures;
}

} // namespace winterlarder::desk
