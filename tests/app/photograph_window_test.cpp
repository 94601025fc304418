// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "app/buttons.h"
#include "app/hanging.h"
#include "app/photographed.h"
#include "photograph/photograph_view.h"
#include "photograph/photograph_window.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <gtest/gtest.h>

namespace winterlarder::desk {

using namespace photographed;

class Photograph : public testing::Test {
protected:
    Photograph()
        : drawn(drawnCombs({invented::comb(0.5, 0, 0, 0)}, {hanging::frame()}, 0.65, hanging::spreads()).front()),
          window(drawn) {
        path = folder.filePath(QStringLiteral("comb.png"));
        EXPECT_TRUE(photograph(comb, view).save(path));
        window.show();
        window.activateWindow();
        QTest::qWait(1);
    }
    // Whether it became the picture of the face shown.
    bool opens(const QString& picture) {
        const auto before = window.faces()[0].picture.cacheKey();
        window.openPicture(picture);
        EXPECT_TRUE(invented::waitFor([this] { return window.idle(); }));
        return window.faces()[0].picture.cacheKey() != before;
    }
    void straightened() {
        ASSERT_TRUE(invented::waitFor([this] { return window.idle(); }));
    }
    PhotographView& picture() { return *window.view(); }
    QWidget* canvas() { return window.view(); }
    void mark() {
        const auto corners = hive::cornersOf(comb.outline);
        for (std::size_t i = 0; i < 4; ++i) {
            const QPoint from = picture().toWidget(picture().points()[i].at).toPoint(),
                         to = picture().toWidget(view(corners[i])).toPoint();
            QTest::mousePress(canvas(), Qt::LeftButton, {}, from);
            QTest::mouseMove(canvas(), (from + to) / 2);
            QTest::mouseMove(canvas(), to);
            QTest::mouseRelease(canvas(), Qt::LeftButton, {}, to);
        }
    }
    void trace(const hive::Tracing& tracing) {
        window.pickKind(tracing.kind);
        const auto rectified = rectify(comb.outline, window.faces()[0], 2.5);
        for (const auto& point : tracing.points)
            QTest::mouseClick(canvas(), Qt::LeftButton, {}, picture().toWidget(rectified->pixel(point)).toPoint());
    }
    // From where the chosen point is to another place of the picture, by keys alone: large steps, then small ones.
    void walkTo(QPointF to) {
        const double step = std::max(1.0, 1 / picture().zoom());
        const auto walk = [&](double away, Qt::Key back, Qt::Key on) {
            const int steps = static_cast<int>(std::lround(std::abs(away) / step));
            for (int i = 0; i < steps / 10; ++i) QTest::keyClick(canvas(), away < 0 ? back : on, Qt::ShiftModifier);
            for (int i = 0; i < steps % 10; ++i) QTest::keyClick(canvas(), away < 0 ? back : on);
        };
        const QPointF away = to - picture().points()[static_cast<std::size_t>(picture().chosenPoint())].at;
        walk(away.x(), Qt::Key_Left, Qt::Key_Right);
        walk(away.y(), Qt::Key_Up, Qt::Key_Down);
    }
    // What the window does when it is left, and `press` is pressed where it asks.
    bool leaves(const char* press) {
        bool asked = false;
        QTimer::singleShot(0, &window, [&] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box) return;
            asked = true;
            for (auto* button : box->buttons())
                if (button->text() == QLatin1String(press)) return QTest::mouseClick(button, Qt::LeftButton);
            ADD_FAILURE() << "there is no button " << press;
            box->close();
        });
        QTest::keyClick(&window, Qt::Key_Escape);
        QTest::qWait(1);
        EXPECT_TRUE(asked);
        return !window.isVisible();
    }
    Comb comb{"honey", hanging::frame().outline, {1, 0.6, 0.15, 0, 0}};
    View view{20, 10};
    QTemporaryDir folder;
    QString path;
    DrawnComb drawn;
    PhotographWindow window;
};

