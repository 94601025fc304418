// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/winter_plot.h"

#include "app/invented.h"

#include <QAccessible>
#include <QApplication>
#include <QFile>
#include <QImage>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>
#include <qcustomplot.h>

#include <cmath>

namespace winterlarder::desk {

namespace {

std::shared_ptr<const WinterPicture> picture() {
    const auto colony = invented::demoAnswers().at(0);
    return {colony, &colony->picture};
}

int different(const QImage& one, const QImage& other) {
    int count = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) count += one.pixel(x, y) != other.pixel(x, y);
    return count;
}

} // namespace

TEST(WinterPlot, ReadsOutADay) {
    WinterPlot plot;
    plot.show(picture());
    const QString text = plot.readout(picture()->first + 30);
    EXPECT_TRUE(text.startsWith(QStringLiteral("14 Oct"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("of 100 winters")));
    EXPECT_TRUE(plot.readout(picture()->last + 1).isEmpty());
    plot.showOptions({advice::OptionKind::Leave, advice::OptionKind::TakeNow});
    EXPECT_EQ(plot.readout(picture()->first + 30).count(QStringLiteral("of 100 winters")), 2)
        << "each option shown is read out";
}

TEST(WinterPlot, AScreenReaderCallsItAChart) {
    WinterPlot plot;
    const auto* spoken = QAccessible::queryAccessibleInterface(&plot);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::Chart);
    EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty());
}

TEST(WinterPlot, ArrowKeysReadDays) {
    WinterPlot plot;
    plot.resize(900, 400);
    plot.show(picture());
    QSignalSpy read(&plot, &WinterPlot::dayRead);
    QTest::keyClick(&plot, Qt::Key_Right);
    QTest::keyClick(&plot, Qt::Key_Right, Qt::ShiftModifier);
    ASSERT_EQ(read.count(), 2);
    EXPECT_TRUE(read.at(0).front().toString().startsWith(QStringLiteral("15 Sept")))
        << read.at(0).front().toString().toStdString();
    EXPECT_TRUE(read.at(1).front().toString().startsWith(QStringLiteral("22 Sept")));
    QTest::keyClick(&plot, Qt::Key_Escape);
    EXPECT_TRUE(read.at(2).front().toString().isEmpty());
}

TEST(WinterPlot, KeysShowFewerDaysAndTheDayReadStaysAmongThem) {
    WinterPlot plot;
    plot.resize(900, 400);
    plot.show(picture());
    QSignalSpy changed(&plot, &WinterPlot::seenChanged);
    QTest::keyClick(&plot, Qt::Key_End);
    for (int i = 0; i < 4; ++i) QTest::keyClick(&plot, Qt::Key_Plus);
    ASSERT_TRUE(plot.seen());
    EXPECT_NEAR(plot.seen()->days(), wholeWinter(*picture()).days() / std::pow(1.5, 4), 0.01);
    EXPECT_GE(plot.seen()->last, picture()->last.w);
    QTest::keyClick(&plot, Qt::Key_Home);
    EXPECT_LE(plot.seen()->first, picture()->first.w);
    for (int i = 0; i < 4; ++i) QTest::keyClick(&plot, Qt::Key_Minus);
    EXPECT_FALSE(plot.seen());
    QTest::keyClick(&plot, Qt::Key_Plus);
    QTest::keyClick(&plot, Qt::Key_0);
    EXPECT_FALSE(plot.seen());
    EXPECT_GE(changed.count(), 10);
}

TEST(WinterPlot, TheWheelShowsFewerDaysDraggingMovesThemADoubleClickShowsAll) {
    WinterPlot plot;
    plot.resize(900, 400);
    plot.show(picture());
    plot.QWidget::show();
    QCoreApplication::processEvents();
    auto* drawn = plot.findChild<QCustomPlot*>();
    const auto turn = [&](QPoint at, QPoint delta) {
        QWheelEvent wheel(at, drawn->mapToGlobal(at), {}, delta, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                          false);
        QCoreApplication::sendEvent(drawn, &wheel);
        QCoreApplication::processEvents();
    };
    const QPoint middle(drawn->width() / 2, drawn->height() / 3);
    turn(middle, {0, 360});
    ASSERT_TRUE(plot.seen());
    const auto before = *plot.seen();
    EXPECT_NEAR(before.days(), wholeWinter(*picture()).days() / std::pow(1.5, 3), 0.01);
    const auto range = drawn->axisRect(0)->axis(QCPAxis::atBottom)->range();
    EXPECT_NEAR(range.lower, before.first, 1e-9);
    EXPECT_NEAR(range.upper, before.last, 1e-9);

    QTest::mousePress(drawn, Qt::LeftButton, {}, middle);
    QTest::mouseMove(drawn, middle - QPoint(50, 0));
    QTest::mouseRelease(drawn, Qt::LeftButton, {}, middle - QPoint(50, 0));
    EXPECT_GT(plot.seen()->first, before.first);
    EXPECT_NEAR(plot.seen()->days(), before.days(), 1e-9);
    QTest::mouseDClick(drawn, Qt::LeftButton, {}, middle);
    EXPECT_FALSE(plot.seen());
}

