// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/day_window.h"

#include "app/invented.h"
#include "plots/month_ticks.h"

#include <gtest/gtest.h>
#include <qcustomplot.h>

namespace winterlarder::desk {

namespace {

constexpr DayWindow whole{40, 300};

const WinterPicture& picture() {
    static const auto colony = invented::demoAnswers().at(0);
    return colony->picture;
}

} // namespace

TEST(DayWindow, FewerDaysKeepTheDayUnderThePointer) {
    const auto seen = stretched(whole, whole, 0.5, 105);
    EXPECT_DOUBLE_EQ(seen.days(), 130);
    EXPECT_DOUBLE_EQ((105 - seen.first) / seen.days(), (105 - whole.first) / whole.days());
}

TEST(DayWindow, NeverLeavesTheWinterNorShrinksToNothing) {
    EXPECT_EQ(stretched({280, 300}, whole, 2, 295), (DayWindow{260, 300}));
    EXPECT_EQ(stretched({100, 120}, whole, 1000, 110), whole);
    EXPECT_DOUBLE_EQ(stretched({100, 120}, whole, 0.001, 110).days(), leastDaysSeen);
    EXPECT_EQ(fitted({0, 60}, whole), (DayWindow{40, 100}));
    EXPECT_EQ(fitted({290, 320}, whole), (DayWindow{270, 300}));
    const DayWindow shorter{1, 8};
    EXPECT_EQ(fitted({3, 4}, shorter), shorter);
}

TEST(DayWindow, MovesOnlyAsFarAsADayNeeds) {
    EXPECT_EQ(reaching({100, 130}, whole, 120), (DayWindow{100, 130}));
    EXPECT_EQ(reaching({100, 130}, whole, 133), (DayWindow{103, 133}));
    EXPECT_EQ(reaching({100, 130}, whole, 90), (DayWindow{90, 120}));
}

TEST(DayWindow, TheScaleFollowsWhatIsSeen) {
    const auto all = wholeWinter(picture());
    EXPECT_LT(all.first, picture().first.w);
    EXPECT_DOUBLE_EQ(all.last, picture().last.w);
    const std::set options{advice::OptionKind::Leave};
    const double highest = highestSeen(picture(), options, all);
    EXPECT_GE(highest, picture().storesToday.high.value());
    const double inSpring = highestSeen(picture(), options, {all.last - 60, all.last});
    EXPECT_LT(inSpring, 0.85 * highest);
    const auto& lines = picture().options.front().lines;
    ASSERT_FALSE(lines.empty());
    const auto day = static_cast<std::size_t>(all.last - 60 - picture().first.w + 10);
    for (const auto& line : lines)
        if (day < line.kilograms.size()) EXPECT_LE(line.kilograms[day], inSpring);
    for (const double kg : picture().options.front().dots) EXPECT_LE(kg, inSpring); // the dots share the scale
}

TEST(DayWindow, TicksAreAsCloseAsThereIsRoom) {
    const auto& winter = picture().winter;
    constexpr int newYear = 0; // season day 0 is 1 January in the north
    const auto ticksOf = [&](int first, int last, int most) { return dayTicks(winter, first, last, most)->ticks(); };
    EXPECT_EQ(ticksOf(newYear - 100, newYear + 60, 10).size(),
              monthTicks(winter, newYear - 100, newYear + 60)->ticks().size());
    const auto weeks = ticksOf(newYear - 31, newYear + 30, 10);
    EXPECT_EQ(weeks.size(), 8);
    EXPECT_EQ(weeks.value(newYear - 24), QStringLiteral("8 Dec"));
    EXPECT_EQ(weeks.value(newYear), QStringLiteral("1 Jan %1").arg(winter.autumn() + 1));
    EXPECT_EQ(ticksOf(newYear - 31, newYear + 30, 5).size(), 4);
    EXPECT_EQ(ticksOf(newYear, newYear + 20, 15).size(), 11);
    for (const int most : {2, 4, 8, 16}) EXPECT_LE(ticksOf(newYear, newYear + 14, most).size(), most + 1);
}

} // namespace winterlarder::desk
