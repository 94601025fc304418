// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/import_dialog.h"

#include "answer/doubts.h"
#include "app/book_desk.h"
#include "app/buttons.h"
#include "dialogs/backups_dialog.h"
#include "exchange/book/book_document.h"

#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>

namespace winterlarder::desk {

using invented::BookDesk;
using invented::colony;

namespace {

QString written(const QTemporaryDir& folder, const char* name, const std::string& text) {
    QFile file(folder.filePath(QString::fromLatin1(name)));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text.data(), static_cast<qint64>(text.size()));
    return file.fileName();
}

} // namespace

TEST_F(BookDesk, ATableIsPreviewedThenImportedAsOneStep) {
    open({colony("A")});
    const QString file =
        written(folder, "weighings.csv", "colony,date,gross_kg\nA,2026-09-13,41.5\nA,2026-09-14,41.2\n");
    QPointer<ImportDialog> dialog = new ImportDialog(&book, file);
    EXPECT_EQ(dialog->table()->currentText(), QStringLiteral("weighings"));
    settle();
    EXPECT_TRUE(dialog->said().startsWith(QStringLiteral("2 new"))) << dialog->said().toStdString();
    EXPECT_TRUE(yard.records(first().id)->weighings.empty()) << "a preview writes nothing";
    QTest::mouseClick(dialog->importButton(), Qt::LeftButton);
    settle();
    EXPECT_EQ(yard.records(first().id)->weighings.size(), 2U);
    book.undo();
    settle();
    EXPECT_TRUE(yard.records(first().id)->weighings.empty());
}

TEST_F(BookDesk, RowsThatAreNotLikelyAreAskedAboutBeforeTheyAreImported) {
    open({colony("A")});
    const double heaviest = answer::boundsOfCase(first().record, *invented::shipped()).heaviest.value();
    const auto table = [&](double kg) {
        return "colony,date,gross_kg\nA,2026-09-13,41.5\nA,2026-09-14," + std::to_string(kg) + "\n";
    };
    QPointer<ImportDialog> dialog = new ImportDialog(&book, written(folder, "weighings.csv", table(heaviest * 1.1)));
    settle();
    ASSERT_EQ(dialog->faults()->count(), 1);
    EXPECT_TRUE(dialog->faults()->item(0)->text().contains(QStringLiteral(":3:1: ")))
        << dialog->faults()->item(0)->text().toStdString();
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    dialog->sure()->setChecked(true);
    EXPECT_TRUE(dialog->importButton()->isEnabled());
    dialog->importButton()->click();
    settle();
    ASSERT_EQ(yard.records(first().id)->weighings.size(), 2U);
    EXPECT_FALSE(yard.records(first().id)->weighings[0].weighing.sure);
    EXPECT_TRUE(yard.records(first().id)->weighings[1].weighing.sure);
    dialog = new ImportDialog(&book, written(folder, "weighings.csv", table(480)));
    settle();
    EXPECT_TRUE(dialog->sure()->isHidden()) << "it cannot be, however sure";
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    delete dialog;
}

TEST_F(BookDesk, ATableWhoseNameSaysNothingIsKnownByItsColumns) {
    open({colony("A")});
    for (const auto& [text, table] : {std::pair("colony,date,gross_kg\nA,2026-09-13,41.5\n", "weighings"),
                                      std::pair("colony,date,kg,combs\nA,2026-09-13,4,2\n", "harvests")}) {
        QPointer<ImportDialog> dialog = new ImportDialog(&book, written(folder, "numbers.csv", text));
        settle();
        EXPECT_EQ(dialog->table()->currentText(), QLatin1String(table));
        EXPECT_TRUE(dialog->said().startsWith(QStringLiteral("1 new"))) << dialog->said().toStdString();
        delete dialog;
    }
}

TEST_F(BookDesk, AFileThatCannotBeReadIsSaid) {
    open({colony("A")});
    QPointer<ImportDialog> dialog = new ImportDialog(&book, folder.filePath(QStringLiteral("none.csv")));
    settle();
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    ASSERT_EQ(dialog->faults()->count(), 1);
    EXPECT_TRUE(dialog->faults()->item(0)->text().contains(QStringLiteral("cannot be read")))
        << dialog->faults()->item(0)->text().toStdString();
    delete dialog;
}

TEST_F(BookDesk, EveryFaultOfATableIsListedAndNothingImported) {
    open({colony("A")});
    QPointer<ImportDialog> dialog = new ImportDialog(
        &book, written(folder, "weighings.csv", "colony,date,gross_kg\nA,2026-09-31,41.5\nA,2026-09-14,heavy\n"));
    settle();
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    EXPECT_EQ(dialog->faults()->count(), 2);
    EXPECT_TRUE(dialog->faults()->item(0)->text().contains(QStringLiteral(":2:")))
        << dialog->faults()->item(0)->text().toStdString();
    delete dialog;
}

