// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "models/due.h"
#include "models/words.h"
#include "models/yard_plan.h"
#include "print/sheet_words.h"
#include "print/yard_sheet.h"
#include "report/colony_sheet.h"
#include "report/yard_plan.h"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTextDocument>
#include <gtest/gtest.h>

#include <set>

namespace winterlarder::desk {

namespace {

QString spaced(const QString& text) {
    return text.normalized(QString::NormalizationForm_KC).simplified(); // ligatures and spaces that do not break
}

struct DemoPaper {
    QTemporaryDir folder;
    QString text, path;
    int pages = 0;
    explicit DemoPaper(const Paper& paper) : path(folder.filePath(QStringLiteral("sheet.pdf"))), pages(pagesOf(paper)) {
        EXPECT_TRUE(saveSheet(paper, path));
        text = spaced(read({path, QStringLiteral("-")}, QStringLiteral("pdftotext")));
    }
    static QString read(QStringList arguments, const QString& program) {
        QProcess process;
        process.start(program, arguments);
        EXPECT_TRUE(process.waitForFinished(20000)) << "this test needs poppler-utils";
        EXPECT_EQ(process.exitCode(), 0);
        return QString::fromUtf8(process.readAllStandardOutput());
    }
    int pdfPages() const {
        const auto lines = read({path}, QStringLiteral("pdfinfo")).split(QLatin1Char('\n'));
        for (const auto& line : lines)
            if (line.startsWith(QStringLiteral("Pages:"))) return line.mid(6).trimmed().toInt();
        return 0;
    }
};

const std::vector<ColonyEntry>& demoColonies() {
    static const auto entries = [] {
        std::vector<ColonyEntry> made;
        for (const auto& answered : invented::demoAnswers())
            made.push_back({{static_cast<int>(made.size()) + 1}, answered->record, answered, false});
        return made;
    }();
    return entries;
}

//! The demo yard with its answers, made anew for each test: what one does with it no other sees.
struct AnsweredDemoYard : Yard {
    AnsweredDemoYard() {
        for (const auto& answered : invented::demoAnswers())
            takeAnswer(invented::add(*this, answered->record), answered);
    }
};

} // namespace

TEST(ColonyPaper, EveryDemoColonyFitsOnOnePageWithVerdictAmountsAndPicture) {
    ASSERT_GE(demoColonies().size(), 6U);
    for (const auto& colony : demoColonies()) {
        const auto paper = colonySheet(colony, *invented::shipped());
        ASSERT_TRUE(paper);
        const DemoPaper sheet(*paper);
        SCOPED_TRACE(paper->footer.toStdString());
        EXPECT_EQ(sheet.pages, 1);
        EXPECT_EQ(sheet.pdfPages(), 1);
        EXPECT_TRUE(sheet.text.contains(spaced(words::answerSentence(*colony.answered))))
            << sheet.text.left(600).toStdString();
        const auto& advice = colony.answered->answer.advice;
        if (advice.need) EXPECT_TRUE(sheet.text.contains(spaced(words::amount(*advice.need))));
        if (advice.verdict == advice::Verdict::Feed)
            EXPECT_TRUE(sheet.text.contains(spaced(words::amount(advice.feed->syrup.sugar))));
        for (const auto& reason : advice.reasons)
            if (reason.id.find('-') != std::string::npos)
                EXPECT_FALSE(sheet.text.contains(QStringLiteral(" %1 ").arg(QString::fromStdString(reason.id))))
                    << reason.id << " is an id, not words";
        EXPECT_TRUE(sheet.text.contains(QStringLiteral("page 1 of 1")));
        const auto images = DemoPaper::read({QStringLiteral("-list"), sheet.path}, QStringLiteral("pdfimages"));
        EXPECT_EQ(images.contains(QStringLiteral("image")), !colony.answered->picture.empty()) << images.toStdString();
    }
}

TEST(ColonyPaper, ThePictureGivesWayBeforeASecondPageIsBegun) {
    int many = 0;
    for (const auto& colony : demoColonies()) {
        const auto longer = std::make_shared<AnsweredColony>(*colony.answered);
        auto& reasons = longer->answer.advice.reasons;
        if (reasons.size() + longer->answer.advice.cautions.size() < 15) continue;
        ++many;
        for (int i = 0; i < 8; ++i) reasons.push_back(reasons.front());
        auto entry = colony;
        entry.answered = longer;
        const auto paper = colonySheet(entry, *invented::shipped());
        ASSERT_TRUE(paper);
        EXPECT_EQ(pagesOf(*paper), 1) << paper->footer.toStdString();
    }
    EXPECT_GT(many, 0);
}

TEST(YardPaper, NumbersStayWithTheirUnitsAndBrackets) {
    AnsweredDemoYard yard;
    const QString html = yardSheet(yard, {}, invented::shipped().get()).html;
    const auto table = html.indexOf(print::headingOf("colonies", words::style()));
    ASSERT_GE(table, 0);
    const QString colonies = html.mid(table, html.indexOf(QStringLiteral("</table>"), table) - table);
    EXPECT_TRUE(colonies.contains(QStringLiteral("\u00a0kg"))) << colonies.left(800).toStdString();
    EXPECT_TRUE(colonies.contains(QStringLiteral("\u00a0to\u00a0")));
    EXPECT_FALSE(colonies.contains(QStringLiteral(" kg")));
    EXPECT_FALSE(colonies.contains(QRegularExpression(QStringLiteral("\\([^)]* ")))) << "no break inside brackets";
}

TEST(YardPaper, NoNumberIsBroken) {
    AnsweredDemoYard yard;
    const DemoPaper sheet(yardSheet(yard, {}, invented::shipped().get()));
    const QString text =
        sheet.read({QStringLiteral("-layout"), sheet.path, QStringLiteral("-")}, QStringLiteral("pdftotext"));
    for (const auto& colony : demoColonies()) {
        const auto& advice = colony.answered->answer.advice;
        if (!advice.bees) continue;
        const QString bees = words::bees(*advice.bees);
        QString bracket = bees.mid(bees.indexOf(QLatin1Char('('))).simplified();
        EXPECT_TRUE(QString(text).replace(QChar::Nbsp, QLatin1Char(' ')).contains(bracket))
            << bracket.toStdString() << " in\n"
            << text.toStdString();
    }
}

TEST(YardPaper, TheAnsweredDemoYardTakesAtMostTwoPagesAndNamesEveryVisit) {
    AnsweredDemoYard yard;
    const auto paper = yardSheet(yard, {}, invented::shipped().get());
    const DemoPaper sheet(paper);
    EXPECT_LE(sheet.pages, 2);
    EXPECT_EQ(sheet.pdfPages(), sheet.pages);
    for (const auto& colony : demoColonies()) {
        EXPECT_TRUE(sheet.text.contains(QString::fromStdString(*colony.record.colony)));
        if (const auto& feed = colony.answered->answer.advice.feed;
            feed && colony.answered->answer.advice.verdict == advice::Verdict::Feed)
            for (const auto& visit : feed->visits)
                EXPECT_TRUE(sheet.text.contains(spaced(words::dateWithWeekday(visit.date))));
    }
    EXPECT_TRUE(sheet.text.contains(QStringLiteral("To buy and to bring")));
}

TEST(YardPaper, ColoniesStandInTheOrderOfTheWindowsList) {
    AnsweredDemoYard yard;
    const auto& colonies = yard.colonies();
    const std::vector<ColonyId> order{colonies[4].id, colonies[2].id, colonies[0].id};
    const auto name = [&](std::size_t at) { return QString::fromStdString(*colonies[at].record.colony); };
    const QString html = yardSheet(yard, order, invented::shipped().get()).html;
    const auto table = html.indexOf(print::headingOf("colonies", words::style()));
    ASSERT_GE(table, 0);
    const auto row = [&](std::size_t at) { return html.indexOf(name(at), table); };
    EXPECT_LT(row(4), row(2));
    EXPECT_LT(row(2), row(0));
    EXPECT_LT(row(0), row(1)) << "who is not named comes after";
    EXPECT_LT(row(1), row(3));
}

// The colour a card has on the screen would be a haze on paper; lines stay dark enough without their colours.
TEST(ColonyPaper, ItsPictureStandsOnWhiteAndIsLegibleInGrey) {
    for (const auto& colony : demoColonies()) {
        const auto paper = colonySheet(colony, *invented::shipped());
        ASSERT_TRUE(paper && paper->picture);
        const QImage picture = paper->picture(QSize(1000, 380)).convertToFormat(QImage::Format_Grayscale8);
        ASSERT_FALSE(picture.isNull());
        int white = 0, dark = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) {
                white += picture.constScanLine(y)[x] == 255;
                dark += picture.constScanLine(y)[x] < 128;
            }
        const double pixels = static_cast<double>(picture.width()) * picture.height();
        EXPECT_GT(white / pixels, 0.5);
        EXPECT_GT(dark / pixels, 0.01);
        EXPECT_EQ(picture.constScanLine(0)[0], 255);
        int blank = 0;
        while (std::all_of(picture.constScanLine(blank), picture.constScanLine(blank) + picture.width(),
                           [](uchar grey) { return grey > 200; }))
            ++blank;
        EXPECT_LT(blank, picture.height() / 12) << "no room is left for a title it does not have";
    }
}

