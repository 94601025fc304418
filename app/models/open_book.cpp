// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/open_book.h"

#include "answer/day_said.h"
#include "models/touched_colonies.h"
#include "models/words.h"

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
    change.addedYard = outcome->added<book::Yard>();
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
    const auto said = answer::daySaid("winterlarder");
    const auto today = said.ok() ? *said : std::nullopt; // one that is no day ended the program
    return {who, QSysInfo::machineHostName(), [] { return QDateTime::currentSecsSinceEpoch(); },
            [today] { return today.value_or(words::fromQDate(QDate::currentDate())); }};
}

//! What came of a request to open.
struct OpenBook::Adopted {
    Problems problems{}; //!< why it is not open
    bool closed = false; //!< nor is the one before it
    BookState state{};
    QStringList notices{};
};

OpenBook::OpenBook(Scribe scribe, QObject* parent)
    : QObject(parent), scribe_(std::move(scribe)), worker_(std::make_unique<WorkInOrder>()),
      files_(std::make_unique<NewestWork>()), watch_(new QTimer(this)) {
    connect(worker_.get(), &WorkInOrder::idleAgain, this, &OpenBook::worksAgain);
    connect(files_.get(), &NewestWork::idleAgain, this, &OpenBook::worksAgain);
    watch_->setInterval(watchMilliseconds);
    connect(watch_, &QTimer::timeout, this, &OpenBook::lookForChanges);
}

// Everything asked is written first; then the book is closed on the thread it was opened on.
OpenBook::~OpenBook() {
    worker_->ask(
        this,
        [held = held_] {
            held->book.reset();
            return winterlarder::Done{};
        },
        [](const Outcome<winterlarder::Done>&) {});
    worker_.reset();
}

Problem OpenBook::notOpen() {
    return inputProblem("the book this was meant for is no longer open, and another was not touched",
                        "open that book again and enter it there");
}

// On the book's thread.
OpenBook::Adopted OpenBook::adopted(Held& held, const QString& file, quint64 next,
                                    const std::function<Outcome<book::Book>()>& make) {
    Adopted adopted;
    // The same file again: its lock must be let go first.
    adopted.closed = held.book && QFileInfo(QString::fromStdString(held.book->file().string())) == QFileInfo(file);
    if (adopted.closed) held.book.reset();
    if (adopted.closed) held.generation = next;
    auto made = outcomeOf(make);
    if (!made.ok()) {
        adopted.problems = made.problems();
        return adopted;
    }
    held.book.reset();
    held.generation = next;
    held.book.emplace(std::move(made).value());
    held.seenVersion = held.book->dataVersion();
    adopted.state = stateOf(*held.book);
    adopted.notices = toStrings(held.book->notices());
    return adopted;
}

void OpenBook::adopt(const QString& file, const Make& make, const FirstEntries& first, Done done) {
    emit leaving();
    const auto next = ++lastGeneration_;
    worker_->ask(
        this,
        [held = held_, file, next, make, first, reference = reference_, scribe = scribe_] {
            const auto opened = [&] {
                return adopted(*held, file, next, [&] { return filled(make(*reference), first, scribe); });
            };
            auto outcome = outcomeOf(opened);
            if (outcome.ok()) return std::move(outcome).value();
            held->book.reset(); // it is not known how far it came
            held->generation = next;
            return Adopted{outcome.problems(), true};
        },
        [this, file, next, done = std::move(done)](Outcome<Adopted> made) {
            const Adopted& adopted = *made;
            takeOpened(file, next, adopted);
            if (done) done(adopted.problems);
            if (!adopted.notices.isEmpty()) emit noticed(adopted.notices);
        });
}

void OpenBook::takeOpened(const QString& file, quint64 next, const Adopted& adopted) {
    if (!adopted.problems.empty()) {
        if (adopted.closed) takeClosed(next);
        emit openFailed(file, adopted.problems,
                        QFileInfo::exists(file) && file.endsWith(QLatin1String(book::bookExtension)));
        return;
    }
    generation_ = next;
    state_ = adopted.state;
    watch_->start();
    emit opened();
    emit stateChanged();
}

