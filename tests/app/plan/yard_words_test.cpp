// SPDX-License-Identifier: GPL-3.0-or-later
// What combs and feed are called, and in which units: as at the place of the yard, and of a colony as its hive is.
#include "answer/style_of_place.h"
#include "app/book_desk.h"
#include "dialogs/said_remark.h"
#include "models/job_table_model.h"
#include "models/words.h"
#include "models/yard_plan_words.h"
#include "pages/picture_panel.h"
#include "plots/winter_plot.h"
#include "print/yard_sheet.h"

#include <QRegularExpression>
#include <QTextDocument>

#include <gtest/gtest.h>
#include <set>

namespace winterlarder::desk {

namespace {

const QRegularExpression anyComb(QStringLiteral("\\bcombs?\\b"), QRegularExpression::CaseInsensitiveOption),
    anyFrame(QStringLiteral("\\bframes?\\b"), QRegularExpression::CaseInsensitiveOption);

// The demo yard's answers, as its plan has them, but for what is changed of a colony's question.
template <class Change> struct YardWith : Yard {
    explicit YardWith(Change change) {
        std::size_t place = 0;
        const auto answers = CoreAdviser(invented::shipped(), {1, 1000}, 1)
                                 .shareOut(invented::demoAnswers(), advice::MovingCombs::Allowed);
        for (const auto& answered : answers) {
            auto made = std::make_shared<AnsweredColony>(*answered);
            change(made->question, place++);
            takeAnswer(invented::add(*this, made->record), made);
        }
    }
};

QString onPaper(const std::optional<Paper>& paper) {
    if (!paper) return {};
    QTextDocument document;
    document.setHtml(paper->html);
    const QString text = document.toPlainText();
    return text.left(text.lastIndexOf(QStringLiteral("Sources")));
}

QStringList saidOfYard(const Yard& yard) {
    const auto plan = planOf(yard);
    QStringList said{yardSmallLine(plan), movedCombsWords(plan),
                     onPaper(yardSheet(yard, {}, invented::shipped().get()))};
    for (const auto& job : plan.jobs) said << jobWords(job);
    return said;
}

QStringList saidOfColony(const ColonyEntry& colony) {
    const auto& answered = *colony.answered;
    const auto& advice = answered.answer.advice;
    QStringList said{words::answerSentence(answered), words::targetLine(answered), words::riskLine(answered),
                     words::lookLine(answered), words::verdict(advice, words::styleOf(answered.question))};
    for (const auto* remarks : {&advice.reasons, &advice.cautions, &advice.goodPractice})
        for (const auto& each : saidRemarks(*remarks, *invented::shipped(), words::styleOf(answered.question)))
            said << each.text;
    return said;
}

// What is of the wax itself is comb everywhere.
QStringList without(QStringList said, std::initializer_list<const char*> phrases) {
    for (QString& each : said)
        for (const char* phrase : phrases) each.remove(QLatin1String(phrase));
    return said;
}

std::string naming(const QStringList& said, const QRegularExpression& noun) {
    return said.filter(noun).join(QLatin1Char('\n')).toStdString();
}

} // namespace

TEST(WordingOfYards, FramesInNovaScotiaButForCombsOnBareBars) {
    const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
    const auto said = saidOfYard(yard);
    EXPECT_EQ(naming(said, anyComb), "");
    EXPECT_NE(naming(said, anyFrame), "");
    std::set<bool> seen;
    for (const auto& colony : yard.colonies()) {
        const bool framed = *seen.insert(answer::hangsInFrames(colony.answered->question)).first;
        const auto own = without(saidOfColony(colony) << onPaper(colonySheet(colony, *invented::shipped())),
                                 {"drawn comb", "empty comb for", "Comb without a frame"});
        EXPECT_EQ(naming(own, framed ? anyComb : anyFrame), "");
        EXPECT_NE(naming(own, framed ? anyFrame : anyComb), "");
    }
    EXPECT_EQ(seen.size(), 2U) << "the demo has a top-bar hive among framed ones";
}

TEST(WordingOfYards, ThePictureOfAColonySpeaksOfItsOwnHive) {
    const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
    for (const auto& colony : yard.colonies()) {
        auto gives = std::make_shared<AnsweredColony>(*colony.answered);
        gives->picture.options.front().kind = advice::OptionKind::MoveCombs;
        auto entry = colony;
        entry.answered = gives;
        PicturePanel panel;
        panel.show(entry);
        panel.plot()->showOptions({advice::OptionKind::MoveCombs});
        const bool framed = answer::hangsInFrames(gives->question);
        for (const QString& said :
             {panel.plot()->summary(), panel.plot()->numbers(), panel.plot()->readout(gives->picture.first)}) {
            EXPECT_TRUE(said.contains(framed ? anyFrame : anyComb)) << said.toStdString();
            EXPECT_FALSE(said.contains(framed ? anyComb : anyFrame)) << said.toStdString();
        }
    }
}

TEST(WordingOfYards, CombsInBritain) {
    const YardWith yard([](advice::ColonyQuestion& question, std::size_t) { question.place.country = "GB"; });
    EXPECT_EQ(naming(saidOfYard(yard), anyFrame), "");
    EXPECT_NE(naming(saidOfYard(yard), anyComb), "");
    for (const auto& colony : yard.colonies())
        EXPECT_EQ(naming(without(saidOfColony(colony), {"Comb without a frame"}), anyFrame), "");
}

TEST(WordingOfYards, AYardOfBareBarsAloneSpeaksOfCombs) {
    const YardWith yard([](advice::ColonyQuestion& question, std::size_t) {
        for (auto& box : question.boxes) box.id = "topbar-sloping-440";
    });
    EXPECT_EQ(naming(saidOfYard(yard), anyFrame), "");
}

TEST(WordingOfYards, WhatMovesIsCalledAsItsHiveHangsIt) {
    const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
    YardPlan plan;
    const advice::CombGift gift{"Apple", "Pear", {0, 3}, kilograms(4.4), {{0, 0}, {0, 3}}, 1};
    EXPECT_TRUE(giftWords(gift, plan).startsWith(QStringLiteral("2 frames (")));
    EXPECT_TRUE(giftWords(gift, plan).endsWith(QStringLiteral("frames 1 and 4 from the left")));
    plan.bareBars = {"Pear"};
    EXPECT_TRUE(giftWords(gift, plan).startsWith(QStringLiteral("2 combs (")));
    PlannedJob job;
    job.kind = JobKind::CountBees;
    EXPECT_EQ(jobWords(job), QStringLiteral("count the frames the bees cover"));
    job.framed = false;
    EXPECT_EQ(jobWords(job), QStringLiteral("count the combs the bees cover"));
}

// Amounts in sentences; lists and tables keep to one unit.
TEST(WordingOfYards, PoundsStandBesideKilogramsInCanadaAndBritain) {
    const QRegularExpression both(QStringLiteral("\\d kg \\(\\d+ lb\\)"));
    for (const char* country : {"CA", "GB", "DE"}) {
        const YardWith yard([&](advice::ColonyQuestion& question, std::size_t) { question.place.country = country; });
        QStringList said;
        for (const auto& colony : yard.colonies()) said << saidOfColony(colony);
        EXPECT_EQ(!said.filter(both).isEmpty(), country != std::string("DE")) << country;
    }
    const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
    words::useUnits(UnitSystem::UnitedStates);
    for (const auto& colony : yard.colonies())
        EXPECT_EQ(naming(saidOfColony(colony), QRegularExpression(QStringLiteral("\\d kg\\b"))), "");
    words::useUnits(UnitSystem::Metric);
}

TEST(WordingOfYards, GoesWithTheYard) {
    {
        const YardWith yard([](advice::ColonyQuestion&, std::size_t) {});
        EXPECT_TRUE(words::style().wording.frames);
    }
    EXPECT_EQ(words::style().wording, text::Wording{});
}

} // namespace winterlarder::desk
