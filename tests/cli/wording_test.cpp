// SPDX-License-Identifier: GPL-3.0-or-later
// The English of the place: the judged cases (tests/advice_cases), each moved to a place of the United States, of Canada and of Britain, and
// every word of their answers.
#include "cli/program.h"

#include <gmock/gmock.h>
#include <regex>

namespace winterlarder {
namespace {

using namespace winterlarder::testing;
using ::testing::HasSubstr;
using ::testing::Not;

const std::string chosenUnits = "\"units\"", bareBars = "topbar", framed = "langstroth-deep";

//! The cases of framed hives that name a station and no units, all at one station, as one batch.
std::string casesAt(const std::string& station) {
    std::string batch;
    for (const std::string& line : linesOf(textOfFile(SOURCE_FOLDER "/tests/advice_cases/advise.jsonl"))) {
        const auto start = line.find("\"case\": {"), end = line.find(", \"expect\"");
        if (start == std::string::npos || line.find("\"station\"") == std::string::npos) continue;
        if (line.find(chosenUnits) != std::string::npos || line.find(bareBars) != std::string::npos) continue;
        batch += std::regex_replace(line.substr(start + 8, end - start - 8), std::regex(R"re("station": "[a-z-]+")re"),
                                    "\"station\": \"" + station + "\"") +
                 "\n";
    }
    return batch;
}

//! Lines broken to a width as one, without the sources.
std::string said(const std::string& cases) {
    const Ran ran = runProgram("advise - --winters 100", cases);
    EXPECT_THAT(ran.err, Not(HasSubstr("station"))) << "the place is none";
    std::istringstream words(std::regex_replace(ran.out, std::regex(R"(\[[a-z0-9-]+\])"), ""));
    std::string line;
    for (std::string word; words >> word;) line += word + " ";
    EXPECT_GT(line.size(), cases.size() / 2) << "answers of many cases";
    EXPECT_EQ(line.find("%{"), std::string::npos)
        << "a noun or a detail is missing: " << line.substr(line.find("%{"), 60);
    return line;
}

//! Where a pattern stands in the text with what is around it, but for the phrases that may hold it.
std::vector<std::string> found(std::string text, const char* pattern, const std::vector<std::string>& allowed = {}) {
    for (const std::string& phrase : allowed)
        for (auto at = text.find(phrase); at != std::string::npos; at = text.find(phrase))
            text.erase(at, phrase.size());
    std::vector<std::string> places;
    const std::regex wanted(pattern);
    for (std::sregex_iterator each(text.begin(), text.end(), wanted), end; each != end && places.size() < 5; ++each) {
        const auto from = static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, each->position() - 40));
        places.push_back(text.substr(from, 90));
    }
    return places;
}

const char* const anyComb = R"(\b[Cc]ombs?\b)";
//! Of the wax itself, which is comb everywhere.
const std::vector<std::string> waxComb = {"drawn comb", "empty comb for", "Empty comb at the look",
                                          "honey in combs has"};

TEST(Wording, FramesPoundsQuartsAndInchesInTheUnitedStates) {
    const std::string text = said(casesAt("us-ma-boston"));
    EXPECT_THAT(found(text, anyComb, waxComb), ::testing::IsEmpty());
    EXPECT_THAT(text, HasSubstr("full frames"));
    EXPECT_THAT(found(text, R"(\d (kg|L|mm|km)\b|°C)"), ::testing::IsEmpty());
    EXPECT_THAT(found(text, R"(\d\.\d+ (in|gal|qt)\b|US gal|\d L\b)"), ::testing::IsEmpty());
    EXPECT_THAT(text, HasSubstr("1/4 in high and about 3 in to 5 in wide")) << "the entrance, as on a rule";
    EXPECT_FALSE(found(text, R"(\d( 1/2)? qt\b)").empty()) << "small visits";
    EXPECT_FALSE(found(text, R"(\d( [13]/[24])? gal\b)").empty()) << "from four quarts on";
}

TEST(Wording, FramesAndKilogramsWithPoundsBesideInCanada) {
    const std::string text = said(casesAt("ca-winnipeg"));
    EXPECT_THAT(found(text, anyComb, waxComb), ::testing::IsEmpty());
    EXPECT_THAT(text, HasSubstr("full frames"));
    EXPECT_THAT(text, HasSubstr("goes on as a candy board before the hive is wrapped"));
    EXPECT_FALSE(found(text, R"(lay a candy board of [\d.]+ kg \(\d+ lb\) on the bees)").empty());
    EXPECT_THAT(found(text, R"(\d (in|gal|qt)\b|°F)"), ::testing::IsEmpty());
}

TEST(Wording, CombsAndFondantInBritain) {
    const std::string text = said(casesAt("gb-london"));
    EXPECT_THAT(found(text, R"(\b[Ff]rames?\b)", {"Comb without a frame"}), ::testing::IsEmpty());
    EXPECT_THAT(text, Not(HasSubstr("candy")));
    EXPECT_THAT(text, HasSubstr("full combs"));
    EXPECT_FALSE(found(text, R"(\d kg \(\d+ lb\) of stores)").empty()) << "pounds beside stores";
}

std::string topBar(const std::string& station) {
    return R"({"case": 1, "as_of": "2026-10-20", "site": {"station": ")" + station +
           R"("}, "hive": {"format": "topbar-sloping-440", "boxes": 1}, "bees": {"covered_combs": 7},)"
           R"( "combs": {"full_of_stores": 4, "half": 2, "capped_share": 0.8}})"
           "\n";
}

TEST(Wording, CombsOnBareBarsAreCombsEverywhere) {
    const std::string text = said(topBar("us-ma-boston"));
    EXPECT_THAT(text, HasSubstr("full combs"));
    EXPECT_THAT(found(text, R"(\b[Ff]rames?\b)", {"Comb without a frame"}), ::testing::IsEmpty());
    EXPECT_THAT(text, HasSubstr(" lb ")) << "units are of the place all the same";
}

} // namespace
} // namespace winterlarder