TEST_F(Photograph, IsOpenedMarkedTracedAndTaken) {
    EXPECT_FALSE(button(&window, "Take these shares")->isEnabled());
    ASSERT_TRUE(opens(path));
    mark();
    window.showStep(PhotographWindow::Step::Trace);
    ASSERT_EQ(window.step(), PhotographWindow::Step::Trace);
    std::mt19937 hand(3);
    for (const auto& tracing : traced(comb, 0, hand)) trace(tracing);
    const auto measured = window.measured();
    EXPECT_TRUE(measured.measured);
    EXPECT_EQ(measured.facesSeen, 1);
    EXPECT_NEAR(shareOf(measured, Zone::Capped), 0.6, 0.02);
    EXPECT_NEAR(shareOf(measured, Zone::Open), 0.15, 0.02);
    EXPECT_TRUE(button(&window, "Take these shares")->isEnabled());
    EXPECT_EQ(window.pictures(), QStringList{path});
    EXPECT_TRUE(window.readout().contains(QStringLiteral("17.5 % instead of 20 %"))) << window.readout().toStdString();
}

TEST_F(Photograph, UndoGoesBackThroughPointsAndMarks) {
    ASSERT_TRUE(opens(path));
    const auto first = window.faces()[0].marks;
    mark();
    window.showStep(PhotographWindow::Step::Trace);
    std::mt19937 hand(3);
    trace(traced(comb, 0, hand).back());
    const auto points = window.faces()[0].tracings.front().points.size();
    EXPECT_EQ(points, 10U);
    window.undo();
    EXPECT_EQ(window.faces()[0].tracings.front().points.size(), points - 1);
    window.redo();
    EXPECT_EQ(window.faces()[0].tracings.front().points.size(), points);
    for (std::size_t i = 0; i < points + 4; ++i) window.undo();
    EXPECT_EQ(window.faces()[0].marks, first);
    window.undo();
    EXPECT_TRUE(window.faces()[0].picture.isNull());
}

TEST_F(Photograph, AMarkIsMovedByKeysAndItsPlaceIsSpoken) {
    ASSERT_TRUE(opens(path));
    picture().setFocus();
    const auto before = picture().points()[0].at;
    QTest::keyClick(canvas(), Qt::Key_Right);
    QTest::keyClick(canvas(), Qt::Key_Down, Qt::ShiftModifier);
    const double step = 1 / picture().zoom(); // one of the screen
    ASSERT_GT(step, 1);
    EXPECT_NEAR(window.faces()[0].marks[0].x(), before.x() + step, 1e-9);
    EXPECT_NEAR(window.faces()[0].marks[0].y(), before.y() + 10 * step, 1e-9);
    EXPECT_TRUE(picture().accessibleDescription().startsWith(QStringLiteral("top left corner")))
        << picture().accessibleDescription().toStdString();
    QTest::keyClick(canvas(), Qt::Key_Space);
    EXPECT_TRUE(picture().accessibleDescription().startsWith(QStringLiteral("top right corner")));
}

TEST_F(Photograph, ZoomKeepsThePlaceUnderThePointer) {
    ASSERT_TRUE(opens(path));
    const QPointF place(200, 150);
    const auto under = picture().toPicture(place);
    picture().zoomAt(place, 3);
    EXPECT_NEAR(picture().toPicture(place).x(), under.x(), 1e-6);
    EXPECT_NEAR(picture().toPicture(place).y(), under.y(), 1e-6);
    QTest::keyClick(canvas(), Qt::Key_0);
    EXPECT_LE(picture().toWidget({3000, 0}).x(), picture().width() + 1);
}

TEST_F(Photograph, WhatCannotBeReadIsSaidAndNothingIsLost) {
    ASSERT_TRUE(opens(path));
    const auto marks = window.faces()[0].marks;
    EXPECT_FALSE(opens(folder.filePath(QStringLiteral("none.png"))));
    EXPECT_EQ(window.faces()[0].marks, marks);
}