TEST(YardPaper, SaysTheSameAsThePlanPage) {
    AnsweredDemoYard yard;
    const auto plan = planOf(yard);
    std::vector<report::PlannedColony> all;
    for (const auto& colony : yard.colonies())
        all.push_back({&colony.answered->question, &colony.answered->answer.advice});
    const auto sheet = report::yardPlan("Orchard", *yard.asOf(), all, {}, *invented::shipped());
    const auto* visits = sheet.section("visits");
    ASSERT_NE(visits, nullptr);
    ASSERT_EQ(visits->table.rows.size(), plan.jobs.size());
    for (std::size_t i = 0; i < plan.jobs.size(); ++i) {
        const auto& row = visits->table.rows[i];
        EXPECT_EQ(std::get<std::string>(row[1]), plan.jobs[i].colony.toStdString()) << i;
        EXPECT_EQ(std::get<report::Word>(row[2]).id, report::idOf(plan.jobs[i].kind)) << i;
        if (plan.jobs[i].date) EXPECT_EQ(std::get<Date>(row[0]), *plan.jobs[i].date) << i;
    }
    for (const auto& fact : sheet.section("to-buy")->facts)
        if (fact.id == "sugar") EXPECT_EQ(std::get<Mass>(fact.value), plan.totals.sugar);
    for (const auto& colony : yard.colonies()) {
        const auto due = dueOf(*colony.answered);
        const auto tasks = jobsOf(colony);
        EXPECT_EQ(due.kind.has_value(), !tasks.empty());
        if (due.kind && !tasks.empty())
            EXPECT_EQ(due.date, tasks.front().date) << "the list at the left says when to go next";
    }
}

