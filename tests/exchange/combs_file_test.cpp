// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/combs_file.h"

#include "support/book_folder.h"

#include <gmock/gmock.h>

namespace winterlarder::exchange::combs_file_test {
namespace {

using book::support::must;
using book::support::shipped;
using book::support::twoDeeps;

Outcome<book::CombsRecord> read(const std::string& text) {
    return readCombsFile(text, "combs.json", twoDeeps(), shipped());
}

std::string faultOf(const std::string& text) {
    const auto outcome = read(text);
    return outcome ? "none" : describe(outcome.problems().front());
}

TEST(CombsFile, AListAnObjectWithTheListOrTheQuickForm) {
    const auto bare = must(read(R"([{"capped": 0.5}, {"capped": 0.25, "brood": 0}])"));
    EXPECT_EQ(bare, must(read(R"({"combs": [{"capped": 0.5}, {"capped": 0.25, "brood": 0}]})")));
    const auto& combs = std::get<std::vector<book::CombRecord>>(bare);
    ASSERT_EQ(combs.size(), 2u);
    EXPECT_EQ(combs[0].capped, 0.5);
    EXPECT_EQ(combs[0].brood, std::nullopt) << "not said is not zero";
    EXPECT_EQ(combs[1].brood, 0.0);
    EXPECT_EQ(std::get<book::QuickCountRecord>(must(read(R"({"full_of_stores": 6, "half": 2, "capped_share": 0.8})"))),
              (book::QuickCountRecord{6, 2, 0.8}));
}

TEST(CombsFile, FaultsHaveTheirPlace) {
    EXPECT_THAT(faultOf(R"([{"caped": 0.5}])"), ::testing::StartsWith("combs.json:1:3: "));
    EXPECT_THAT(faultOf(R"([{"capped": 0.5, "open": 0.6}])"), ::testing::HasSubstr("add up to 1.1"));
    EXPECT_THAT(faultOf("[{\"capped\": 0.5},\n {\"capped\": 2}]"), ::testing::StartsWith("combs.json:2:13: "));
    EXPECT_THAT(faultOf("[{}, "), ::testing::StartsWith("combs.json:1:"));
    EXPECT_THAT(faultOf("7"), ::testing::HasSubstr("a list of combs"));
}

TEST(CombsFile, NoMoreCombsThanPlaces) {
    std::string combs = "[{}";
    for (int comb = 1; comb < 20; ++comb) combs += ", {}";
    EXPECT_EQ(faultOf(combs + "]"), "none") << "two deep boxes of ten";
    EXPECT_THAT(faultOf(combs + ", {}]"), ::testing::HasSubstr("21 combs are listed, but the hive has 20 places"));
    EXPECT_THAT(faultOf(R"({"full_of_stores": 19, "half": 2})"), ::testing::HasSubstr("21 combs"));
}

} // namespace
} // namespace winterlarder::exchange::combs_file_test
