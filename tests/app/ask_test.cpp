// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "fields/quantity_field.h"
#include "models/ask_answers.h"
#include "pages/answer_panel.h"
#include "pages/ask_row.h"

#include <algorithm>

namespace winterlarder::desk {

using advice::AskKind;
using invented::colony;
using invented::WindowDesk;

namespace {

class AskedBack : public WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Russet", 3.5)});
    }
    void answer(AskKind kind, double value) {
        answerAsked(*window.yard(), entry().id, kind, value);
        settle();
    }
    const book::ColonyCase& record() { return entry().record; }
};

} // namespace

TEST_F(AskedBack, WhatIsSeenInTheHiveGoesIntoItsLook) {
    answer(AskKind::Queen, 1);
    EXPECT_EQ(record().bees.eggsSeen, true);
    EXPECT_EQ(record().bees.queenSeen, std::nullopt);
    answer(AskKind::Queen, 0);
    EXPECT_EQ(record().bees.eggsSeen, false);
    EXPECT_EQ(record().bees.queenSeen, false);
    answer(AskKind::Mites, 1);
    EXPECT_EQ(record().bees.mitesCounted, true);
    EXPECT_EQ(record().bees.mitesTreated, true);
    answer(AskKind::FoodBesideBees, 0);
    EXPECT_EQ(record().bees.foodBeside, false);
    answer(AskKind::FedOrTreated, 0);
    EXPECT_EQ(record().fedOrTreated, false);
    EXPECT_EQ(records().looks.size(), 1U) << "the look there is, no new ones";
    undo();
    EXPECT_EQ(record().fedOrTreated, std::nullopt) << "one step";
}

TEST_F(AskedBack, WhatTheYardKnowsGoesIntoTheYard) {
    answer(AskKind::FlowToCome, static_cast<double>(book::FlowStrength::Fair));
    EXPECT_EQ(record().site.autumnFlow, book::FlowStrength::Fair);
    answer(AskKind::WinterVisits, 0);
    EXPECT_EQ(record().wish.visitsInWinter, false);
    answer(AskKind::FullCombs, 6);
    EXPECT_EQ(record().fullCombs, 6);
}

TEST_F(AskedBack, WhatTheHiveIsGoesIntoTheHive) {
    answer(AskKind::SuperFor, 0);
    EXPECT_EQ(record().hive.supersFor, book::SupersFor::People);
    answer(AskKind::Tare, 19.5);
    ASSERT_TRUE(record().hive.tare);
    EXPECT_DOUBLE_EQ(record().hive.tare->value(), 19.5);
    EXPECT_EQ(record().hive.supersFor, book::SupersFor::People) << "it stays";
    EXPECT_TRUE(records().housings.empty());
}

TEST_F(AskedBack, ARowAsksWithAButtonForEachAnswerOrAField) {
    AskRow row;
    std::vector<std::pair<AskKind, double>> told;
    QObject::connect(&row, &AskRow::answered, [&](AskKind kind, double value) { told.emplace_back(kind, value); });
    for (const auto kind : {AskKind::Queen, AskKind::Mites, AskKind::FedOrTreated, AskKind::SuperFor,
                            AskKind::FlowToCome, AskKind::WinterVisits, AskKind::FoodBesideBees}) {
        row.show(advice::Ask{kind, 1}, invented::shipped().get());
        EXPECT_FALSE(row.isHidden());
        const auto choices = choicesOf(kind);
        ASSERT_GE(choices.size(), 2U);
        std::vector<QPushButton*> buttons;
        for (auto* each : row.findChildren<QPushButton*>())
            if (each->isVisibleTo(&row)) buttons.push_back(each);
        ASSERT_GE(buttons.size(), choices.size());
        buttons.back()->click();
        ASSERT_FALSE(told.empty());
        EXPECT_EQ(told.back(), std::pair(kind, choices.back().value));
    }
    row.show(advice::Ask{AskKind::Tare, 1}, invented::shipped().get());
    auto* field = row.findChildren<QuantityField*>().back();
    type(field, "41 lb");
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(told.back().first, AskKind::Tare);
    EXPECT_NEAR(told.back().second, 18.6, 0.05);
    row.show({}, nullptr);
    EXPECT_TRUE(row.isHidden());
}

TEST_F(AskedBack, TheQuestionStandsWithTheAnswer) {
    answerReally();
    answer(AskKind::WinterVisits, 1); // other records than those answered slowly
    ASSERT_TRUE(entry().answered);
    const auto ask = entry().answered->answer.advice.ask;
    ASSERT_TRUE(ask) << "nobody said whether mites were counted";
    auto* row = window.colonyView()->findChild<AskRow*>();
    ASSERT_TRUE(row->isVisible());
    const auto before = entry().record;
    row->findChildren<QPushButton*>().front()->click();
    settle();
    EXPECT_NE(entry().record, before) << "what was answered is in the book";
    const auto& next = entry().answered->answer.advice.ask;
    EXPECT_TRUE(!next || next->kind != ask->kind) << "nobody is asked twice";
}

} // namespace winterlarder::desk
