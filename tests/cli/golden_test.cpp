// SPDX-License-Identifier: GPL-3.0-or-later
// Whole answers held against files in tests/cli/golden: as JSON their ids, numbers and kinds, as text every word of two answers and of
// the other commands' tables. Where the model is changed on purpose, run this program once with
// WINTERLARDER_UPDATE_GOLDEN=1 and read the difference before it is kept.
#include "cli/program.h"

#include <cmath>
#include <gmock/gmock.h>

namespace winterlarder::golden_test {
namespace {

using exchange::JsonValue;
using namespace winterlarder::testing;

struct Golden {
    const char* name; // of the golden file
    const char* arguments;
};

bool updating() {
    const char* wanted = std::getenv("WINTERLARDER_UPDATE_GOLDEN");
    return wanted && std::string(wanted) == "1";
}

std::filesystem::path goldenFile(const std::string& name) {
    return std::filesystem::path(SOURCE_FOLDER "/tests/cli/golden") / name;
}

// What is said in sentences, beside the ids and numbers that mean it.
bool holdsSentences(const std::string& member) {
    return member == "text" || member == "why" || member == "note" || member == "headline" || member == "how";
}

// Numbers may differ by rounding between compilers, and sentences may be said better; everything else is the same.
void expectSame(const JsonValue& expected, const JsonValue& actual, const std::string& path, bool sentence = false) {
    ASSERT_EQ(expected.kind, actual.kind) << path;
    if (sentence) EXPECT_EQ(expected.text.empty(), actual.text.empty()) << path;
    else EXPECT_EQ(expected.text, actual.text) << path;
    EXPECT_EQ(expected.flag, actual.flag) << path;
    // Sums over thousands of single-precision values taken in another order differ by 1e-6 of themselves at most.
    EXPECT_NEAR(expected.number, actual.number, 1e-9 + 1e-6 * std::abs(expected.number)) << path;
    ASSERT_EQ(expected.items.size(), actual.items.size()) << path;
    for (std::size_t i = 0; i < expected.items.size(); ++i)
        expectSame(expected.items[i], actual.items[i], path + "." + std::to_string(i));
    ASSERT_EQ(expected.members.size(), actual.members.size()) << path;
    for (std::size_t i = 0; i < expected.members.size(); ++i) {
        EXPECT_EQ(expected.members[i].name, actual.members[i].name) << path;
        expectSame(expected.members[i].value, actual.members[i].value, path + "." + expected.members[i].name,
                   holdsSentences(expected.members[i].name));
    }
}

// Every sentence of an answer.
void collectSentences(const JsonValue& value, std::vector<std::string>& sentences) {
    for (const JsonValue& item : value.items) collectSentences(item, sentences);
    for (const auto& member : value.members) {
        if (holdsSentences(member.name) && !member.value.text.empty()) sentences.push_back(member.value.text);
        collectSentences(member.value, sentences);
    }
}

// A text whose lines were broken to a width, as one line.
std::string inOneLine(const std::string& text) {
    std::istringstream words(text);
    std::string line;
    for (std::string word; words >> word;) line += (line.empty() ? "" : " ") + word;
    return line;
}

class GoldenText : public ::testing::TestWithParam<Golden> {};
TEST_P(GoldenText, IsPrinted) {
    const Ran ran = runProgram(GetParam().arguments);
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    if (updating()) std::ofstream(goldenFile(GetParam().name), std::ios::binary) << ran.out;
    EXPECT_EQ(ran.out, textOfFile(goldenFile(GetParam().name)));
}

class GoldenJson : public ::testing::TestWithParam<Golden> {};
TEST_P(GoldenJson, IsPrinted) {
    const Ran ran = runProgram(std::string(GetParam().arguments) + " --json");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    if (updating()) std::ofstream(goldenFile(GetParam().name), std::ios::binary) << ran.out;
    expectSame(jsonOf(textOfFile(goldenFile(GetParam().name))), jsonOf(ran.out), "");
}

INSTANTIATE_TEST_SUITE_P(CommandLine, GoldenText,
                         ::testing::Values(Golden{"weak.txt", "advise weak.json --winters 400"},
                                           Golden{"south.txt", "advise south.json --winters 400"},
                                           Golden{"use.txt",
                                                  "use light.json --from 2026-09-05 --to 2026-09-30 --central --daily"},
                                           Golden{"stores.txt", "stores south.json --winters 400"},
                                           Golden{"heat.txt", "heat --bees 9000 --temperature 3 --brood 2000"},
                                           Golden{"syrup.txt", "syrup --sugar 10 --ratio 3:2"},
                                           Golden{"stations.txt", "stations --find canada"},
                                           Golden{"season.txt", "season au-melbourne --winter 2027"},
                                           Golden{"source.txt", "sources southwick-1985"}));

INSTANTIATE_TEST_SUITE_P(
    CommandLine, GoldenJson,
    ::testing::Values(Golden{"spare.json", "advise spare.json --winters 400"},
                      Golden{"light.json", "advise light.json --winters 400"},
                      Golden{"weak.json", "advise weak.json --winters 400"},
                      Golden{"unsaid.json", "advise unsaid.json"},
                      Golden{"south.json", "advise south.json --winters 400"},
                      Golden{"use.json", "use light.json --from 2026-09-05 --to 2026-09-30 --central --daily"},
                      Golden{"stores.json", "stores south.json --winters 400"},
                      Golden{"heat.json", "heat --bees 9000 --temperature 3 --brood 2000"},
                      Golden{"syrup.json", "syrup --sugar 10 --ratio 3:2"},
                      Golden{"stations.json", "stations --near 44.9,-64.2 --find canada"},
                      Golden{"season.json", "season pt-lisbon"}, Golden{"source.json", "sources southwick-1985"}));

// What JSON says in sentences, the text says too.
class SaidTwice : public ::testing::TestWithParam<const char*> {};
TEST_P(SaidTwice, InJsonAndInText) {
    std::vector<std::string> sentences;
    collectSentences(jsonOf(runProgram(std::string(GetParam()) + " --json").out), sentences);
    EXPECT_FALSE(sentences.empty());
    const std::string text = inOneLine(runProgram(GetParam()).out);
    for (const std::string& sentence : sentences) EXPECT_THAT(text, ::testing::HasSubstr(inOneLine(sentence)));
}
INSTANTIATE_TEST_SUITE_P(CommandLine, SaidTwice,
                         ::testing::Values("advise spare.json --winters 400", "advise light.json --winters 400",
                                           "advise weak.json --winters 400", "advise south.json --winters 400",
                                           "advise unsaid.json", "season pt-lisbon"));

TEST(GoldenFiles, AreAllHeldAgainstAnAnswer) {
    const std::string held = textOfFile(__FILE__);
    for (const auto& file : std::filesystem::directory_iterator(goldenFile("")))
        EXPECT_THAT(held, ::testing::HasSubstr("\"" + file.path().filename().string() + "\""));
}

} // namespace
} // namespace winterlarder::golden_test
