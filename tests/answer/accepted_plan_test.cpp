// SPDX-License-Identifier: GPL-3.0-or-later
// A winter is followed from what the plan of the yard made of a colony, where the keeper acted on that: combs moved, a colony united onto it.
#include "answer/accepted_plan.h"

#include "answer/followed_book.h"
#include "answer/learned_book.h"
#include "book/case_of.h"
#include "exchange/case/case_file.h"

#include <cmath>
#include <fmt/format.h>

namespace winterlarder::answer::accepted_plan_test {
namespace {

class AcceptedPlanTest : public FollowedColonyTest {
protected:
    void accept(const std::string& answer, const char* verdict = "leave") {
        edit(book,
             book::AcceptAdvice{{.colony = colony,
                                 .date = day("2026-09-20"),
                                 .verdict = verdict,
                                 .inputs = exchange::writeCaseLine(must(book::caseOf(book, colony, day("2026-09-20")))),
                                 .answer = answer,
                                 .seed = 1,
                                 .winters = 300},
                                {}});
    }
    static std::string moved(const char* from, const char* to) {
        return std::string(R"({"verdict": "leave", "plan": {"combs_from": [)") + from + R"(], "combs_to": [)" + to +
               R"(], "unite_with": null}})";
    }
    void combsMoved(const char* on, double kg) {
        edit(book, book::AddManipulation{{.colony = colony,
                                          .date = day(on),
                                          .what = book::ManipulationKind::CombsMoved,
                                          .weightChange = kilograms(kg)}});
    }
};

constexpr const char* fromApple = R"({"colony": "Apple", "combs": [0, 3], "kg": 4.4})";

TEST_F(AcceptedPlanTest, CombsThatCameAreInTheStores) {
    const auto alone = questionOn("2026-12-01");
    accept(moved(fromApple, ""));
    const auto followed = on("2026-12-01");
    EXPECT_NEAR((followed.question->stores.mean - alone.stores.mean).value(), 4.4, 1e-9);
    EXPECT_EQ(followed.question->stores.sd, alone.stores.sd);
    EXPECT_NEAR((*alone.freeRoom - *followed.question->freeRoom).value(), std::min(4.4, alone.freeRoom->value()), 1e-9);
    ASSERT_EQ(followed.advice.gifts.size(), 1u);
    EXPECT_EQ(followed.advice.gifts[0].from, "Apple");
    EXPECT_EQ(followed.advice.gifts[0].to, "Pear");
}

TEST_F(AcceptedPlanTest, CombsThatWentAreNotInTheStores) {
    const auto alone = questionOn("2026-12-01").stores.mean;
    accept(moved("", fromApple));
    EXPECT_NEAR((questionOn("2026-12-01").stores.mean - alone).value(), -4.4, 1e-9);
}

TEST_F(AcceptedPlanTest, AnAdviceOfAColonyAloneOrOneThatCannotBeReadMovesNothing) {
    const auto alone = questionOn("2026-12-01").stores.mean;
    for (const char* answer : {"{}", "not an answer", R"({"plan": 3})", R"({"plan": {"combs_from": "Apple"}})",
                               R"({"plan": {"combs_from": [{"colony": "Apple", "kg": "much"}]}})"}) {
        accept(answer);
        EXPECT_EQ(questionOn("2026-12-01").stores.mean, alone) << answer;
    }
}

// What was looked at again that evening has the combs in it.
TEST_F(AcceptedPlanTest, CombsLookedAtAfterwardsAreCountedOnce) {
    accept(moved(fromApple, ""));
    auto seen = must(book.of<book::Look>(colony)).front();
    std::get<std::vector<book::CombRecord>>(seen.combs)[0].capped = 0.95;
    edit(book, book::ChangeLook{seen});
    const auto after = questionOn("2026-12-01");
    EXPECT_EQ(after.stores.mean, on("2026-12-01").advice.estimate->mean);
}

TEST_F(AcceptedPlanTest, AnEntryOfTheCombsIsTheirWeightBeyondTheHoney) {
    combsMoved("2026-09-22", 5.1);
    combsMoved("2026-09-25", -3);
    ASSERT_EQ(questionOn("2026-12-01").steps.size(), 2u);
    EXPECT_NEAR(questionOn("2026-12-01").steps[0].change.value(), 5.1, 1e-9) << "nothing was planned";
    accept(moved(fromApple, ""));
    const auto steps = questionOn("2026-12-01").steps;
    ASSERT_EQ(steps.size(), 2u);
    EXPECT_NEAR(steps[0].change.value(), 0.7, 1e-9);
    EXPECT_NEAR(steps[1].change.value(), -3, 1e-9) << "other combs, the other way";
}

TEST_F(AcceptedPlanTest, AColonyUnitedOntoItIsInItsBeesAndStores) {
    const auto alone = on("2026-12-01");
    const double bees = alone.advice.bees->typical.count, stores = alone.advice.estimate->mean.value();
    const auto answer = [&](const char* verdict) {
        return fmt::format(
            R"({{"verdict": "{}", "bees": {{"low": 1, "typical": {}, "high": 99999}}, "stores_kg": {{"low": {}, "typical": {}, "high": {}}},)"
            R"( "target": {{"tare_kg": 31}}, "plan": {{"combs_from": [], "combs_to": [], "unite_with": "Quince"}}}})",
            verdict, bees * 1.5, stores + 3, stores + 6, stores + 9);
    };
    accept(answer("leave"));
    const auto together = on("2026-12-01");
    EXPECT_NEAR(together.advice.bees->typical.count, bees * 1.5, bees * 0.03);
    EXPECT_NEAR(together.question->stores.mean.value(), stores + 6, 1e-6);
    EXPECT_NEAR(together.question->stores.sd.value(), std::hypot(3 / 1.2816, 2), 0.01) << "as of any early look";
    EXPECT_EQ(together.question->tare.mass, kilograms(31));
    for (const auto& reason : together.advice.reasons)
        EXPECT_NE(reason.id, "united-here") << "the advice acted on says no day for it";
    accept(answer("unite"), "unite");
    EXPECT_EQ(on("2026-12-01").question->stores.mean, alone.question->stores.mean) << "the one that goes onto another";
}

// Once the union is written down it is counted from there alone, whatever combs the other had; combs the plan moved besides still are.
TEST_F(AcceptedPlanTest, AUnionWrittenDownThatDayIsCountedOnce) {
    const auto alone = on("2026-12-01");
    auto kept = colonyIn({1}, "Quince");
    const auto quince = *edit(book, book::AddColony{kept}).added<book::Colony>();
    auto seen = lookAt(quince, day("2026-09-20"));
    seen.combs = std::vector<book::CombRecord>(4, comb(0.5));
    edit(book, book::AddLook{seen});
    accept(fmt::format(
        R"({{"verdict": "leave", "bees": {{"low": 1, "typical": {}, "high": 99999}}, "stores_kg": {{"low": 1, "typical": 99, "high": 100}},)"
        R"( "plan": {{"combs_from": [{}], "combs_to": [], "unite_with": "Quince"}}}})",
        alone.advice.bees->typical.count * 5, fromApple));
    edit(book,
         book::AddFate{{.colony = quince, .date = day("2026-09-20"), .fate = book::FateKind::United, .into = colony}});
    const auto together = on("2026-12-01");
    EXPECT_EQ(together.question->united.size(), 2u) << "counted, and its box on top";
    EXPECT_LT(together.advice.bees->typical.count, alone.advice.bees->typical.count * 2.5);
    EXPECT_LT(together.question->stores.mean.value(), 60);
    EXPECT_NEAR((together.question->stores.mean - together.advice.estimate->mean).value(), 4.4, 1e-9)
        << "combs of Apple";
}

// A past winter is learned from as it was decided.
TEST_F(AcceptedPlanTest, LearningStartsFromTheSameStores) {
    accept(moved(fromApple, ""));
    look("2027-03-25");
    const auto past = must(readPast(book, day("2027-10-01")));
    ASSERT_EQ(past.winters.size(), 1u);
    const auto winter = pastWinterOf(past.winters[0], book.reference(), few, 2);
    ASSERT_TRUE(winter);
    EXPECT_EQ(winter->winter.question.stores.mean, questionOn("2027-03-20").stores.mean);
}

} // namespace
} // namespace winterlarder::answer::accepted_plan_test
