// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubt_words.h"
#include "answer/style_of_place.h"
#include "text/words.h"

#include "exchange/shipped_data.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

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
}

} // namespace
} // namespace winterlarder::answer::wording_test
