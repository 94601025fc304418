// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/unit_ticks.h"

#include "models/words.h"
#include "plots/figures.h"

namespace winterlarder::desk {

namespace {

// What is shown = factor * coordinate + shift; fewer figures where they have no room above each other.
class UnitTicker : public QCPAxisTicker {
public:
    UnitTicker(const QCPAxis& axis, double factor, double shift) : axis_(axis), factor_(factor), shift_(shift) {}

    void generate(const QCPRange& range, const QLocale& locale, QChar form, int precision, QVector<double>& ticks,
                  QVector<double>* between, QVector<QString>* labels) override {
        const QCPRange shown(range.lower * factor_ + shift_, range.upper * factor_ + shift_);
        const int most = tickCount();
        for (int count = most; count > 0; --count) {
            setTickCount(count);
            QCPAxisTicker::generate(shown, locale, form, precision, ticks, between, labels);
            if (ticks.size() < 2 || roomForLines(axis_, ticks[1] - ticks[0], shown.size())) break;
        }
        setTickCount(most);
        for (auto* each : {&ticks, between})
            if (each)
                for (double& tick : *each) tick = (tick - shift_) / factor_;
    }

private:
    const QCPAxis& axis_;
    double factor_, shift_;
};

void showIn(QCPAxis& axis, double zero, double one, const QString& label) {
    const int ticks = axis.ticker()->tickCount();
    QSharedPointer<QCPAxisTicker> ticker(new UnitTicker(axis, one - zero, zero));
    ticker->setTickCount(ticks);
    axis.setTicker(ticker);
    axis.setLabel(label);
}

} // namespace

void showStores(QCPAxis& axis) {
    const auto unit = words::shownMass();
    showIn(axis, 0, valueIn(kilograms(1), unit), QObject::tr("stores, %1").arg(words::name(unit)));
}

void showFoodOfADay(QCPAxis& axis) {
    const auto unit = words::shownSmallMass();
    showIn(axis, 0, valueIn(grams(1), unit), QObject::tr("eaten, %1 a day").arg(words::name(unit)));
}

void showAir(QCPAxis& axis) {
    const auto unit = words::shownTemperature();
    showIn(axis, valueIn(celsius(0), unit), valueIn(celsius(1), unit), QObject::tr("air, %1").arg(words::name(unit)));
}

} // namespace winterlarder::desk
