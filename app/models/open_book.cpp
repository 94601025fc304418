// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/open_book.h"

#include "models/colony_records.h"

#include <QDateTime>
#include <QFileInfo>
#include <QSysInfo>
#include <QTimer>

#include <utility>

namespace winterlarder::desk {

namespace {

constexpr int watchMilliseconds = 2000;
constexpr int storyPage = 8;

// The steps undo and redo would turn: the newest that is done, the oldest that is undone after it.
void readSteps(book::Book& book, BookState& state) {
    std::optional<book::StepId> before;
    for (;;) {
        const auto steps = book.story(storyPage, before);
        if (!steps.ok() || steps->empty()) return;
        for (const auto& step : *steps) {
            if (step.state == book::StepState::Undone) state.redo = step;
            if (step.state != book::StepState::Done) continue;
            state.undo = step;
            return;
        }
        before = steps->back().id;
    }
}

BookState stateOf(book::Book& book) {
    BookState state;
    state.file = QString::fromStdString(book.file().string());
    state.access = book.access();
    state.holder = book.holder();
    if (book.writable()) readSteps(book, state);
    return state;
}

BookChange changeOf(book::Book& book, const Outcome<book::Applied>& outcome) {
    BookChange change;
    if (!outcome.ok()) return change;
    change.added = outcome->added<book::Colony>();
    const auto colonies = coloniesOf(book, outcome->touched);
    change.everything = !colonies.has_value();
    if (colonies) change.colonies = *colonies;
    return change;
}

Outcome<book::Book> filled(Outcome<book::Book> made, const OpenBook::FirstEntries& first, const Scribe& scribe) {
    if (!made.ok() || !first) return made;
    const auto yard = made->nextId(book::Kind::Yard), colony = made->nextId(book::Kind::Colony);
    if (!yard.ok()) return yard.problems();
    if (!colony.ok()) return colony.problems();
    auto entries = first(book::YardId{*yard}, book::ColonyId{*colony});
    if (entries.edits.empty()) return made;
    const auto applied = made->apply(std::move(entries), scribe.now(), scribe.who.toStdString());
    return applied.ok() ? std::move(made) : Outcome<book::Book>(applied.problems());
}

QStringList toStrings(const std::vector<std::string>& lines) {
    QStringList all;
    for (const auto& line : lines) all << QString::fromStdString(line);
    return all;
}

} // namespace

Scribe Scribe::ofThisComputer() {
    QString who = qEnvironmentVariable("USER");
    if (who.isEmpty()) who = qEnvironmentVariable("USERNAME", QStringLiteral("keeper"));
    return {who, QSysInfo::machineHostName(), [] { return QDateTime::currentSecsSinceEpoch(); }};
}

OpenBook::OpenBook(Scribe scribe, QObject* parent)
    : QObject(parent), scribe_(std::move(scribe)), worker_(std::make_unique<BookWorker>()), watch_(new QTimer(this)),
      seenVersion_(std::make_shared<std::optional<std::int64_t>>()) {
    connect(worker_.get(), &BookWorker::idleAgain, this, &OpenBook::worksAgain);
    connect(worker_.get(), &BookWorker::failed, this,
            [this](const QString& what) { emit refused({{ProblemKind::Input, {}, what.toStdString(), {}}}); });
    watch_->setInterval(watchMilliseconds);
    connect(watch_, &QTimer::timeout, this, &OpenBook::lookForChanges);
}

OpenBook::~OpenBook() = default;

void OpenBook::adopt(const QString& file, const Make& make, const FirstEntries& first) {
    worker_->ask([this, file, make, first, reference = reference_, scribe = scribe_, seen = seenVersion_](std::optional<book::Book>& book) -> BookWorker::Finish {
        // The same file again: its lock must be let go first.
        const bool same = book && QFileInfo(QString::fromStdString(book->file().string())) == QFileInfo(file);
        if (same) book.reset();
        auto made = filled(make(*reference), first, scribe);
        if (!made.ok()) return [this, file, same, problems = made.problems()] { tellNotOpened(file, same, problems); };
        book.reset();
        book.emplace(std::move(made).value());
        *seen = book->dataVersion();
        return [this, state = stateOf(*book), notices = toStrings(book->notices())] {
            state_ = state;
            watch_->start();
            emit opened();
            emit stateChanged();
            if (!notices.isEmpty()) emit noticed(notices);
        };
    });
}

void OpenBook::tellNotOpened(const QString& file, bool closedFirst, const Problems& problems) {
    if (closedFirst) {
        state_.reset();
        emit closed();
        emit stateChanged();
    }
    emit openFailed(file, problems, QFileInfo::exists(file) && file.endsWith(QLatin1String(book::bookExtension)));
}

void OpenBook::open(const QString& file, bool readOnly, bool takeOver) {
    adopt(file, [file, readOnly, takeOver, scribe = scribe_](const ReferenceData& reference) {
        return book::Book::open(file.toStdString(), reference, {scribe.opener(), readOnly, takeOver});
    }, {});
}

void OpenBook::create(const QString& file, const FirstEntries& first) {
    adopt(file, [file, scribe = scribe_](const ReferenceData& reference) { return book::Book::create(file.toStdString(), reference, {scribe.opener()}); },
          first);
}

void OpenBook::close() {
    worker_->ask([this](std::optional<book::Book>& book) -> BookWorker::Finish {
        book.reset();
        return [this] {
            watch_->stop();
            state_.reset();
            emit closed();
            emit stateChanged();
        };
    });
}

void OpenBook::ask(std::function<BookWorker::Finish(book::Book&)> work) {
    worker_->ask([work = std::move(work)](std::optional<book::Book>& book) -> BookWorker::Finish { return book ? work(*book) : BookWorker::Finish(); });
}

void OpenBook::change(Change change, Done done) {
    ask([this, change = std::move(change), done = std::move(done), scribe = scribe_](book::Book& book) -> BookWorker::Finish {
        const auto outcome = change(book, scribe.now(), scribe.who.toStdString());
        return [this, done, outcome, what = changeOf(book, outcome), state = stateOf(book)] {
            if (done) done(outcome.ok() ? Problems() : outcome.problems());
            tell(outcome, what, state);
        };
    });
}

void OpenBook::tell(const Outcome<book::Applied>& outcome, const BookChange& change, BookState state) {
    take(std::move(state));
    if (!outcome.ok()) {
        emit refused(outcome.problems());
        return;
    }
    emit changed(change);
    if (!outcome->notices.empty()) emit noticed(toStrings(outcome->notices));
}

void OpenBook::take(BookState state) {
    if (!state_) return;
    state_ = std::move(state);
    emit stateChanged();
}

void OpenBook::apply(book::Edit edit, Done done) {
    change([edit = std::move(edit)](book::Book& book, book::Timestamp now, const std::string& who) { return book.apply(edit, now, who); }, std::move(done));
}

void OpenBook::undo() {
    change([](book::Book& book, book::Timestamp now, const std::string& who) { return book.undo(now, who); });
}

void OpenBook::redo() {
    change([](book::Book& book, book::Timestamp now, const std::string& who) { return book.redo(now, who); });
}

void OpenBook::restore(const QString& backup) {
    change([backup](book::Book& book, book::Timestamp now, const std::string& who) { return book.restore(backup.toStdString(), now, who); });
}

void OpenBook::copyTo(const QString& copy) {
    ask([this, copy](book::Book& book) -> BookWorker::Finish {
        const auto done = book.copyTo(copy.toStdString());
        return [this, copy, done] {
            if (done.ok()) emit copied(copy);
            else emit refused(done.problems());
        };
    });
}

void OpenBook::lookForChanges() {
    ask([this, seen = seenVersion_](book::Book& book) -> BookWorker::Finish {
        const auto version = book.dataVersion();
        if (std::exchange(*seen, version) == version) return {};
        return [this, state = stateOf(book)] {
            take(state);
            emit changed({true, {}, std::nullopt});
        };
    });
}

} // namespace winterlarder::desk
