// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/what_if.h"

#include "app/book_desk.h"
#include "desk/what_if_runner.h"
#include "series/scale_series.h"

#include <QElapsedTimer>
#include <QSignalSpy>

namespace winterlarder::desk {

namespace {

AnsweredPointer answeredDemo() {
    for (const auto& answer : invented::demoAnswers())
        if (answer->answer.workings.ensemble) return answer;
    return nullptr;
}

} // namespace

TEST(WhatIf, NothingTriedIsTheAnswerItself) {
    const auto base = answeredDemo();
    const auto trials = Trials::of(base, invented::shipped()->constants);
    ASSERT_TRUE(trials);
    const auto trial = trials->tryOut({});
    const auto& leave = base->answer.advice.options.front();
    ASSERT_EQ(leave.kind, advice::OptionKind::Leave);
    EXPECT_DOUBLE_EQ(trial.option.runOut.share, leave.runOut.share);
    EXPECT_DOUBLE_EQ(trial.option.touchReserve.share, leave.touchReserve.share);
    EXPECT_EQ(trial.picture->options.size(), 1U);
}

TEST(WhatIf, TakingMoreNeverHelpsAndFeedingMoreNeverHarms) {
    const auto trials = Trials::of(answeredDemo(), invented::shipped()->constants);
    ASSERT_TRUE(trials);
    double before = -1, left = 1e9;
    for (const double kg : {0.0, 2.0, 5.0, 9.0, 15.0}) {
        const auto trial = trials->tryOut({.take = kilograms(kg)});
        EXPECT_GE(trial.option.touchReserve.share, before);
        EXPECT_LE(trial.option.springReserve.typical.value(), left);
        before = trial.option.touchReserve.share;
        left = trial.option.springReserve.typical.value();
    }
    before = 2;
    for (const double kg : {0.0, 1.0, 3.0, 6.0}) {
        const auto trial = trials->tryOut({.sugar = kilograms(kg)});
        EXPECT_LE(trial.option.runOut.share, before + 1e-12);
        before = trial.option.runOut.share;
    }
}

TEST(WhatIf, ThePictureIsOfWhatIsTried) {
    const auto trials = Trials::of(answeredDemo(), invented::shipped()->constants);
    const auto trial = trials->tryOut({.take = kilograms(4)});
    ASSERT_EQ(trial.picture->options.size(), 2U);
    const auto& alone = trial.picture->options[0].lines[10].kilograms;
    const auto& taken = trial.picture->options[1].lines[10].kilograms;
    EXPECT_NEAR(alone.front() - taken.front(), 4, 1e-9) << "four kilograms less from the first day";
}

TEST(WhatIf, AnotherDemandIsAnotherCase) {
    const auto base = answeredDemo();
    const auto changed =
        caseWith(base->record, base->question, {.wrapped = true, .beesPercent = -10, .forageDaysLater = 7});
    EXPECT_EQ(changed.hive.shell, book::Shell::Wrapped);
    EXPECT_DOUBLE_EQ(changed.bees.coveredCombs.value_or(0), 0.9 * base->record.bees.coveredCombs.value_or(0));
    EXPECT_EQ(changed.season.forage, base->question.winter.date(base->question.season.forage->day + 7));
}

TEST(WhatIf, BecomesAdviceWithItsVisits) {
    const auto base = answeredDemo();
    const auto trials = Trials::of(base, invented::shipped()->constants);
    const WhatIf wish{.sugar = kilograms(3)};
    const auto advice = adviceOf(trials->tryOut(wish), *base, wish);
    EXPECT_EQ(advice.verdict, advice::Verdict::Feed);
    ASSERT_TRUE(advice.feed);
    EXPECT_FALSE(advice.feed->visits.empty());
}

TEST(WhatIfRunner, APreviewComesFirstAndOnlyTheNewestIsAnswered) {
    const auto adviser = std::make_shared<invented::SlowAdviser>(std::chrono::milliseconds(30));
    WhatIfRunner runner(adviser);
    std::vector<double> previewed, answered;
    QObject::connect(&runner, &WhatIfRunner::previewed, [&](const AnsweredPointer& answer) {
        previewed.push_back(answer->record.bees.coveredCombs.value_or(0));
    });
    QObject::connect(&runner, &WhatIfRunner::answered, [&](const AnsweredPointer& answer) {
        answered.push_back(answer->record.bees.coveredCombs.value_or(0));
    });
    for (const double covered : {4.0, 5.0, 6.0}) {
        runner.ask(0, invented::colony("A", covered));
        QTest::qWait(10);
    }
    ASSERT_TRUE(invented::waitFor([&] { return runner.idle(); }));
    EXPECT_EQ(previewed, std::vector<double>{6});
    EXPECT_EQ(answered, std::vector<double>{6});
}

TEST(WhatIfRunner, CancelledBringsNothing) {
    const auto adviser = std::make_shared<invented::SlowAdviser>(std::chrono::milliseconds(40));
    WhatIfRunner runner(adviser);
    QSignalSpy cancelled(&runner, &WhatIfRunner::cancelled);
    std::vector<double> told;
    const auto note = [&](const AnsweredPointer& answer) {
        told.push_back(answer->record.bees.coveredCombs.value_or(0));
    };
    QObject::connect(&runner, &WhatIfRunner::previewed, note);
    QObject::connect(&runner, &WhatIfRunner::answered, note);
    runner.ask(0, invented::colony("A", 4));
    ASSERT_TRUE(invented::waitFor([&] { return adviser->asked > 0; }));
    runner.cancel();
    EXPECT_TRUE(runner.idle());
    EXPECT_EQ(cancelled.count(), 1);
    // What is asked after it comes after it: preview and answer are all that is told.
    runner.ask(0, invented::colony("A", 5));
    ASSERT_TRUE(invented::waitFor([&] { return runner.idle(); }));
    EXPECT_EQ(told, (std::vector<double>{5, 5}));
    EXPECT_GT(adviser->stopped, 0);
}

TEST(ScaleSeries, HoldsWhatWasMeasured) {
    const auto base = answeredDemo();
    const auto series = scaleSeries(base->picture);
    ASSERT_EQ(series.measured.size(), base->picture.evidence.size());
    for (std::size_t i = 0; i < series.measured.size(); ++i) {
        EXPECT_EQ(series.measured[i].day, base->picture.evidence[i].day);
        EXPECT_LE(series.first, series.measured[i].day.w) << "nothing measured lies left of the picture";
        EXPECT_GE(series.mostKg, series.measured[i].stores.high.value()) << "nor above it";
    }
}

TEST(ScaleSeries, ExpectsOnEveryDayAskedForAndTheFirst) {
    const auto base = answeredDemo();
    for (const int ahead : {0, 1, 20, 75}) {
        const auto series = scaleSeries(base->picture, ahead);
        ASSERT_FALSE(series.expected.empty());
        for (std::size_t i = 0; i < series.expected.size(); ++i)
            EXPECT_EQ(series.expected[i].day, base->picture.first.w + static_cast<double>(i));
        EXPECT_EQ(series.expected.back().day, base->picture.first.w + ahead);
    }
    EXPECT_EQ(scaleSeries(base->picture, 1000).expected.back().day, base->picture.last.w) << "there is no more";
}

// At the end of the day asked about: the stores believed in, less what a colony eats in a day in autumn, well under 0.3 kg.
TEST(ScaleSeries, BeginsWithTheStoresBelievedIn) {
    const auto base = answeredDemo();
    const auto& advice = base->answer.advice;
    const auto begin = scaleSeries(base->picture).expected.front();
    const double reach = 1.2816 * advice.storesSd.value(), middle = advice.estimate->mean.value();
    EXPECT_NEAR(begin.low, middle - reach, 0.3);
    EXPECT_NEAR(begin.high, middle + reach, 0.3);
    for (const auto& day : scaleSeries(base->picture).expected) EXPECT_LE(day.low, day.high);
}

} // namespace winterlarder::desk
