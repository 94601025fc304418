// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/banner.h"
#include "desk/book_actions.h"
#include "dialogs/documents.h"
#include "dialogs/history_dialog.h"
#include "exchange/book/book_csv.h"
#include "exchange/book/book_document.h"
#include "models/problem_words.h"
#include "models/yard.h"

#include <QDir>
#include <QFileDialog>

#include <utility>

//! What is written down, written out for other programs.
namespace winterlarder::desk {

namespace {

QString fileOfTable(const QString& folder, const std::string& table) {
    return QDir(folder).filePath(QString::fromStdString(table) + QStringLiteral(".csv"));
}

QStringList tablesThere(const QString& folder) {
    QStringList there;
    for (const auto& table : exchange::csvTables())
        if (QFileInfo::exists(fileOfTable(folder, table))) there << QFileInfo(fileOfTable(folder, table)).fileName();
    return there;
}

Problem notWritten(const QString& file) {
    return {ProblemKind::File, {file.toStdString(), 0, 0}, "cannot be written", "choose another folder"};
}

Outcome<int> writeAllTables(book::Book& book, const QString& folder) {
    std::vector<std::pair<QString, std::string>> files;
    for (const auto& table : exchange::csvTables()) {
        auto text = exchange::writeCsv(book, table);
        if (!text.ok()) return text.problems();
        files.emplace_back(fileOfTable(folder, table), std::move(text).value());
    }
    for (const auto& [file, text] : files)
        if (!saveText(file, text)) return notWritten(file);
    return static_cast<int>(files.size());
}

} // namespace

void BookActions::writeDocument(const QString& file) {
    book_->ask(
        this,
        [file](book::Book& book) -> Outcome<Done> {
            const auto text = exchange::writeBook(book);
            if (!text.ok()) return text.problems();
            if (!saveText(file, *text)) return notWritten(file);
            return Done{};
        },
        [this, file](const Outcome<Done>& written) {
            banner_->showMessage(
                QStringLiteral("export"),
                written.ok()
                    ? tr("Everything written down is in %1. Steps that can be undone, and photographs, are not in it.")
                          .arg(file)
                    : tr("The book was not written out.\n%1").arg(problemWords(written.problems())));
        });
}

void BookActions::writeTables(const QString& folder) {
    if (const auto there = tablesThere(folder); !there.isEmpty())
        return banner_->showMessage(
            QStringLiteral("export"),
            tr("Nothing was written: %1 holds %2 already. Choose an empty folder.").arg(folder, there.front()));
    book_->ask(
        this, [folder](book::Book& book) { return readTogether(book, [&] { return writeAllTables(book, folder); }); },
        [this, folder](const Outcome<int>& written) {
            banner_->showMessage(
                QStringLiteral("export"),
                written.ok() ? tr("%n tables were written into %1.", nullptr, *written).arg(folder)
                             : tr("The tables were not all written.\n%1").arg(problemWords(written.problems())));
        });
}

void BookActions::saveDocumentByHand() {
    if (!book_->isOpen()) return;
    const QString file =
        askForNewFile(window_, tr("The book as one document"), inDocuments(yard_->title() + QStringLiteral(".json")),
                      tr("Documents (*.json)"), QStringLiteral("json"));
    if (!file.isEmpty()) writeDocument(file);
}

void BookActions::saveTablesByHand() {
    if (!book_->isOpen()) return;
    const QString folder = QFileDialog::getExistingDirectory(window_, tr("A folder for the tables"), inDocuments({}));
    if (!folder.isEmpty()) writeTables(folder);
}

void BookActions::showHistory() {
    if (book_->isOpen()) (new HistoryDialog(book_, window_))->open();
}

} // namespace winterlarder::desk
