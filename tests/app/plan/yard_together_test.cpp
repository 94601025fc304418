// SPDX-License-Identifier: GPL-3.0-or-later
// What the colonies of a yard do together: combs that move, colonies that are united, and the switch that leaves combs where they are.
#include "app/buttons.h"
#include "app/window_desk.h"
#include "models/job_table_model.h"
#include "models/words.h"
#include "models/yard_plan_words.h"
#include "pages/answer_panel.h"
#include "pages/yard_view.h"
#include "print/sheet_words.h"
#include "print/yard_sheet.h"

#include <QCheckBox>

namespace winterlarder::desk {

using advice::MovingCombs;
using invented::WindowDesk;

namespace {

const std::vector<AnsweredPointer>& together() {
    static const auto answers =
        CoreAdviser(invented::shipped(), {1, 1000}, 1).shareOut(invented::demoAnswers(), MovingCombs::Allowed);
    return answers;
}

struct SharedYard : Yard {
    explicit SharedYard(const std::vector<AnsweredPointer>& answers = together()) {
        for (const auto& answered : answers) takeAnswer(invented::add(*this, answered->record), answered);
    }
};

std::vector<PlannedJob> ofKind(const YardPlan& plan, JobKind kind) {
    std::vector<PlannedJob> jobs;
    for (const auto& job : plan.jobs)
        if (job.kind == kind) jobs.push_back(job);
    return jobs;
}

std::string said(const PlannedJob& job) { return jobWords(job).toStdString(); }

// Pear's answer as the yard's plan has it: two combs from Apple, for which one of its own goes back.
AnsweredPointer withGift(const book::ColonyCase& record, std::vector<int> back) {
    auto made = std::make_shared<AnsweredColony>(*invented::answered(record, {advice::Verdict::Leave}));
    const advice::CombGift gift{"Apple", "Pear", {0, 3}, kilograms(4.4), {{1, 0}, {1, 3}}, 3, std::move(back)};
    made->answer.advice.gifts = {gift};
    made->answer.advice.plan = advice::PartInYard{.given = {}, .received = {gift}};
    return made;
}

} // namespace

TEST(YardTogether, ARowOfCombsNamesTheirPlacesAndBothColonies) {
    for (const bool exchanged : {true, false}) {
        Yard yard;
        const auto id = invented::add(yard, invented::colony("Pear"));
        yard.takeAnswer(id, withGift(yard.find(id)->record, exchanged ? std::vector<int>{2} : std::vector<int>{}));
        const auto plan = planOf(yard);
        const auto rows = ofKind(plan, JobKind::MoveCombs);
        ASSERT_EQ(rows.size(), 1U);
        const std::string in = "hang in 2 full combs from Apple (its middle box, combs 1 and 4 from the left)";
        EXPECT_EQ(rows[0].colony, QStringLiteral("Pear"));
        EXPECT_EQ(said(rows[0]), exchanged ? in + "; to give back: comb 3 from the left" : in);
        EXPECT_EQ(jobAmount(rows[0]), words::amount(kilograms(4.4)));
        EXPECT_EQ(movedCombsWords(plan).toStdString(),
                  "2 combs (" + words::amount(kilograms(4.4)).toStdString() +
                      ") from Apple to Pear: middle box, combs 1 and 4 from the left");
    }
}

TEST(YardTogether, ARowOfUnitingNamesThePartnerWhereOneIsKnown) {
    for (const bool known : {true, false}) {
        Yard yard;
        const auto id = invented::add(yard, invented::colony("Pear"));
        auto made =
            std::make_shared<AnsweredColony>(*invented::answered(yard.find(id)->record, {advice::Verdict::Unite}));
        if (known) made->answer.advice.unite->partner = "Quince";
        yard.takeAnswer(id, made);
        const auto rows = ofKind(planOf(yard), JobKind::Unite);
        ASSERT_EQ(rows.size(), 1U);
        EXPECT_EQ(said(rows[0]),
                  known ? "unite it with Quince, at the latest on this day, in the evening, newspaper between"
                        : "unite with a healthy neighbour");
        const QString paper = yardSheet(yard, {}, invented::shipped().get()).html;
        EXPECT_EQ(paper.contains(QStringLiteral("unite it with Quince")), known) << "the paper says the same";
    }
}

TEST(YardTogether, WhyNoCombMovesIsSaid) {
    YardPlan plan;
    EXPECT_EQ(movedCombsWords(plan), QStringLiteral("none"));
    EXPECT_EQ(yardSmallLine(plan), QString());
    plan.moving = MovingCombs::Not;
    EXPECT_EQ(movedCombsWords(plan), QStringLiteral("none: combs stay in their hives"));
    EXPECT_EQ(yardSmallLine(plan), QStringLiteral("Planned without moving combs between hives."));
    plan.disease = true;
    EXPECT_TRUE(movedCombsWords(plan).contains(QStringLiteral("signs of disease")));
    plan = {};
    plan.gifts = together().front()->answer.advice.gifts;
    plan.moving = MovingCombs::Not;
    EXPECT_EQ(movedCombsWords(plan),
              plan.gifts.empty() ? QStringLiteral("none: combs stay in their hives") : QStringLiteral("\u2026"))
        << "answers of before are no plan";
}

TEST(YardTogether, SignsOfDiseaseInOneColonyAreSeenInThePlan) {
    for (const bool trouble : {true, false}) {
        Yard yard;
        const auto id = invented::add(yard, invented::colony("Pear"));
        auto made = std::make_shared<AnsweredColony>(*invented::answered(yard.find(id)->record));
        made->question.trouble = trouble;
        yard.takeAnswer(id, made);
        EXPECT_EQ(planOf(yard).disease, trouble);
    }
}

TEST(YardTogether, WithoutMovingCombsEveryAnswerIsTheOneOfItsOwnHive) {
    const CoreAdviser adviser(invented::shipped(), {1, 1000}, 1);
    const auto apart = adviser.shareOut(together(), MovingCombs::Not);
    ASSERT_EQ(apart.size(), together().size());
    int moved = 0;
    for (std::size_t i = 0; i < apart.size(); ++i) {
        moved += static_cast<int>(together()[i]->answer.advice.gifts.size());
        EXPECT_TRUE(apart[i]->answer.advice.gifts.empty());
        if (!apart[i]->answer.advice.plan)
            EXPECT_EQ(apart[i], invented::demoAnswers()[i]) << "nothing is reckoned anew";
    }
    EXPECT_GT(moved, 0) << "else there is nothing to switch off";
    const auto again = adviser.shareOut(apart, MovingCombs::Allowed);
    for (std::size_t i = 0; i < again.size(); ++i)
        EXPECT_EQ(again[i]->answer.advice.plan, together()[i]->answer.advice.plan);
}

TEST(YardPaperTogether, SaysWhichCombsMoveWhereAsThePlansPageDoes) {
    SharedYard yard;
    const auto plan = planOf(yard);
    const auto rows = ofKind(plan, JobKind::MoveCombs);
    ASSERT_FALSE(rows.empty());
    ASSERT_FALSE(plan.gifts.empty());
    const QString paper = yardSheet(yard, {}, invented::shipped().get()).html;
    for (const auto& row : rows) {
        ASSERT_TRUE(row.exchange) << row.colony.toStdString();
        EXPECT_TRUE(said(row).find("from the left") != std::string::npos) << said(row);
        EXPECT_TRUE(paper.contains(jobWords(row).toHtmlEscaped())) << said(row);
    }
    for (const auto& job : plan.jobs) {
        if (job.date)
            EXPECT_TRUE(paper.contains(words::dateWithWeekday(*job.date).replace(QLatin1Char(' '), QChar::Nbsp)))
                << "a long row beside it breaks no day";
    }
    EXPECT_FALSE(
        paper.contains(QStringLiteral("<td align='left'>%1</td>").arg(print::wordOf("move-combs", words::style()))))
        << "no row without its combs";
    yard.moveCombs(MovingCombs::Not);
    const SharedYard alone(invented::demoAnswers());
    EXPECT_LE(plan.totals.sugar, planOf(alone).totals.sugar) << "combs first, then sugar for what is still missing";
}

class TogetherDesk : public WindowDesk {
protected:
    bool combsMoved() {
        const auto& colonies = window.yard()->colonies();
        return std::any_of(colonies.begin(), colonies.end(), [](const auto& colony) {
            return colony.answered && !colony.answered->answer.advice.gifts.empty();
        });
    }
    QString paper() { return yardSheet(*window.yard(), {}, invented::shipped().get()).html; }
};

TEST_F(TogetherDesk, TheSwitchShowsThePlanAndEveryAnswerWithoutMovingCombs) {
    answerReally();
    open(invented::demoYard());
    window.choose({});
    settle();
    auto* combs = button(window.yardView(), "Move frames between hives");
    EXPECT_TRUE(combs->isChecked()) << "at first they may move";
    ASSERT_TRUE(combsMoved());
    const QString before = paper();
    EXPECT_TRUE(before.contains(print::headingOf("gifts", words::style())));
    combs->click();
    settle();
    EXPECT_FALSE(combs->isChecked());
    EXPECT_FALSE(combsMoved());
    EXPECT_TRUE(ofKind(planOf(*window.yard()), JobKind::MoveCombs).empty());
    EXPECT_FALSE(paper().contains(print::headingOf("gifts", words::style())));
    EXPECT_TRUE(paper().contains(QStringLiteral("Planned without moving frames")));
    window.yard()->showDay(invented::day("2026-09-15"));
    settle();
    EXPECT_FALSE(combsMoved()) << "it stays so as long as the window is open";
    window.yard()->showDay(invented::day("2026-09-14"));
    settle();
    combs->click();
    settle();
    EXPECT_TRUE(combsMoved());
    EXPECT_EQ(paper(), before) << "switched on again all is as it was";
}

TEST_F(TogetherDesk, AnotherBookIsShownAsTheKeeperChose) {
    answerSlowly();
    open({invented::colony("A")});
    window.choose({});
    button(window.yardView(), "Move combs between hives")->click();
    { const auto made = invented::bookOf(folder.filePath(QStringLiteral("other.larder")), {invented::colony("B")}); }
    window.books()->open(folder.filePath(QStringLiteral("other.larder")));
    settle();
    EXPECT_EQ(window.yard()->state().moving, MovingCombs::Not);
    EXPECT_FALSE(button(window.yardView(), "Move combs between hives")->isChecked());
}

namespace {

//! Makes a plan once it may: with it every colony has honey to spare.
struct WaitingPlanner : invented::SlowAdviser {
    WaitingPlanner() : SlowAdviser(std::chrono::milliseconds(1)) {}
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard, MovingCombs) const override {
        while (!may) std::this_thread::sleep_for(std::chrono::milliseconds(1));
        std::vector<AnsweredPointer> planned;
        for (const auto& alone : yard) {
            auto made = std::make_shared<AnsweredColony>(*alone);
            made->answer.advice = invented::advice(alone->record, {Verdict::Harvest});
            planned.push_back(made);
        }
        return planned;
    }
    using Verdict = advice::Verdict;
    mutable std::atomic<bool> may{true};
};

} // namespace