TEST(Paper, ALongYardRunsOverPagesAndRepeatsItsHeadings) {
    Yard yard;
    for (int i = 0; i < 120; ++i) {
        const auto id = invented::add(yard, invented::colony(("Colony " + std::to_string(i)).c_str()));
        yard.takeAnswer(id, invented::answered(yard.find(id)->record, {advice::Verdict::Feed, 9, 20}));
    }
    const DemoPaper sheet(yardSheet(yard, {}, invented::shipped().get()));
    EXPECT_GT(sheet.pages, 3);
    EXPECT_EQ(sheet.pdfPages(), sheet.pages);
    EXPECT_GT(sheet.text.count(QStringLiteral("day colony what")), 1) << sheet.text.left(400).toStdString();
    EXPECT_TRUE(sheet.text.contains(QStringLiteral("Colony 119")));
}

TEST(Paper, NoHeadingIsLeftAloneAtTheFootOfAPage) {
    QStringList headings;
    for (const char* id : {"to-buy", "visits", "colonies", "gifts", "to-mix", "reasons", "cautions", "sources"})
        headings << print::headingOf(id, words::style());
    Yard yard;
    for (int i = 0; i < 60; ++i) {
        const auto id = invented::add(yard, invented::colony(("Colony " + std::to_string(i)).c_str()));
        yard.takeAnswer(id, invented::answered(yard.find(id)->record, {advice::Verdict::Feed, 9, 20}));
        if (i < 30 || i % 6) continue;
        const DemoPaper sheet(yardSheet(yard, {}, invented::shipped().get()));
        for (int page = 1; page < sheet.pages; ++page) {
            const QString number = QString::number(page);
            auto lines = DemoPaper::read({QStringLiteral("-layout"), QStringLiteral("-f"), number, QStringLiteral("-l"),
                                          number, sheet.path, QStringLiteral("-")},
                                         QStringLiteral("pdftotext"))
                             .split(QLatin1Char('\n'), Qt::SkipEmptyParts);
            ASSERT_GT(lines.size(), 2);
            while (!lines.isEmpty() &&
                   (lines.back().contains(QStringLiteral("page ")) || lines.back().simplified().isEmpty()))
                lines.removeLast();
            EXPECT_FALSE(headings.contains(spaced(lines.back())))
                << i + 1 << " colonies, page " << page << ": " << lines.back().toStdString();
        }
    }
}

