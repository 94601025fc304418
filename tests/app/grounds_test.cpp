// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/grounds/grounds.h"

#include "app/invented.h"
#include "models/words.h"
#include "series/use_parts.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

using text::AskedNumber;

text::AutumnGrounds groundsFrom(const AnsweredColony& colony) {
    return {colony.question, colony.answer.advice, usePartsOf(colony.picture, colony.answer.advice.season)};
}

std::optional<text::Grounds> groundsOf(const AnsweredColony& colony, AskedNumber number) {
    return text::groundsOf(number, groundsFrom(colony), *invented::shipped(), words::style());
}

QString allOf(const text::Grounds& grounds) {
    QString all = grounds.title;
    for (const auto& line : grounds.lines) all += QLatin1Char('\n') + line.said;
    return all;
}

std::vector<AskedNumber> numbersIn(const QString& sentence) {
    std::vector<AskedNumber> numbers;
    for (const auto& part : text::partsOf(sentence))
        if (part.number) numbers.push_back(*part.number);
    return numbers;
}

} // namespace

TEST(Grounds, EveryNumberOfEveryDemoAnswerHasThem) {
    int asked = 0;
    for (const auto& colony : invented::demoAnswers())
        for (const QString& sentence :
             {words::answerSentence(*colony, text::askably), words::riskLine(*colony, text::askably),
              words::lookLine(*colony, text::askably)})
            for (const auto number : numbersIn(sentence)) {
                const auto grounds = groundsOf(*colony, number);
                ASSERT_TRUE(grounds) << static_cast<int>(number) << " in " << sentence.toStdString();
                EXPECT_FALSE(grounds->title.isEmpty());
                EXPECT_FALSE(grounds->lines.empty()) << grounds->title.toStdString();
                ++asked;
            }
    EXPECT_GT(asked, 30);
}

TEST(Grounds, EverySourceNamedIsShippedAndNothingIsLeftUnfilled) {
    std::size_t sourced = 0;
    for (const auto& colony : invented::demoAnswers())
        for (int number = 0; number < text::askedNumbers; ++number) {
            const auto grounds = groundsOf(*colony, static_cast<AskedNumber>(number));
            if (!grounds) continue;
            EXPECT_FALSE(allOf(*grounds).contains(QLatin1Char('%'))) << allOf(*grounds).toStdString();
            for (const auto& line : grounds->lines)
                for (const auto& id : line.sources) {
                    EXPECT_NE(invented::shipped()->source(id), nullptr) << id;
                    ++sourced;
                }
        }
    EXPECT_GT(sourced, 50U);
}

TEST(Grounds, StoresAreToldPieceByPieceWithTheirWeights) {
    for (const auto& colony : invented::demoAnswers()) {
        const auto& estimate = *colony->answer.advice.estimate;
        const auto grounds = groundsOf(*colony, AskedNumber::Stores);
        ASSERT_TRUE(grounds);
        EXPECT_TRUE(grounds->title.endsWith(text::amount(estimate.spread, words::style())))
            << grounds->title.toStdString();
        ASSERT_GE(grounds->lines.size(), estimate.shares.size());
        double weights = 0;
        for (std::size_t i = 0; i < estimate.shares.size(); ++i) {
            EXPECT_TRUE(grounds->lines[i].said.contains(text::amount(estimate.shares[i].says, words::style())))
                << grounds->lines[i].said.toStdString();
            weights += estimate.shares[i].weight;
        }
        if (!estimate.contradictory) EXPECT_NEAR(weights, 1, 1e-9);
    }
}

TEST(Grounds, TheNeedNamesRiskReserveAndWhatIsEaten) {
    const auto& colony = *invented::demoAnswers().at(0);
    const QString all = allOf(*groundsOf(colony, AskedNumber::Need));
    EXPECT_TRUE(all.contains(text::amount(*colony.answer.advice.need, words::style())));
    EXPECT_TRUE(all.contains(text::amount(colony.answer.advice.reserve, words::style())));
    EXPECT_TRUE(all.contains(text::mass(*colony.answer.advice.use, words::style())));
    EXPECT_TRUE(all.contains(text::count(colony.answer.advice.winters, words::style())));
    EXPECT_TRUE(all.contains(QStringLiteral("34.5"))) << "the constants are those of the model";
}

TEST(Grounds, ADateThatWasGivenIsNotSaidToBeDerived) {
    auto colony = *invented::demoAnswers().at(0);
    const QString derived = allOf(*groundsOf(colony, AskedNumber::Forage));
    EXPECT_TRUE(derived.contains(QStringLiteral("The rule:")));
    colony.answer.advice.season.forage->origin = climate::DateOrigin::Case;
    const QString given = allOf(*groundsOf(colony, AskedNumber::Forage));
    EXPECT_FALSE(given.contains(QStringLiteral("The rule:")));
    EXPECT_TRUE(given.contains(QStringLiteral("given in the yard's Place")));
}

TEST(Grounds, WhatTheAnswerDoesNotHaveIsNotExplained) {
    auto colony = *invented::demoAnswers().at(0);
    colony.answer.advice.harvest.reset();
    colony.answer.advice.feed.reset();
    colony.answer.advice.need.reset();
    for (const auto number : {AskedNumber::CombsOff, AskedNumber::Sugar, AskedNumber::Fondant, AskedNumber::LastDay,
                              AskedNumber::Need, AskedNumber::LeftToday})
        EXPECT_FALSE(groundsOf(colony, number)) << static_cast<int>(number);
}

TEST(Grounds, ACombsStoresAreReckonedBeforeTheEyes) {
    stores::Comb comb;
    comb.format = invented::format();
    comb.capped = 0.5;
    comb.open = 0.2;
    const auto grounds = text::groundsOfComb(QStringLiteral("Comb 1"), QStringLiteral("1.5 kg"), comb, 0.65,
                                             stores::CombSpreads{0.10, 0.03, 0.11, 0.132}, words::style());
    const QString all = allOf(grounds);
    const Mass full = stores::capacityOf(comb);
    for (const Mass part : {full, full * 0.5, full * (0.2 * 0.65)})
        EXPECT_TRUE(all.contains(text::mass(part, words::style()))) << all.toStdString();
    EXPECT_TRUE(all.contains(QStringLiteral("15"))) << "both faces seen: 15 %";
    EXPECT_FALSE(all.contains(QLatin1Char('%')));
    comb.facesSeen = 0;
    EXPECT_TRUE(
        allOf(text::groundsOfComb({}, {}, comb, 0.65, stores::CombSpreads{0.10, 0.03, 0.11, 0.132}, words::style()))
            .contains(QStringLiteral("mean of the combs")));
    for (const auto& line : grounds.lines)
        for (const auto& id : line.sources) EXPECT_NE(invented::shipped()->source(id), nullptr) << id;
}

} // namespace winterlarder::desk
