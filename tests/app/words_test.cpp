// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"

#include "app/book_desk.h"
#include "desk/arguments.h"
#include "text/words.h"
#include "work/work_in_order.h"

#include <gtest/gtest.h>

namespace winterlarder::desk {

using advice::Verdict;

namespace {

std::string sentence(Verdict verdict) {
    return words::answerSentence(*invented::answered(invented::colony("A"), {verdict, 20, 18})).toStdString();
}

} // namespace

TEST(Words, AnswersAreWholeSentences) {
    EXPECT_EQ(sentence(Verdict::Leave), "Leave it as it is. Weigh it on 28 September 2026.");
    EXPECT_EQ(sentence(Verdict::Harvest), "Take one comb with 3 kg of honey.");
    EXPECT_EQ(sentence(Verdict::Feed), "Feed 6 kg of sugar as syrup 2:1, the first of 2 visits today.");
    EXPECT_EQ(
        sentence(Verdict::Unite),
        "Too few bees to winter alone: unite it with a healthy colony soon, on a warm evening, at the latest on 7 October 2026.");
    EXPECT_EQ(sentence(Verdict::CannotSay), "To answer, first: how many combs do the bees cover?");
}

TEST(Words, AreOfTheInterfaceThreadAlone) {
    WorkInOrder work;
    Problems problems;
    work.ask(
        &work, [] { return words::style().numbers.decimalPoint; },
        [&](const Outcome<char>& made) { problems = made.problems(); });
    ASSERT_TRUE(invented::waitFor([&] { return work.idle(); }));
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].kind, ProblemKind::Internal) << "it would be read while the keeper chooses other units";
    work.ask(
        &work, [style = words::style()] { return style.numbers.decimalPoint; },
        [&](const Outcome<char>& made) { problems = made.ok() ? Problems{} : made.problems(); });
    ASSERT_TRUE(invented::waitFor([&] { return work.idle(); }));
    EXPECT_TRUE(problems.empty()) << "a copy is anybody's";
}

TEST(Words, ChancesAreCountsOutOfAHundredWinters) {
    EXPECT_EQ(words::ofHundred({0.17, 0}).toStdString(), "17");
    EXPECT_EQ(words::ofHundred({0.003, 0}).toStdString(), "fewer than 1");
    EXPECT_EQ(words::ofHundred({0, 0}).toStdString(), "0");
    EXPECT_EQ(
        words::riskLine(*invented::answered(invented::colony("A"))).toStdString(),
        "Left as it is, in 83 of 100 simulated winters 4 kg or more are left when spring forage starts; in 4 of 100 the food runs out.");
}

TEST(Words, WhatHappensAsAdvisedIsSaidInFull) {
    auto fed = *invented::answered(invented::colony("A"), {Verdict::Feed, 20, 30});
    advice::Option option;
    option.kind = advice::OptionKind::Feed;
    option.touchReserve = {0.15, 0};
    option.runOut = {0.03, 0};
    fed.answer.advice.options.push_back(option);
    EXPECT_NE(words::riskLine(fed).indexOf(
                  QStringLiteral("Fed as advised, so much is left in 85 of 100, and the food runs out in 3 of 100.")),
              -1)
        << words::riskLine(fed).toStdString();
    fed.answer.advice.decidedBy = advice::DecidedBy::ActNow;
    EXPECT_NE(words::riskLine(fed).indexOf(QStringLiteral("With this feed and no other, so much is left in 85 of 100")),
              -1);
    fed.answer.advice.decidedBy = advice::DecidedBy::Contradiction;
    EXPECT_TRUE(words::riskLine(fed).isEmpty()) << "no number comes of two that contradict each other";
}

TEST(Words, AHarvestThatHangsOnALookBeginsWithIt) {
    auto taken = *invented::answered(invented::colony("A"), {Verdict::Harvest, 20, 10});
    auto& a = taken.answer.advice;
    a.anotherLook = {true, advice::LookKind::Weigh, advice::LookAbout::Stores, 9, 5};
    EXPECT_TRUE(words::answerSentence(taken).startsWith(QStringLiteral("Take one comb")));
    a.lookFirst = true;
    EXPECT_EQ(words::answerSentence(taken).toStdString(),
              "Weigh both sides first. If that bears out about 20 kg of stores, take one comb with 3 kg of honey.");
    EXPECT_EQ(words::verdict(a, words::style()).toStdString(), "look again, then take 3 kg");
    EXPECT_EQ(words::lookLine(taken).indexOf(QStringLiteral("Look again first")), -1)
        << words::lookLine(taken).toStdString();
}

TEST(Words, AWholeSuperIsCalledSo) {
    auto taken = *invented::answered(invented::colony("A"), {Verdict::Harvest, 20, 10});
    taken.answer.advice.harvest = advice::HarvestAdvice{kilograms(15), {10, 11, 12}, kilograms(15), 1, kilograms(15)};
    EXPECT_EQ(words::answerSentence(taken).toStdString(), "Take the super off: 15 kg of honey in 3 combs.");
}