// The answer kept in the book is the one on the screen, and both are the one in the plan of the yard.
TEST_F(TogetherDesk, AnAdviceIsActedOnOnlyOnceItStandsInThePlanOfTheYard) {
    const auto planner = std::make_shared<WaitingPlanner>();
    window.useAdviser(planner);
    open({invented::colony("A"), invented::colony("B")});
    auto* plan = window.colonyView()->answer()->planButton();
    EXPECT_TRUE(plan->isEnabled());
    planner->may = false;
    window.yard()->showDay(invented::day("2026-09-15"));
    ASSERT_TRUE(invented::waitFor([&] {
        return window.yard()->records(entry().id) && !entry().pending &&
               entry().record.asOf == invented::day("2026-09-15") && !window.yard()->busy();
    }));
    QTest::qWait(30);
    EXPECT_EQ(entry().answered->answer.advice.verdict, advice::Verdict::Feed) << "weighed alone";
    EXPECT_FALSE(plan->isEnabled());
    emit window.colonyView()->answer()->planAsked();
    QTest::qWait(30);
    planner->may = true;
    settle();
    EXPECT_TRUE(records().advices.empty()) << "it was not the answer of the plan";
    EXPECT_TRUE(plan->isEnabled());
    QTest::mouseClick(plan, Qt::LeftButton);
    settle();
    ASSERT_EQ(records().advices.size(), 1U);
    EXPECT_EQ(records().advices[0].verdict, "harvest");
    EXPECT_EQ(entry().answered->answer.advice.verdict, advice::Verdict::Harvest);
}

// A neighbour that changes may change what moves between them: till that is known nothing is acted on.
TEST_F(TogetherDesk, ThePlanIsMadeAnewWhenANeighbourOrTheSwitchChanges) {
    const auto planner = std::make_shared<WaitingPlanner>();
    window.useAdviser(planner);
    open({invented::colony("A"), invented::colony("B")});
    auto* plan = window.colonyView()->answer()->planButton();
    for (const auto combs : {MovingCombs::Not, MovingCombs::Allowed}) {
        planner->may = false;
        window.yard()->moveCombs(combs);
        EXPECT_FALSE(plan->isEnabled());
        planner->may = true;
        settle();
        EXPECT_TRUE(plan->isEnabled());
    }
    const auto a = entry().id;
    look(1);
    planner->may = false;
    auto other = window.yard()->lookToEdit(entry().id);
    other.bees.coveredCombs = 3;
    window.yard()->writeLook(other);
    window.choose(a);
    ASSERT_TRUE(invented::waitFor([&] { return entry().id == a && !entry().pending; }));
    EXPECT_FALSE(plan->isEnabled()) << "of a colony whose own records are as they were";
    planner->may = true;
    settle();
    EXPECT_TRUE(plan->isEnabled());
}

} // namespace winterlarder::desk
