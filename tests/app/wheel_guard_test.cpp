// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "fields/day_field.h"
#include "fields/fields.h"
#include "pages/look_page.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QScrollArea>
#include <QScrollBar>
#include <QWheelEvent>

namespace winterlarder::desk {

using invented::colony;
using invented::WindowDesk;

namespace {

void turnWheel(QWidget* over) {
    const QPointF place = over->rect().center();
    QWheelEvent down(place, over->mapToGlobal(place), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                     false);
    QSpontaneKeyEvent::setSpontaneous(&down); // from the hand: only such go on to what is around
    qApp->notify(over, &down);
}

} // namespace

TEST_F(WindowDesk, ScrollingThePageChangesNoFieldOnTheWay) {
    answerReally(); // with a winter picture, so that the page below it has to be scrolled
    open({colony("Apple")});
    window.resize(1100, 620);
    QTest::qWait(1);
    auto* look = window.colonyView()->look();
    auto* bees = look->findChild<BeesField*>();
    auto* share = look->share(Zone::Capped);
    auto* scroll = qobject_cast<QScrollArea*>(look->parentWidget()->parentWidget());
    ASSERT_TRUE(bees && scroll && scroll->verticalScrollBar()->maximum() > 0);
    const auto before = entry().record;
    const double number = bees->number()->value(), capped = share->value();
    const int kind = bees->kind()->currentIndex();
    const Date day = window.dayField()->day();
    int moved = 0;
    for (QWidget* field : std::initializer_list<QWidget*>{bees->kind(), bees->number(), share}) {
        scroll->verticalScrollBar()->setValue(0);
        turnWheel(field);
        moved += scroll->verticalScrollBar()->value() > 0;
        EXPECT_FALSE(field->hasFocus());
    }
    turnWheel(window.dayField()->line());
    settle();
    EXPECT_EQ(moved, 3) << "the page was scrolled instead";
    EXPECT_EQ(bees->kind()->currentIndex(), kind);
    EXPECT_EQ(bees->number()->value(), number);
    EXPECT_EQ(share->value(), capped);
    EXPECT_EQ(window.dayField()->day(), day);
    EXPECT_EQ(entry().record, before);
    window.activateWindow();
    bees->number()->setFocus();
    ASSERT_TRUE(bees->number()->hasFocus());
    turnWheel(bees->number());
    EXPECT_LT(bees->number()->value(), number) << "one that was chosen follows the wheel";
}

} // namespace winterlarder::desk