TEST_F(Photograph, WithoutAPictureNothingCanBeTraced) {
    window.showStep(PhotographWindow::Step::Trace);
    EXPECT_EQ(window.step(), PhotographWindow::Step::Mark);
    EXPECT_EQ(window.readout(), QStringLiteral("Nothing is traced yet."));
}

TEST_F(Photograph, KeysAloneMeasureAComb) {
    ASSERT_TRUE(opens(path));
    EXPECT_TRUE(canvas()->hasFocus()) << "what is done next is done there";
    const auto corners = hive::cornersOf(comb.outline);
    for (const auto& corner : corners) {
        walkTo(view(corner));
        QTest::keyClick(canvas(), Qt::Key_Space);
    }
    for (std::size_t i = 0; i < 4; ++i) {
        const auto off = window.faces()[0].marks[i] - view(corners[i]);
        EXPECT_LT(std::hypot(off.x(), off.y()), 1 / picture().zoom()) << "corner " << i;
    }
    QTest::keyClick(canvas(), Qt::Key_2, Qt::AltModifier);
    ASSERT_EQ(window.step(), PhotographWindow::Step::Trace);
    EXPECT_TRUE(canvas()->hasFocus());
    std::mt19937 hand(3);
    const auto tracing = traced(comb, 0, hand).back();
    ASSERT_EQ(tracing.kind, hive::TracedKind::Capped);
    const auto rectified = rectify(comb.outline, window.faces()[0], 2.5);
    for (const auto& point : tracing.points) {
        QTest::keyClick(canvas(), Qt::Key_Return);
        walkTo(rectified->pixel(point));
    }
    const auto& set = window.faces()[0].tracings.front().points;
    ASSERT_EQ(set.size(), tracing.points.size());
    for (std::size_t i = 0; i < set.size(); ++i)
        EXPECT_LT(std::hypot(set[i].x - tracing.points[i].x, set[i].y - tracing.points[i].y), 3)
            << "in the order they were set";
    EXPECT_NEAR(shareOf(window.measured(), Zone::Capped), 0.6, 0.02);
}

TEST_F(Photograph, ARowOfStepsOfOnePointIsUndoneAtOnce) {
    ASSERT_TRUE(opens(path));
    const auto first = window.faces()[0].marks;
    for (int i = 0; i < 5; ++i) QTest::keyClick(canvas(), Qt::Key_Right);
    QTest::keyClick(canvas(), Qt::Key_Space);
    for (int i = 0; i < 5; ++i) QTest::keyClick(canvas(), Qt::Key_Down);
    ASSERT_NE(window.faces()[0].marks[1], first[1]);
    QTest::mouseClick(button(&window, "Undo"), Qt::LeftButton);
    EXPECT_EQ(window.faces()[0].marks[1], first[1]);
    EXPECT_NE(window.faces()[0].marks[0], first[0]);
    EXPECT_TRUE(button(&window, "Redo")->isEnabled());
    QTest::mouseClick(button(&window, "Undo"), Qt::LeftButton);
    EXPECT_EQ(window.faces()[0].marks, first);
    QTest::mouseClick(button(&window, "Undo"), Qt::LeftButton);
    EXPECT_FALSE(button(&window, "Undo")->isEnabled()) << "nothing is left to undo";
}

