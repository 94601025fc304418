// SPDX-License-Identifier: GPL-3.0-or-later
// A winter followed in the window, what was learned, and what comes in from tables.
#include "app/buttons.h"
#include "app/window_desk.h"
#include "dialogs/scale_log_dialog.h"
#include "forms/record_list.h"
#include "models/follow_sections.h"
#include "models/past_forecast_model.h"
#include "models/words.h"
#include "models/yard_list_model.h"
#include "models/yard_plan_words.h"
#include "pages/answer_panel.h"
#include "pages/follow_panel.h"
#include "pages/past_page.h"
#include "pages/place_page.h"
#include "pages/scale_page.h"
#include "pages/story_page.h"
#include "pages/weather_part.h"
#include "pages/what_if_page.h"
#include "pages/yard_view.h"
#include "plots/follow_series.h"
#include "text/follow_words.h"
#include "text/grounds/grounds.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QTextStream>

namespace winterlarder::desk {

using invented::WindowDesk;

namespace {

// One hive weighed well in autumn: twelve of twenty combs full.
book::ColonyCase heavyHive(const char* name) {
    auto record = invented::colony(name, 8);
    record.hive.boxes = {{"langstroth-deep", std::nullopt, false}, {"langstroth-deep", std::nullopt, false}};
    record.hive.tare = kilograms(24);
    std::vector<book::CombRecord> combs(20, invented::comb(0, 0, 0, 0));
    for (std::size_t i = 0; i < 12; ++i) combs[i] = invented::comb(0.8, 0, 0, 0);
    record.combs = combs;
    return record;
}

} // namespace

class FollowDesk : public WindowDesk {
protected:
    void openFollowing(const char* on) {
        answerReally();
        window.followWinters({1, 300}, 1);
        { const auto made = invented::bookOf(file(), {heavyHive("Pear")}); }
        openFile();
        window.yard()->showDay(invented::day(on));
        settle();
    }
    void weigh(const char* date, double gross) {
        window.yard()->writeWeighing(
            {.colony = entry().id, .weighing = {invented::day(date), book::ScaleReading{kilograms(gross)}}});
        settle();
    }
    FollowedPointer followed() { return window.yard()->followed(entry().id); }
    FollowPanel* panel() { return window.colonyView()->scale()->followed(); }
    QString sentence() {
        const auto* label = answerLabel();
        return label ? label->text() : QString();
    }
    //! The measured days of the yard, on the page of its place.
    WeatherPart* openWeather() {
        window.choose({});
        window.yardView()->showPage(YardPage::Place);
        settle();
        return window.yardView()->place()->weather();
    }
    QString inList(int role) {
        auto* list = window.yardList();
        return list->index(list->rowOf(entry().id)).data(role).toString();
    }
    double expectedGross(const char* date) {
        weigh(date, 45);
        const double typical = followed()->following->judged.at(0).expected.typical;
        undo();
        return typical;
    }
    QString table(const char* name, const QString& text) {
        QFile made(folder.filePath(QString::fromLatin1(name)));
        EXPECT_TRUE(made.open(QIODevice::WriteOnly));
        made.write(text.toUtf8());
        return made.fileName();
    }
};

TEST_F(FollowDesk, InAutumnTheDecisionIsTheAnswer) {
    openFollowing("2026-09-14");
    ASSERT_TRUE(followed());
    EXPECT_FALSE(followed()->leads());
    EXPECT_FALSE(sentence().startsWith(QStringLiteral("On course")));
}

TEST_F(FollowDesk, EveryNumberOfAFollowedWinterCanBeAskedAbout) {
    openFollowing("2027-01-20");
    weigh("2027-01-10", expectedGross("2027-01-10") - 9);
    ASSERT_TRUE(followed() && followed()->leads());
    const auto& q = *followed()->colony.question;
    const auto& f = *followed()->following;
    int asked = 0;
    for (const QString& said :
         {text::followHeadline(q, f, words::style(), text::askably),
          text::followRisk(q, f, words::style(), text::askably), text::followNext(q, f, words::style(), text::askably)})
        for (const auto& part : text::partsOf(said)) {
            if (!part.number) continue;
            const auto grounds = text::groundsOf(*part.number, q, f, *invented::shipped(), words::style());
            ASSERT_TRUE(grounds) << part.text.toStdString();
            EXPECT_FALSE(grounds->lines.empty()) << grounds->title.toStdString();
            for (const auto& line : grounds->lines) {
                EXPECT_FALSE(line.said.contains(QLatin1Char('%'))) << line.said.toStdString();
                for (const auto& id : line.sources) EXPECT_NE(invented::shipped()->source(id), nullptr) << id;
            }
            ++asked;
        }
    EXPECT_GE(asked, 7);
    const auto left = text::groundsOf(text::AskedNumber::LeftToday, q, f, *invented::shipped(), words::style());
    EXPECT_TRUE(left->lines.front().said.contains(QStringLiteral("10 January 2027"))) << "what was weighed is told";
}

TEST_F(FollowDesk, TheButtonsBesideALongWinterAreSeen) {
    openFollowing("2027-01-20");
    window.colonyView()->showPage(ColonyPage::Scale);
    const auto* page = window.colonyView()->scale();
    for (const int tall : {900, 650, 900}) {
        window.resize(1360, tall);
        QTest::qWait(20);
        const int seen = page->parentWidget()->height();
        if (tall == 650) ASSERT_GT(page->height(), seen) << "else nothing is out of sight anyway";
        for (const auto* button : page->weighings()->findChildren<QPushButton*>())
            if (button->isVisible())
                EXPECT_LE(button->mapTo(page, QPoint(0, button->height())).y(), seen)
                    << button->text().toStdString() << " at " << tall;
    }
}

TEST_F(FollowDesk, InWinterTheAnswerAndThePageSayHowItGoes) {
    openFollowing("2027-01-20");
    ASSERT_TRUE(followed() && followed()->leads());
    const auto maybe = QStringLiteral("It may not be enough to reach spring forage without feeding: ");
    EXPECT_TRUE(sentence().startsWith(maybe)) << sentence().toStdString();
    EXPECT_EQ(inList(YardListModel::VerdictRole), QStringLiteral("feed later")) << "the yard's list says the same";
    EXPECT_FALSE(small("Whether to feed cannot be said yet")) << "nor does the page Feeding contradict it";
    window.colonyView()->showPage(ColonyPage::WhatIf);
    EXPECT_FALSE(window.colonyView()->whatIf()->isEnabled());
    EXPECT_TRUE(window.colonyView()->whatIf()->said().contains(QStringLiteral("under way")))
        << window.colonyView()->whatIf()->said().toStdString();
    auto lacking = *followed()->following;
    const SeasonDay later{followed()->colony.question->today.w + 20};
    lacking.feed = tracking::WinterFeed{.stores = kilograms(2), .fondant = kilograms(2.5), .by = later};
    lacking.fallsShort = true;
    lacking.now.touchReserve.share = 0.51;
    const QString notEnough = text::followHeadline(*followed()->colony.question, lacking, {});
    EXPECT_TRUE(notEnough.startsWith(
        QStringLiteral("Not enough to reach spring forage without feeding: 51 of 100 winters fall below ")))
        << notEnough.toStdString();
    EXPECT_TRUE(notEnough.endsWith(QStringLiteral(". On 9 February 2027 lay 2.5 kg of fondant on the bees.")));
    lacking.state = tracking::FollowState::LessThanThought;
    EXPECT_TRUE(text::followHeadline(*followed()->colony.question, lacking, {})
                    .startsWith(QStringLiteral("Less was in the hive than was thought. On ")));
    const double usual = expectedGross("2027-01-18");
    weigh("2027-01-18", usual - 8);
    EXPECT_EQ(followed()->following->state, tracking::FollowState::LessThanThought)
        << "one weighing does not tell that they eat faster";
    EXPECT_TRUE(sentence().startsWith(QStringLiteral("Less was in the hive than was thought")))
        << sentence().toStdString();
    const QString said = panel()->said();
    for (const char* part : {"Less was in the hive", "Dates that matter", "Spring forage starts around", "The safe way",
                             "do not open", "Seen since", "scale"})
        EXPECT_TRUE(said.contains(QLatin1String(part))) << part << "\n" << said.toStdString();
    undo();
    EXPECT_TRUE(sentence().startsWith(maybe)) << "undone: " << sentence().toStdString();
    weigh("2027-01-18", usual - 17);
    EXPECT_EQ(followed()->following->state, tracking::FollowState::ActNow);
    EXPECT_TRUE(sentence().contains(QStringLiteral("fondant"))) << sentence().toStdString();
    EXPECT_TRUE(panel()->said().contains(QStringLiteral("of fondant")));
    EXPECT_EQ(inList(YardListModel::VerdictRole), QStringLiteral("act now"));
    EXPECT_EQ(inList(YardListModel::DueRole), QStringLiteral("feed today"));
}

TEST_F(FollowDesk, WhatIsOvertakenIsNotShown) {
    openFollowing("2027-01-20");
    ASSERT_TRUE(followed());
    window.yard()->showDay(invented::day("2027-02-20"));
    EXPECT_FALSE(followed()) << "another day: nothing until it is worked out";
    EXPECT_TRUE(panel()->said().startsWith(QStringLiteral("Following the winter")));
    settle();
    ASSERT_TRUE(followed());
    EXPECT_EQ(followed()->reading.asOf, invented::day("2027-02-20"));
}

// The colony looked at is followed first, then all others of the yard; in autumn only the one looked at.
TEST_F(FollowDesk, EveryColonyOfTheYardIsFollowedInWinter) {
    answerReally();
    window.followWinters({1, 200}, 1);
    { const auto made = invented::bookOf(file(), {heavyHive("Pear"), heavyHive("Quince"), heavyHive("Medlar")}); }
    openFile();
    const auto followedOnes = [&] {
        int count = 0;
        for (const auto& colony : window.yard()->colonies()) count += window.yard()->followed(colony.id) ? 1 : 0;
        return count;
    };
    EXPECT_EQ(followedOnes(), 1);
    window.yard()->showDay(invented::day("2027-01-20"));
    int early = 0;
    ASSERT_TRUE(invented::waitFor([&] {
        early += planOf(*window.yard()).cannotSay;
        return window.settled();
    }));
    EXPECT_EQ(early, 0) << "while winters are being worked out the autumn's question is no answer";
    EXPECT_EQ(followedOnes(), 3);
    const auto plan = planOf(*window.yard());
    int counted = 0;
    for (const auto& each : plan.followed) counted += each.second;
    EXPECT_EQ(counted, 3);
    EXPECT_EQ(plan.cannotSay, 0);
    for (const auto& job : plan.jobs) {
        EXPECT_NE(job.kind, JobKind::CountBees) << "nobody opens a hive in January to count";
        EXPECT_NE(job.kind, JobKind::RecordStores);
    }
    EXPECT_TRUE(yardSentence(plan).startsWith(QStringLiteral("3 colonies: "))) << yardSentence(plan).toStdString();
    const auto kept = window.yard()->followed(window.yard()->colonies().at(1).id);
    look(1);
    EXPECT_EQ(followed(), kept) << "nothing changed: nothing is computed again";
}

TEST_F(FollowDesk, ThePictureHasBothForecastsAndThePoints) {
    openFollowing("2027-01-20");
    weigh("2027-01-18", expectedGross("2027-01-18"));
    const auto series = followSeries(*followed());
    ASSERT_FALSE(series.autumn.empty());
    ASSERT_FALSE(series.now.empty());
    EXPECT_EQ(series.autumn.front().day, series.first);
    EXPECT_EQ(series.now.front().day, series.today);
    EXPECT_EQ(series.autumn.back().day, series.now.back().day);
    for (const auto& band : series.now) {
        EXPECT_LE(band.low, band.middle);
        EXPECT_LE(band.middle, band.high);
        EXPECT_LE(band.high, series.mostKg);
    }
    ASSERT_EQ(series.seen.size(), 1u);
    EXPECT_GT(series.seen[0].sd, 0);
    EXPECT_LT(series.forageLow, series.forageHigh);
    auto nothing = *followed();
    nothing.following.reset();
    EXPECT_TRUE(followSeries(nothing).now.empty());
    EXPECT_TRUE(followSections(nothing).empty());
}

TEST_F(FollowDesk, PastWintersAreComparedLearnedFromAndSwitchedOff) {
    openFollowing("2027-01-20");
    weigh("2027-03-01", expectedGross("2027-01-18") - 2);
    window.yard()->apply(book::SingleEdit(book::AddWinterOutcome{{.colony = entry().id,
                                                                  .date = invented::day("2027-04-15"),
                                                                  .alive = true,
                                                                  .coveredCombs = 7,
                                                                  .storesLeft = kilograms(17)}}));
    settle();
    auto look = book::Look{.colony = entry().id, .date = invented::day("2027-09-12")};
    look.bees.coveredCombs = 8;
    look.combs = heavyHive("Pear").combs;
    window.yard()->writeLook(look);
    window.yard()->showDay(invented::day("2027-09-14"));
    settle();
    auto* past = window.colonyView()->story()->past();
    ASSERT_TRUE(window.yard()->past());
    EXPECT_EQ(past->table()->model()->rowCount(), 1) << past->said().toStdString();
    EXPECT_TRUE(past->said().contains(QStringLiteral("than the model says"))) << past->said().toStdString();
    EXPECT_TRUE(past->said().contains(QStringLiteral("handbook")));
    window.resize(1024, 700);
    window.colonyView()->showPage(ColonyPage::Story);
    window.colonyView()->story()->which()->setCurrentIndex(2);
    QTest::qWait(1);
    const QAbstractItemView* table = past->table();
    EXPECT_LE(past->table()->horizontalHeader()->length(), past->table()->viewport()->width())
        << "all of it is seen at once";
    for (int column = 0; column < PastForecastModel::ColumnCount; ++column) {
        EXPECT_GE(past->table()->columnWidth(column), table->sizeHintForColumn(column)) << "cut off: column " << column;
        EXPECT_NE(past->table()->horizontalHeader()->sectionResizeMode(column), QHeaderView::Stretch)
            << "it would be squeezed before any other";
        EXPECT_FALSE(past->table()->model()->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString().isEmpty());
    }
    ASSERT_TRUE(entry().record.learned) << "the answer uses it";
    EXPECT_TRUE(entry().answered->question.learned);
    EXPECT_EQ(entry().record.learned->winters, 1);

    button(past, "Past winters of these bees correct the forecast in this yard")->setChecked(false);
    settle();
    EXPECT_FALSE(entry().record.learned) << "switched off";
    EXPECT_FALSE(entry().answered->question.learned);
    undo();
    EXPECT_TRUE(entry().record.learned);
    button(past, "Begin anew from today")->click();
    settle();
    EXPECT_FALSE(entry().record.learned) << "begun anew";
    EXPECT_TRUE(past->said().contains(QStringLiteral("since 14 September 2027"))) << past->said().toStdString();
    button(past, "Learn from all winters again")->click();
    settle();
    EXPECT_TRUE(entry().record.learned);
}

TEST_F(FollowDesk, DailyTemperaturesComeInFromATableAndGoAgain) {
    openFollowing("2026-12-10");
    auto* weather = openWeather();
    ASSERT_TRUE(weather);
    QString days = QStringLiteral("date,mean\n");
    for (int day = 1; day <= 30; ++day) days += QStringLiteral("2026-11-%1,-6\n").arg(day, 2, 10, QLatin1Char('0'));
    weather->importFile(table("weather.csv", days));
    auto* dialog = weather->findChild<WeatherDialog*>();
    ASSERT_TRUE(dialog);
    settle();
    EXPECT_TRUE(dialog->said().startsWith(QStringLiteral("Days: 30,"))) << dialog->said().toStdString();
    dialog->importButton()->click();
    settle();
    ASSERT_TRUE(invented::waitFor([&] { return weather->said().startsWith(QStringLiteral("Days measured: 30,")); }))
        << weather->said().toStdString();
    look(0);
    EXPECT_EQ(followed()->colony.question->winter.weatherSoFar.size(), 30u);
    undo();
    EXPECT_TRUE(followed()->colony.question->winter.weatherSoFar.empty());
    WeatherDialog broken(window.yard(), table("broken.csv", QStringLiteral("date,mean\n2026-11-01,warm\n")));
    settle();
    EXPECT_FALSE(broken.importButton()->isEnabled());
    EXPECT_TRUE(broken.said().contains(QStringLiteral(":2:"))) << broken.said().toStdString();
}

TEST_F(FollowDesk, DailyTemperaturesStillToComeAreAskedAboutFirst) {
    openFollowing("2026-12-10");
    auto* weather = openWeather();
    ASSERT_TRUE(weather);
    weather->importFile(
        table("weather.csv", QStringLiteral("date,mean\n2028-05-31,12\n2028-06-03,14\n"))); // today is 1 June 2028
    auto* dialog = weather->findChild<WeatherDialog*>();
    ASSERT_TRUE(dialog);
    settle();
    EXPECT_TRUE(dialog->said().contains(QStringLiteral("3 June 2028 is still to come")))
        << dialog->said().toStdString();
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    EXPECT_TRUE(dialog->sure()->isVisible());
    dialog->sure()->click();
    EXPECT_TRUE(dialog->importButton()->isEnabled());
    dialog->importButton()->click();
    settle();
    ASSERT_TRUE(invented::waitFor([&] { return weather->said().startsWith(QStringLiteral("Days measured: 2,")); }))
        << weather->said().toStdString();
    WeatherDialog past(window.yard(), table("past.csv", QStringLiteral("date,mean\n2028-05-31,12\n2028-06-02,14\n")));
    settle();
    EXPECT_TRUE(past.sure()->isHidden());
    EXPECT_TRUE(past.importButton()->isEnabled());
}

TEST_F(FollowDesk, AScalesLogIsShownConfirmedAndTakenBack) {
    openFollowing("2026-12-10");
    QString log = QStringLiteral("time,weight_kg\n");
    for (int hour = 0; hour < 45 * 24; ++hour) {
        const auto day = invented::day("2026-10-20").plusDays(hour / 24);
        log += QStringLiteral("%1 %2:00,%3\n")
                   .arg(QString::fromStdString(day.iso()))
                   .arg(hour % 24, 2, 10, QLatin1Char('0'))
                   .arg(55 - 0.03 * hour / 24 - (hour >= 20 * 24 + 15 ? 6 : 0), 0, 'f', 3);
    }
    auto* dialog = new ScaleLogDialog(window.yard(), entry().id, table("log.csv", log));
    dialog->show();
    ASSERT_TRUE(invented::waitFor([&] { return dialog->importButton()->isEnabled(); })) << dialog->said().toStdString();
    for (const char* part : {"weight_kg", "in kg", "Days: 45,", "Steps found", "To be written down"})
        EXPECT_TRUE(dialog->said().contains(QLatin1String(part))) << part << "\n" << dialog->said().toStdString();
    const auto before = records().weighings.size();
    dialog->importButton()->click();
    ASSERT_TRUE(invented::waitFor([&] { return records().weighings.size() > before; }));
    settle();
    EXPECT_EQ(records().manipulations.size() + records().harvests.size(), 1u);
    undo();
    EXPECT_EQ(records().weighings.size(), before) << "one step takes it back";
    ScaleLogDialog none(window.yard(), entry().id, folder.filePath(QStringLiteral("nothing.csv")));
    ASSERT_TRUE(invented::waitFor([&] { return none.idle(); }));
    EXPECT_TRUE(none.said().contains(QStringLiteral("cannot be opened"))) << none.said().toStdString();
}

TEST_F(FollowDesk, WhatIsDueIsWrittenAsACalendar) {
    openFollowing("2027-01-20");
    weigh("2027-01-18", expectedGross("2027-01-18") - 17);
    const QString to = folder.filePath(QStringLiteral("due.ics"));
    window.writeCalendar(to);
    ASSERT_TRUE(invented::waitFor([&] { return !window.banner()->said(QStringLiteral("calendar")).isEmpty(); }));
    QFile made(to);
    ASSERT_TRUE(made.open(QIODevice::ReadOnly));
    const auto text = made.readAll();
    EXPECT_TRUE(text.startsWith("BEGIN:VCALENDAR"));
    EXPECT_TRUE(text.contains("SUMMARY:Pear: Fondant\\, 2.5 kg")) << text.toStdString();
}

} // namespace winterlarder::desk
