// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/salvage.h"
#include "desk/answering.h"
#include "desk/banner.h"
#include "desk/core_adviser.h"
#include "desk/main_window.h"
#include "dialogs/backups_dialog.h"
#include "dialogs/documents.h"
#include "dialogs/import_dialog.h"
#include "models/cases_as_entries.h"
#include "models/plain_tip.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "text/step_words.h"

#include <QAction>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>

//! What the window does with books: which is open, how it is open, and what came of that.
namespace winterlarder::desk {

namespace {

QString bookSuffix() {
    return QString::fromLatin1(book::bookExtension).mid(1);
}

QString namedBy(const book::LockHolder& holder, const QString& since) {
    const QString who = holder.who.empty() ? MainWindow::tr("somebody") : QString::fromStdString(holder.who);
    const QString machine = QString::fromStdString(holder.machine);
    if (machine.isEmpty() || since.isEmpty()) return who;
    return MainWindow::tr("%1 on %2, since %3").arg(who, machine, since);
}

QString whyReadOnly(const BookState& state) {
    switch (state.access) {
    case book::Access::Writable: return {};
    case book::Access::AskedReadOnly: return MainWindow::tr("This book was opened for reading only.");
    case book::Access::MediumReadOnly: return MainWindow::tr("This book lies where nothing can be written, so it can only be read. Copy it to where it can be changed.");
    case book::Access::NewerVersion: return MainWindow::tr("A newer version of Winterlarder made this book; this one can only read it.");
    case book::Access::DiskFull: return MainWindow::tr("The disk is full, so this book can only be read. Make room and try again.");
    case book::Access::ManyNames: return MainWindow::tr("The file of this book has a second name (a hard link), so it can only be read: a change under one name could not be taken back under the other. Copy it, or remove the other name.");
    case book::Access::OpenElsewhere: break;
    }
    const auto& since = state.holder.since;
    const QString when = since ? QLocale().toString(QDateTime::fromSecsSinceEpoch(since->seconds), QLocale::ShortFormat) : QString();
    return MainWindow::tr("This book is open elsewhere (%1), so here it can only be read.").arg(namedBy(state.holder, when));
}

} // namespace

// ---- opening ---------------------------------------------------------------------------------------------------------

void MainWindow::begin() {
    openBeside([arguments = arguments_] { return openAll(arguments); });
}

// What has to be read first is read beside the window, and the demo copied; one thing after another.
void MainWindow::openBeside(std::function<Opened()> read) {
    const auto readAndCopy = [read = std::move(read), copy = newTemporaryFile("demo")] {
        Opened opened = read();
        if (!opened.demo.isEmpty()) copyDemo(opened, copy);
        return opened;
    };
    beside_.ask(this, readAndCopy, [this](Outcome<Opened> opened) {
        if (opened.ok()) return receive(std::move(opened).value());
        tell(opened.problems());
        tellIfSettled();
    });
}

void MainWindow::receive(Opened opened) {
    if (opened.reference && !reference_) {
        useReference(opened.reference);
        const auto cores = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
        useAdviser(std::make_shared<CoreAdviser>(reference_, deskSampling, cores));
        followWinters(deskSampling, cores);
    }
    tell(opened.problems);
    if (reference_) openFirst(std::move(opened));
    tellIfSettled();
}

void MainWindow::openFirst(Opened opened) {
    if (!opened.demo.isEmpty()) return openCopyOfDemo(opened.demo);
    if (!opened.records.empty()) return openCases(std::move(opened.records));
    if (!opened.books.isEmpty()) return openBook(opened.books.front());
    if (!arguments_.files.isEmpty() || arguments_.pictures) return;
    const auto recent = settings::recentBooks();
    if (!recent.isEmpty() && QFileInfo::exists(recent.front())) openBook(recent.front());
}

void MainWindow::openBook(const QString& file, bool readOnly, bool takeOver, OpenBook::Done done) {
    book_.open(file, readOnly, takeOver, std::move(done));
}

void MainWindow::mentionWhereKept(const QString& file) {
    banner_->mention(tr("Your book is kept in %1. Everything you enter is in it at once; there is nothing to save.").arg(file));
}

void MainWindow::openCases(std::vector<book::ColonyCase> records) {
    if (records.empty()) return;
    Date day = records.front().asOf;
    for (const auto& record : records) day = std::max(day, record.asOf);
    yard_.showDay(arguments_.day.value_or(day));
    book_.playOn(day);
    const QString file = newTemporaryFile("cases");
    book_.create(file, [records = std::move(records)](book::YardId yard, book::ColonyId colony) { return entriesOfCases(records, yard, colony); });
}

QString MainWindow::newTemporaryFile(const char* what) {
    if (!temporary_) temporary_ = std::make_unique<QTemporaryDir>();
    return temporary_->filePath(QStringLiteral("%1-%2%3").arg(QLatin1String(what)).arg(++temporaryBooks_).arg(QLatin1String(book::bookExtension)));
}

void MainWindow::openCopyOfDemo(const QString& copy) {
    yard_.showDay(arguments_.day.value_or(demoDay));
    book_.playOn(demoDay);
    openBook(copy);
}

void MainWindow::beginBook(const Beginning& beginning) {
    useUnits(beginning.units);
    settings::chooseUsualHive(beginning.format, beginning.boxes);
    const QString folder = bookFolder_.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : bookFolder_;
    QDir().mkpath(folder);
    QString name = beginning.yard;
    name.replace(QRegularExpression(QStringLiteral("[/\\\\:*?\"<>|]")), QStringLiteral("-"));
    QString file = QDir(folder).filePath(name + QLatin1String(book::bookExtension));
    for (int number = 2; QFileInfo::exists(file); ++number) file = QDir(folder).filePath(QStringLiteral("%1 %2%3").arg(name).arg(number).arg(QLatin1String(book::bookExtension)));
    book_.create(file, [beginning](book::YardId, book::ColonyId) {
        return book::Together{"begin the yard", {book::AddYard{{.name = beginning.yard.toStdString(), .site = {beginning.place, std::nullopt, book::FlowStrength::None}}}}};
    }, [this, file](const Problems& problems) {
        if (problems.empty()) mentionWhereKept(file);
    });
}

void MainWindow::openDemo() {
    Arguments demo = arguments_;
    demo.files.clear();
    demo.demo = true;
    openBeside([demo] { return openAll(demo); });
}

bool MainWindow::isTemporary() const {
    return temporary_ && book_.isOpen() && book_.state()->file.startsWith(temporary_->path());
}

void MainWindow::openByHand() {
    const QStringList files = QFileDialog::getOpenFileNames(this, tr("Open"), {}, tr("Books and case files (*.larder *.json);;All files (*)"));
    if (files.isEmpty() || !reference_) return;
    openBeside([files, reference = reference_] { return openFiles(files, reference); });
}

// ---- what came of it -------------------------------------------------------------------------------------------------

void MainWindow::connectBook() {
    connect(&book_, &OpenBook::opened, this, [this] {
        for (const char* matter : {"problems", "refused", "notices", "salvage"}) banner_->hush(QLatin1String(matter));
        if (!isTemporary()) settings::noteRecentBook(book_.state()->file);
        if (!isTemporary()) book_.playOn({});
        listRecentBooks();
    });
    connect(&book_, &OpenBook::stateChanged, this, &MainWindow::showState);
    connect(&book_, &OpenBook::openFailed, this, &MainWindow::tellNotOpened);
    connect(&book_, &OpenBook::refused, this, [this](const Problems& problems) {
        banner_->say(QStringLiteral("refused"), tr("This could not be written down; the book is as it was before.\n%1").arg(problemWords(problems)));
    });
    connect(&book_, &OpenBook::failed, this, &MainWindow::tell);
    connect(&book_, &OpenBook::noticed, this, [this](const QStringList& notices) { banner_->say(QStringLiteral("notices"), notices.join(QLatin1Char('\n'))); });
    connect(&book_, &OpenBook::worksAgain, this, &MainWindow::tellIfSettled);
    showState();
}

void MainWindow::showState() {
    yardPane_->setVisible(book_.isOpen());
    if (!book_.isOpen() || right_->currentWidget() == start_) showChosen();
    for (auto* action : ofABook_) action->setEnabled(book_.isOpen());
    const auto& state = book_.state();
    const auto name = [](const std::optional<book::Step>& step) { return step ? text::stepName(*step, words::style()) : QString(); };
    const QString undo = state ? name(state->undo) : QString(), redo = state ? name(state->redo) : QString();
    undo_->setEnabled(!undo.isEmpty());
    undo_->setText(undo.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(undo));
    redo_->setEnabled(!redo.isEmpty());
    redo_->setText(redo.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(redo));
    showAccess();
}

void MainWindow::showAccess() {
    const auto& state = book_.state();
    if (!state || state->writable()) banner_->hush(QStringLiteral("access"));
    if (!state || !isTemporary()) banner_->hush(QStringLiteral("temporary"));
    if (!state) return;
    if (!state->writable() && banner_->said(QStringLiteral("access")) != whyReadOnly(*state)) {
        std::vector<Banner::Action> actions{{tr("Try again"), [this, file = state->file] { openBook(file); }}, {tr("Copy it\u2026"), [this] { copyByHand(); }}};
        if (state->access == book::Access::OpenElsewhere && QString::fromStdString(state->holder.machine) != book_.scribe().machine)
            actions.push_back({tr("It is closed there: take over"), [this, file = state->file] { openBook(file, false, true); }});
        banner_->say(QStringLiteral("access"), whyReadOnly(*state), actions, false);
    }
    if (isTemporary() && !arguments_.pictures && banner_->said(QStringLiteral("temporary")).isEmpty())
        banner_->say(QStringLiteral("temporary"), tr("This yard is here to be tried out: what you change is kept only until the window closes."),
                     {{tr("Keep it as a book\u2026"), [this] { copyByHand(); }}}, false);
}

void MainWindow::tellNotOpened(const QString& file, const Problems& problems, bool salvageable) {
    openingProblems_.insert(openingProblems_.end(), problems.begin(), problems.end());
    if (!QFileInfo::exists(file)) settings::forgetRecentBook(file);
    listRecentBooks();
    std::vector<Banner::Action> actions;
    if (salvageable) actions.push_back({tr("Salvage what is readable\u2026"), [this, file] { salvageByHand(file); }});
    banner_->say(QStringLiteral("problems"), tr("The book could not be opened.\n%1").arg(problemWords(problems)), actions);
    tellIfSettled();
}

void MainWindow::salvageByHand(const QString& file) {
    const QFileInfo damaged(file);
    const QString proposal = damaged.dir().filePath(tr("%1 salvaged%2").arg(damaged.completeBaseName(), QLatin1String(book::bookExtension)));
    const QString into = askForNewFile(this, tr("Salvage into a new book"), proposal, tr("Books (*.larder)"), bookSuffix());
    if (!into.isEmpty()) salvage(file, into);
}

void MainWindow::salvage(const QString& damaged, const QString& into) {
    banner_->say(QStringLiteral("salvage"), tr("Reading what can still be read of %1\u2026").arg(QFileInfo(damaged).fileName()));
    beside_.ask(
        this,
        [damaged, into, reference = reference_, opener = book_.scribe().opener()] {
            return book::salvage(damaged.toStdString(), into.toStdString(), *reference, opener);
        },
        [this, into](const Outcome<book::Salvaged>& outcome) { takeSalvaged(into, outcome); });
}

void MainWindow::takeSalvaged(const QString& into, const Outcome<book::Salvaged>& outcome) {
    banner_->hush(QStringLiteral("salvage"));
    if (!outcome.ok()) {
        banner_->say(QStringLiteral("problems"), problemWords(outcome.problems()));
        return tellIfSettled();
    }
    QStringList lost;
    for (const auto& line : outcome->lost) lost << QString::fromStdString(line);
    openBook(into, false, false, [this, lost](const Problems& problems) {
        if (!problems.empty()) return;
        banner_->say(QStringLiteral("salvage"), lost.isEmpty() ? tr("Everything in the damaged book was saved into this one; the damaged file was not touched.")
                                                                : tr("What could be read is in this book; the damaged file was not touched. Lost:\n%1").arg(lost.join(QLatin1Char('\n'))));
    });
}

// ---- by hand ---------------------------------------------------------------------------------------------------------

void MainWindow::copyByHand() {
    if (!book_.isOpen()) return;
    const QString proposal = inDocuments(yard_.title() + QLatin1String(book::bookExtension));
    // A file that is there is refused, so to write over it is not offered.
    const QString copy = askForNewFile(this, tr("Copy the book to"), proposal, tr("Books (*.larder)"), bookSuffix(), QFileDialog::DontConfirmOverwrite);
    if (!copy.isEmpty()) copyBookTo(copy);
}

void MainWindow::copyBookTo(const QString& file) {
    book_.copyTo(file, [this, file, keeps = isTemporary()](const Problems& problems) {
        if (!problems.empty()) return;
        if (keeps) return openKept(file);
        banner_->say(QStringLiteral("notices"), tr("The book was copied to %1.").arg(file), {{tr("Open the copy"), [this, file] { openBook(file); }}});
    });
}

void MainWindow::openKept(const QString& copy) {
    openBook(copy, false, false, [this, copy](const Problems& problems) {
        if (!problems.empty()) return;
        mentionWhereKept(copy);
        list_->setFocus();
    });
}

void MainWindow::importByHand() {
    if (!book_.isOpen()) return;
    const QString file = QFileDialog::getOpenFileName(this, tr("Import"), {}, tr("Tables and whole books (*.csv *.json);;All files (*)"));
    if (!file.isEmpty()) (new ImportDialog(&book_, file, this))->open();
}

void MainWindow::showBackups() {
    if (book_.isOpen()) (new BackupsDialog(&book_, this))->open();
}

void MainWindow::listRecentBooks() {
    recent_->clear();
    for (const QString& file : settings::recentBooks()) {
        const QFileInfo info(file);
        const QString name = tr("%1 \u2013 %2").arg(info.completeBaseName(), info.dir().path());
        recent_->addAction(name, this, [this, file] { openBook(file); })->setToolTip(plainTip(name));
    }
    recent_->setEnabled(!recent_->isEmpty());
}

} // namespace winterlarder::desk