TEST_F(Photograph, APointMovedByKeysStaysInSight) {
    ASSERT_TRUE(opens(path));
    for (int i = 0; i < 12; ++i) QTest::keyClick(canvas(), Qt::Key_Plus);
    for (int i = 0; i < 200; ++i) QTest::keyClick(canvas(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_TRUE(canvas()->rect().contains(picture().toWidget(picture().points()[0].at).toPoint()));
    QTest::keyClick(canvas(), Qt::Key_Space);
    EXPECT_TRUE(canvas()->rect().contains(picture().toWidget(picture().points()[1].at).toPoint()));
}

TEST_F(Photograph, ThePictureStaysWhereItIsWhileItIsTraced) {
    window.resize(700, 600);
    QTest::qWait(1);
    const auto place = canvas()->geometry();
    ASSERT_TRUE(opens(path));
    QTest::qWait(1);
    EXPECT_EQ(canvas()->geometry(), place);
    mark();
    window.showStep(PhotographWindow::Step::Trace);
    QTest::qWait(1);
    EXPECT_EQ(canvas()->geometry(), place);
    const double zoom = picture().zoom();
    std::mt19937 hand(3);
    for (const auto& tracing : traced(comb, 0, hand)) trace(tracing);
    QTest::qWait(1);
    EXPECT_EQ(canvas()->geometry(), place);
    EXPECT_EQ(picture().zoom(), zoom);
}

TEST_F(Photograph, EveryStepHasRoomForItsWordsWhicheverIsChosen) {
    ASSERT_TRUE(opens(path));
    for (const auto step : {PhotographWindow::Step::Mark, PhotographWindow::Step::Trace}) {
        window.showStep(step);
        QTest::qWait(1);
        const auto* bar = window.stepsBar();
        QFont bold = bar->font();
        bold.setBold(true);
        for (int tab = 0; tab < bar->count(); ++tab) {
            EXPECT_GE(bar->tabRect(tab).width(),
                      QFontMetrics(bold).horizontalAdvance(bar->tabText(tab).remove(QLatin1Char('&'))) + 30);
            EXPECT_TRUE(bar->rect().contains(bar->tabRect(tab).adjusted(2, 2, -2, -2))) << "tab " << tab;
        }
        for (const auto* button : window.findChildren<QToolButton*>())
            EXPECT_FALSE(button->isVisible()) << "an empty button";
    }
}

TEST_F(Photograph, LinesAreDarkWithALightEdgeOnHoney) {
    ASSERT_TRUE(opens(path));
    mark();
    window.showStep(PhotographWindow::Step::Trace);
    const auto rectified = rectify(comb.outline, window.faces()[0], 2.5);
    const auto at = [&](double x, double y) { return picture().toWidget(rectified->pixel({x, y})).toPoint(); };
    for (const auto& place : {at(-60, 40), at(60, 40)}) QTest::mouseClick(canvas(), Qt::LeftButton, {}, place);
    const auto seen = canvas()->grab().toImage();
    const QPoint on = (at(-60, 40) + at(60, 40)) / 2;
    int darkest = 255, lightest = 0;
    for (int off = -4; off <= 4; ++off) {
        const int grey = qGray(seen.pixel(on + QPoint(0, off)));
        darkest = std::min(darkest, grey);
        lightest = std::max(lightest, grey);
    }
    EXPECT_LT(darkest, 60) << "already two points are joined by a line";
    EXPECT_GT(lightest, 200);
}

TEST_F(Photograph, WhatWasTracedIsNotThrownAwayUnasked) {
    ASSERT_TRUE(opens(path));
    window.showStep(PhotographWindow::Step::Trace);
    std::mt19937 hand(3);
    trace(traced(comb, 0, hand).back());
    EXPECT_FALSE(leaves("&Go on tracing"));
    EXPECT_FALSE(window.pictures().isEmpty());
    EXPECT_TRUE(leaves("&Throw it away"));
    EXPECT_EQ(window.result(), QDialog::Rejected);
}

TEST_F(Photograph, NothingTracedIsLeftAtOnce) {
    ASSERT_TRUE(opens(path));
    QTest::keyClick(&window, Qt::Key_Escape);
    EXPECT_FALSE(window.isVisible());
}

TEST_F(Photograph, APictureOfTheLookIsOpenedWithoutASearchForIt) {
    window.offerPictures({path});
    bool searched = false;
    QTimer::singleShot(50, &window, [] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(menu->actions().front()).center());
    });
    QTimer::singleShot(400, &window, [&] {
        if (auto* menu = QApplication::activePopupWidget()) menu->close();
        if (auto* search = QApplication::activeModalWidget(); search && search != &window) {
            searched = true;
            search->close();
        }
    });
    button(&window, "Open picture\u2026")->click();
    EXPECT_TRUE(invented::waitFor([this] { return window.idle() && !window.faces()[0].picture.isNull(); }));
    const auto* lies = QApplication::activeModalWidget();
    EXPECT_TRUE(!lies || lies == &window) << "nothing is asked for";
    EXPECT_FALSE(searched);
}

