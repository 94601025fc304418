// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_book.h"
#include "answer/question_of_case.h"
#include "answer/united_case.h"

#include <algorithm>

namespace winterlarder::answer::united_case_test {
namespace {

//! Pear of two deeps, and Quince of one, which is united into it on 5 October.
class UnitedCaseTest : public FollowedColonyTest {
protected:
    ColonyId quince;
    const Date came = day("2026-10-05");

    void SetUp() override {
        FollowedColonyTest::SetUp();
        auto small = colonyIn({1}, "Quince");
        small.hive.boxes.resize(1);
        quince = *edit(book, book::AddColony{small}).added<book::Colony>();
        auto seen = lookAt(quince, day("2026-09-18"));
        seen.bees.coveredCombs = 3;
        seen.combs = std::vector<book::CombRecord>{comb(0.9), comb(0.2, 0.3), comb(0.5)};
        edit(book, book::AddLook{seen});
    }
    void unite() {
        edit(book, book::AddFate{{.colony = quince, .date = came, .fate = book::FateKind::United, .into = colony}});
    }
    book::ColonyCase on(const char* date, ColonyId of) { return must(learnedCase(book, of, day(date), nullptr)); }
    book::ColonyCase on(const char* date) { return on(date, colony); }
    static const std::vector<book::CombRecord>& combsOf(const book::ColonyCase& record) {
        return std::get<std::vector<book::CombRecord>>(record.combs);
    }
    static std::vector<std::string> remarksOf(const book::ColonyCase& record) {
        std::vector<std::string> ids;
        for (const auto& remark : unitedRemarks(record)) ids.push_back(remark.id);
        return ids;
    }
    advice::Advice adviceOn(const char* date) {
        const auto question = must(questionOf(on(date), {}, shipped(), 0));
        return advice::weigh(question, shipped().constants, few)->advice;
    }
};

TEST_F(UnitedCaseTest, TheReceiverHasBothColoniesFromTheDayOn) {
    unite();
    EXPECT_TRUE(on("2026-10-04").united.empty());
    EXPECT_EQ(on("2026-10-04").bees.coveredCombs, 8.5);
    const auto both = on("2026-10-05");
    EXPECT_EQ(both.bees.coveredCombs, 11.5);
    EXPECT_EQ(both.hive.boxes.size(), 3U);
    ASSERT_EQ(combsOf(both).size(), 23U);
    EXPECT_EQ(combsOf(both)[10].capped, 0.8) << "its own stay where they were";
    EXPECT_EQ(combsOf(both)[11].built, 0) << "an empty place stays one";
    EXPECT_EQ(combsOf(both)[20].capped, 0.9) << "the first comb of the box on top";
    EXPECT_EQ(remarksOf(both), (std::vector<std::string>{"united-counted", "united-box-on-top"}));
}

TEST_F(UnitedCaseTest, AnEmptyWeightGrowsByTheBoxOnTop) {
    unite();
    const double more = on("2026-10-06").hive.tare->value() - 24;
    EXPECT_GT(more, 6);
    EXPECT_LT(more, 10);
}

TEST_F(UnitedCaseTest, TheAnswerCountsBothColonies) {
    const auto before = adviceOn("2026-10-06");
    unite();
    const auto after = adviceOn("2026-10-06");
    EXPECT_GT(after.bees->typical.count, 1.25 * before.bees->typical.count);
    EXPECT_GT(after.estimate->mean.value(), before.estimate->mean.value() + 2);
    EXPECT_GT(after.target->stores, before.target->stores);
    EXPECT_TRUE(std::any_of(after.reasons.begin(), after.reasons.end(),
                            [](const Remark& each) { return each.id == "united-counted"; }));
}

TEST_F(UnitedCaseTest, AHiveWrittenDownSinceIsTheHive) {
    unite();
    edit(book, book::AddHousing{book::Housing{.colony = colony, .date = came, .hive = twoDeeps()}});
    const auto both = on("2026-10-06");
    EXPECT_EQ(both.hive.boxes.size(), 2U);
    EXPECT_EQ(combsOf(both).size(), 14U);
    EXPECT_EQ(remarksOf(both), std::vector<std::string>{"united-counted"});
    edit(book, book::AddWeighing{weighingOf(colony, day("2026-10-08"), 48)});
    EXPECT_EQ(on("2026-10-09").weighings.size(), 1U);
}

//! Two single deeps of which nobody saw the combs, weighed in September, the one united onto the other.
class WeighedAndUnited : public FollowedColonyTest {
protected:
    ColonyId onto, from;
    const Date came = day("2026-10-05");

