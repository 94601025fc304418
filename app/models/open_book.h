// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "climate/gazetteer.h"
#include "work/newest_work.h"
#include "work/work_in_order.h"

#include <QString>
#include <QStringList>

#include <algorithm>
#include <functional>
#include <memory>
#include <optional>
#include <set>

class QTimer;

namespace winterlarder::desk {

//! Who writes, on which machine, what time and which day it is: the book asks neither clock nor system.
struct Scribe {
    QString who;
    QString machine;
    std::function<std::int64_t()> secondsNow;
    std::function<Date()> today; //!< where the keeper is

    book::Timestamp now() const { return {secondsNow()}; }
    book::Opener opener() const { return {who.toStdString(), machine.toStdString(), now()}; }
    static Scribe ofThisComputer(); //!< the system's user and clock; WINTERLARDER_TODAY says another day (2026-09-14)
};

//! What the window needs to know of the book at hand; one immutable whole, swapped after every change.
struct BookState {
    QString file;
    book::Access access = book::Access::Writable;
    book::LockHolder holder;
    std::optional<book::Step> undo, redo; //!< the steps that undo and redo would turn
    bool writable() const { return access == book::Access::Writable; }
};

//! What changed in the book: by the window's own edit or by another program.
struct BookChange {
    bool everything = false;                 //!< any yard or colony may be another
    std::set<book::ColonyId> colonies;       //!< else only records of these
    std::optional<book::ColonyId> added{};   //!< a colony added by the edit
    std::optional<book::YardId> addedYard{}; //!< a yard
};

//! The book the window works on, held on a thread of its own. Edits are on disk when changed() comes; one that cannot be made comes back
//! through refused() and the book is as before. Every opening and closing begins another generation: what was asked in an earlier one
//! is never done to the book of a later. Other programs' changes are noticed within two seconds.
//! Tested: tests/app/yard_test.cpp, two_books_test.cpp.
class OpenBook : public QObject {
    Q_OBJECT

public:
    explicit OpenBook(Scribe scribe, QObject* parent = nullptr);
    ~OpenBook() override;

    void useReference(std::shared_ptr<const ReferenceData> reference) { reference_ = std::move(reference); }
    const std::shared_ptr<const ReferenceData>& reference() const { return reference_; }
    //! The places of the world; nothing until they are read.
    void usePlaces(std::shared_ptr<const climate::Gazetteer> places);
    const std::shared_ptr<const climate::Gazetteer>& places() const { return places_; }
    const Scribe& scribe() const { return scribe_; }
    //! The clock's day; of a book to be tried out, the day it plays on where that is later.
    Date today() const { return std::max(scribe_.today(), playedOn_.value_or(scribe_.today())); }
    void playOn(std::optional<Date> day) { playedOn_ = day; }

    //! How a request to open ended, told once, after the signals: nothing where the book is open, else why not.
    using Done = std::function<void(const Problems& problems)>;
    //! Opens a book in place of the one at hand; that stays open where the other cannot be.
    void open(const QString& file, book::OpenFor purpose = book::OpenFor::Writing, Done done = {});
    //! Makes a new book with what `first` makes (given the numbers of its first yard and colony) and opens it.
    using FirstEntries = std::function<book::EditGroup(book::YardId, book::ColonyId)>;
    void create(const QString& file, const FirstEntries& first, Done done = {});
    void close();

    bool isOpen() const { return state_.has_value(); }
    bool writable() const { return state_ && state_->writable(); }
    const std::optional<BookState>& state() const { return state_; }
    bool idle() const { return worker_->idle() && files_->idle(); }

    //! What an edit changed, or why it was not made.
    using Made = std::function<void(const Outcome<BookChange>& made)>;
    //! `then` is told once, before any signal. An edit asked of a book that is no longer open is not made, and that is told like any other
    //! refusal.
    void apply(book::Edit edit, Made then = {});
    void undo();
    void redo();
    void restore(const QString& backup);
    void copyTo(const QString& copy, Done done = {});
    //! An edit that work of its own makes (an import); its outcome is told like any other edit's.
    using Change = std::function<Outcome<book::Applied>(book::Book&, book::Timestamp, const std::string&)>;
    void change(Change change, Made then = {});
    //! Runs work(book) on the book's thread, then then(Outcome) here: exactly once, whatever work() throws; a problem where no book is
    //! open. Not at all once another book is open than when it was asked, or `context` is destroyed.
    template <class Work, class Then> void ask(QObject* context, Work work, Then then);
    //! Says a problem that has no place of its own.
    void report(const Problems& problems) { emit failed(problems); }
    //! Whether another program has changed the book; done by itself every two seconds.
    void lookForChanges();

    //! A thread for reading files without the book, so that no window waits for them; each dialog has a key of its own.
    NewestWork* files() { return files_.get(); }
    NewestWork::Key newFilesKey() { return ++lastFilesKey_; }

signals:
    void leaving(); //!< another book is about to be asked for, or none: what is not written yet is to be written now
    void opened();
    void closed();
    void placesRead();
    void openFailed(const QString& file, const winterlarder::Problems& problems, bool salvageable);
    void stateChanged();
    void changed(const winterlarder::desk::BookChange& change);
    void refused(
        const winterlarder::Problems& problems); //!< an edit could not be made; what was shown of it must be taken back
    void failed(const winterlarder::Problems& problems); //!< something else could not be done
    void noticed(const QStringList& notices);            //!< done, but the keeper should know
    void worksAgain();                                   //!< nothing is under way

private:
    //! What lies on the book's thread.
    struct Held {
        std::optional<book::Book> book;
        quint64 generation = 0;       //!< in which it was opened, or the one before it closed
        std::int64_t seenVersion = 0; //!< of the file as last read
        book::Book* of(quint64 wanted) { return book && wanted == generation ? &*book : nullptr; }
    };
    using Make = std::function<Outcome<book::Book>(const ReferenceData&)>;
    struct Adopted;
    static Adopted adopted(Held& held, const QString& file, quint64 next,
                           const std::function<Outcome<book::Book>()>& make);
    void adopt(const QString& file, const Make& make, const FirstEntries& first, Done done);
    void takeOpened(const QString& file, quint64 next, const Adopted& adopted);
    void takeClosed(quint64 next);
    void take(BookState state);
    void tell(const Outcome<book::Applied>& outcome, const BookChange& change);
    static Problem notOpen();

    Scribe scribe_;
    std::optional<Date> playedOn_;
    std::shared_ptr<const climate::Gazetteer> places_;
    std::shared_ptr<const ReferenceData> reference_;
    std::optional<BookState> state_;
    quint64 generation_ = 0;     //!< of the book that is shown; what is asked is asked of that one
    quint64 lastGeneration_ = 0; //!< given to a request to open or close
    std::shared_ptr<Held> held_ = std::make_shared<Held>();
    std::unique_ptr<WorkInOrder> worker_;
    std::unique_ptr<NewestWork> files_;
    NewestWork::Key lastFilesKey_ = 0;
    QTimer* watch_;
};

template <class Work, class Then> void OpenBook::ask(QObject* context, Work work, Then then) {
    using Result = OutcomeOf<Work, book::Book&>;
    worker_->ask(
        context,
        [held = held_, generation = generation_, work = std::move(work)]() mutable -> Result {
            auto* book = held->of(generation);
            return book ? outcomeOf(work, *book) : Result(notOpen());
        },
        [this, generation = generation_, then = std::move(then)](Result result) mutable {
            if (generation == generation_) then(std::move(result));
        });
}

} // namespace winterlarder::desk

Q_DECLARE_METATYPE(winterlarder::desk::BookChange)