TEST_F(Photograph, AZoneInTwoPatchesIsGoneThroughByItsKey) {
    ASSERT_TRUE(opens(path));
    window.showStep(PhotographWindow::Step::Trace);
    QTest::keyClick(canvas(), Qt::Key_Return);
    window.beginCurve();
    QTest::keyClick(canvas(), Qt::Key_Return);
    QTest::keyClick(canvas(), Qt::Key_Return);
    ASSERT_EQ(picture().points().size(), 2U);
    QTest::keyClick(canvas(), Qt::Key_C);
    EXPECT_EQ(picture().points().size(), 1U);
    QTest::keyClick(canvas(), Qt::Key_C);
    EXPECT_EQ(picture().points().size(), 2U);
}

TEST_F(Photograph, WhatToDoIsSaidAndFaultsInItsPlace) {
    EXPECT_TRUE(window.hint().contains(QStringLiteral("open the picture"))) << window.hint().toStdString();
    ASSERT_TRUE(opens(path));
    EXPECT_TRUE(window.hint().contains(QStringLiteral("arrows move")));
    EXPECT_FALSE(opens(folder.filePath(QStringLiteral("none.png"))));
    EXPECT_TRUE(window.hint().contains(QStringLiteral("none.png"))) << window.hint().toStdString();
    window.showStep(PhotographWindow::Step::Mark);
    EXPECT_FALSE(window.hint().contains(QStringLiteral("none.png"))) << "it is over once the work goes on";
}

TEST_F(Photograph, EverythingThatTakesTheFocusHasAName) {
    ASSERT_TRUE(opens(path));
    for (auto* widget : window.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || widget->focusProxy()) continue;
        auto* spoken = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(spoken, nullptr);
        EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
    }
}

TEST_F(Photograph, ALargePictureIsReadWhileTheWindowGoesOn) {
    window.openPicture(path);
    EXPECT_TRUE(window.faces()[0].picture.isNull()) << "not read in the window's own time";
    EXPECT_FALSE(window.idle());
    EXPECT_TRUE(window.hint().contains(QStringLiteral("comb.png"))) << window.hint().toStdString();
    straightened();
    EXPECT_FALSE(window.faces()[0].picture.isNull());
    mark();
    window.showStep(PhotographWindow::Step::Trace);
    ASSERT_EQ(window.step(), PhotographWindow::Step::Trace) << "it can be traced at once";
    EXPECT_FALSE(window.idle()) << "the picture is straightened beside it";
    straightened();
    const auto rectified = rectify(comb.outline, window.faces()[0], 2.5);
    const QPoint on = picture().toWidget(rectified->pixel({0, 20})).toPoint();
    EXPECT_NE(QColor(canvas()->grab().toImage().pixel(on)), QColor(Qt::darkGray)) << "and then seen";
}

TEST_F(Photograph, APictureComesToTheFaceItWasOpenedFor) {
    window.openPicture(path);
    window.showFace(1);
    straightened();
    EXPECT_FALSE(window.faces()[0].picture.isNull());
    EXPECT_TRUE(window.faces()[1].picture.isNull());
}

} // namespace winterlarder::desk
