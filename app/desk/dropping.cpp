// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_drawing.h"
#include "desk/banner.h"
#include "desk/colony_view.h"
#include "desk/main_window.h"
#include "dialogs/import_dialog.h"
#include "dialogs/scale_log_dialog.h"
#include "pages/comb_entry.h"
#include "pages/look_page.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QMimeData>
#include <QUrl>

#include <algorithm>

//! Files that are let fall on the window.
namespace winterlarder::desk {

namespace {

enum class Dropped { Book, Case, WholeBook, EntryTable, SomeTable, Picture, Unknown };

constexpr qint64 firstBytes = 4096; // bytes of a document, in which it says what it is

Dropped documentKind(const QString& file) {
    QFile document(file);
    return document.open(QIODevice::ReadOnly) && document.read(firstBytes).contains("\"larder\"") ? Dropped::WholeBook
                                                                                                  : Dropped::Case;
}

Dropped kindOf(const QString& file) {
    const QFileInfo info(file);
    const QString ending = info.suffix().toLower();
    if (!info.isFile()) return Dropped::Unknown;
    if (file.endsWith(QLatin1String(book::bookExtension))) return Dropped::Book;
    if (ending == QLatin1String("json")) return documentKind(file);
    if (QStringList{QStringLiteral("csv"), QStringLiteral("tsv"), QStringLiteral("txt")}.contains(ending))
        return ending == QLatin1String("csv") && !tableOfFile(file).isEmpty() ? Dropped::EntryTable
                                                                              : Dropped::SomeTable;
    return QImageReader::supportedImageFormats().contains(ending.toUtf8()) ? Dropped::Picture : Dropped::Unknown;
}

QString fileName(const QString& file) { return QFileInfo(file).fileName(); }

} // namespace

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList files;
    for (const auto& url : event->mimeData()->urls())
        files << (url.isLocalFile() ? url.toLocalFile() : url.toDisplayString());
    event->acceptProposedAction();
    takeDropped(files);
}

void MainWindow::takeDropped(const QStringList& files) {
    if (files.isEmpty()) return;
    banner_->dismiss(QStringLiteral("dropped"));
    const bool cases =
        std::all_of(files.begin(), files.end(), [](const QString& file) { return kindOf(file) == Dropped::Case; });
    QString why;
    if (cases) books_->openFilesNamed(files);
    else if (files.size() > 1)
        why = tr("One file at a time, please: only case files can be opened together. Nothing was done with these %n.",
                 nullptr, static_cast<int>(files.size()));
    else why = takeOne(files.front());
    if (!why.isEmpty()) banner_->showMessage(QStringLiteral("dropped"), why);
}

QString MainWindow::takeOne(const QString& file) {
    const auto kind = kindOf(file);
    if (kind == Dropped::Unknown)
        return tr("%1 is no file that can be taken here. A book (.larder), a case file or a whole book (.json), a table or the log of a scale (.csv), or a photograph can be dropped.")
            .arg(fileName(file));
    if (kind == Dropped::Book) return books_->openFilesNamed({file}), QString();
    if (!yard_.writable())
        return tr("%1 belongs to a book: open one that can be written first, then drop it again.").arg(fileName(file));
    if (kind == Dropped::Picture) return measureOn(file);
    if (kind == Dropped::SomeTable) return askWhatTableItIs(file), QString();
    (new ImportDialog(&book_, file, this))->open();
    return {};
}

// Its name does not say whether it holds entries or what a scale wrote by itself.
void MainWindow::askWhatTableItIs(const QString& file) {
    const auto import = [this, file] {
        banner_->dismiss(QStringLiteral("dropped"));
        (new ImportDialog(&book_, file, this))->open();
    };
    const auto readLog = [this, file, colony = colonyView_->colony()] {
        banner_->dismiss(QStringLiteral("dropped"));
        (new ScaleLogDialog(&yard_, colony, file, this))->open();
    };
    std::vector<Banner::Action> actions{{tr("A table of entries\u2026"), import}};
    if (mayWriteOfColony()) actions.push_back({tr("The log of its scale\u2026"), readLog});
    const QString what = mayWriteOfColony()
                             ? tr("What is %1: a table of entries, or the log of the scale under the colony shown?")
                             : tr("What is %1? Where it is the log of a scale, choose its colony and drop it again.");
    banner_->showMessage(QStringLiteral("dropped"), what.arg(fileName(file)), actions);
}

QString MainWindow::measureOn(const QString& picture) {
    const QString first = tr("A photograph measures one comb: choose the colony and the comb, then drop %1 on it.");
    if (!mayWriteOfColony()) return first.arg(fileName(picture));
    auto* combs = colonyView_->look()->combs();
    if (combs->drawing()->chosen() < 0 || combs->drawing()->combs().empty()) return first.arg(fileName(picture));
    colonyView_->showPage(ColonyPage::Hive);
    combs->measureOn(picture);
    return {};
}

} // namespace winterlarder::desk
