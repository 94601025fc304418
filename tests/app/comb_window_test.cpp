// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/buttons.h"
#include "app/photographed.h"
#include "app/window_desk.h"
#include "combs/comb_drawing.h"
#include "combs/comb_fields.h"
#include "combs/comb_quick_form.h"
#include "pages/comb_entry.h"
#include "pages/look_page.h"
#include "photograph/photograph_view.h"
#include "photograph/photograph_window.h"

#include <QDir>
#include <QDoubleSpinBox>
#include <QMenu>
#include <QPushButton>

#include <iostream>

//! Combs entered in the whole window, as a keeper does: with the hand, with the keys alone, and from a photograph.
namespace winterlarder::desk {

using invented::colony;

class CombWindow : public invented::WindowDesk {
protected:
    LookPage* look() { return window.colonyView()->look(); }
    void measure() {
        QTest::mouseClick(button(look()->combs()->fields(), "Measure on a photograph\u2026"), Qt::LeftButton);
        ASSERT_NE(measuring(), nullptr);
    }
    //! The window open now for measuring on a photograph.
    PhotographWindow* measuring() { return qobject_cast<PhotographWindow*>(QApplication::activeModalWidget()); }
    bool opened(const QString& picture) {
        measuring()->openPicture(picture);
        return invented::waitFor([this] { return measuring()->idle(); }) && !measuring()->faces()[0].picture.isNull();
    }
    CombDrawing* drawing() { return look()->drawing(); }
    const book::CombRecord& comb(std::size_t place) {
        return std::get<std::vector<book::CombRecord>>(entry().record.combs).at(place);
    }
    QPoint edgeOf(int place, CombEdge edge, double lower = 0) {
        const auto& drawn = drawing()->combs()[static_cast<std::size_t>(place)];
        const CombLevels levels(drawn.format.outline, fillingOf(drawn.record));
        return placeOf({0, levels.archAt(edge, 0) + lower}, drawing()->faceOf(place)).toPoint();
    }
    void drag(QPoint from, QPoint to) {
        auto* hand = static_cast<QWidget*>(drawing());
        QTest::mousePress(hand, Qt::LeftButton, {}, from);
        for (int i = 1; i <= 12; ++i) QTest::mouseMove(hand, from + (to - from) * i / 12);
        QTest::mouseRelease(hand, Qt::LeftButton, {}, to);
    }
};

namespace {

book::ColonyCase twoBoxesNeverLookedAt() {
    auto record = colony("Apple");
    record.hive.boxes.push_back(record.hive.boxes.front());
    record.combs = std::monostate();
    record.lookedOn.reset();
    return record;
}

} // namespace

TEST_F(CombWindow, ADragIsOneStepWithANameAndUndoTakesItBackWhole) {
    answerSlowly();
    open({colony("Apple")});
    const auto before = entry().record;
    const auto steps = window.undoAction()->text();
    drag(edgeOf(3, CombEdge::Capped), edgeOf(3, CombEdge::Capped, -0.3));
    settle();
    EXPECT_LT(*comb(3).capped, 0.6);
    EXPECT_TRUE(window.undoAction()->text().startsWith(QStringLiteral("&Undo: comb 4: capped")))
        << window.undoAction()->text().toStdString();
    drag(edgeOf(2, CombEdge::Capped), edgeOf(2, CombEdge::Capped, 0.1));
    settle();
    undo();
    EXPECT_TRUE(window.undoAction()->text().startsWith(QStringLiteral("&Undo: comb 4: capped")))
        << "the two drags are two steps";
    undo();
    EXPECT_EQ(entry().record, before);
    EXPECT_EQ(window.undoAction()->text(), steps);
    window.redoAction()->trigger();
    settle();
    EXPECT_LT(*comb(3).capped, 0.6);
}

TEST_F(CombWindow, ALookOfTwentyCombsIsWrittenWithTheKeysAlone) {
    answerReally();
    open({twoBoxesNeverLookedAt()});
    int strokes = 0;
    const auto press = [&](Qt::Key key, Qt::KeyboardModifiers with = {}) {
        ASSERT_NE(window.focusWidget(), nullptr);
        QTest::keyClick(window.focusWidget(), key, with);
        strokes += with == Qt::NoModifier ? 1 : 2;
    };
    look()->newLookButton()->setFocus();
    press(Qt::Key_Space);
    settle();
    ASSERT_EQ(records().looks.size(), 1U) << "the bees were counted today; their look gets the combs";
    ASSERT_EQ(drawing()->combs().size(), 20U);
    ASSERT_EQ(window.focusWidget(), drawing()) << "the keys go to the combs of the new look";
    // Honey above, a nest below; every comb of its own, four keys each at most.
    const char* below[] = {"9", "7o2", "c4b3p1", "c2b5p1", "c2b6p1", "", "c2b5p1", "c4b3p1", "c7p1", "c9"};
    for (const auto* keys : below) {
        if (!*keys) {
            press(Qt::Key_Space);
            continue;
        }
        for (const char* key = keys; *key; ++key)
            press(static_cast<Qt::Key>(QChar::fromLatin1(*key).toUpper().unicode()));
        press(Qt::Key_Right);
    }
    press(Qt::Key_8);
    press(Qt::Key_Right);
    press(Qt::Key_9);
    press(Qt::Key_Right);
    for (int i = 0; i < 8; ++i) press(Qt::Key_Space);
    settle();
    EXPECT_EQ(comb(1).open, 0.2);
    EXPECT_EQ(comb(5), comb(4)) << "space repeats";
    EXPECT_EQ(comb(10).capped, 0.8);
    for (std::size_t i = 11; i < 20; ++i) EXPECT_EQ(comb(i).capped, 0.9) << i;
    const auto kept = std::get<std::vector<book::CombRecord>>(records().looks.at(0).combs);
    EXPECT_EQ(kept, std::get<std::vector<book::CombRecord>>(entry().record.combs)) << "no save button: the book has it";
    std::cout << "a new look of twenty combs in the window: " << strokes << " keystrokes\n";
    RecordProperty("keystrokes", strokes);
    EXPECT_LE(strokes, 120);
}

TEST_F(CombWindow, CombsOnlyCountedAreALookToo) {
    answerSlowly();
    auto record = colony("Apple");
    record.combs = std::monostate();
    open({record});
    auto* form = look()->combs()->quickForm();
    ASSERT_TRUE(form->isVisible());
    form->full()->selectAll();
    QTest::keyClicks(form->full(), QStringLiteral("6"));
    QTest::keyClick(form->full(), Qt::Key_Return);
    settle();
    const auto* count = std::get_if<book::QuickCountRecord>(&entry().record.combs);
    ASSERT_NE(count, nullptr);
    EXPECT_EQ(count->fullOfStores, 6);
    undo();
    EXPECT_TRUE(std::holds_alternative<std::monostate>(entry().record.combs));
}

TEST_F(CombWindow, APhotographStaysWithItsLookAndItsMeasuringIsOneStep) {
    using namespace photographed;
    answerSlowly();
    open({colony("Apple")});
    ASSERT_TRUE(QDir(folder.path()).mkdir(QStringLiteral("pictures")));
    const QString path = folder.filePath(QStringLiteral("pictures/comb.png"));
    const Comb seen{"honey", {millimetres(428), millimetres(428), millimetres(205)}, {1, 0.6, 0, 0, 0}};
    ASSERT_TRUE(photograph(seen, View{}).save(path));
    drawing()->choose(1);
    const auto before = entry().record;
    measure();
    ASSERT_TRUE(opened(path));
    measuring()->showStep(PhotographWindow::Step::Trace);
    for (const QPointF at : {QPointF(40, 40), QPointF(900, 40), QPointF(900, 300), QPointF(40, 300)})
        emit measuring()->view()->pointAdded(at);
    QTest::mouseClick(button(measuring(), "Take these shares"), Qt::LeftButton);
    settle();
    EXPECT_TRUE(comb(1).measured);
    ASSERT_EQ(records().looks.at(0).photographs.size(), 1U);
    EXPECT_EQ(records().looks[0].photographs[0], "pictures/comb.png")
        << "named from the book's folder, so both can be carried elsewhere";
    QTest::qWait(1); // the first window goes
    measure();
    auto* menu = qobject_cast<QPushButton*>(button(measuring(), "Open picture\u2026"))->menu();
    ASSERT_NE(menu, nullptr);
    EXPECT_EQ(menu->actions().front()->text(), QStringLiteral("comb.png"));
    menu->actions().front()->trigger();
    ASSERT_TRUE(invented::waitFor([this] { return measuring()->idle(); }));
    EXPECT_FALSE(measuring()->faces()[0].picture.isNull()) << "found again from the book";
    measuring()->reject();
    undo();
    EXPECT_EQ(entry().record, before);
    EXPECT_TRUE(records().looks.at(0).photographs.empty());
}

// The book is watched all the while: another look may be shown by the time the comb is measured.
TEST_F(CombWindow, WhatIsMeasuredGoesToTheLookItWasBegunOn) {
    using namespace photographed;
    answerSlowly();
    open({colony("Apple")});
    const QString path = folder.filePath(QStringLiteral("comb.png"));
    const Comb seen{"honey", {millimetres(428), millimetres(428), millimetres(205)}, {1, 0.6, 0, 0, 0}};
    ASSERT_TRUE(photograph(seen, View{}).save(path));
    const auto first = records().looks.at(0).id;
    drawing()->choose(1);
    measure();
    ASSERT_TRUE(opened(path));
    measuring()->showStep(PhotographWindow::Step::Trace);
    for (const QPointF at : {QPointF(40, 40), QPointF(900, 40), QPointF(900, 300), QPointF(40, 300)})
        emit measuring()->view()->pointAdded(at);
    auto other = records().looks.at(0);
    other.id = {};
    other.date = invented::day("2026-09-14");
    window.yard()->apply(book::SingleEdit(book::AddLook{other}));
    settle();
    ASSERT_EQ(entry().record.lookedOn, invented::day("2026-09-14"));
    QTest::mouseClick(button(measuring(), "Take these shares"), Qt::LeftButton);
    settle();
    ASSERT_EQ(records().looks.size(), 2U);
    for (const auto& look : records().looks)
        EXPECT_EQ(std::get<std::vector<book::CombRecord>>(look.combs)[1].measured, look.id == first) << look.id.number;
}

} // namespace winterlarder::desk
