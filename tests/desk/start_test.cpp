// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "fields/place_field.h"
#include "fields/quantity_field.h"
#include "forms/format_field.h"
#include "forms/own_measures.h"

#include <QCheckBox>
#include <QLineEdit>

//! A hive of the keeper's own measures, at the first start.
namespace winterlarder::desk::start_test {

class StartWithOwnMeasures : public invented::WindowDesk {
protected:
    ~StartWithOwnMeasures() override { settings::chooseUnits({}); }
    StartPage* start() { return window.startPage(); }
    void begin() { QTest::mouseClick(button(start(), "Begin the book"), Qt::LeftButton); }
};

TEST_F(StartWithOwnMeasures, TheyBeginAsTheFormatsAndGoIntoTheBook) {
    answerSlowly();
    QTest::keyClicks(start()->place()->search(), QStringLiteral("45.1, -64.5"));
    EXPECT_FALSE(start()->measures()->isVisible());
    start()->format()->choose("national-deep");
    start()->ownCombs()->click();
    ASSERT_TRUE(start()->measures()->isVisible());
    EXPECT_EQ(start()->measures()->format(), measuresOf(*start()->format()->format()));
    type(start()->measures()->depth(), "");
    begin();
    EXPECT_TRUE(start()->fault().contains(QStringLiteral("comb depth"))) << start()->fault().toStdString();
    EXPECT_FALSE(window.book()->isOpen());
    type(start()->measures()->depth(), "240 mm");
    QTest::keyClick(start()->measures()->depth(), Qt::Key_Return);
    begin();
    settle();
    window.yard()->showDay(invented::day("2026-09-14"));
    settle();
    ASSERT_FALSE(window.yard()->colonies().empty());
    const auto& boxes = window.yard()->colonies().front().record.hive.boxes;
    ASSERT_FALSE(boxes.empty());
    const auto* own = std::get_if<book::OwnFormat>(&boxes.front().format);
    ASSERT_NE(own, nullptr);
    EXPECT_NEAR(own->combHeight.value() / millimetres(240).value(), 1, 1e-9);
}

TEST_F(StartWithOwnMeasures, LeftUntickedTheFormatIsTaken) {
    answerSlowly();
    QTest::keyClicks(start()->place()->search(), QStringLiteral("45.1, -64.5"));
    start()->ownCombs()->click();
    start()->ownCombs()->click();
    EXPECT_FALSE(start()->measures()->isVisible());
    begin();
    settle();
    window.yard()->showDay(invented::day("2026-09-14"));
    settle();
    const auto& boxes = window.yard()->colonies().front().record.hive.boxes;
    EXPECT_TRUE(std::holds_alternative<std::string>(boxes.front().format));
}

} // namespace winterlarder::desk::start_test
