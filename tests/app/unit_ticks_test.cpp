// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/unit_ticks.h"

#include "models/words.h"

#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

class UnitTicks : public testing::Test {
protected:
    ~UnitTicks() override { words::useUnits(UnitSystem::Metric); }
    struct Ticks {
        QVector<double> at;
        QVector<QString> labels;
    };
    Ticks ticks(double lower, double upper) {
        Ticks made;
        plot.yAxis->ticker()->generate({lower, upper}, QLocale::c(), QLatin1Char('g'), 6, made.at, nullptr,
                                       &made.labels);
        return made;
    }
    QCustomPlot plot;
};

} // namespace

TEST_F(UnitTicks, StandAtRoundPounds) {
    words::useUnits(UnitSystem::UnitedStates);
    showStores(*plot.yAxis);
    EXPECT_EQ(plot.yAxis->label(), QStringLiteral("stores, lb"));
    const auto shown = ticks(0, 20);
    ASSERT_GE(shown.at.size(), 3);
    for (int i = 0; i < shown.at.size(); ++i) {
        const double pounds = shown.labels[i].toDouble();
        EXPECT_NEAR(pounds, std::round(pounds), 1e-9) << "a round number";
        EXPECT_NEAR(shown.at[i], pounds * 0.45359237, 1e-9) << "and where it belongs: international pound, 1959";
    }
}

TEST_F(UnitTicks, FahrenheitBeginsElsewhere) {
    words::useUnits(UnitSystem::UnitedStates);
    showAir(*plot.yAxis);
    EXPECT_EQ(plot.yAxis->label(), QString::fromUtf8("air, °F"));
    const auto shown = ticks(-10, 25);
    const auto freezing = std::find_if(shown.labels.begin(), shown.labels.end(),
                                       [](const QString& label) { return label == QStringLiteral("40"); });
    ASSERT_NE(freezing, shown.labels.end());
    EXPECT_NEAR(shown.at[freezing - shown.labels.begin()], 40.0 / 9, 1e-9)
        << "40 degrees Fahrenheit are 4.44 degrees Celsius, by definition";
}

TEST_F(UnitTicks, FoodOfADayIsInOunces) {
    showFoodOfADay(*plot.yAxis);
    EXPECT_EQ(plot.yAxis->label(), QStringLiteral("eaten, g a day"));
    words::useUnits(UnitSystem::Imperial);
    showFoodOfADay(*plot.yAxis);
    EXPECT_EQ(plot.yAxis->label(), QStringLiteral("eaten, oz a day"));
    const auto shown = ticks(0, 100);
    ASSERT_FALSE(shown.at.isEmpty());
    EXPECT_NEAR(shown.at.back(), shown.labels.back().toDouble() * 28.349523125, 1e-9);
}

} // namespace winterlarder::desk
