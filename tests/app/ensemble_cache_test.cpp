// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ensemble_cache.h"

#include "app/window_desk.h"
#include "models/what_if.h"
#include "pages/what_if_page.h"

#include <QDoubleSpinBox>
#include <QTabWidget>

namespace winterlarder::desk {

using invented::WindowDesk;

namespace {

std::shared_ptr<const CoreAdviser> adviser() {
    return std::make_shared<CoreAdviser>(invented::shipped(), winter::Sampling{1, 400}, 1);
}

std::vector<AnsweredPointer> answersOf(const Adviser& from) {
    std::vector<AnsweredPointer> answers;
    for (const auto& record : invented::demoYard())
        answers.push_back(from.answer(record, static_cast<int>(answers.size()), {}).value());
    return answers;
}

void expectSame(const WinterPicture& one, const WinterPicture& other) {
    ASSERT_EQ(one.options.size(), other.options.size());
    for (std::size_t i = 0; i < one.options.size(); ++i) {
        EXPECT_EQ(one.options[i].dots, other.options[i].dots);
        ASSERT_EQ(one.options[i].lines.size(), other.options[i].lines.size());
        EXPECT_EQ(one.options[i].lines.back().kilograms, other.options[i].lines.back().kilograms);
    }
}

} // namespace

TEST(EnsembleCache, OnlyTheLastWintersAreKeptAndOthersCanBeRecalled) {
    const EnsembleCache cache(adviser(), 2);
    const auto answers = answersOf(cache);
    ASSERT_GE(answers.size(), 4U);
    for (std::size_t i = 0; i < answers.size(); ++i)
        EXPECT_EQ(wintersOf(*answers[i]) != nullptr, i + 2 >= answers.size()) << i;
    const auto& constants = invented::shipped()->constants;
    EXPECT_FALSE(Trials::of(answers[0], constants));
    const auto recalled = cache.recall(answers[0], {});
    ASSERT_TRUE(recalled);
    ASSERT_TRUE(wintersOf(*recalled));
    EXPECT_TRUE(Trials::of(recalled, constants));
    EXPECT_EQ(recalled->record, answers[0]->record);
    expectSame(recalled->picture, answers[0]->picture);
}

TEST(EnsembleCache, CombsAreSharedOutAlsoAmongAnswersWhoseWintersAreGone) {
    const auto everything = adviser();
    const EnsembleCache cache(everything, 1);
    const auto wanted = everything->shareOut(answersOf(*everything), advice::MovingCombs::Allowed);
    const auto asked = answersOf(cache);
    auto shared = cache.shareOut(asked, advice::MovingCombs::Allowed);
    std::size_t gifts = 0;
    for (std::size_t i = 0; i < shared.size(); ++i) {
        EXPECT_EQ(shared[i]->answer.advice.gifts.size(), wanted[i]->answer.advice.gifts.size());
        EXPECT_EQ(shared[i]->answer.advice.options.size(), wanted[i]->answer.advice.options.size());
        EXPECT_EQ(shared[i]->alone ? shared[i]->alone : shared[i], asked[i]);
        gifts += shared[i]->answer.advice.gifts.size();
        const auto recalled = cache.recall(shared[i], {});
        EXPECT_EQ(recalled->alone, shared[i]->alone);
        expectSame(recalled->picture, wanted[i]->picture);
    }
    EXPECT_GT(gifts, 0U) << "nothing is shared out in this yard";
    EXPECT_EQ(cache.shareOut(shared, advice::MovingCombs::Allowed), shared) << "the same answers are not made anew";
}

TEST_F(WindowDesk, InALargeYardTheWintersOfTheColonyTriedOutAreThereAgain) {
    answerReally();
    std::vector<book::ColonyCase> cases;
    for (int i = 0; i < 20; ++i) {
        cases.push_back(invented::demoYard().front());
        cases.back().colony = "Hive " + std::to_string(i);
    }
    open(cases);
    EXPECT_FALSE(wintersOf(*window.yard()->colonies().front().answered)) << "let go";
    window.colonyView()->showPage(ColonyPage::WhatIf);
    settle();
    EXPECT_TRUE(wintersOf(*window.yard()->colonies().front().answered));
    auto* page = window.colonyView()->whatIf();
    const QString alone = page->said();
    page->take()->setValue(5);
    EXPECT_NE(page->said(), alone);
    EXPECT_TRUE(page->planButton()->isEnabled());
}

} // namespace winterlarder::desk
