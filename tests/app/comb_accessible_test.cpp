// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/hanging.h"
#include "models/words.h"

#include <QAccessible>
#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

hanging::Desk twoBoxes() {
    return {std::vector<book::CombRecord>(4, invented::comb(0.8, 0.1, 0, 0.05)),
            {{"a", hanging::frame().outline, millimetres(35), {1000}, 2}, hanging::frame()}};
}

} // namespace

TEST(CombDrawingSpeaks, EachCombAndEachZoneIsReachedAndSaysItsShare) {
    auto desk = twoBoxes();
    auto* list = QAccessible::queryAccessibleInterface(&desk.drawing);
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->role(), QAccessible::List);
    ASSERT_EQ(list->childCount(), 4);
    for (int i = 0; i < 4; ++i) {
        auto* comb = list->child(i);
        ASSERT_NE(comb, nullptr);
        EXPECT_EQ(comb->parent(), list);
        EXPECT_EQ(list->indexOfChild(comb), i);
        EXPECT_EQ(comb->role(), QAccessible::ListItem);
        EXPECT_EQ(comb->text(QAccessible::Name).toStdString(),
                  "Comb " + std::to_string(i % 2 + 1) + " of box " + std::to_string(i / 2 + 1));
        EXPECT_TRUE(comb->text(QAccessible::Description).contains(QStringLiteral("capped 80 %")));
        EXPECT_FALSE(comb->rect().isEmpty());
        ASSERT_EQ(comb->childCount(), 4);
        const QStringList values{QStringLiteral("80 %"), QStringLiteral("10 %"), QStringLiteral("0 %"),
                                 QStringLiteral("5 %")};
        for (int zone = 0; zone < 4; ++zone) {
            auto* slider = comb->child(zone);
            ASSERT_NE(slider, nullptr);
            EXPECT_EQ(slider->role(), QAccessible::Slider);
            EXPECT_EQ(slider->parent(), comb);
            EXPECT_EQ(slider->text(QAccessible::Name), words::zone(allZones[zone]));
            EXPECT_EQ(slider->text(QAccessible::Value), values[zone]);
            ASSERT_NE(slider->valueInterface(), nullptr);
        }
    }
}

TEST(CombDrawingSpeaks, AShareCanBeSetByAScreenReader) {
    auto desk = twoBoxes();
    auto* capped = QAccessible::queryAccessibleInterface(&desk.drawing)->child(2)->child(0);
    capped->valueInterface()->setCurrentValue(35);
    EXPECT_NEAR(shareOf(desk.record(2), Zone::Capped), 0.35, 1e-9);
    EXPECT_EQ(capped->text(QAccessible::Value), QStringLiteral("35 %"));
    EXPECT_EQ(capped->valueInterface()->currentValue().toDouble(), 35);
}

TEST(CombDrawingSpeaks, TheChosenCombHasTheFocus) {
    auto desk = twoBoxes();
    auto* list = QAccessible::queryAccessibleInterface(&desk.drawing);
    QTest::keyClick(static_cast<QWidget*>(&desk.drawing), Qt::Key_Right);
    EXPECT_TRUE(list->child(1)->state().selected);
    EXPECT_FALSE(list->child(0)->state().selected);
    ASSERT_TRUE(desk.drawing.hasFocus());
    EXPECT_TRUE(list->child(1)->state().focused);
    EXPECT_EQ(list->focusChild(), list->child(1));
    const auto face = desk.drawing.faceOf(3).center().toPoint();
    const auto global = desk.drawing.mapToGlobal(face);
    EXPECT_EQ(list->childAt(global.x(), global.y()), list->child(3));
}

TEST(CombDrawingSpeaks, FewerCombsLeaveNoGhosts) {
    auto desk = twoBoxes();
    auto* list = QAccessible::queryAccessibleInterface(&desk.drawing);
    auto* gone = list->child(3);
    desk.records.resize(2);
    desk.show();
    EXPECT_EQ(list->childCount(), 2);
    EXPECT_FALSE(gone->isValid());
    EXPECT_EQ(gone->text(QAccessible::Name), QString());
    EXPECT_EQ(list->child(3), nullptr);
}

} // namespace winterlarder::desk
