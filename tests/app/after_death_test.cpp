// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked after a death, and what is said of a followed winter in sections.
#include "answer/dead_hive.h"
#include "app/every_form.h"
#include "dialogs/why_window.h"
#include "models/follow_sections.h"
#include "models/words.h"
#include "pages/follow_panel.h"
#include "pages/scale_page.h"
#include "text/follow_words.h"

#include <QCheckBox>
#include <QComboBox>

namespace winterlarder::desk {

using invented::day;

class AfterDeath : public invented::WindowDesk {
protected:
    void openWinter(const char* on) {
        answerReally();
        window.followWinters({1, 200}, 1);
        auto record = invented::colony("Pear", 8);
        record.hive.boxes = {{"langstroth-deep", std::nullopt, false}, {"langstroth-deep", std::nullopt, false}};
        std::vector<book::CombRecord> combs(20, invented::comb(0, 0, 0, 0));
        for (std::size_t i = 0; i < 12; ++i) combs[i] = invented::comb(0.8, 0, 0, 0);
        record.combs = combs;
        open({record});
        window.yard()->showDay(day(on));
        settle();
    }
    QComboBox* question(EntryForm* form, std::string_view id) {
        for (auto* box : form->findChildren<QComboBox*>())
            if (box->accessibleName() == text::deathQuestion(id)) return box;
        ADD_FAILURE() << id << " is not asked";
        return nullptr;
    }
    static QCheckBox* alive(EntryForm* form) {
        for (auto* box : form->findChildren<QCheckBox*>())
            if (box->text() == QStringLiteral("It is &alive")) return box;
        ADD_FAILURE() << "whether it lives is not asked";
        return nullptr;
    }
    static void say(QComboBox* box, int answer) { box->setCurrentIndex(box->findData(answer)); }
    QString panel() { return window.colonyView()->scale()->followed()->said(); }
    QString why() {
        window.explain(entry().id);
        return window.whyWindow()->text();
    }
};

TEST_F(AfterDeath, TheQuestionsAreAskedOnlyWhereItIsDeadAndMayStayOpen) {
    answerSlowly();
    open({invented::colony("Pear")});
    auto* form = askForOutcome(&window, window.yard(), {.colony = entry().id, .date = day("2026-09-14")});
    for (const auto id : answer::deathQuestions) EXPECT_FALSE(question(form, id)->isVisible()) << id;
    alive(form)->click();
    for (const auto id : answer::deathQuestions) EXPECT_TRUE(question(form, id)->isVisible()) << id;
    say(question(form, "heads_in_cells"), 1);
    say(question(form, "brood_pattern"), static_cast<int>(book::BroodPattern::Patchy));
    write(form);
    ASSERT_EQ(records().outcomes.size(), 1U);
    const auto& told = records().outcomes.front();
    EXPECT_EQ(told.headsInCells, true);
    EXPECT_EQ(told.broodPattern, book::BroodPattern::Patchy);
    EXPECT_FALSE(told.foodLeft || told.mitesOnFloor || told.queen) << "not answered stays not answered";
}

TEST_F(AfterDeath, OfALivingColonyNothingIsKeptOfThem) {
    answerSlowly();
    open({invented::colony("Pear")});
    auto* form = askForOutcome(&window, window.yard(),
                               {.colony = entry().id, .date = day("2026-09-14"), .alive = false, .queen = true});
    EXPECT_EQ(question(form, "queen")->currentData().toInt(), 1);
    alive(form)->click();
    write(form);
    ASSERT_EQ(records().outcomes.size(), 1U);
    EXPECT_TRUE(records().outcomes.front().alive);
    EXPECT_FALSE(records().outcomes.front().queen);
}

TEST_F(AfterDeath, ThePageAndWhySayWhatTheAnswersPointTo) {
    openWinter("2027-03-01");
    EXPECT_FALSE(panel().contains(text::deathQuestion("queen"))) << "a living colony is not asked";
    book::WinterOutcome outcome{.colony = entry().id, .date = day("2027-02-20"), .alive = false, .headsInCells = true};
    window.yard()->apply(book::SingleEdit(book::AddWinterOutcome{outcome}));
    settle();
    ASSERT_TRUE(window.yard()->followed(entry().id));
    EXPECT_EQ(window.yard()->followed(entry().id)->following->state, tracking::FollowState::Dead);
    const QString page = panel();
    EXPECT_TRUE(page.contains(QStringLiteral("Bees head down in the cells: they starved"))) << page.toStdString();
    EXPECT_FALSE(page.contains(text::deathQuestion("heads_in_cells"))) << "it was answered";
    for (const char* open : {"food_left", "mites_on_floor", "brood_pattern", "queen"})
        EXPECT_TRUE(page.contains(text::deathQuestion(open))) << open;
    EXPECT_TRUE(why().contains(QStringLiteral("Bees head down in the cells: they starved"))) << why().toStdString();
}

TEST_F(AfterDeath, AFollowedWinterIsToldInTheWordsOfTheTrade) {
    openWinter("2027-01-20");
    auto winter = *window.yard()->followed(entry().id);
    ASSERT_TRUE(winter.leads());
    auto& f = *winter.following;
    const SeasonDay today = winter.colony.question->today;
    const auto said = [&winter] {
        QStringList all;
        for (const auto& section : followSections(winter)) all << section.heading << section.lines;
        return all.join(QLatin1Char('\n'));
    };
    f.feed.reset();
    f.expectedLater.reset();
    f.now.reserveBy = {today + 30, today + 50, {}};
    EXPECT_FALSE(said().contains(QStringLiteral("To feed")));
    EXPECT_TRUE(said().contains(QStringLiteral("It falls below 5 kg (11 lb) from "))) << said().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("Spring forage starts around")));
    f.feed = tracking::WinterFeed{.stores = kilograms(2), .fondant = kilograms(2.5), .by = today + 27};
    f.feed->lots = {{today + 20, day("2027-02-09"), kilograms(2.5)}};
    f.expectedLater = tracking::LaterFeed{{}, {kilograms(0), kilograms(1.5), kilograms(4)}, today + 40, today + 90};
    EXPECT_TRUE(said().contains(QStringLiteral("of fondant touching the cluster"))) << said().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("It is wanted by 16 Feb"))) << said().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("up to 4 kg (9 lb) of fondant, more likely 1.5 kg (3 lb)")))
        << said().toStdString();
    for (const char* word : {"reserve is touched", "irst forage", "begin by", "go on until"})
        EXPECT_FALSE(said().contains(QLatin1String(word))) << word;
}

TEST_F(AfterDeath, GoodPracticeOfAFollowedWinterStandsBehindTheButton) {
    openWinter("2027-01-20");
    auto winter = std::make_shared<FollowedWinter>(*window.yard()->followed(entry().id));
    ASSERT_TRUE(winter->leads());
    EXPECT_LE(winter->following->cautions.size(), 5U);
    winter->following->goodPractice = {Remark{"flight-may-be-robbers", {}}};
    window.yard()->takeFollowed(entry().id, winter);
    EXPECT_FALSE(why().contains(QStringLiteral("Bees that fly from a dead colony")));
    auto* practice = window.whyWindow()->findChild<QPushButton*>();
    for (auto* button : window.whyWindow()->findChildren<QPushButton*>())
        if (button->isCheckable()) practice = button;
    ASSERT_TRUE(practice && practice->isVisible());
    practice->click();
    EXPECT_TRUE(window.whyWindow()->text().contains(QStringLiteral("Bees that fly from a dead colony")));
    winter->following->goodPractice.clear();
    why();
    EXPECT_FALSE(practice->isVisible()) << "nothing is hidden behind it";
}

} // namespace winterlarder::desk
