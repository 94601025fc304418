// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubt_words.h"
#include "answer/style_of_place.h"

#include "exchange/shipped_data.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace winterlarder::answer::usual_of_place_test {
namespace {

using winterlarder::testing::shippedData;

advice::ColonyQuestion asked(const char* site, const char* more = "") {
    const auto text = fmt::format(
        R"({{"case": 1, "as_of": "2026-09-12", "site": {}, "hive": {{"format": "langstroth-deep", "boxes": 1}},)"
        R"("bees": {{"seams": 7}}, "combs": [{{"capped": 0.5}}]{}}})",
        site, more);
    const auto read = readQuestion(text, "case", shippedData(), 0);
    EXPECT_TRUE(read) << text;
    return read->question;
}

TEST(UsualOfPlace, IsLaidIntoTheQuestion) {
    const auto manitoba = asked(R"({"station": "ca-winnipeg"})");
    ASSERT_TRUE(manitoba.usual);
    EXPECT_GE(manitoba.usual->low, kilograms(20));
    EXPECT_FALSE(manitoba.usual->place.empty());
    EXPECT_FALSE(manitoba.usual->source.empty());
}

TEST(UsualOfPlace, ALateFlowIsToldWhereOneIsUsual) {
    EXPECT_TRUE(asked(R"({"station": "gb-london"})").lateFlowNear) << "ivy";
}

TEST(UnitsOfPlace, PoundsInTheUnitedStatesKilogramsElsewhere) {
    EXPECT_EQ(asked(R"({"station": "us-ma-boston"})").steps, feeding::poundSteps);
    EXPECT_EQ(asked(R"({"station": "ca-halifax"})").steps, feeding::Steps{});
    EXPECT_EQ(asked(R"({"station": "us-ma-boston"})", R"(, "units": "metric")").steps, feeding::Steps{});
    const auto halifax = styleFor({}, asked(R"({"station": "ca-halifax"})"));
    EXPECT_TRUE(halifax.poundsBeside);
    EXPECT_EQ(halifax.numbers.system, UnitSystem::Metric);
    EXPECT_FALSE(styleFor({}, asked(R"({"station": "de-munich"})")).poundsBeside);
    EXPECT_EQ(styleFor({}, asked(R"({"station": "us-ma-boston"})")).numbers.system, UnitSystem::UnitedStates);
}

} // namespace
} // namespace winterlarder::answer::usual_of_place_test
