// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubt_words.h"
#include "answer/style_of_place.h"
#include "text/learned_words.h"
#include "text/task_words.h"
#include "text/words.h"

#include "exchange/shipped_data.h"

#include <cmath>
#include <fmt/format.h>
#include <gmock/gmock.h>

namespace winterlarder::answer::wording_test {
namespace {

using text::Wording;
using winterlarder::testing::shippedData;

const Wording northAmerican{.frames = true, .candyBoard = true}, bareBars{.frames = false, .candyBoard = true};

text::WordStyle styleAt(const char* station, const char* hive = R"("format": "langstroth-deep", "boxes": 1)") {
    const auto text = fmt::format(R"({{"case": 1, "as_of": "2026-09-12", "site": {{"station": "{}"}}, "hive": {{{}}},)"
                                  R"("bees": {{"seams": 7}}, "combs": [{{"capped": 0.5}}]}})",
                                  station, hive);
    const auto read = readQuestion(text, "case", shippedData(), 0);
    EXPECT_TRUE(read) << text;
    return styleFor({}, read->question);
}

std::string saidWith(const char* sentence, const Wording& wording) {
    return text::worded(QString::fromUtf8(sentence), wording).toStdString();
}

TEST(WordingOfPlace, IsChosenByTheCountryAndTheHive) {
    EXPECT_EQ(text::wordingOf("US", true), northAmerican);
    EXPECT_EQ(text::wordingOf("CA", true), northAmerican);
    EXPECT_EQ(text::wordingOf("CA", false), bareBars);
    for (const char* country : {"GB", "IE", "DE", "AU", "NZ", ""})
        EXPECT_EQ(text::wordingOf(country, true), Wording{}) << country;
}

TEST(WordingOfPlace, ReachesTheStyleOfAnAnswer) {
    EXPECT_EQ(styleAt("us-ma-boston").wording, northAmerican);
    EXPECT_EQ(styleAt("ca-halifax").wording, northAmerican);
    EXPECT_EQ(styleAt("gb-london").wording, Wording{});
    EXPECT_EQ(styleAt("ca-halifax", R"("format": "topbar-sloping-440", "boxes": 1)").wording, bareBars);
}

TEST(WordingOfPlace, UnitsChosenByHandStay) {
    text::WordStyle chosen{.unitsChosen = true};
    advice::ColonyQuestion question;
    question.place.country = "US";
    EXPECT_EQ(styleFor(chosen, question).numbers.system, UnitSystem::Metric);
    EXPECT_EQ(styleFor(chosen, question).wording, northAmerican) << "words are not units";
    EXPECT_EQ(styleFor({}, question).numbers.system, UnitSystem::UnitedStates);
}

TEST(WordingOfPlace, NounsTakeTheirPlaces) {
    EXPECT_EQ(saidWith("%{wasps}", {}) + saidWith(" %{wasps}", northAmerican), "wasps yellowjackets");
    const char* sentence = "%{Combs}: a %{comb} of %1 %{combs}; %{Comb}, %{board}, %{day}";
    EXPECT_EQ(saidWith(sentence, {}), "Combs: a comb of %1 combs; Comb, fondant, %{day}") << "details are filled later";
    EXPECT_EQ(saidWith(sentence, northAmerican), "Frames: a frame of %1 frames; Frame, a candy board, %{day}");
    EXPECT_EQ(text::combPlaces({{0, 2}}, 1, {.wording = northAmerican}).toStdString(), "frame 3 from the left");
    EXPECT_EQ(text::option(advice::OptionKind::MoveCombs, {}).toStdString(), "give combs of stores");
}

TEST(UnitsInSentences, QuartsBelowAGallonThenQuartersOfGallons) {
    text::WordStyle style;
    style.numbers.system = UnitSystem::UnitedStates;
    const auto said = [&](double gallons) {
        return text::amount(volumeOf(gallons, VolumeUnit::UsGallon), style).toStdString();
    };
    EXPECT_EQ(said(0.2), "1 qt");
    EXPECT_EQ(said(0.5), "2 qt");
    EXPECT_EQ(said(0.64), "2 1/2 qt");
    EXPECT_EQ(said(0.93), "3 1/2 qt");
    EXPECT_EQ(said(0.95), "1 gal");
    EXPECT_EQ(said(1.52), "1 1/2 gal");
    EXPECT_EQ(said(2.8), "2 3/4 gal");
    EXPECT_EQ(text::amount(litres(7.4), {}).toStdString(), "7.5 L");
}

TEST(UnitsInSentences, InchesAreThoseOfARule) {
    text::WordStyle style;
    style.numbers.system = UnitSystem::UnitedStates;
    EXPECT_EQ(text::length(millimetres(6), style).toStdString(), "1/4 in");
    EXPECT_EQ(text::length(millimetres(35), style).toStdString(), "1 3/8 in");
    EXPECT_EQ(text::length(millimetres(428), style).toStdString(), "16 7/8 in");
    EXPECT_EQ(text::length(millimetres(35), {}).toStdString(), "35 mm");
    EXPECT_EQ(text::quantity(QStringLiteral("70 mm"), style).toStdString(), "2 3/4 in");
    EXPECT_EQ(text::quantity(QStringLiteral("7 cm"), style).toStdString(), "3 in") << "about a hand's breadth";
    EXPECT_EQ(text::quantity(QStringLiteral("12 cm"), style).toStdString(), "5 in");
    EXPECT_EQ(text::quantity(QStringLiteral("7 cm"), {}).toStdString(), "7 cm");
}

TEST(PartsAsShown, AddUpToTheWholeAsShown) {
    const Mass third = kilograms(10.0 / 3);
    const auto parts = text::shownParts(std::vector{third, third, third}, {});
    ASSERT_EQ(parts.size(), 3u);
    EXPECT_NEAR((parts[0] + parts[1] + parts[2]).value(), 10, 1e-9);
    for (const Mass part : parts) EXPECT_NEAR(std::remainder(part.value(), 0.5), 0, 1e-9);
    EXPECT_NEAR(parts[1].value(), 3, 1e-9);
    text::WordStyle pounds;
    pounds.numbers.system = UnitSystem::UnitedStates;
    const auto inPounds = text::shownParts(std::vector{third, third, third}, pounds);
    EXPECT_NEAR(valueIn(inPounds[0] + inPounds[1] + inPounds[2], MassUnit::Pound), 22, 1e-9);
    const auto jugs = text::shownParts(std::vector{litres(4.3), litres(4.3)}, {});
    EXPECT_NEAR((jugs[0] + jugs[1]).value(), 8.5, 1e-9);
}

std::vector<report::Task> syrupVisits(std::vector<double> sugar) {
    std::vector<report::Task> tasks;
    for (const double kg : sugar) {
        report::Task task;
        task.kind = report::TaskKind::Syrup;
        task.sugar = kilograms(kg);
        task.syrup = litres(kg * 1.08);
        tasks.push_back(task);
    }
    return tasks;
}

TEST(PartsAsShown, VisitsWithAsMuchSugarHaveAsMuchSyrup) {
    const auto equal = text::asShown(syrupVisits({2, 2}), {});
    EXPECT_EQ(equal[0].sugar, equal[1].sugar);
    EXPECT_EQ(equal[0].syrup, equal[1].syrup);
    EXPECT_NEAR(equal[0].syrup.value(), 2, 1e-9);
    const auto unequal = text::asShown(syrupVisits({3, 1}), {});
    EXPECT_GT(unequal[0].syrup, unequal[1].syrup);
}

TEST(WordsOfTasks, UnitingGoesByTheHiveAndByWhoHasAQueen) {
    const Date day = *Date::parse("2026-10-01");
    text::WordStyle style;
    const auto how = [&](bool longHive, bool queenless) {
        return text::howToUnite({"Birch", day, longHive, queenless}, style).toStdString();
    };
    EXPECT_THAT(how(false, false), ::testing::HasSubstr("above Birch; the better queen is kept"));
    EXPECT_THAT(how(true, false), ::testing::HasSubstr("beside those of Birch"));
    EXPECT_THAT(how(true, false), ::testing::Not(::testing::HasSubstr("above")));
    for (const bool longHive : {false, true}) {
        EXPECT_THAT(how(longHive, true), ::testing::Not(::testing::HasSubstr("better queen")));
        EXPECT_THAT(how(longHive, true), ::testing::HasSubstr("certain that it has no queen"));
    }
    EXPECT_THAT(how(true, false), ::testing::HasSubstr("its combs hung"));
    style.wording = text::wordingOf("CA", true);
    EXPECT_THAT(how(true, false), ::testing::HasSubstr("its frames hung"));
    EXPECT_THAT(how(true, true), ::testing::HasSubstr("its frames hung"));
    report::Task beside;
    beside.kind = report::TaskKind::Unite;
    beside.longHive = true;
    EXPECT_THAT(text::dueDetails(beside, style).toStdString(), ::testing::StartsWith("Frames side by side"));
    report::Task fondant;
    fondant.kind = report::TaskKind::Fondant;
    EXPECT_THAT(text::dueDetails(fondant, {}).toStdString(),
                ::testing::StartsWith("Weigh both sides from outside first"));
    fondant.cannotWait = true;
    EXPECT_THAT(text::dueDetails(fondant, {}).toStdString(), ::testing::EndsWith("Weigh both sides afterwards."));
}

TEST(LearnedWords, NothingIsZeroPercentMoreOrLess) {
    const auto eaten = [](double factor) {
        return text::learnedLines({{std::log(factor), 0.1}, {0, 0.1}}, {}).front().toStdString();
    };
    EXPECT_EQ(eaten(1.004), "They eat as the model says (give or take 10 %).");
    EXPECT_EQ(eaten(0.996), "They eat as the model says (give or take 10 %).");
    EXPECT_EQ(eaten(0.95), "They eat 5 % less than the model says (give or take 10 %).");
    EXPECT_EQ(eaten(1.05), "They eat 5 % more than the model says (give or take 10 %).");
}

TEST(LearnedWords, FewForecastsAreTooFewToJudgeBy) {
    const auto said = [](int forecasts) { return text::scoreSentence({forecasts, 1, 3.6, 0.5}, {}).toStdString(); };
    for (const int few : {1, 2, 4}) EXPECT_THAT(said(few), ::testing::HasSubstr("too few to judge by")) << few;
    EXPECT_THAT(said(5), ::testing::Not(::testing::HasSubstr("too few")));
}

} // namespace
} // namespace winterlarder::answer::wording_test
