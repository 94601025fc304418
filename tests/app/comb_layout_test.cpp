// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_layout.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::desk {

namespace {

const hive::Outline deep{millimetres(428), millimetres(428), millimetres(205)};
const hive::Outline leaning{millimetres(440), millimetres(210), millimetres(230)};

std::vector<CombPlace> box(int number, int combs, const hive::Outline& outline) {
    return std::vector<CombPlace>(static_cast<std::size_t>(combs), CombPlace{outline, number});
}

} // namespace

TEST(CombLayout, TheUpperBoxIsAboveAndALongHiveRunsOverRows) {
    auto two = box(0, 10, deep);
    for (const auto& each : box(1, 10, deep)) two.push_back(each);
    const auto rows = rowsOf(two);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].box, 1);
    EXPECT_EQ(rows[1].combs.front(), 0);
    const auto longHive = rowsOf(box(0, 26, leaning));
    ASSERT_EQ(longHive.size(), 3U);
    EXPECT_EQ(longHive[0].combs.front(), 0) << "from the entrance end";
    EXPECT_EQ(longHive[0].combs.size(), 9U);
}

TEST(CombLayout, ASuperListedFirstIsStillAboveAndInOneRow) {
    const auto rows = rowsOf({{deep, 1}, {deep, 0}, {deep, 1}, {deep, 0}});
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].combs, (std::vector{0, 2}));
    EXPECT_EQ(rows[1].combs, (std::vector{1, 3}));
}

RC_GTEST_PROP(CombLayout, NoCombLiesOutsideOrOnAnotherAndAllAreToOneScale, ()) {
    const int combs = *rc::gen::inRange(1, 40);
    const QSizeF size(*rc::gen::inRange(400, 1600), *rc::gen::inRange(200, 700));
    auto places = box(0, combs, *rc::gen::element(deep, leaning));
    if (*rc::gen::arbitrary<bool>()) places.push_back({leaning, 1});
    const CombWords words{60, 18, 70};
    const auto laid = layOut(places, size, words);
    RC_ASSERT(laid.size() == places.size());
    double scale = 0;
    for (std::size_t i = 0; i < laid.size(); ++i) {
        const auto& outline = places[static_cast<std::size_t>(laid[i].comb)].outline;
        const double own = laid[i].drawn.height() / outline.height.value();
        if (scale == 0) scale = own;
        RC_ASSERT(std::abs(own - scale) < 1e-9);
        RC_ASSERT(std::abs(laid[i].drawn.width() / outline.top.value() - scale) < 1e-9);
        RC_ASSERT(laid[i].drawn.left() >= 60 - 1e-9);
        RC_ASSERT(laid[i].drawn.right() <= size.width() + 1e-9);
        for (std::size_t j = 0; j < i; ++j) RC_ASSERT(!laid[i].drawn.intersects(laid[j].drawn));
    }
}

RC_GTEST_PROP(CombLayout, AtTheHeightForAWidthCombsAreLargeOrTheWidthDecides, ()) {
    const int combs = *rc::gen::inRange(1, 40);
    const double width = *rc::gen::inRange(400, 1600);
    const auto places = box(0, combs, *rc::gen::element(deep, leaning));
    const CombWords words{60, 32, 70};
    const double height = heightFor(places, width, words);
    const auto laid = layOut(places, {width, height}, words), taller = layOut(places, {width, height + 2}, words);
    RC_ASSERT(laid.back().words.bottom() <= height + 1);
    const double scale = laid[0].drawn.height() / places[0].outline.height.value();
    RC_ASSERT(scale <= 0.39);
    const bool large = laid[0].drawn.width() >= 89.9 && laid[0].drawn.height() >= 59.9;
    if (!large) RC_ASSERT(std::abs(taller[0].drawn.height() - laid[0].drawn.height()) < 0.1);
}

TEST(CombLayout, ALongRowIsBrokenWhereThatMakesItsCombsClearlyLarger) {
    const auto places = box(0, 10, deep);
    const CombWords words{60, 18, 70};
    const auto low = layOut(places, {1000, 130}, words), high = layOut(places, {1000, 300}, words);
    EXPECT_EQ(rowsIn(places, {1000, 130}, words).size(), 1U);
    const auto rows = rowsIn(places, {1000, 300}, words);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].combs.size(), 5U);
    EXPECT_GT(high[0].drawn.height(), 1.8 * low[0].drawn.height());
    EXPECT_LE(high.back().words.bottom(), 300);
    EXPECT_GT(high[5].drawn.top(), high[0].drawn.bottom()) << "drawn as the rows say";
    EXPECT_EQ(combBeside(rows, 2, 1), 7) << "and gone through by keys as they are drawn";
}

TEST(CombLayout, WordsBelowTheCombsHaveRoomBesideEachOther) {
    const auto places = box(0, 10, deep);
    const CombWords words{45, 32, 58};
    const double height = heightFor(places, 450, words);
    EXPECT_GT(rowsIn(places, {450, height}, words).size(), 1U);
    for (const auto& slot : layOut(places, {450, height}, words)) EXPECT_GE(slot.words.width(), words.widest);
    EXPECT_EQ(rowsIn(places, {1600, heightFor(places, 1600, words)}, words).size(), 1U)
        << "where there is room the row stays whole";
}

TEST(CombLayout, ALongRowIsBrokenRatherThanItsCombsBeSmall) {
    const CombWords words{47, 20, 100};
    auto two = box(0, 10, deep);
    for (const auto& each : box(1, 10, deep)) two.push_back(each);
    for (const double width : {930.0, 1100.0, 1400.0})
        for (const auto& slot : layOut(two, {width, heightFor(two, width, words)}, words)) {
            EXPECT_GE(slot.drawn.width(), 90) << width;
            EXPECT_GE(slot.drawn.height(), 60) << width;
        }
}

TEST(CombLayout, BesideInAShorterRowIsItsLast) {
    auto places = box(0, 10, deep);
    for (const auto& each : box(1, 4, deep)) places.push_back(each);
    const auto rows = rowsOf(places);
    EXPECT_EQ(combBeside(rows, 2, -1), 12);
    EXPECT_EQ(combBeside(rows, 8, -1), 13);
    EXPECT_EQ(combBeside(rows, 12, -1), 12) << "nothing is above";
    EXPECT_EQ(combBeside(rows, 12, 1), 2);
}

} // namespace winterlarder::desk
