// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"
#include "combs/comb_drawing.h"
#include "dialogs/import_dialog.h"
#include "dialogs/scale_log_dialog.h"
#include "pages/look_page.h"
#include "photograph/photograph_window.h"

#include <QComboBox>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QImage>
#include <QMimeData>
#include <QUrl>

//! Files that are let fall on the window.
namespace winterlarder::desk::dropping_test {

using invented::colony;

class Dropping : public invented::WindowDesk {
protected:
    void SetUp() override {
        answerSlowly();
        open({colony("Apple")});
    }
    QString written(const char* name, const QByteArray& text) {
        QFile to(folder.filePath(QString::fromLatin1(name)));
        EXPECT_TRUE(to.open(QIODevice::WriteOnly));
        to.write(text);
        return to.fileName();
    }
    void drop(const QStringList& files) {
        QMimeData data;
        QList<QUrl> urls;
        for (const QString& each : files) urls << QUrl::fromLocalFile(each);
        data.setUrls(urls);
        QDragEnterEvent enter(QPoint(400, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window, &enter);
        ASSERT_TRUE(enter.isAccepted());
        QDropEvent event(QPointF(400, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window, &event);
        settle();
    }
    QString said() { return window.banner()->said(QStringLiteral("dropped")); }
};

TEST_F(Dropping, ABookIsOpened) {
    const QString other = folder.filePath(QStringLiteral("other.larder"));
    { const auto made = invented::bookOf(other, {colony("Quince")}); }
    drop({other});
    EXPECT_EQ(window.book()->state()->file, other);
    EXPECT_EQ(window.yard()->colonies().front().record.colony, "Quince");
}

TEST_F(Dropping, CaseFilesAreOpenedTogether) {
    const QByteArray quince =
        R"({"case": 1, "colony": "Quince", "as_of": "2026-09-14", "site": {"station": "ca-halifax"},
            "hive": {"format": "langstroth-deep", "boxes": 1}})";
    drop({written("quince.json", quince), written("pear.json", QByteArray(quince).replace("Quince", "Pear"))});
    EXPECT_TRUE(window.books()->isTemporary());
    EXPECT_EQ(window.yard()->colonies().size(), 2U);
}

TEST_F(Dropping, CaseFilesOfOtherWishesAreOpenedInYardsOfTheirOwn) {
    const QString cases = QStringLiteral(SOURCE_FOLDER "/tests/cli/cases/");
    drop({cases + QStringLiteral("light.json"), cases + QStringLiteral("spare.json")});
    EXPECT_TRUE(window.books()->isTemporary());
    std::vector<std::string> names;
    for (const auto& yard : window.yard()->yards()) names.push_back(yard.name);
    EXPECT_EQ(names, (std::vector<std::string>{"Yard (light.json)", "Yard (spare.json)"}));
}

TEST_F(Dropping, ATableIsImportedAsFromTheMenu) {
    drop({written("weighings.csv", "colony,date,gross_kg\nApple,2026-09-13,41.5\n")});
    auto* dialog = window.findChild<ImportDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->table()->currentText(), QStringLiteral("weighings"));
    EXPECT_TRUE(said().isEmpty());
}

TEST_F(Dropping, AWholeBookIsImported) {
    drop({written("whole.json", "{\"larder\": 1, \"yards\": []}")});
    EXPECT_NE(window.findChild<ImportDialog*>(), nullptr);
}

TEST_F(Dropping, ATableThatDoesNotSayWhatItIsIsAskedAbout) {
    const QString log = written("hive-7.csv", "time,weight kg\n2026-09-01 10:00,30\n2026-09-02 10:00,30.1\n");
    drop({log});
    EXPECT_TRUE(said().contains(QStringLiteral("hive-7.csv"))) << said().toStdString();
    button(&window, "The log of its scale\u2026")->click();
    QTest::qWait(5);
    settle();
    EXPECT_NE(window.findChild<ScaleLogDialog*>(), nullptr);
    EXPECT_TRUE(said().isEmpty());
    window.choose({});
    drop({log});
    EXPECT_TRUE(said().contains(QStringLiteral("choose its colony"))) << said().toStdString();
}

TEST_F(Dropping, APhotographMeasuresTheChosenComb) {
    const QString picture = folder.filePath(QStringLiteral("comb.png"));
    QImage drawn(200, 100, QImage::Format_RGB32);
    drawn.fill(Qt::white);
    ASSERT_TRUE(drawn.save(picture));
    window.choose({});
    drop({picture});
    EXPECT_TRUE(said().contains(QStringLiteral("choose the colony and the comb"))) << said().toStdString();
    EXPECT_EQ(window.findChild<PhotographWindow*>(), nullptr);
    look(0);
    window.colonyView()->look()->drawing()->choose(1);
    drop({picture});
    auto* opened = window.findChild<PhotographWindow*>();
    ASSERT_NE(opened, nullptr);
    EXPECT_TRUE(invented::waitFor([&] { return opened->idle(); }));
    EXPECT_EQ(opened->faces().front().path, picture);
    EXPECT_TRUE(said().isEmpty());
    delete opened;
}

TEST_F(Dropping, WhatCannotBeTakenIsSaidAndNothingIsDone) {
    drop({written("letter.odt", "x")});
    EXPECT_TRUE(said().contains(QStringLiteral("letter.odt"))) << said().toStdString();
    drop({folder.path()});
    EXPECT_TRUE(said().contains(QStringLiteral("can be taken"))) << "a folder";
    const QString table = written("weighings.csv", "colony,date,gross_kg\n");
    drop({table, file()});
    EXPECT_TRUE(said().contains(QStringLiteral("One file at a time"))) << said().toStdString();
    EXPECT_EQ(window.findChild<ImportDialog*>(), nullptr);
    EXPECT_EQ(window.book()->state()->file, file());
    window.book()->close();
    settle();
    drop({table});
    EXPECT_TRUE(said().contains(QStringLiteral("belongs to a book"))) << said().toStdString();
    EXPECT_EQ(window.findChild<ImportDialog*>(), nullptr);
}

} // namespace winterlarder::desk::dropping_test
