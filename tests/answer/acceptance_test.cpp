// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/acceptance.h"

#include "answer/advice_json.h"
#include "answer/doubt_words.h"
#include "answer/question_of_case.h"
#include "exchange/json/json_tree.h"
#include "exchange/shipped_data.h"

#include <gmock/gmock.h>

namespace winterlarder::answer::acceptance_test {
namespace {

using winterlarder::testing::shippedData;

// A colony in timber, ten combs of the given capped share.
std::string colonyOf(const char* capped) {
    std::string combs;
    for (int comb = 0; comb < 10; ++comb) combs += std::string(comb ? ", " : "") + R"({"capped": )" + capped + "}";
    return R"({"case": 1, "colony": "Pear", "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2},
        "bees": {"covered_combs": 7}, "feeder": {"kind": "top"}, "combs": [)" +
           combs + "]}";
}

struct Accepted {
    ReadQuestion read;
    advice::Advice advice;
    book::AcceptAdvice acceptance;
};

Accepted accept(const char* capped) {
    auto read = readQuestion(colonyOf(capped), "case.json", shippedData(), 0);
    if (!read) throw std::runtime_error(describe(read.problems().front()));
    auto weighed = advice::weigh(read->question, shippedData().constants, {7, 400}, 1, {});
    const auto acceptance = acceptanceOf({3}, read->record, read->question, weighed->advice, shippedData(), {});
    return {std::move(*read), weighed->advice, acceptance};
}

TEST(Acceptance, FreezesTheQuestionAndTheAnswerAsTheyWere) {
    const auto [read, advice, acceptance] = accept("0.3");
    EXPECT_EQ(acceptance.advice.colony, book::ColonyId{3});
    EXPECT_EQ(acceptance.advice.date.iso(), "2026-09-12");
    EXPECT_EQ(acceptance.advice.seed, 7u);
    EXPECT_EQ(acceptance.advice.winters, 400);
    EXPECT_EQ(acceptance.advice.verdict, "feed");
    EXPECT_FALSE(acceptance.advice.programVersion.empty());
    const auto again = readQuestion(acceptance.advice.inputs, "frozen", shippedData(), 0);
    ASSERT_TRUE(again) << describe(again.problems().front());
    EXPECT_EQ(again->record, read.record) << "the case that was kept is the case that was asked";
    EXPECT_EQ(acceptance.advice.answer, adviceJson(read.record, read.question, advice, shippedData(), {}).compact());
    EXPECT_TRUE(exchange::readJson(acceptance.advice.answer, "answer").problems.empty());
}

TEST(Acceptance, PlansEveryVisitOfTheFeeding) {
    const auto [read, advice, acceptance] = accept("0.3");
    ASSERT_TRUE(advice.feed);
    ASSERT_FALSE(advice.feed->visits.empty());
    ASSERT_EQ(acceptance.visits.size(), advice.feed->visits.size());
    Mass planned{0}, advised{0};
    for (std::size_t i = 0; i < acceptance.visits.size(); ++i) {
        EXPECT_EQ(acceptance.visits[i].date, advice.feed->visits[i].date);
        EXPECT_EQ(acceptance.visits[i].state, book::VisitState::Planned);
        EXPECT_EQ(acceptance.visits[i].colony, book::ColonyId{3});
        EXPECT_FALSE(acceptance.visits[i].advice) << "the book fills it in";
        planned += acceptance.visits[i].sugar.value_or(Mass(0));
        advised += advice.feed->visits[i].sugar;
    }
    EXPECT_GT(planned, Mass(1));
    EXPECT_EQ(planned, advised);
}

TEST(Acceptance, WhatNeedsNoFeedingPlansNoVisit) {
    const auto accepted = accept("0.95");
    EXPECT_FALSE(accepted.advice.feed);
    EXPECT_TRUE(accepted.acceptance.visits.empty());
    EXPECT_NE(accepted.acceptance.advice.verdict, "feed");
}

} // namespace
} // namespace winterlarder::answer::acceptance_test