    ColonyId weighed(const char* name, double combs, const char* on, double gross) {
        auto kept = colonyIn({1}, name);
        kept.hive.boxes.resize(1);
        const auto id = *edit(book, book::AddColony{kept}).added<book::Colony>();
        auto seen = lookAt(id, day("2026-09-18"));
        seen.bees.coveredCombs = combs;
        seen.combs = std::monostate{};
        edit(book, book::AddLook{seen});
        edit(book, book::AddWeighing{weighingOf(id, day(on), gross)});
        return id;
    }
    void SetUp() override {
        FollowedColonyTest::SetUp();
        onto = weighed("Plum", 6, "2026-09-19", 34);
        from = weighed("Sloe", 4, "2026-09-21", 27);
    }
    void unite() {
        edit(book, book::AddFate{{.colony = from, .date = came, .fate = book::FateKind::United, .into = onto}});
    }
    FollowedColony followed(const char* date, ColonyId of) {
        return must(followedColony(book, of, day(date), nullptr, few, 2));
    }
};

TEST_F(WeighedAndUnited, AColonyThatWasOnlyWeighedIsFollowedFromItsWeight) {
    const auto plum = followed("2027-01-15", onto);
    ASSERT_TRUE(plum.question);
    EXPECT_EQ(plum.question->year.date(plum.question->decided), day("2026-09-19"));
}

TEST_F(WeighedAndUnited, BothAreFollowedFromTheSumOfTheirWeights) {
    const double plum = followed("2026-10-06", onto).question->stores.mean.value(),
                 sloe = followed("2026-10-06", from).question->stores.mean.value();
    unite();
    const auto both = followed("2027-01-15", onto);
    ASSERT_TRUE(both.question);
    EXPECT_EQ(both.question->year.date(both.question->decided), came);
    EXPECT_NEAR(both.question->stores.mean.value(), plum + sloe, 3) << "less what was eaten meanwhile";
    EXPECT_GT(both.question->stores.mean.value(), std::max(plum, sloe) + 3);
}

TEST_F(WeighedAndUnited, AWeightOfOneAloneTellsNothingOfBoth) {
    const auto other = *edit(book, book::AddColony{colonyIn({1}, "Bullace")}).added<book::Colony>();
    auto seen = lookAt(other, day("2026-09-18"));
    seen.combs = std::monostate{};
    edit(book, book::AddLook{seen});
    edit(book, book::AddFate{{.colony = other, .date = came, .fate = book::FateKind::United, .into = onto}});
    const auto both = followed("2027-01-15", onto);
    EXPECT_FALSE(both.question);
    EXPECT_TRUE(std::any_of(both.advice.reasons.begin(), both.advice.reasons.end(),
                            [](const Remark& each) { return each.id == "united-stores-unknown"; }));
    edit(book, book::AddWeighing{weighingOf(onto, day("2026-10-10"), 58)});
    EXPECT_TRUE(followed("2027-01-15", onto).question) << "the two together were weighed";
}

TEST_F(UnitedCaseTest, MoreCombsThanPlacesKeepTheFullest) {
    unite();
    auto one = twoDeeps();
    one.boxes.resize(1);
    edit(book, book::AddHousing{book::Housing{.colony = colony, .date = came, .hive = one}});
    const auto combs = combsOf(on("2026-10-06"));
    ASSERT_EQ(combs.size(), 10U);
    EXPECT_TRUE(std::none_of(combs.begin(), combs.end(), [](const auto& each) { return each.capped < 0.8; }));
    EXPECT_TRUE(questionOf(on("2026-10-06"), {}, shipped(), 0));
}

TEST_F(UnitedCaseTest, WeightsUpToTheDayWereOfItAlone) {
    edit(book, book::AddWeighing{weighingOf(colony, day("2026-10-01"), 44)});
    EXPECT_EQ(on("2026-10-06").weighings.size(), 1U);
    unite();
    EXPECT_TRUE(on("2026-10-06").weighings.empty());
    EXPECT_EQ(on("2026-10-06").weighedInOtherHive, std::vector<Date>{day("2026-10-01")});
    edit(book, book::AddWeighing{weighingOf(colony, day("2026-10-07"), 55)});
    EXPECT_EQ(on("2026-10-08").weighings.size(), 1U);
}

TEST_F(UnitedCaseTest, ALookSinceTellsAllThereIs) {
    unite();
    look("2026-10-10");
    EXPECT_TRUE(on("2026-10-11").united.empty());
    EXPECT_EQ(on("2026-10-11").bees.coveredCombs, 8.5);
}

TEST_F(UnitedCaseTest, WhatItsRecordsDoNotTellIsNotCountedAndSaid) {
    const auto bare = *edit(book, book::AddColony{colonyIn({1}, "Medlar")}).added<book::Colony>();
    edit(book, book::AddFate{{.colony = bare, .date = came, .fate = book::FateKind::United, .into = colony}});
    const auto both = on("2026-10-06");
    EXPECT_EQ(both.bees.coveredCombs, 8.5);
    EXPECT_EQ(combsOf(both).size(), 11U);
    EXPECT_EQ(remarksOf(both),
              (std::vector<std::string>{"united-bees-unknown", "united-stores-unknown", "united-box-on-top"}));
    edit(book, book::AddWeighing{weighingOf(colony, day("2026-10-08"), 60)});
    EXPECT_TRUE(std::holds_alternative<std::monostate>(on("2026-10-09").combs)) << "the weight tells of both";
}

TEST_F(UnitedCaseTest, CountsOfTwoKindsAreBees) {
    auto seen = lookAt(quince, day("2026-09-25"));
    seen.bees.coveredCombs.reset();
    seen.bees.count = 5000;
    edit(book, book::AddLook{seen});
    const double alone = must(questionOf(on("2026-10-04"), {}, shipped(), 0)).bees->count;
    unite();
    EXPECT_NEAR(*on("2026-10-06").bees.count, alone + 5000, 1);
}

TEST_F(UnitedCaseTest, WhereOneHasACountOnlyBothHaveACountOnly) {
    auto seen = lookAt(quince, day("2026-09-25"));
    seen.bees.coveredCombs = 3;
    seen.combs = book::QuickCountRecord{4, 1, 0.5};
    edit(book, book::AddLook{seen});
    unite();
    const auto both = on("2026-10-06");
    const auto* count = std::get_if<book::QuickCountRecord>(&both.combs);
    ASSERT_TRUE(count) << "no comb is named that nobody looked at";
    EXPECT_NEAR(count->fullOfStores, 11 * 0.8 + 4, 1e-9);
    EXPECT_EQ(count->half, 1);
    EXPECT_NEAR(count->cappedShare, (8.8 + 4.5 * 0.5) / 13.3, 1e-9);
    EXPECT_EQ(both.hive.boxes.size(), 3U) << "the rest of its combs are there, and empty";
}

TEST_F(UnitedCaseTest, ItsFeedsSinceItsLookCount) {
    const auto feed = [&](const char* date) {
        edit(book, book::AddFeed{{.colony = quince, .feed = {.date = day(date), .sugar = kilograms(3)}}});
    };
    feed("2026-09-17"), feed("2026-09-28");
    unite();
    const auto feeds = on("2026-10-06").feeds;
    EXPECT_TRUE(
        std::any_of(feeds.begin(), feeds.end(), [](const auto& each) { return each.date == day("2026-09-28"); }));
    const auto question = must(questionOf(on("2026-10-06"), {}, shipped(), 0));
    EXPECT_EQ(std::count_if(question.feeds.begin(), question.feeds.end(),
                            [&](const auto& each) { return each.day > question.lookedOn; }),
              1);
}

TEST_F(UnitedCaseTest, TwoColoniesUnitedIntoEachOtherAreReadOnce) {
    unite();
    edit(book, book::AddFate{{.colony = colony, .date = came, .fate = book::FateKind::United, .into = quince}});
    EXPECT_EQ(on("2026-10-06").bees.coveredCombs, 11.5);
    EXPECT_EQ(on("2026-10-06", quince).bees.coveredCombs, 11.5);
}

TEST_F(UnitedCaseTest, AWinterIsFollowedFromTheDayItWasUnited) {
    unite();
    const auto followed = FollowedColonyTest::on("2027-01-15");
    ASSERT_TRUE(followed.question);
    EXPECT_EQ(followed.question->year.date(followed.question->decided), came);
    EXPECT_GT(followed.question->tare.mass.value(), 30);
    EXPECT_FALSE(followed.question->united.empty());
}

} // namespace
} // namespace winterlarder::answer::united_case_test
