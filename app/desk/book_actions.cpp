// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/book_actions.h"

#include "desk/banner.h"
#include "desk/settings.h"
#include "dialogs/backups_dialog.h"
#include "dialogs/documents.h"
#include "dialogs/import_dialog.h"
#include "models/cases_as_entries.h"
#include "models/problem_words.h"
#include "models/yard.h"

#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>

namespace winterlarder::desk {

namespace {

QString bookSuffix() { return QString::fromLatin1(book::bookExtension).mid(1); }

QString namedBy(const book::LockHolder& holder, const QString& since) {
    const QString who = holder.who.empty() ? BookActions::tr("somebody") : QString::fromStdString(holder.who);
    const QString machine = QString::fromStdString(holder.machine);
    if (machine.isEmpty() || since.isEmpty()) return who;
    return BookActions::tr("%1 on %2, since %3").arg(who, machine, since);
}

book::EditGroup firstEntriesOf(const Beginning& beginning, book::YardId yard) {
    book::EditGroup step{"begin the yard",
                         {book::AddYard{{.name = beginning.yard.toStdString(),
                                         .site = {beginning.place, beginning.heightM, std::nullopt}}}}};
    for (const auto& colony : beginning.colonies) {
        book::HiveRecord hive;
        const auto format =
            beginning.own ? book::FormatChoice(*beginning.own) : book::FormatChoice(beginning.format.toStdString());
        hive.boxes.assign(static_cast<std::size_t>(colony.boxes), book::BoxRecord{format, std::nullopt, false});
        step.edits.emplace_back(
            book::AddColony{{.yard = yard, .name = colony.name.toStdString(), .hive = std::move(hive)}});
    }
    return step;
}

QString whyReadOnly(const BookState& state) {
    switch (state.access) {
    case book::Access::Writable: return {};
    case book::Access::AskedReadOnly: return BookActions::tr("This book was opened for reading only.");
    case book::Access::MediumReadOnly:
        return BookActions::tr(
            "This book lies where nothing can be written, so it can only be read. Copy it to where it can be changed.");
    case book::Access::NewerVersion:
        return BookActions::tr("A newer version of Winterlarder made this book; this one can only read it.");
    case book::Access::DiskFull:
        return BookActions::tr("The disk is full, so this book can only be read. Make room and try again.");
    case book::Access::ManyNames:
        return BookActions::tr(
            "The file of this book has a second name (a hard link), so it can only be read: a change under one name could not be taken back under the other. Copy it, or remove the other name.");
    case book::Access::OpenElsewhere: break;
    }
    const auto& since = state.holder.since;
    const QString when =
        since ? QLocale().toString(QDateTime::fromSecsSinceEpoch(since->seconds), QLocale::ShortFormat) : QString();
    return BookActions::tr("This book is open elsewhere (%1), so here it can only be read.")
        .arg(namedBy(state.holder, when));
}

} // namespace

TemporaryBooks::TemporaryBooks() = default;
TemporaryBooks::~TemporaryBooks() = default;

QString TemporaryBooks::newFile(const QString& name) {
    if (!folder_) folder_ = std::make_unique<QTemporaryDir>();
    return folder_->filePath(QStringLiteral("%1-%2%3").arg(name).arg(++made_).arg(QLatin1String(book::bookExtension)));
}

bool TemporaryBooks::holds(const QString& file) const { return folder_ && file.startsWith(folder_->path()); }

BookActions::BookActions(OpenBook* book, Yard* yard, TemporaryBooks* temporary, Banner* banner, Arguments arguments,
                         QWidget* window)
    : QObject(window), book_(book), yard_(yard), temporary_(temporary), banner_(banner),
      arguments_(std::move(arguments)), window_(window) {
    connect(book_, &OpenBook::opened, this, [this] {
        for (const char* matter : {"problems", "refused", "notices", "salvage", "asked"})
            banner_->dismiss(QLatin1String(matter));
        if (!isTemporary()) settings::noteRecentBook(book_->state()->file);
        if (!isTemporary()) book_->playOn({});
        emit recentChanged();
    });
    connect(book_, &OpenBook::stateChanged, this, &BookActions::showAccess);
    connect(book_, &OpenBook::openFailed, this, &BookActions::tellNotOpened);
    connect(book_, &OpenBook::refused, this, [this](const Problems& problems) {
        banner_->showMessage(
            QStringLiteral("refused"),
            tr("This could not be written down; the book is as it was before.\n%1").arg(problemWords(problems)));
    });
    connect(book_, &OpenBook::failed, this, &BookActions::failed);
    connect(book_, &OpenBook::noticed, this, [this](const QStringList& notices) {
        banner_->showMessage(QStringLiteral("notices"), notices.join(QLatin1Char('\n')));
    });
    connect(&beside_, &WorkInOrder::idleAgain, this, &BookActions::idleAgain);
}

// ---- opening ---------------------------------------------------------------------------------------------------------

void BookActions::begin() {
    openBeside([arguments = arguments_] { return openAll(arguments); });
}

// What has to be read first is read beside the window, and the demo copied; one thing after another.
void BookActions::openBeside(std::function<Opened()> read) {
    const auto readAndCopy = [read = std::move(read), copy = temporary_->newFile(QStringLiteral("demo"))] {
        Opened opened = read();
        if (!opened.demo.isEmpty()) copyDemo(opened, copy);
        return opened;
    };
    beside_.ask(this, readAndCopy, [this](Outcome<Opened> opened) {
        if (opened.ok()) return receive(std::move(opened).value());
        emit failed(opened.problems());
        emit idleAgain();
    });
}

// What was wrong or is asked is told once a book is open: what was said before is put away then.
void BookActions::receive(Opened opened) {
    const bool first = opened.reference && !book_->reference();
    if (first) emit dataRead(opened.reference);
    const auto told = [this, problems = opened.problems, asked = opened.asked](const Problems&) {
        if (!problems.empty()) emit failed(problems);
        if (!asked.empty()) banner_->showMessage(QStringLiteral("asked"), problemWords(asked));
    };
    if (!book_->reference() || !openFirst(std::move(opened), told)) told({});
    if (first) readPlacesBeside();
    emit idleAgain();
}

void BookActions::readPlacesBeside() {
    beside_.ask(
        this, [arguments = arguments_, reference = book_->reference()] { return readPlaces(arguments, *reference); },
        [this](const auto& places) {
            if (places.ok()) emit placesRead(places.value());
            else emit failed(places.problems());
        });
}

bool BookActions::openFirst(Opened opened, OpenBook::Done done) {
    QString book = opened.books.isEmpty() ? QString() : opened.books.front();
    const auto recent = settings::recentBooks();
    if (book.isEmpty() && arguments_.files.isEmpty() && !arguments_.pictures && !recent.isEmpty() &&
        QFileInfo::exists(recent.front()))
        book = recent.front();
    if (!opened.demo.isEmpty()) openCopyOfDemo(opened.demo, std::move(done));
    else if (!opened.records.empty())
        openCases(std::move(opened.records), std::move(opened.recordFiles), std::move(done));
    else if (!book.isEmpty()) open(book, book::OpenFor::Writing, std::move(done));
    else return false;
    return true;
}

void BookActions::open(const QString& file, book::OpenFor purpose, OpenBook::Done done) {
    book_->open(file, purpose, std::move(done));
}

void BookActions::mentionWhereKept(const QString& file) {
    banner_->showBriefly(
        tr("Your book is kept in %1. Everything you enter is in it at once; there is nothing to save.").arg(file));
}

void BookActions::openCases(std::vector<book::ColonyCase> records, std::vector<std::string> files,
                            OpenBook::Done done) {
    if (records.empty()) return;
    Date day = records.front().asOf;
    for (const auto& record : records) day = std::max(day, record.asOf);
    yard_->showDay(arguments_.day.value_or(day));
    book_->playOn(day);
    book_->create(
        temporary_->newFile(QStringLiteral("cases")),
        [records = std::move(records), files = std::move(files)](book::YardId yard, book::ColonyId colony) {
            return entriesOfCases(records, yard, colony, files);
        },
        std::move(done));
}

void BookActions::openCopyOfDemo(const QString& copy, OpenBook::Done done) {
    yard_->showDay(arguments_.day.value_or(demoDay));
    book_->playOn(demoDay);
    open(copy, book::OpenFor::Writing, std::move(done));
}

void BookActions::beginBook(const Beginning& beginning) {
    settings::chooseUsualHive(beginning.format, beginning.colonies.empty() ? 1 : beginning.colonies.front().boxes);
    const QString folder =
        bookFolder_.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : bookFolder_;
    QDir().mkpath(folder);
    QString name = beginning.yard;
    name.replace(QRegularExpression(QStringLiteral("[/\\\\:*?\"<>|]")), QStringLiteral("-"));
    QString file = QDir(folder).filePath(name + QLatin1String(book::bookExtension));
    for (int number = 2; QFileInfo::exists(file); ++number)
        file = QDir(folder).filePath(
            QStringLiteral("%1 %2%3").arg(name).arg(number).arg(QLatin1String(book::bookExtension)));
    book_->create(
        file, [beginning](book::YardId yard, book::ColonyId) { return firstEntriesOf(beginning, yard); },
        [this, file](const Problems& problems) {
            if (!problems.empty()) return;
            mentionWhereKept(file);
            emit newBookOpened();
        });
}

void BookActions::openDemo() {
    Arguments demo = arguments_;
    demo.files.clear();
    demo.demo = true;
    openBeside([demo] { return openAll(demo); });
}

bool BookActions::isTemporary() const { return book_->isOpen() && temporary_->holds(book_->state()->file); }

void BookActions::openByHand() {
    const QStringList files = QFileDialog::getOpenFileNames(
        window_, tr("Open"), {}, tr("Books and case files (*.larder *.json);;All files (*)"));
    openFilesNamed(files);
}

void BookActions::openFilesNamed(const QStringList& files) {
    if (files.isEmpty() || !book_->reference()) return;
    openBeside([files, reference = book_->reference()] { return openFiles(files, reference); });
}

// ---- what came of it -------------------------------------------------------------------------------------------------

void BookActions::showAccess() {
    const auto& state = book_->state();
    if (!state || state->writable()) banner_->dismiss(QStringLiteral("access"));
    if (!state || !isTemporary()) banner_->dismiss(QStringLiteral("temporary"));
    if (!state) return;
    if (!state->writable() && banner_->said(QStringLiteral("access")) != whyReadOnly(*state)) {
        std::vector<Banner::Action> actions{{tr("Try again"), [this, file = state->file] { open(file); }},
                                            {tr("Copy it\u2026"), [this] { copyByHand(); }}};
        if (state->access == book::Access::OpenElsewhere &&
            QString::fromStdString(state->holder.machine) != book_->scribe().machine)
            actions.push_back({tr("It is closed there: take over"),
                               [this, file = state->file] { open(file, book::OpenFor::TakingOver); }});
        banner_->showMessage(QStringLiteral("access"), whyReadOnly(*state), actions, Banner::Closing::WhenDismissed);
    }
    if (isTemporary() && !arguments_.pictures && banner_->said(QStringLiteral("temporary")).isEmpty())
        banner_->showMessage(
            QStringLiteral("temporary"),
            tr("This yard is here to be tried out: what you change is kept only until the window closes."),
            {{tr("Keep it as a book\u2026"), [this] { copyByHand(); }}}, Banner::Closing::WhenDismissed);
}

void BookActions::tellNotOpened(const QString& file, const Problems& problems, bool salvageable) {
    if (!QFileInfo::exists(file)) settings::forgetRecentBook(file);
    emit recentChanged();
    std::vector<Banner::Action> actions;
    if (salvageable) actions.push_back({tr("Salvage what is readable\u2026"), [this, file] { salvageByHand(file); }});
    banner_->showMessage(QStringLiteral("problems"),
                         tr("The book could not be opened.\n%1").arg(problemWords(problems)), actions);
    emit idleAgain();
}

void BookActions::salvageByHand(const QString& file) {
    const QFileInfo damaged(file);
    const QString proposal =
        damaged.dir().filePath(tr("%1 salvaged%2").arg(damaged.completeBaseName(), QLatin1String(book::bookExtension)));
    const QString into =
        askForNewFile(window_, tr("Salvage into a new book"), proposal, tr("Books (*.larder)"), bookSuffix());
    if (!into.isEmpty()) salvage(file, into);
}

void BookActions::salvage(const QString& damaged, const QString& into) {
    banner_->showMessage(QStringLiteral("salvage"),
                         tr("Reading what can still be read of %1\u2026").arg(QFileInfo(damaged).fileName()));
    beside_.ask(
        this,
        [damaged, into, reference = book_->reference(), opener = book_->scribe().opener()] {
            return book::salvage(damaged.toStdString(), into.toStdString(), *reference, opener);
        },
        [this, into](const Outcome<book::Salvaged>& outcome) { takeSalvaged(into, outcome); });
}

void BookActions::takeSalvaged(const QString& into, const Outcome<book::Salvaged>& outcome) {
    banner_->dismiss(QStringLiteral("salvage"));
    if (!outcome.ok()) {
        banner_->showMessage(QStringLiteral("problems"), problemWords(outcome.problems()));
        return emit idleAgain();
    }
    QStringList lost;
    for (const auto& line : outcome->lost) lost << QString::fromStdString(line);
    open(into, book::OpenFor::Writing, [this, lost](const Problems& problems) {
        if (!problems.empty()) return;
        banner_->showMessage(
            QStringLiteral("salvage"),
            lost.isEmpty()
                ? tr("Everything in the damaged book was saved into this one; the damaged file was not touched.")
                : tr("What could be read is in this book; the damaged file was not touched. Lost:\n%1")
                      .arg(lost.join(QLatin1Char('\n'))));
    });
}

// ---- by hand ---------------------------------------------------------------------------------------------------------

void BookActions::copyByHand() {
    if (!book_->isOpen()) return;
    const QString proposal = inDocuments(yard_->title() + QLatin1String(book::bookExtension));
    // A file that is there is refused, so to write over it is not offered.
    const QString copy = askForNewFile(window_, tr("Copy the book to"), proposal, tr("Books (*.larder)"), bookSuffix(),
                                       QFileDialog::DontConfirmOverwrite);
    if (!copy.isEmpty()) copyTo(copy);
}

void BookActions::copyTo(const QString& file) {
    book_->copyTo(file, [this, file, keeps = isTemporary()](const Problems& problems) {
        if (!problems.empty()) return;
        if (keeps) return openKept(file);
        banner_->showMessage(QStringLiteral("notices"), tr("The book was copied to %1.").arg(file),
                             {{tr("Open the copy"), [this, file] { open(file); }}});
    });
}

void BookActions::openKept(const QString& copy) {
    open(copy, book::OpenFor::Writing, [this, copy](const Problems& problems) {
        if (!problems.empty()) return;
        mentionWhereKept(copy);
        emit savedAsOwnBook();
    });
}

void BookActions::importByHand() {
    if (!book_->isOpen()) return;
    const QString file = QFileDialog::getOpenFileName(window_, tr("Import"), {},
                                                      tr("Tables and whole books (*.csv *.json);;All files (*)"));
    if (!file.isEmpty()) (new ImportDialog(book_, file, window_))->open();
}

void BookActions::showBackups() {
    if (book_->isOpen()) (new BackupsDialog(book_, window_))->open();
}

} // namespace winterlarder::desk
