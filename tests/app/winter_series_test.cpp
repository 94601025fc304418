// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/bends.h"
#include "series/winter_series.h"

#include "app/invented.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>

namespace winterlarder::desk {

TEST(PairWithStores, DealsTheStoresSpreadOutEvenly) {
    const auto pairs = pairWithStores(2500, kilograms(20), kilograms(2));
    ASSERT_EQ(pairs.size(), 2500U);
    double sum = 0, squares = 0;
    int below = 0;
    for (const auto& pair : pairs) {
        sum += pair.startKg;
        squares += (pair.startKg - 20) * (pair.startKg - 20);
        if (pair.startKg < 20 - 1.2816 * 2) ++below;
    }
    // A sequence of discrepancy under log(n)/n fills each share to a few in 2500.
    EXPECT_NEAR(sum / 2500, 20, 0.01);
    EXPECT_NEAR(std::sqrt(squares / 2500), 2, 0.02);
    EXPECT_NEAR(below, 250, 5);
}

TEST(PairWithStores, StoresAreNeverNegative) {
    for (const auto& pair : pairWithStores(500, kilograms(1), kilograms(2))) EXPECT_GE(pair.startKg, 0);
}

TEST(StandFor, EachPickStandsForAnEqualShare) {
    std::vector<PairedWinter> pairs;
    std::vector<double> losses;
    for (int i = 0; i < 100; ++i) {
        pairs.push_back({i, 10});
        losses.push_back((i * 37) % 100 / 10.0); // every value from 0 to 9.9 once, in disorder
    }
    const auto picked = standFor(pairs, losses, 20);
    ASSERT_EQ(picked.size(), 20U);
    for (std::size_t group = 0; group < picked.size(); ++group) {
        const double left = 10 - losses[static_cast<std::size_t>(picked[group].winter)];
        // What is left runs over 0.1, 0.2 .. 10.0; the middle of group g of five is the third of them.
        EXPECT_NEAR(left, 0.1 * (5 * static_cast<double>(group) + 3), 1e-9);
    }
}

TEST(StandFor, FewWintersAreAllShown) { EXPECT_EQ(standFor({{0, 5}, {1, 5}}, {1, 2}, 20).size(), 2U); }

TEST(StackDots, NoTwoRowsAreCloserThanADot) {
    const std::vector<double> values{1, 1.1, 1.2, 2.5, 2.6, 7};
    const auto dots = stackDots(values, 0.5);
    ASSERT_EQ(dots.size(), values.size());
    EXPECT_NEAR(dots[0].height, 1.1, 1e-12);
    EXPECT_EQ(dots[2].column, 2);
    EXPECT_NEAR(dots[3].height, 2.55, 1e-12);
    EXPECT_EQ(dots[5].column, 0);
}

TEST(SplitUse, TheThreePartsMakeTheWhole) {
    winter::DayMeans day;
    day.adultPowerW = 6;
    day.broodPowerW = 2;
    day.useG = 60;
    day.broodFoodG = 20;
    const auto use = splitUse(day);
    EXPECT_DOUBLE_EQ(use.adults, 30);
    EXPECT_DOUBLE_EQ(use.broodWarmth, 10);
    EXPECT_DOUBLE_EQ(use.broodFood, 20);
}

TEST(WinterPicture, NoWorkingsNoPicture) {
    EXPECT_TRUE(pictureOf(invented::question(invented::colony("A")), {invented::advice(invented::colony("A"), {}), {}})
                    .empty());
}

namespace {

const OptionPicture* option(const WinterPicture& picture, advice::OptionKind kind) {
    for (const auto& each : picture.options)
        if (each.kind == kind) return &each;
    return nullptr;
}

} // namespace

class DemoPictures : public testing::TestWithParam<int> {
protected:
    const AnsweredColony& colony() const { return *invented::demoAnswers().at(static_cast<std::size_t>(GetParam())); }
};

TEST_P(DemoPictures, DashedWintersAgreeWithTheShareSaid) {
    const auto* leave = option(colony().picture, advice::OptionKind::Leave);
    ASSERT_NE(leave, nullptr);
    ASSERT_EQ(leave->lines.size(), static_cast<std::size_t>(drawnWinters));
    const auto touching =
        std::count_if(leave->lines.begin(), leave->lines.end(), [](const auto& line) { return line.touchesReserve; });
    const auto empty =
        std::count_if(leave->lines.begin(), leave->lines.end(), [](const auto& line) { return line.runsOut; });
    // Twenty winters can say a share to half of one in twenty, and the pairing to about one point.
    const auto& said = colony().answer.advice.options.front(); // as the option is told: with the doubt of the look
    ASSERT_EQ(said.kind, advice::OptionKind::Leave);
    EXPECT_NEAR(static_cast<double>(touching) / drawnWinters, said.touchReserve.share, 0.025 + 0.015);
    EXPECT_NEAR(static_cast<double>(empty) / drawnWinters, said.runOut.share, 0.025 + 0.015);
}

TEST_P(DemoPictures, FiftyDotsAgreeWithTheSpreadSaid) {
    const auto* leave = option(colony().picture, advice::OptionKind::Leave);
    ASSERT_NE(leave, nullptr);
    ASSERT_EQ(leave->dots.size(), static_cast<std::size_t>(drawnDots));
    EXPECT_TRUE(std::is_sorted(leave->dots.begin(), leave->dots.end()));
    for (const auto& said : colony().answer.advice.options) {
        if (said.kind != advice::OptionKind::Leave) continue;
        // The fifth dot stands for shares 8 to 10 in a hundred, the fifty-first half for the median; winters number 1000.
        EXPECT_NEAR((leave->dots[24] + leave->dots[25]) / 2, said.springReserve.typical.value(), 0.35);
        EXPECT_NEAR((leave->dots[4] + leave->dots[5]) / 2, said.springReserve.low.value(), 0.5);
        EXPECT_NEAR((leave->dots[44] + leave->dots[45]) / 2, said.springReserve.high.value(), 0.5);
    }
}

TEST_P(DemoPictures, OptionsLieOverTheSameWinters) {
    const auto& picture = colony().picture;
    const auto* leave = option(picture, advice::OptionKind::Leave);
    for (const auto& each : picture.options) {
        ASSERT_EQ(each.lines.size(), leave->lines.size());
        for (std::size_t i = 0; i < each.lines.size(); ++i) EXPECT_EQ(each.lines[i].winter, leave->lines[i].winter);
        EXPECT_EQ(each.readings.size(), picture.daily.size());
    }
}

TEST_P(DemoPictures, StoresNeverFallBelowTheFloorAndDaysAreInOrder) {
    const auto& picture = colony().picture;
    for (const auto& each : picture.options)
        for (const auto& line : each.lines)
            for (const double kg : line.kilograms) ASSERT_GE(kg, 0);
    for (std::size_t i = 1; i < picture.marks.size(); ++i) EXPECT_LE(picture.marks[i - 1].day, picture.marks[i].day);
    for (const auto& use : picture.daily) ASSERT_GE(use.adults, 0);
    EXPECT_FALSE(picture.evidence.empty());
}

TEST_P(DemoPictures, AStarvedColonyGathersNoMore) {
    for (const auto& each : colony().picture.options) {
        int starved = 0;
        for (const auto& line : each.lines) {
            const auto nothing = std::find(line.kilograms.begin(), line.kilograms.end(), 0.0);
            if (nothing == line.kilograms.end()) continue;
            ++starved;
            EXPECT_EQ(nothing + 1, line.kilograms.end()) << "the line ends where the stores do";
        }
        const bool allGone = std::any_of(each.readings.begin(), each.readings.end(),
                                         [](const auto& reading) { return reading.high == 0; });
        if (allGone) EXPECT_EQ(each.readings.back().high, 0) << "what ended in nine of ten winters does not come back";
        EXPECT_LE(std::count_if(each.lines.begin(), each.lines.end(), [](const auto& line) { return line.runsOut; }),
                  starved);
    }
}

INSTANTIATE_TEST_SUITE_P(Yard, DemoPictures, testing::Range(0, 6));

TEST(DemoYard, EveryVerdictOfAWorkingYardOccurs) {
    std::set<advice::Verdict> verdicts;
    for (const auto& colony : invented::demoAnswers()) verdicts.insert(colony->answer.advice.verdict);
    EXPECT_EQ(verdicts, (std::set{advice::Verdict::Harvest, advice::Verdict::Leave, advice::Verdict::Feed,
                                  advice::Verdict::Unite}));
}

TEST(DemoYard, WhereTheBeesWereNotCountedItCannotBeSaid) {
    auto record = invented::demoYard().front();
    record.bees = {};
    const CoreAdviser adviser(invented::shipped(), {1, 200}, 1);
    const auto answer = adviser.answer(record, 0, {}).value();
    EXPECT_EQ(answer->answer.advice.verdict, advice::Verdict::CannotSay);
    EXPECT_TRUE(answer->picture.empty());
}

// ---- fewer places of a line ----------------------------------------------------------------------------------------------

RC_GTEST_PROP(Bends, NoValueIsOffByMoreThanTheTolerance, ()) {
    const auto steps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-20, 20));
    const double tolerance = *rc::gen::inRange(0, 30) / 10.0;
    std::vector<double> values{5};
    for (const int step : steps) values.push_back(values.back() + step / 10.0);
    const auto bends = bendsOf(values, tolerance);
    RC_ASSERT(bends.front() == 0U);
    RC_ASSERT(bends.back() == values.size() - 1);
    for (std::size_t bend = 1; bend < bends.size(); ++bend) {
        const auto from = bends[bend - 1], to = bends[bend];
        RC_ASSERT(from < to);
        for (auto at = from; at <= to; ++at) {
            const double straight =
                std::lerp(values[from], values[to], static_cast<double>(at - from) / static_cast<double>(to - from));
            RC_ASSERT(std::abs(straight - values[at]) <= tolerance + 1e-9);
        }
    }
}

TEST(Bends, AStraightLineHasOnlyItsEndsAndAStepItsEdges) {
    EXPECT_TRUE(bendsOf({}, 1).empty());
    EXPECT_EQ(bendsOf({3}, 1), (std::vector<std::size_t>{0}));
    EXPECT_EQ(bendsOf({9, 8, 7, 6, 5}, 0.01), (std::vector<std::size_t>{0, 4}));
    EXPECT_EQ(bendsOf({5, 5, 5, 9, 9, 9}, 0.01), (std::vector<std::size_t>{0, 2, 3, 5}));
}

} // namespace winterlarder::desk