TEST(Paper, WhereItCannotBeWrittenItSaysSo) {
    AnsweredDemoYard yard;
    EXPECT_FALSE(saveSheet(yardSheet(yard, {}), QStringLiteral("/no/such/folder/sheet.pdf")));
}

TEST(SheetWords, MarksOfDirectionInForeignWordsTurnNothingRound) {
    const auto words = print::textOf(std::string("live \u202eevil\u202c\nsecond"), {});
    for (const char16_t mark : {u'\u202e', u'\u202c', u'\n'}) EXPECT_FALSE(words.contains(QChar(mark))) << int(mark);
    EXPECT_TRUE(words.contains(QStringLiteral("evil")));
}

TEST(SheetWords, EveryIdOfASheetHasWords) {
    std::set<std::string> seen;
    const auto check = [&](const report::Sheet& sheet) {
        for (const auto& section : sheet.sections) {
            EXPECT_NE(print::headingOf(section.id, words::style()).toStdString(), section.id);
            for (const auto& fact : section.facts) seen.insert(fact.id);
            for (const auto& column : section.table.columns) seen.insert(column);
            for (const auto& row : section.table.rows)
                for (const auto& cell : row)
                    if (const auto* word = std::get_if<report::Word>(&cell))
                        EXPECT_TRUE(word->id.find('-') == std::string::npos ||
                                    print::wordOf(word->id, words::style()).toStdString() != word->id)
                            << word->id;
        }
    };
    std::vector<report::PlannedColony> all;
    for (const auto& colony : demoColonies()) {
        check(report::colonySheet(colony.answered->question, colony.answered->answer.advice, *invented::shipped()));
        all.push_back({&colony.answered->question, &colony.answered->answer.advice});
    }
    check(report::yardPlan("Orchard", demoColonies().front().record.asOf, all, {1.0, "CAD", kilograms(5)},
                           *invented::shipped()));
    for (const auto& id : seen)
        EXPECT_TRUE(id.find('-') == std::string::npos || print::nameOf(id, words::style()).toStdString() != id) << id;
    EXPECT_GT(seen.size(), 20U);
}

} // namespace winterlarder::desk
