// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "fields/quantity_field.h"
#include "models/words.h"
#include "pages/place_page.h"
#include "pages/what_if_page.h"
#include "pages/yard_view.h"
#include "plots/winter_plot.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QMenuBar>
#include <QRegularExpression>
#include <QSlider>
#include <QTabWidget>

namespace winterlarder::desk {

namespace {

using invented::WindowDesk;

class Units : public WindowDesk {
protected:
    ~Units() override { useUnits("&Kilograms and litres"); }
    void useUnits(const char* menuText) {
        for (auto* action : window.findChildren<QAction*>())
            if (action->text() == QLatin1String(menuText)) return action->trigger();
        ADD_FAILURE() << menuText << " is in no menu";
    }
    // Everything that can be read on the page shown now.
    QStringList read() {
        QStringList all;
        for (auto* label : window.findChildren<QLabel*>())
            if (label->isVisible()) all << label->text() << label->accessibleDescription();
        for (auto* field : window.findChildren<QuantityField*>())
            if (field->isVisible()) all << field->text() << field->accessibleName();
        for (auto* spin : window.findChildren<QAbstractSpinBox*>()) all << spin->text();
        for (auto* view : window.findChildren<QAbstractItemView*>()) {
            if (!view->model() || !view->isVisible()) continue;
            for (int row = 0; row < view->model()->rowCount(); ++row)
                for (int column = 0; column < view->model()->columnCount(); ++column)
                    all << view->model()->index(row, column).data().toString();
        }
        for (auto* plot : window.findChildren<WinterPlot*>())
            if (plot->picture())
                all << plot->readout(plot->picture()->first + 40) << plot->numbers().section(QLatin1Char('\n'), 0, 0);
        return all;
    }
};

} // namespace

TEST_F(Units, NoPageIsLeftInKilogramsOrCelsius) {
    answerReally();
    auto record = invented::colony("Apple");
    record.weighings = {{invented::day("2026-09-12"), book::ScaleReading{kilograms(41.5)}}};
    record.feeds = {{.date = invented::day("2026-09-01"), .sugar = kilograms(2)}};
    open({record});
    useUnits("Pounds and US &gallons");
    settle();
    const QRegularExpression metric(
        QString::fromUtf8("\\d (kg|g|°C|mm|L)\\b|(stores|low|middle|high), kg|, g\\b|, °C"));
    auto* pages = window.colonyView()->pages();
    int quantities = 0;
    for (int page = 0; page < pages->count(); ++page) {
        pages->setCurrentIndex(page);
        settle();
        for (const auto& text : read()) {
            EXPECT_FALSE(metric.match(text).hasMatch())
                << pages->tabText(page).toStdString() << ": " << text.toStdString();
            quantities += text.contains(QRegularExpression(QString::fromUtf8("\\d (lb|oz|°F|in|US gal)\\b")));
        }
    }
    EXPECT_GT(quantities, 30) << "the pages speak of quantities at all";
    window.choose({});
    settle();
    for (const auto& text : read()) EXPECT_FALSE(metric.match(text).hasMatch()) << "yard: " << text.toStdString();
}

TEST_F(Units, PagesAndFormsSpeakOfFramesInNovaScotia) {
    const QRegularExpression anyComb(QStringLiteral("\\b[Cc]ombs?\\b")), anyFrame(QStringLiteral("\\b[Ff]rames?\\b")),
        ofTheWax(QStringLiteral("(share of the|[Ee]mpty|drawn) comb"));
    answerReally();
    open({invented::colony("Apple")});
    settle();
    auto* pages = window.colonyView()->pages();
    EXPECT_EQ(pages->tabText(1).remove(QLatin1Char('&')), QStringLiteral("Frame by frame"));
    for (int page : {0, 1}) {
        pages->setCurrentIndex(page);
        settle();
        QStringList said = read();
        for (QString& each : said) each.remove(ofTheWax);
        EXPECT_EQ(said.filter(anyComb).join(QLatin1Char('|')).toStdString(), "");
        EXPECT_FALSE(said.filter(anyFrame).isEmpty());
    }
}

TEST_F(Units, WhatIsTypedIsInTheUnitsShown) {
    answerSlowly();
    open({invented::colony("Apple")});
    useUnits("Pounds and US &gallons");
    auto* take = window.findChild<WhatIfPage*>()->take();
    EXPECT_EQ(take->suffix(), QStringLiteral(" lb"));
    EXPECT_NEAR(take->maximum(), 25 / 0.45359237, 0.06);
    useUnits("&Kilograms and litres");
    EXPECT_EQ(take->suffix(), QStringLiteral(" kg"));
    EXPECT_EQ(take->maximum(), 25);
}

TEST_F(Units, HeightsAreInFeetAndPricesForAPoundWherePoundsAreShown) {
    answerSlowly();
    open({invented::colony("Apple")});
    window.choose({});
    window.yardView()->showPage(YardPage::Place);
    settle();
    auto* place = window.yardView()->place();
    const auto enter = [this](QLineEdit* field, const char* text) {
        type(field, text);
        QTest::keyClick(field, Qt::Key_Return);
        settle();
    };
    const auto height = [this] { return window.yard()->shownYard()->site.elevationM.value_or(-1); };
    const auto price = [this] { return window.yard()->shownYard()->sugarPricePerKg.value_or(-1); };
    enter(place->elevation(), "400 ft");
    EXPECT_NEAR(height(), 121.92, 1e-9) << "a foot is 0.3048 m, 1959";
    EXPECT_EQ(place->elevation()->text().toStdString(), "121.9 m");
    enter(place->elevation(), "-3");
    EXPECT_EQ(height(), -3) << "a place below the sea";
    enter(place->elevation(), "120 m");
    enter(place->price(), "1.29");
    ASSERT_EQ(price(), 1.29);
    for (const char* units : {"Pounds and US &gallons", "Pounds and i&mperial gallons"}) {
        useUnits(units);
        QTest::qWait(10);
        settle();
        EXPECT_EQ(place->elevation()->text().toStdString(), "394 ft");
        EXPECT_EQ(place->price()->text().toStdString(), "0.59") << "a pound is 0.45359237 kg";
        EXPECT_TRUE(read().contains(QStringLiteral("sugar, a pound costs")));
        EXPECT_FALSE(read().contains(QStringLiteral("sugar, a kilogram costs")));
        EXPECT_TRUE(read().filter(QRegularExpression(QStringLiteral("\\d (m|km)\\b"))).isEmpty())
            << read().filter(QRegularExpression(QStringLiteral("\\d (m|km)\\b"))).join(QLatin1Char('|')).toStdString();
        // Typed again as it is shown it is still what it was.
        enter(place->elevation(), "394 ft");
        enter(place->price(), "0.59");
        EXPECT_EQ(height(), 120);
        EXPECT_EQ(price(), 1.29);
    }
    enter(place->price(), "0.60");
    EXPECT_NEAR(price(), 0.60 / 0.45359237, 1e-9);
    enter(place->elevation(), "1000");
    EXPECT_NEAR(height(), 304.8, 1e-9) << "a bare number is in the unit shown";
    useUnits("&Kilograms and litres");
    QTest::qWait(10);
    settle();
    EXPECT_EQ(place->price()->text().toStdString(), "1.32");
    EXPECT_EQ(place->elevation()->text().toStdString(), "304.8 m");
    EXPECT_TRUE(read().contains(QStringLiteral("sugar, a kilogram costs")));
}

TEST(UnitWords, PlacesAreFarInMilesWherePoundsAreShown) {
    EXPECT_EQ(words::distance(92).toStdString(), "92 km");
    words::useUnits(UnitSystem::Imperial);
    EXPECT_EQ(words::distance(92).toStdString(), "57 miles");
    EXPECT_EQ(words::distance(1.6).toStdString(), "1 mile");
    words::useUnits(UnitSystem::Metric);
}

TEST(UnitWords, QuantitiesWithinSentencesFollow) {
    text::WordStyle style;
    EXPECT_EQ(text::quantity(QStringLiteral("2.5 kg"), style).toStdString(), "2.5 kg");
    EXPECT_EQ(text::quantity(QString::fromUtf8("15 °C"), style).toStdString(), "15 °C");
    style.numbers.system = UnitSystem::UnitedStates;
    EXPECT_EQ(text::quantity(QStringLiteral("2.5 kg"), style).toStdString(), "5.5 lb");
    EXPECT_EQ(text::quantity(QStringLiteral("40 kg"), style).toStdString(), "88 lb");
    EXPECT_EQ(text::quantity(QStringLiteral("6 mm"), style).toStdString(), "1/4 in");
    EXPECT_EQ(text::quantity(QString::fromUtf8("15 °C"), style).toStdString(), "59 °F");
    EXPECT_EQ(text::quantity(QStringLiteral("600 km"), style).toStdString(), "373 miles");
    EXPECT_EQ(text::quantity(QStringLiteral("three combs"), style).toStdString(), "three combs");
    EXPECT_EQ(text::kelvins(-0.5, style).toStdString(), "-0.9 °F") << "a difference has no offset";
}

} // namespace winterlarder::desk