TEST(WinterPlot, TheWheelScrollsAScrolledPageUntilThePictureIsClicked) {
    QScrollArea page;
    auto* plot = new WinterPlot;
    plot->setMinimumSize(700, 900);
    page.setWidget(plot);
    page.setWidgetResizable(true);
    page.resize(720, 400);
    plot->show(picture());
    page.show();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    page.setFocus();
    auto* drawn = plot->findChild<QCustomPlot*>();
    const auto turn = [&](Qt::KeyboardModifiers with) {
        const QPoint at(300, 100);
        QWheelEvent wheel(at, drawn->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, with, Qt::NoScrollPhase, false);
        QSpontaneKeyEvent::setSpontaneous(&wheel); // as from the system: only such goes on to the widgets around
        qApp->notify(drawn, &wheel);
        QCoreApplication::processEvents();
    };
    plot->seeFewerDays();
    const auto seen = plot->seen();
    turn({});
    EXPECT_EQ(plot->seen(), seen);
    EXPECT_GT(page.verticalScrollBar()->value(), 0) << "the page goes on under the pointer";
    turn(Qt::ControlModifier);
    EXPECT_NE(plot->seen(), seen);
    plot->seeFewerDays();
    plot->setFocus();
    const auto before = plot->seen();
    turn({});
    EXPECT_NE(plot->seen(), before);
}

TEST(WinterPlot, TheDaysSeenAreKeptFromOnePictureToTheNext) {
    WinterPlot plot;
    plot.resize(900, 400);
    plot.show(picture());
    plot.see(DayWindow{picture()->first.w + 10.0, picture()->first.w + 60.0});
    plot.show(nullptr);
    plot.show(picture());
    ASSERT_TRUE(plot.seen());
    EXPECT_DOUBLE_EQ(plot.seen()->days(), 50);
}

TEST(WinterPlot, NumbersHaveARowADayAndAColumnAnOption) {
    WinterPlot plot;
    plot.show(picture());
    const QStringList rows = plot.numbers().split(QLatin1Char('\n'));
    EXPECT_EQ(rows.size(), static_cast<qsizetype>(picture()->daily.size()) + 1);
    EXPECT_EQ(rows[0].split(QLatin1Char('\t')).size(), 1 + 4 + 4);
    EXPECT_TRUE(rows[1].startsWith(QStringLiteral("2026-09-14\t")));
    plot.showOptions({advice::OptionKind::Leave, advice::OptionKind::TakeNow});
    EXPECT_EQ(plot.numbers().split(QLatin1Char('\n'))[0].split(QLatin1Char('\t')).size(), 1 + 2 * 4 + 4);
}

TEST(WinterPlot, DarkAndLightDifferAndOptionsAreDrawn) {
    WinterPlot plot;
    plot.resize(900, 420);
    plot.setColours(lightColours());
    plot.show(picture());
    const QImage light = plot.grab().toImage();
    EXPECT_EQ(light.pixelColor(2, 2), lightColours().card);
    plot.setColours(darkColours());
    QCoreApplication::processEvents(); // drawn once for all that changes in a turn
    const QImage dark = plot.grab().toImage();
    EXPECT_EQ(dark.pixelColor(2, 2), darkColours().card);
    plot.showOptions({advice::OptionKind::Leave, advice::OptionKind::TakeNow});
    QCoreApplication::processEvents();
    EXPECT_GT(different(dark, plot.grab().toImage()), 500);
}

TEST(WinterPlot, IsPlottedOnceForAllThatChangesAndOnlyWhileItIsSeen) {
    QWidget page;
    page.resize(900, 420);
    WinterPlot plot(&page);
    QCoreApplication::processEvents();
    int plotted = 0;
    QObject::connect(plot.findChild<QCustomPlot*>(), &QCustomPlot::beforeReplot, [&] { ++plotted; });
    plot.show(picture());
    QCoreApplication::processEvents();
    EXPECT_EQ(plotted, 0);
    page.show();
    QCoreApplication::processEvents();
    EXPECT_GT(plotted, 0);
    EXPECT_GT(plot.findChild<QCustomPlot*>()->plottableCount(), drawnWinters);
    plotted = 0;
    plot.showOptions({advice::OptionKind::Leave, advice::OptionKind::TakeNow});
    plot.showOptions({advice::OptionKind::TakeNow});
    plot.show(nullptr);
    plot.show(picture());
    QCoreApplication::processEvents();
    EXPECT_EQ(plotted, 1);
}

TEST(WinterPlot, SavesEachFormAndIsLightOnPaper) {
    const QTemporaryDir folder;
    for (const char* form : {"png", "svg", "pdf"}) {
        const QString path = folder.filePath(QStringLiteral("picture.%1").arg(QLatin1String(form)));
        ASSERT_TRUE(savePaperPicture(picture(), {advice::OptionKind::Leave}, {}, QStringLiteral("Title"), path))
            << form;
        EXPECT_GT(QFile(path).size(), 5000) << form;
    }
    EXPECT_GT(QImage(folder.filePath(QStringLiteral("picture.png"))).pixelColor(3, 3).lightness(), 240);
    EXPECT_FALSE(
        savePaperPicture(picture(), {advice::OptionKind::Leave}, {}, {}, QStringLiteral("/nowhere/at/all.svg")));
}

} // namespace winterlarder::desk
