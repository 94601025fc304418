// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "app/layout/contrast.h"
#include "combs/comb_drawing.h"
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "desk/pictures.h"
#include "dialogs/why_window.h"
#include "fields/fields.h"
#include "fields/quantity_field.h"
#include "models/words.h"
#include "pages/comb_table_page.h"
#include "pages/look_page.h"
#include "pages/picture_panel.h"
#include "pages/yard_view.h"
#include "print/yard_sheet.h"
#include "support/require.h"
#include "theme/colours.h"
#include "theme/icons.h"

#include <QAccessible>
#include <QAction>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

using std::chrono::milliseconds;

class Window : public testing::Test {
protected:
    Window() : window({}, invented::scribe()) {
        window.useReference(invented::shipped());
        window.useAdviser(std::make_shared<invented::SlowAdviser>(milliseconds(5)));
        window.books()->openCases({invented::colony("Apple"), invented::colony("Pear")});
        window.resize(1360, 900);
        window.show();
        settle();
        apple = window.yard()->colonies().at(0).id;
        window.choose(apple);
        settle();
    }
    void settle() {
        ASSERT_TRUE(invented::waitFor([this] { return window.settled(); }));
    }
    const ColonyEntry& entry() { return *window.yard()->find(apple); }
    QString answer() {
        for (auto* label : window.colonyView()->findChildren<QLabel*>())
            if (label->accessibleDescription() == QStringLiteral("Answer")) return label->text();
        return {};
    }
    MainWindow window;
    ColonyId apple;
};

} // namespace

TEST_F(Window, AnEditLeadsToANewAnswerAndUndoRestoresTheOldOne) {
    const auto before = entry().answered;
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Feed"))) << answer().toStdString();
    auto* look = window.colonyView()->look();
    for (int comb = 0; comb < 4; ++comb) {
        look->drawing()->choose(comb);
        look->share(Zone::Capped)->setValue(100);
    }
    EXPECT_TRUE(entry().pending);
    EXPECT_FALSE(answer().startsWith(QStringLiteral("Feed"))) << "an old answer is never shown as the new one";
    settle();
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Leave"))) << answer().toStdString();
    EXPECT_EQ(window.undoAction()->text().toStdString(),
              "&Undo: comb 4: capped 100 %, comb 4: open nectar 0 %, comb 4: bee bread 0 %");
    for (int comb = 0; comb < 4; ++comb) {
        window.undoAction()->trigger();
        settle();
    }
    EXPECT_EQ(entry().record, before->record);
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Feed")));
}

TEST_F(Window, TheTableAndTheDrawingEditTheSameCombs) {
    auto* table = window.colonyView()->combTable();
    ASSERT_TRUE(table->model()->setData(table->model()->index(2, CombTableModel::BroodColumn), 10.0, Qt::EditRole));
    EXPECT_EQ(std::get<std::vector<book::CombRecord>>(entry().record.combs)[2].brood, 0.1);
    window.colonyView()->look()->drawing()->choose(2);
    EXPECT_EQ(window.colonyView()->look()->share(Zone::Brood)->value(), 10);
    EXPECT_EQ(table->table()->currentIndex().row(), 2);
}

TEST_F(Window, BeesAndWeighingAreEditedInPlace) {
    auto* bees = window.colonyView()->look()->bees();
    bees->number()->setValue(4.5);
    EXPECT_EQ(entry().record.bees.coveredCombs, 4.5);
    auto* weighing = window.colonyView()->look()->weighing();
    weighing->kind()->setCurrentIndex(weighing->kind()->findData(static_cast<int>(WeighedBy::Scale)));
    emit weighing->kind()->activated(weighing->kind()->currentIndex());
    EXPECT_TRUE(entry().record.weighings.empty()) << "a weight not yet typed is no weighing";
    QTest::keyClicks(weighing->gross(), QStringLiteral("41,5 kg"));
    QTest::keyClick(weighing->gross(), Qt::Key_Return);
    ASSERT_EQ(entry().record.weighings.size(), 1U);
    EXPECT_EQ(std::get<book::ScaleReading>(entry().record.weighings[0].reading).gross.value(), 41.5);
    settle();
    window.undoAction()->trigger();
    settle();
    EXPECT_TRUE(entry().record.weighings.empty());
}

TEST_F(Window, CombsAreReachedByKeysAndSayWhatTheyHold) {
    auto* drawing = window.colonyView()->look()->drawing();
    drawing->choose(0);
    QTest::keyClick(drawing, Qt::Key_Right);
    EXPECT_EQ(drawing->chosen(), 1);
    EXPECT_TRUE(drawing->accessibleDescription().contains(QStringLiteral("capped 50 %")))
        << drawing->accessibleDescription().toStdString();
    QTest::keyClick(drawing, Qt::Key_End);
    EXPECT_EQ(drawing->chosen(), 3);
}

TEST_F(Window, ReadingTheYardGoesThroughTheList) {
    window.choose({});
    EXPECT_TRUE(window.yardView()->isVisible());
    EXPECT_EQ(window.yardView()->model()->rowCount(), 4) << "two doses at each of two colonies";
    QTest::keyClick(window.yardPane(), Qt::Key_Down);
    EXPECT_TRUE(window.colonyView()->isVisible());
}

