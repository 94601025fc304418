// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "pages/yard_view.h"

namespace winterlarder::desk {

using invented::colony;
using invented::WindowDesk;

TEST_F(WindowDesk, ThreeHundredColoniesAreAnsweredWhileTheWindowGoesOn) {
    answerSlowly();
    std::vector<book::ColonyCase> many;
    for (int i = 0; i < 300; ++i) many.push_back(colony(("Colony " + std::to_string(i)).c_str()));
    { const auto made = invented::bookOf(file(), many); }
    window.yard()->showDay(invented::day("2026-09-14"));
    window.books()->open(file());
    qint64 longest = 0;
    QElapsedTimer since;
    since.start();
    while (!(window.book()->isOpen() && window.settled()) && since.elapsed() < 60000) {
        QElapsedTimer one;
        one.start();
        QCoreApplication::processEvents();
        longest = std::max(longest, one.elapsed());
        QTest::qSleep(1);
    }
    ASSERT_EQ(window.yard()->colonies().size(), 300U);
    EXPECT_TRUE(window.settled());
    RecordProperty("longest_block_ms", static_cast<int>(longest));
    for (const auto& each : window.yard()->colonies()) EXPECT_FALSE(each.pending);
}

} // namespace winterlarder::desk