void OpenBook::takeClosed(quint64 next) {
    generation_ = next;
    watch_->stop();
    state_.reset();
    emit closed();
    emit stateChanged();
}

void OpenBook::open(const QString& file, book::OpenFor purpose, Done done) {
    adopt(
        file,
        [file, purpose, scribe = scribe_](const ReferenceData& reference) {
            return book::Book::open(file.toStdString(), reference, {scribe.opener(), purpose});
        },
        {}, std::move(done));
}

void OpenBook::create(const QString& file, const FirstEntries& first, Done done) {
    adopt(
        file,
        [file, scribe = scribe_](const ReferenceData& reference) {
            return book::Book::create(file.toStdString(), reference, {scribe.opener()});
        },
        first, std::move(done));
}

void OpenBook::usePlaces(std::shared_ptr<const climate::Gazetteer> places) {
    places_ = std::move(places);
    emit placesRead();
}

void OpenBook::close() {
    emit leaving();
    const auto next = ++lastGeneration_;
    worker_->ask(
        this,
        [held = held_, next] {
            held->book.reset();
            held->generation = next;
            return winterlarder::Done{};
        },
        [this, next](const Outcome<winterlarder::Done>&) { takeClosed(next); });
}

void OpenBook::change(Change change, Made then) {
    struct Changed {
        Outcome<book::Applied> outcome;
        BookChange what{};
        std::optional<BookState> state{};
    };
    worker_->ask(
        this,
        [held = held_, generation = generation_, change = std::move(change), scribe = scribe_]() -> Changed {
            auto* book = held->of(generation);
            if (!book) return {notOpen()};
            const auto edit = [&] { return change(*book, scribe.now(), scribe.who.toStdString()); };
            const auto outcome = outcomeOf(edit);
            return {outcome, changeOf(*book, outcome), stateOf(*book)};
        },
        [this, then = std::move(then)](Outcome<Changed> made) {
            const auto outcome = made.ok() ? made->outcome : Outcome<book::Applied>(made.problems());
            if (then) then(outcome.ok() ? Outcome<BookChange>(made->what) : Outcome<BookChange>(outcome.problems()));
            if (made.ok() && made->state) take(*made->state);
            tell(outcome, made.ok() ? made->what : BookChange{});
        });
}

void OpenBook::tell(const Outcome<book::Applied>& outcome, const BookChange& change) {
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

void OpenBook::apply(book::Edit edit, Made then) {
    change([edit = std::move(edit)](book::Book& book, book::Timestamp now,
                                    const std::string& who) { return book.apply(edit, now, who); },
           std::move(then));
}

void OpenBook::undo() {
    change([](book::Book& book, book::Timestamp now, const std::string& who) { return book.undo(now, who); });
}

void OpenBook::redo() {
    change([](book::Book& book, book::Timestamp now, const std::string& who) { return book.redo(now, who); });
}

void OpenBook::restore(const QString& backup) {
    change([backup](book::Book& book, book::Timestamp now, const std::string& who) {
        return book.restore(backup.toStdString(), now, who);
    });
}

void OpenBook::copyTo(const QString& copy, Done done) {
    ask(
        this, [copy](book::Book& book) { return book.copyTo(copy.toStdString()); },
        [this, done = std::move(done)](const Outcome<winterlarder::Done>& copied) {
            const Problems problems = copied.ok() ? Problems() : copied.problems();
            if (done) done(problems);
            if (!problems.empty()) emit refused(problems);
        });
}

void OpenBook::lookForChanges() {
    const auto look = [held = held_](book::Book& book) -> std::optional<BookState> {
        const auto version = book.dataVersion();
        if (std::exchange(held->seenVersion, version) == version) return std::nullopt;
        return stateOf(book);
    };
    ask(this, look, [this](const Outcome<std::optional<BookState>>& state) {
        if (!state.ok()) return report(state.problems());
        if (!*state) return;
        take(**state);
        emit changed({true, {}, std::nullopt});
    });
}

} // namespace winterlarder::desk
