// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/hanging.h"

#include <gtest/gtest.h>

#include <iostream>

namespace winterlarder::desk {

namespace {

// Plays keys and counts them: a letter or digit is one, so is an arrow or the space bar; Shift counts as one more.
class Keyboard {
public:
    explicit Keyboard(QWidget* widget) : widget_(widget) {}
    Keyboard& type(const char* keys) {
        for (const QChar key : QString::fromLatin1(keys)) {
            if (key == QLatin1Char('>')) QTest::keyClick(widget_, Qt::Key_Right);
            else if (key.isUpper()) {
                QTest::keyClick(widget_, key.toLatin1(), Qt::ShiftModifier);
                ++strokes;
            } else {
                QTest::keyClick(widget_, key.toLatin1());
            }
            ++strokes;
        }
        return *this;
    }
    int strokes = 0;

private:
    QWidget* widget_;
};

struct Seen20 {
    double capped, open, brood, pollen;
};

// An invented look in the second week of September: brood nest below, honey above, no two neighbours of the nest alike.
constexpr Seen20 visited[] = {
    {0.9, 0, 0, 0},     {0.7, 0.2, 0, 0},     {0.4, 0.1, 0.2, 0.2}, {0.2, 0.1, 0.5, 0.1}, {0.2, 0, 0.6, 0.1},
    {0.2, 0, 0.6, 0.1}, {0.2, 0.1, 0.5, 0.1}, {0.4, 0.1, 0.3, 0.1}, {0.7, 0.1, 0, 0.1},   {0.9, 0, 0, 0},
    {0.8, 0.2, 0, 0},   {0.8, 0.2, 0, 0},     {0.9, 0.1, 0, 0},     {1, 0, 0, 0},         {1, 0, 0, 0},
    {1, 0, 0, 0},       {0.95, 0.05, 0, 0},   {0.9, 0.1, 0, 0},     {0.9, 0.1, 0, 0},     {0.6, 0.2, 0, 0},
};

} // namespace

TEST(Visit, TwentyCombsTakeAtMostOneHundredAndTwentyKeystrokes) {
    hanging::Desk desk(std::vector<book::CombRecord>(20, hanging::unseen()), {hanging::frame(), hanging::frame()});
    Keyboard keys(&desk.drawing);
    keys.type("c9>").type("7o2>");
    keys.type("1c4b2p2>")
        .type("1c2b5o1>")
        .type("c2b6p1>")
        .type(" ")
        .type("1c2b5o1>")
        .type("1c4b3p1>")
        .type("1c7o1>")
        .type("c9>");
    keys.type("8o2> ").type("1c9>").type("C>").type("  ").type("95o05>").type("1c9> ").type("6o2");
    for (std::size_t i = 0; i < 20; ++i) {
        SCOPED_TRACE(i);
        EXPECT_NEAR(shareOf(desk.record(i), Zone::Capped), visited[i].capped, 1e-9);
        EXPECT_NEAR(shareOf(desk.record(i), Zone::Open), visited[i].open, 1e-9);
        EXPECT_NEAR(shareOf(desk.record(i), Zone::Brood), visited[i].brood, 1e-9);
        EXPECT_NEAR(shareOf(desk.record(i), Zone::BeeBread), visited[i].pollen, 1e-9);
        EXPECT_EQ(desk.record(i).facesSeen, 2);
    }
    std::cout << "a look of twenty combs: " << keys.strokes << " keystrokes\n";
    RecordProperty("keystrokes", keys.strokes);
    EXPECT_LE(keys.strokes, 120);
}

// No cleverness: every zone of every comb typed with its letter, a nest on each.
TEST(Visit, EvenTheLongWayRoundOneBoxOfTenStaysWithinAHundredAndTwenty) {
    hanging::Desk desk(std::vector<book::CombRecord>(10, hanging::unseen()), {hanging::frame()});
    Keyboard keys(&desk.drawing);
    for (int comb = 0; comb < 10; ++comb) keys.type("c2o1b4p1>");
    for (const auto& record : desk.records) EXPECT_NEAR(emptyShare(record), 0.2, 1e-9);
    EXPECT_LE(keys.strokes, 120);
}

} // namespace winterlarder::desk
