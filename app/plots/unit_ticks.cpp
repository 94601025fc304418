// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/unit_ticks.h"

#include "models/words.h"

namespace winterlarder::desk {

namespace {

// What is shown = factor * coordinate + shift.
class UnitTicker : public QCPAxisTicker {
public:
    UnitTicker(double factor, double shift) : factor_(factor), shift_(shift) {}

    void generate(const QCPRange& range, const QLocale& locale, QChar form, int precision, QVector<double>& ticks,
                  QVector<double>* between, QVector<QString>* labels) override {
        QCPAxisTicker::generate({range.lower * factor_ + shift_, range.upper * factor_ + shift_}, locale, form,
                                precision, ticks, between, labels);
        for (auto* each : {&ticks, between})
            if (each)
                for (double& tick : *each) tick = (tick - shift_) / factor_;
    }

private:
    double factor_, shift_;
};

void showIn(QCPAxis& axis, double zero, double one, const QString& label) {
    const int ticks = axis.ticker()->tickCount();
    QSharedPointer<QCPAxisTicker> ticker(new UnitTicker(one - zero, zero));
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
