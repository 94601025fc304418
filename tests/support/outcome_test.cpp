// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/outcome.h"

#include "support/caught.h"
#include "support/input_limits.h"
#include "support/require.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <type_traits>

namespace winterlarder::outcome_test {
namespace {

Problem problemAt(Place place) { return {ProblemKind::Input, std::move(place), "bees is -3", "it is 0 or more"}; }

TEST(Describe, FullPlace) {
    EXPECT_EQ(describe(problemAt({"case.json", 7, 12})), "case.json:7:12: bees is -3; it is 0 or more");
}

TEST(Describe, LeavesOutWhatIsNotKnown) {
    EXPECT_EQ(describe(problemAt({"case.json", 7, 0})), "case.json:7: bees is -3; it is 0 or more");
    EXPECT_EQ(describe(problemAt({"case.json", 0, 0})), "case.json: bees is -3; it is 0 or more");
    EXPECT_EQ(describe(problemAt({"", 7, 12})), "7:12: bees is -3; it is 0 or more");
    EXPECT_EQ(describe(problemAt({})), "bees is -3; it is 0 or more");
    EXPECT_EQ(describe({ProblemKind::File, {"book"}, "cannot be read", ""}), "book: cannot be read");
}

TEST(Outcome, HoldsAValue) {
    const Outcome<int> outcome(5);
    ASSERT_TRUE(outcome.ok());
    EXPECT_TRUE(static_cast<bool>(outcome));
    EXPECT_EQ(outcome.value(), 5);
    EXPECT_EQ(*outcome, 5);
    EXPECT_THROW((void)outcome.problems(), std::bad_variant_access);
}

TEST(Outcome, HoldsOneOrManyProblems) {
    const Outcome<int> one(problemAt({"a", 1, 1}));
    ASSERT_FALSE(one.ok());
    EXPECT_EQ(one.problems().size(), 1u);
    const Outcome<int> many(Problems{problemAt({"a", 1, 1}), problemAt({"a", 2, 1})});
    ASSERT_FALSE(many.ok());
    EXPECT_EQ(many.problems().size(), 2u);
    EXPECT_EQ(many.problems()[1].place.line, 2);
    EXPECT_THROW((void)many.value(), std::bad_variant_access);
}

TEST(Outcome, GivesItsValueAway) {
    Outcome<std::unique_ptr<int>> outcome(std::make_unique<int>(3));
    const std::unique_ptr<int> taken = std::move(outcome).value();
    EXPECT_EQ(*taken, 3);
}

TEST(Outcome, ReachesIntoItsValue) {
    Outcome<std::string> outcome(std::string("comb"));
    outcome->push_back('s');
    EXPECT_EQ(outcome->size(), 5u);
}

TEST(Caught, ASurpriseIsAProblemOfOurs) {
    const auto fine = caught({"yard"}, "this", []() -> Outcome<int> { return 3; });
    EXPECT_EQ(fine.value(), 3);
    const auto refused = caught({"yard"}, "this", []() -> Outcome<int> { return inputProblem("no", "yes"); });
    EXPECT_EQ(refused.problems(), Problems{inputProblem("no", "yes")});
    const auto broken = caught({"yard", 4, 0}, "the winter of Pear", []() -> Outcome<int> {
        require(false, "{} is odd", 3);
        return 0;
    });
    ASSERT_EQ(broken.problems().size(), 1u);
    EXPECT_EQ(broken.problems().front().kind, ProblemKind::Internal);
    EXPECT_EQ(describe(broken.problems().front()),
              "yard:4: the winter of Pear could not be computed: 3 is odd; this is an error of the program, "
              "not of the records; please report it with them");
}

TEST(InputLimits, SayWhatAndHowMuch) {
    EXPECT_EQ(limits::bytesInWords(4 * limits::mebi), "4 MiB");
    EXPECT_EQ(limits::bytesInWords(64 * limits::kibi), "64 KiB");
    EXPECT_EQ(limits::bytesInWords(100), "100 bytes");
    EXPECT_EQ(describe(limits::tooLarge({"a.json"}, limits::caseText)),
              "a.json: this is larger than a case may be; at most 4 MiB");
}

TEST(Require, SaysWhatWasBroken) {
    EXPECT_NO_THROW(require(true, "never {}", 1));
    try {
        require(2 < 1, "range ends {} before it starts {}", 1, 2);
        FAIL() << "nothing was thrown";
    } catch (const ContractViolation& violation) {
        EXPECT_STREQ(violation.what(), "range ends 1 before it starts 2");
    }
}

static_assert(std::is_base_of_v<std::logic_error, ContractViolation>);

} // namespace
} // namespace winterlarder::outcome_test
