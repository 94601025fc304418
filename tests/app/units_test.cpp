// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/style_of_place.h"
#include "app/window_desk.h"
#include "desk/said_remarks.h"
#include "fields/quantity_field.h"
#include "models/job_table_model.h"
#include "models/words.h"
#include "models/yard_plan_words.h"
#include "pages/place_page.h"
#include "pages/what_if_page.h"
#include "pages/yard_view.h"
#include "plots/winter_plot.h"
#include "print/yard_sheet.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QMenuBar>
#include <QRegularExpression>
#include <QSlider>
#include <QTabWidget>
#include <QTextDocument>

#include <set>

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
        for (auto* label : window.findChildren<QLabel*>()) all << label->text() << label->accessibleDescription();
        for (auto* field : window.findChildren<QuantityField*>()) all << field->text() << field->accessibleName();
        for (auto* spin : window.findChildren<QAbstractSpinBox*>()) all << spin->text();
        for (auto* view : window.findChildren<QAbstractItemView*>()) {
            if (!view->model()) continue;
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
    window.yardView()->pages()->setCurrentIndex(1);
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

// ---- what combs and feed are called: as at the place of the yard, and of a colony as its hive is ----------------------

namespace {

const QRegularExpression anyComb(QStringLiteral("\\bcombs?\\b"), QRegularExpression::CaseInsensitiveOption),
    anyFrame(QStringLiteral("\\bframes?\\b"), QRegularExpression::CaseInsensitiveOption);

// The demo yard's answers, as its plan has them, but for what is changed of a colony's question.
template <class Change> struct YardWith : Yard {
    explicit YardWith(Change change) {
        std::size_t place = 0;
        const auto answers = CoreAdviser(invented::shipped(), {1, 1000}, 1)
                                 .shareOut(invented::demoAnswers(), advice::MovingCombs::Allowed);
        for (const auto& answered : answers) {
            auto made = std::make_shared<AnsweredColony>(*answered);
            change(made->question, place++);
            takeAnswer(invented::add(*this, made->record), made);
        }
    }
};

QString onPaper(const std::optional<Paper>& paper) {
    if (!paper) return {};
    QTextDocument document;
    document.setHtml(paper->html);
    const QString text = document.toPlainText();
    return text.left(text.lastIndexOf(QStringLiteral("Sources")));
}

QStringList saidOfYard(const Yard& yard) {
    const auto plan = planOf(yard);
    QStringList said{yardSmallLine(plan), movedCombsWords(plan),
                     onPaper(yardSheet(yard, {}, invented::shipped().get()))};
    for (const auto& job : plan.jobs) said << jobWords(job);
    return said;
}

QStringList saidOfColony(const ColonyEntry& colony) {
    const auto& answered = *colony.answered;
    const auto& advice = answered.answer.advice;
    QStringList said{words::answerSentence(answered), words::targetLine(answered), words::riskLine(answered),
                     words::lookLine(answered), words::verdict(advice, words::styleOf(answered.question))};
    for (const auto* remarks : {&advice.reasons, &advice.cautions, &advice.goodPractice})
        for (const auto& each : saidRemarks(*remarks, *invented::shipped(), words::styleOf(answered.question)))
            said << each.text;
    return said;
}

// What is of the wax itself is comb everywhere.
QStringList without(QStringList said, std::initializer_list<const char*> phrases) {
    for (QString& each : said)
        for (const char* phrase : phrases) each.remove(QLatin1String(phrase));
    return said;
}

std::string naming(const QStringList& said, const QRegularExpression& noun) {
    return said.filter(noun).join(QLatin1Char('\n')).toStdString();
}

} // namespace

TEST(WordingOfYards, FramesInNovaScotiaButForCombsOnBareBars) {
    const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
    const auto said = saidOfYard(yard);
    EXPECT_EQ(naming(said, anyComb), "");
    EXPECT_NE(naming(said, anyFrame), "");
    std::set<bool> seen;
    for (const auto& colony : yard.colonies()) {
        const bool framed = *seen.insert(answer::hangsInFrames(colony.answered->question)).first;
        const auto own = without(saidOfColony(colony) << onPaper(colonySheet(colony, *invented::shipped())),
                                 {"drawn comb", "empty comb for", "Comb without a frame"});
        EXPECT_EQ(naming(own, framed ? anyComb : anyFrame), "");
        EXPECT_NE(naming(own, framed ? anyFrame : anyComb), "");
    }
    EXPECT_EQ(seen.size(), 2U) << "the demo has a top-bar hive among framed ones";
}

TEST(WordingOfYards, CombsInBritain) {
    const YardWith yard([](advice::ColonyQuestion& question, std::size_t) { question.place.country = "GB"; });
    EXPECT_EQ(naming(saidOfYard(yard), anyFrame), "");
    EXPECT_NE(naming(saidOfYard(yard), anyComb), "");
    for (const auto& colony : yard.colonies())
        EXPECT_EQ(naming(without(saidOfColony(colony), {"Comb without a frame"}), anyFrame), "");
}

TEST(WordingOfYards, AYardOfBareBarsAloneSpeaksOfCombs) {
    const YardWith yard([](advice::ColonyQuestion& question, std::size_t) {
        for (auto& box : question.boxes) box.id = "topbar-sloping-440";
    });
    EXPECT_EQ(naming(saidOfYard(yard), anyFrame), "");
}

TEST(WordingOfYards, WhatMovesIsCalledAsItsHiveHangsIt) {
    const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
    YardPlan plan;
    const advice::CombGift gift{"Apple", "Pear", {0, 3}, kilograms(4.4), {{0, 0}, {0, 3}}, 1};
    EXPECT_TRUE(giftWords(gift, plan).startsWith(QStringLiteral("2 frames (")));
    EXPECT_TRUE(giftWords(gift, plan).endsWith(QStringLiteral("frames 1 and 4 from the left")));
    plan.bareBars = {"Pear"};
    EXPECT_TRUE(giftWords(gift, plan).startsWith(QStringLiteral("2 combs (")));
    PlannedJob job;
    job.kind = JobKind::CountBees;
    EXPECT_EQ(jobWords(job), QStringLiteral("count the frames the bees cover"));
    job.framed = false;
    EXPECT_EQ(jobWords(job), QStringLiteral("count the combs the bees cover"));
}

TEST(WordingOfYards, GoesWithTheYard) {
    {
        const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
        EXPECT_TRUE(words::style().wording.frames);
    }
    EXPECT_EQ(words::style().wording, text::Wording{});
}

} // namespace winterlarder::desk
