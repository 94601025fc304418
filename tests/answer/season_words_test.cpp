// SPDX-License-Identifier: GPL-3.0-or-later
// Words of a time of year in what is told, over random colonies of every phase in both halves of the earth.
#include "advice/drawn_colonies.h"
#include "text/remarks.h"
#include "text/words.h"

#include <gmock/gmock.h>
#include <regex>
#include <set>

namespace winterlarder::text::season_words_test {
namespace {

using advice::Phase;

const char* const monthNames[] = {"January", "February", "March",     "April",   "May",      "June",
                                  "July",    "August",   "September", "October", "November", "December"};

struct Told {
    std::string what; //!< the id of a remark, or which sentence
    std::string words;
};

// All that is told of what is to come: sentences of the answer and remarks, without those that give reasons by what was.
std::vector<Told> toldOf(const advice::Advice& a) {
    std::vector<Told> told{{"headline", headline(a, {}).toStdString()},
                           {"target", targetSentence(a, {}).toStdString()},
                           {"look", lookSentence(a, {}).toStdString()}};
    if (a.expectedLater) told.push_back({"later", laterSentence(*a.expectedLater, {}).toStdString()});
    for (const auto* remarks : {&a.cautions, &a.goodPractice, &a.reasons})
        for (const auto& remark : *remarks) told.push_back({remark.id, sentence(remark, {}).toStdString()});
    return told;
}

// Days with their year are computed: none is past. What remains of the text is given back.
std::string withoutDays(const Told& told, Date asOf, const std::string& where) {
    static const std::regex day("([0-9]{1,2}) ([A-Z][a-z]+) ([0-9]{4})");
    std::string rest = told.words;
    for (std::smatch match; std::regex_search(rest, match, day); rest = match.prefix().str() + match.suffix().str()) {
        const auto month = std::find(std::begin(monthNames), std::end(monthNames), match[2].str());
        const auto named =
            month == std::end(monthNames)
                ? std::nullopt
                : Date::of(std::stoi(match[3]), static_cast<int>(month - monthNames) + 1, std::stoi(match[1]));
        EXPECT_TRUE(named && *named >= asOf) << where << told.what << ": " << told.words;
    }
    return rest;
}

std::set<std::string> monthsIn(const std::string& text) {
    std::set<std::string> found;
    for (const char* month : monthNames)
        if (std::regex_search(text, std::regex(std::string("\\b") + month + "\\b"))) found.insert(month);
    return found;
}

// Months that are named without a year belong to the half of the earth, and are not all past.
void monthsFit(const Told& told, const std::string& rest, const advice::ColonyQuestion& q, const advice::Advice& a,
               const std::string& where) {
    static const std::set<std::string> north{"July", "August", "March", "April"},
        south{"January", "February", "August", "September"};
    const auto months = monthsIn(rest);
    for (const auto& month : months)
        EXPECT_TRUE((q.winter.hemisphere() == Hemisphere::North ? north : south).contains(month))
            << where << told.what << ": " << told.words;
    const bool toCome = told.what == "spring-starvation" && !months.empty();
    if (!toCome) return;
    const int lastOfThem = q.winter.hemisphere() == Hemisphere::North ? 4 : 9;
    EXPECT_TRUE(a.phase != Phase::Spring || a.asOf->month() <= lastOfThem)
        << where << told.what << " when its months are past";
}

// A season is not spoken of as still to come, or as the time it is, when it is another.
void seasonsFit(const Told& told, const std::string& rest, Phase phase, const std::string& where) {
    if (told.what == "dearth-climate" || told.what == "opening-cold") return; // they tell of the whole year
    const auto never = [&](const char* words) {
        EXPECT_THAT(rest, ::testing::Not(::testing::HasSubstr(words))) << where << told.what << ": " << told.words;
    };
    if (phase == Phase::Winter || phase == Phase::Spring) never("autumn"), never("summer"), never("For winter");
    if (phase == Phase::Spring) never("in winter"), never("winter visit");
    if (phase != Phase::Summer) never("In summer");
}

TEST(SeasonWords, AreThoseOfTheTimeOfYearAndTheHalfOfTheEarth) {
    for (unsigned seed = 5000; seed < 5250; ++seed) {
        const auto drawn = advice::drawnColony(seed);
        const auto a = advice::roughly(drawn.question);
        ASSERT_TRUE(a.phase) << drawn.what;
        const std::string where = drawn.what + ", phase " + std::to_string(static_cast<int>(*a.phase)) + ": ";
        for (const auto& told : toldOf(a)) {
            const auto rest = withoutDays(told, *a.asOf, where);
            monthsFit(told, rest, drawn.question, a, where);
            seasonsFit(told, rest, *a.phase, where);
        }
    }
}

TEST(Headlines, AFeedThatCannotCarryItSaysSo) {
    advice::Advice a;
    a.verdict = advice::Verdict::Feed;
    a.decidedBy = advice::DecidedBy::Feed;
    a.asOf = *Date::of(2026, 10, 1);
    a.feed.emplace();
    a.feed->syrup.sugar = kilograms(2);
    a.options = {{.kind = advice::OptionKind::Leave, .runOut = {1, 0}},
                 {.kind = advice::OptionKind::Feed, .runOut = {0.94, 0}}};
    const WordStyle there{.wording = {.frames = true}};
    EXPECT_THAT(headline(a, there).toStdString(),
                ::testing::HasSubstr("That alone will not carry it: give it full frames too"));
    a.options[1].runOut.share = 0.1;
    EXPECT_THAT(headline(a, there).toStdString(), ::testing::Not(::testing::HasSubstr("alone")));
}

} // namespace
} // namespace winterlarder::text::season_words_test