TEST_F(Window, EverythingThatTakesTheFocusHasAName) {
    for (const int page : {0, 1, 2}) {
        window.colonyView()->pages()->setCurrentIndex(page);
        for (auto* widget : window.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || widget->focusProxy()) continue;
            if (widget->objectName().startsWith(QStringLiteral("qt_"))) continue;
            auto* spoken = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(spoken, nullptr) << widget->metaObject()->className();
            EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty())
                << widget->metaObject()->className() << " in " << widget->parentWidget()->metaObject()->className();
        }
    }
}

TEST_F(Window, DarkAndLightByWish) {
    window.useColours(ColourScheme::Dark);
    EXPECT_TRUE(isDark(window.palette()));
    EXPECT_LT(window.grab().toImage().pixelColor(window.width() / 2, window.height() - 4).lightness(), 80);
    window.useColours(ColourScheme::Light);
    EXPECT_FALSE(isDark(window.palette()));
}

TEST(WindowOnTheDemoYard, OptionsLieOverThePictureAndWhySaysItsReasons) {
    Arguments demo;
    demo.demo = true;
    MainWindow window(demo, invented::scribe());
    window.show();
    window.begin();
    QSignalSpy settled(&window, &MainWindow::becameSettled);
    ASSERT_TRUE(invented::waitFor([&] { return window.settled() || settled.wait(1000); }));
    ASSERT_EQ(window.yard()->colonies().size(), 6U);
    for (const auto& colony : window.yard()->colonies()) {
        if (colony.answered->answer.advice.verdict != advice::Verdict::Harvest) continue;
        window.choose(colony.id);
        auto* take = window.colonyView()->picture()->chip(advice::OptionKind::TakeNow);
        ASSERT_NE(take, nullptr);
        QTest::mouseClick(static_cast<QWidget*>(take), Qt::LeftButton);
        EXPECT_TRUE(window.colonyView()->picture()->plot()->options().contains(advice::OptionKind::TakeNow));
        window.explain(colony.id);
        EXPECT_GT(window.whyWindow()->text().size(), 200);
        EXPECT_FALSE(window.whyWindow()->text().contains(QStringLiteral("-to-"))) << "ids are not words";
    }
    const QTemporaryDir folder;
    const auto written = writePictures(window, folder.path());
    ASSERT_TRUE(written.ok());
    EXPECT_GE(written->size(), 4 + 1 + 10);
}

TEST(Colours, TextKeepsItsContrast) {
    for (const auto* colours : {&lightColours(), &darkColours()}) {
        for (const auto& ground : {colours->card, colours->desk, colours->chosen, colours->hover}) {
            EXPECT_GE(contrast(colours->text, ground), 4.5);
            EXPECT_GE(contrast(colours->quietText, ground), 4.5) << ground.name().toStdString();
        }
        EXPECT_GE(contrast(colours->reserve, colours->reserveFill), 4.5);
        for (const auto& ground : {colours->card, colours->desk}) {
            EXPECT_GE(contrast(colours->reserve, ground), 4.5) << "what is wrong, and the reserve beside the winters";
            EXPECT_GE(contrast(colours->accent, ground), 4.5) << "links, and the tab that has the focus";
        }
        EXPECT_GE(contrast(colours->accentText, colours->accent), 4.5);
        for (const auto& edge : {colours->accent, colours->text})
            EXPECT_GE(contrast(edge, colours->card), 3) << "focus";
        EXPECT_GE(contrast(colours->winter, colours->card), 3);
        EXPECT_GE(contrast(colours->shortWinter, colours->card), 3);
    }
}

TEST(Icons, EachVerdictHasADrawingOfItsOwn) {
    std::vector<QImage> seen;
    for (const auto verdict : {advice::Verdict::Harvest, advice::Verdict::Leave, advice::Verdict::Feed,
                               advice::Verdict::Unite, advice::Verdict::CannotSay}) {
        const QImage image = drawnIcon(words::iconName(verdict), Qt::black, 16, 1).toImage();
        int inked = 0;
        for (int y = 0; y < 16; ++y)
            for (int x = 0; x < 16; ++x) inked += qAlpha(image.pixel(x, y)) > 128;
        EXPECT_GT(inked, 20);
        for (const auto& other : seen) EXPECT_NE(image, other);
        seen.push_back(image);
    }
    EXPECT_THROW(drawnIcon(QStringLiteral("no-such"), Qt::black, 16, 1), ContractViolation);
}

TEST(YardSheet, HoldsEveryColonyAndEveryJob) {
    Yard yard;
    const auto id = invented::add(yard, invented::colony("Apple & <Pear>"));
    yard.takeAnswer(id, invented::answered(yard.find(id)->record, {advice::Verdict::Feed, 9, 20}));
    const Paper sheet = yardSheet(yard, {});
    EXPECT_TRUE(sheet.html.contains(QStringLiteral("Apple &amp; &lt;Pear&gt;")));
    EXPECT_TRUE(sheet.html.contains(QStringLiteral("Buy 6 kg of white sugar")));
    const QTemporaryDir folder;
    EXPECT_TRUE(saveSheet(sheet, folder.filePath(QStringLiteral("sheet.pdf"))));
}

} // namespace winterlarder::desk
