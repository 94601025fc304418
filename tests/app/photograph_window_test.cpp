// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/hanging.h"
#include "app/photographed.h"
#include "widgets/photograph_view.h"
#include "widgets/photograph_window.h"

#include <QAccessible>
#include <QPushButton>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace winterlarder::desk {

using namespace photographed;

class Photograph : public testing::Test {
protected:
    Photograph() : drawn(drawnCombs({invented::comb(0.5, 0, 0, 0)}, {hanging::frame()}, 0.65).front()), window(drawn) {
        path = folder.filePath(QStringLiteral("comb.png"));
        EXPECT_TRUE(photograph(comb, view).save(path));
        window.show();
        window.activateWindow();
        QTest::qWait(1);
    }
    PhotographView& picture() { return *window.view(); }
    QWidget* canvas() { return window.view(); }
    void mark() {
        const auto corners = hive::cornersOf(comb.outline);
        for (std::size_t i = 0; i < 4; ++i) {
            const QPoint from = picture().toWidget(picture().points()[i].at).toPoint(), to = picture().toWidget(view(corners[i])).toPoint();
            QTest::mousePress(canvas(), Qt::LeftButton, {}, from);
            QTest::mouseMove(canvas(), (from + to) / 2);
            QTest::mouseMove(canvas(), to);
            QTest::mouseRelease(canvas(), Qt::LeftButton, {}, to);
        }
    }
    void trace(const hive::Tracing& tracing) {
        window.pickKind(tracing.kind);
        const auto rectified = rectify(comb.outline, window.faces()[0], 2.5);
        for (const auto& point : tracing.points) QTest::mouseClick(canvas(), Qt::LeftButton, {}, picture().toWidget(rectified->pixel(point)).toPoint());
    }
    Comb comb{"honey", hanging::frame().outline, {1, 0.6, 0.15, 0, 0}};
    View view{20, 10};
    QTemporaryDir folder;
    QString path;
    DrawnComb drawn;
    PhotographWindow window;
};

TEST_F(Photograph, IsOpenedMarkedTracedAndTaken) {
    EXPECT_FALSE(window.takeButton()->isEnabled());
    ASSERT_TRUE(window.openPicture(path));
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
    EXPECT_TRUE(window.takeButton()->isEnabled());
    EXPECT_EQ(window.pictures(), QStringList{path});
    EXPECT_TRUE(window.readout().contains(QStringLiteral("17.5 % instead of 20 %"))) << window.readout().toStdString();
}

TEST_F(Photograph, UndoGoesBackThroughPointsAndMarks) {
    ASSERT_TRUE(window.openPicture(path));
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
    ASSERT_TRUE(window.openPicture(path));
    picture().setFocus();
    const auto before = picture().points()[0].at;
    QTest::keyClick(canvas(), Qt::Key_Right);
    QTest::keyClick(canvas(), Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(window.faces()[0].marks[0], before + QPointF(1, 10));
    EXPECT_TRUE(picture().accessibleDescription().startsWith(QStringLiteral("top left corner"))) << picture().accessibleDescription().toStdString();
    QTest::keyClick(canvas(), Qt::Key_Space);
    EXPECT_TRUE(picture().accessibleDescription().startsWith(QStringLiteral("top right corner")));
}

TEST_F(Photograph, ZoomKeepsThePlaceUnderThePointer) {
    ASSERT_TRUE(window.openPicture(path));
    const QPointF place(200, 150);
    const auto under = picture().toPicture(place);
    picture().zoomAt(place, 3);
    EXPECT_NEAR(picture().toPicture(place).x(), under.x(), 1e-6);
    EXPECT_NEAR(picture().toPicture(place).y(), under.y(), 1e-6);
    QTest::keyClick(canvas(), Qt::Key_0);
    EXPECT_LE(picture().toWidget({3000, 0}).x(), picture().width() + 1);
}

TEST_F(Photograph, WhatCannotBeReadIsSaidAndNothingIsLost) {
    ASSERT_TRUE(window.openPicture(path));
    const auto marks = window.faces()[0].marks;
    EXPECT_FALSE(window.openPicture(folder.filePath(QStringLiteral("none.png"))));
    EXPECT_EQ(window.faces()[0].marks, marks);
}

TEST_F(Photograph, WithoutAPictureNothingCanBeTraced) {
    window.showStep(PhotographWindow::Step::Trace);
    EXPECT_EQ(window.step(), PhotographWindow::Step::Mark);
    EXPECT_EQ(window.readout(), QStringLiteral("Nothing is traced yet."));
}

TEST_F(Photograph, EverythingThatTakesTheFocusHasAName) {
    ASSERT_TRUE(window.openPicture(path));
    for (auto* widget : window.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || widget->focusProxy()) continue;
        auto* spoken = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(spoken, nullptr);
        EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
    }
}

} // namespace winterlarder::desk
