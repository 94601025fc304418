// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/invented.h"
#include "models/words.h"
#include "print/sheet_words.h"
#include "print/yard_sheet.h"
#include "report/colony_sheet.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QTextDocument>
#include <gtest/gtest.h>

#include <set>

namespace winterlarder::desk {

namespace {

struct DemoPaper {
    QTemporaryDir folder;
    QString text, path;
    int pages = 0;
    explicit DemoPaper(const Paper& paper) : path(folder.filePath(QStringLiteral("sheet.pdf"))), pages(pagesOf(paper)) {
        EXPECT_TRUE(saveSheet(paper, path));
        text = read({path, QStringLiteral("-")}, QStringLiteral("pdftotext")).simplified();
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
        for (const auto& answered : invented::demoAnswers()) made.push_back({{static_cast<int>(made.size()) + 1}, answered->record, answered, false});
        return made;
    }();
    return entries;
}

Yard& demoYard() {
    static Yard yard;
    static const bool filled = [] {
        for (const auto& answered : invented::demoAnswers()) yard.takeAnswer(invented::add(yard, answered->record), answered);
        return true;
    }();
    (void)filled;
    return yard;
}

QString spaced(const QString& text) {
    return QString(text).replace(QChar::Nbsp, QLatin1Char(' ')).simplified();
}

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
        EXPECT_TRUE(sheet.text.contains(spaced(words::answerSentence(*colony.answered)))) << sheet.text.left(600).toStdString();
        const auto& advice = colony.answered->answer.advice;
        if (advice.need) EXPECT_TRUE(sheet.text.contains(words::kilograms(*advice.need)));
        if (advice.verdict == advice::Verdict::Feed) EXPECT_TRUE(sheet.text.contains(words::kilograms(advice.feed->syrup.sugar)));
        for (const auto& reason : advice.reasons) EXPECT_FALSE(sheet.text.contains(QStringLiteral(" %1 ").arg(QString::fromStdString(reason.id)))) << reason.id << " is an id, not words";
        EXPECT_TRUE(sheet.text.contains(QStringLiteral("page 1 of 1")));
        const auto images = DemoPaper::read({QStringLiteral("-list"), sheet.path}, QStringLiteral("pdfimages"));
        EXPECT_EQ(images.contains(QStringLiteral("image")), !colony.answered->picture.empty()) << images.toStdString();
    }
}

TEST(YardPaper, TheDemoYardTakesAtMostTwoPagesAndNamesEveryVisit) {
    const auto paper = yardSheet(demoYard(), invented::shipped().get());
    const DemoPaper sheet(paper);
    EXPECT_LE(sheet.pages, 2);
    EXPECT_EQ(sheet.pdfPages(), sheet.pages);
    for (const auto& colony : demoColonies()) {
        EXPECT_TRUE(sheet.text.contains(QString::fromStdString(*colony.record.colony)));
        if (const auto& feed = colony.answered->answer.advice.feed; feed && colony.answered->answer.advice.verdict == advice::Verdict::Feed)
            for (const auto& visit : feed->visits) EXPECT_TRUE(sheet.text.contains(spaced(words::dateWithWeekday(visit.date))));
    }
    EXPECT_TRUE(sheet.text.contains(QStringLiteral("To buy and to bring")));
}

TEST(Paper, ALongYardRunsOverPagesAndRepeatsItsHeadings) {
    Yard yard;
    for (int i = 0; i < 120; ++i) {
        const auto id = invented::add(yard, invented::colony(("Colony " + std::to_string(i)).c_str()));
        yard.takeAnswer(id, invented::answered(yard.find(id)->record, {advice::Verdict::Feed, 9, 20}));
    }
    const DemoPaper sheet(yardSheet(yard, invented::shipped().get()));
    EXPECT_GT(sheet.pages, 3);
    EXPECT_EQ(sheet.pdfPages(), sheet.pages);
    EXPECT_GT(sheet.text.count(QStringLiteral("day colony what")), 1) << sheet.text.left(400).toStdString();
    EXPECT_TRUE(sheet.text.contains(QStringLiteral("Colony 119")));
}

TEST(Paper, WhereItCannotBeWrittenItSaysSo) {
    EXPECT_FALSE(saveSheet(yardSheet(demoYard()), QStringLiteral("/no/such/folder/sheet.pdf")));
}

TEST(SheetWords, EveryIdOfASheetHasWords) {
    std::set<std::string> seen;
    const auto check = [&](const report::Sheet& sheet) {
        for (const auto& section : sheet.sections) {
            EXPECT_NE(print::headingOf(section.id).toStdString(), section.id);
            for (const auto& fact : section.facts) seen.insert(fact.id);
            for (const auto& column : section.table.columns) seen.insert(column);
            for (const auto& row : section.table.rows)
                for (const auto& cell : row)
                    if (const auto* word = std::get_if<report::Word>(&cell)) EXPECT_TRUE(word->id.find('-') == std::string::npos || print::wordOf(word->id).toStdString() != word->id) << word->id;
        }
    };
    std::vector<report::PlannedColony> all;
    for (const auto& colony : demoColonies()) {
        check(report::colonySheet(colony.answered->question, colony.answered->answer.advice, *invented::shipped()));
        all.push_back({&colony.answered->question, &colony.answered->answer.advice});
    }
    check(report::yardPlan("Orchard", demoColonies().front().record.asOf, all, {1.0, "CAD", kilograms(5)}, *invented::shipped()));
    for (const auto& id : seen) EXPECT_TRUE(id.find('-') == std::string::npos || print::nameOf(id).toStdString() != id) << id;
    EXPECT_GT(seen.size(), 20U);
}

} // namespace winterlarder::desk