TEST_F(BookDesk, AWholeBookIsImportedAndTakenBack) {
    open({colony("A")});
    std::string document;
    {
        const QTemporaryDir other;
        auto made = invented::bookOf(other.filePath(QStringLiteral("other.larder")), {colony("B"), colony("C")});
        document = exchange::writeBook(made).value();
    }
    QPointer<ImportDialog> dialog = new ImportDialog(&book, written(folder, "other.json", document));
    settle();
    ASSERT_TRUE(dialog->importButton()->isEnabled()) << dialog->said().toStdString();
    QTest::mouseClick(dialog->importButton(), Qt::LeftButton);
    settle();
    EXPECT_EQ(yard.colonies().size(), 2U);
    book.undo();
    settle();
    ASSERT_EQ(yard.colonies().size(), 1U);
    EXPECT_EQ(first().record.colony, "A");
}

TEST_F(BookDesk, AWholeBookIsAskedAboutBeforeItIsImported) {
    open({colony("A")});
    std::string document;
    {
        const QTemporaryDir other;
        auto made = invented::bookOf(other.filePath(QStringLiteral("other.larder")), {colony("B")});
        const auto weighed = [&](double kg) {
            EXPECT_TRUE(made.apply(book::SingleEdit(book::AddWeighing{
                                       {.colony = {1},
                                        .weighing = {invented::day("2026-09-13"), book::ScaleReading{kilograms(kg)}}}}),
                                   invented::scribe().now(), "keeper")
                            .ok());
        };
        weighed(34);
        weighed(250);
        document = exchange::writeBook(made).value();
    }
    QPointer<ImportDialog> dialog = new ImportDialog(&book, written(folder, "other.json", document));
    settle();
    ASSERT_EQ(dialog->faults()->count(), 1);
    EXPECT_TRUE(dialog->faults()->item(0)->text().contains(QStringLiteral("250.0 kg cannot well be")))
        << dialog->faults()->item(0)->text().toStdString();
    EXPECT_FALSE(dialog->importButton()->isEnabled());
    ASSERT_FALSE(dialog->sure()->isHidden());
    dialog->sure()->setChecked(true);
    ASSERT_TRUE(dialog->importButton()->isEnabled());
    dialog->importButton()->click();
    settle();
    EXPECT_EQ(first().record.colony, "B");
}

TEST_F(BookDesk, AFileThatIsTooLargeIsRefusedInWords) {
    open({colony("A")});
    for (const char* name : {"weighings.csv", "book.json"}) {
        QFile file(folder.filePath(QString::fromLatin1(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.resize(static_cast<qint64>(limits::tableText.bytes) + 1));
        QPointer<ImportDialog> dialog = new ImportDialog(&book, file.fileName());
        settle();
        ASSERT_EQ(dialog->faults()->count(), 1);
        EXPECT_TRUE(dialog->faults()->item(0)->text().contains(QStringLiteral("at most 256 MiB")))
            << dialog->faults()->item(0)->text().toStdString();
        EXPECT_FALSE(dialog->importButton()->isEnabled());
        delete dialog;
    }
}

TEST_F(BookDesk, ThatThereIsNoBackupYetIsSaid) {
    book.create(file(), {});
    settle();
    QPointer<BackupsDialog> dialog = new BackupsDialog(&book);
    EXPECT_TRUE(dialog->list()->item(0)->text().startsWith(QStringLiteral("Reading")))
        << "the folder is read on another thread";
    settle();
    ASSERT_EQ(dialog->list()->count(), 1);
    EXPECT_TRUE(dialog->list()->item(0)->text().contains(QStringLiteral("none yet")));
    dialog->list()->setCurrentRow(0);
    EXPECT_FALSE(button(dialog, "Restore it")->isEnabled());
    QTest::mouseClick(button(dialog, "Make one now"), Qt::LeftButton);
    settle();
    dialog->list()->setCurrentRow(0);
    EXPECT_TRUE(button(dialog, "Restore it")->isEnabled());
    delete dialog;
}

TEST_F(BookDesk, ABackupIsMadeListedAndRestored) {
    open({colony("A")});
    const auto before = first().record;
    QPointer<BackupsDialog> dialog = new BackupsDialog(&book);
    settle();
    const int there = dialog->list()->count();
    QTest::mouseClick(button(dialog, "Make one now"), Qt::LeftButton);
    settle();
    ASSERT_GE(dialog->list()->count(), std::max(1, there));
    auto look = yard.lookToEdit(first().id);
    look.bees.coveredCombs = 3;
    yard.writeLook(look);
    settle();
    ASSERT_NE(first().record, before);
    dialog->list()->setCurrentRow(0);
    QTest::mouseClick(button(dialog, "Restore it"), Qt::LeftButton);
    settle();
    EXPECT_EQ(first().record, before);
    book.undo();
    settle();
    EXPECT_EQ(first().record.bees.coveredCombs, 3);
}

} // namespace winterlarder::desk