TEST(Words, AGiverOfCombsIsNotLeft) {
    auto giver = *invented::answered(invented::colony("A"), {Verdict::Leave, 30, 18});
    EXPECT_EQ(words::verdict(giver.answer.advice, words::style()).toStdString(), "leave");
    advice::CombGift gift;
    gift.from = "A", gift.to = "B";
    giver.answer.advice.plan = advice::PartInYard{};
    EXPECT_EQ(words::verdict(giver.answer.advice, words::style()).toStdString(), "leave")
        << "the yard's plan does nothing with it";
    giver.answer.advice.plan->given.push_back(gift);
    EXPECT_EQ(words::verdict(giver.answer.advice, words::style()).toStdString(), "give combs");
}

TEST(Words, AFollowedColonyThatIsFedTodayIsNotJustOnCourse) {
    tracking::Following f;
    f.state = tracking::FollowState::OnCourse;
    f.fallsShort = true;
    EXPECT_EQ(words::followedInShort(f, {40}).toStdString(), "feed later");
    f.fallsShort = false;
    EXPECT_EQ(words::followedInShort(f, {40}).toStdString(), "on course");
    tracking::WinterFeed feed;
    feed.fondant = kilograms(2.5);
    feed.lots.push_back({{40}, invented::day("2027-02-10"), kilograms(2.5)});
    f.feed = feed;
    EXPECT_EQ(words::followedInShort(f, {40}).toStdString(), "feed 2.5 kg fondant");
    EXPECT_EQ(words::likeness(f, {40}), Verdict::Feed);
    EXPECT_EQ(words::followedInShort(f, {39}).toStdString(), "on course") << "it is not due yet";
    EXPECT_EQ(words::likeness(f, {39}), Verdict::Leave);
}

TEST(Words, TheDayOfUnitingSaysWhatForIt) {
    const auto today = invented::day("2026-09-14");
    EXPECT_EQ(words::due({DueKind::Unite, invented::day("2026-10-20")}, today, words::style()).toStdString(),
              "unite by 20 Oct");
    EXPECT_EQ(words::due({DueKind::TakeHoney, invented::day("2026-09-25")}, today, words::style()).toStdString(),
              "take honey by 25 Sept");
}

TEST(Words, NumbersHaveUnitAndSpread) {
    EXPECT_EQ(words::spread({kilograms(24), kilograms(29), kilograms(34)}).toStdString(), "29 kg (24\u201334)");
    EXPECT_EQ(words::bees({{12000}, {15020}, {18500}}).toStdString(), "15,000 (12,000 to 18,500)");
    EXPECT_EQ(words::date(invented::day("2027-05-19")).toStdString(), "19 May");
}

TEST(Words, AnotherLookPromisesOnlyWhatIsKnownOfIt) {
    const auto said = [](double from, double to) {
        advice::Advice advice;
        advice.anotherLook = {true, advice::LookKind::Weigh, advice::LookAbout::Stores, from, to};
        return text::lookSentence(advice, words::style()).toStdString();
    };
    EXPECT_NE(said(9, 6).find("known to within 9 kg now would be known to within 6 kg"), std::string::npos)
        << said(9, 6);
    EXPECT_EQ(said(5.5, 0).find("0 kg"), std::string::npos) << said(5.5, 0);
}

TEST(Words, DueTodayIsSaidSo) {
    const auto today = invented::day("2026-09-14");
    EXPECT_EQ(words::due({DueKind::Syrup, today}, today, words::style()).toStdString(), "syrup today");
    EXPECT_EQ(words::due({DueKind::Syrup, today.plusDays(3)}, today, words::style()).toStdString(),
              "next syrup 17 Sept");
    EXPECT_EQ(words::due({DueKind::Syrup, today.plusDays(-2)}, today, words::style()).toStdString(),
              "syrup was due 12 Sept");
    EXPECT_EQ(words::due({DueKind::MoveCombs, today}, today, words::style()).toStdString(), "combs to it today");
}

TEST(Arguments, FilesFoldersAndFaults) {
    const auto read = [](std::initializer_list<const char*> given) {
        QStringList list{QStringLiteral("winterlarder")};
        for (const char* word : given) list << QString::fromLatin1(word);
        return readArguments(list);
    };
    EXPECT_EQ(read({"a.json", "b.json"}).files.size(), 2);
    EXPECT_EQ(read({"--pictures", "out"}).pictures, QStringLiteral("out"));
    EXPECT_EQ(read({"--pictures=out", "a.json"}).pictures, QStringLiteral("out"));
    EXPECT_FALSE(read({"--pictures"}).fault.isEmpty());
    EXPECT_FALSE(read({"--pictures="}).fault.isEmpty());
    EXPECT_FALSE(read({"--picture"}).fault.isEmpty());
    EXPECT_TRUE(read({"--version"}).version);
    EXPECT_EQ(read({"--", "--version"}).files, QStringList{QStringLiteral("--version")});
}

} // namespace winterlarder::desk
