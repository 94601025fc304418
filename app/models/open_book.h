// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/book_worker.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <set>

class QTimer;

namespace winterlarder::desk {

//! Who writes, on which machine, and what time it is: the book asks neither clock nor system.
struct Scribe {
    QString who;
    QString machine;
    std::function<std::int64_t()> secondsNow;

    book::Timestamp now() const { return {secondsNow()}; }
    book::Opener opener() const { return {who.toStdString(), machine.toStdString(), now()}; }
    static Scribe ofThisComputer(); //!< the system's user and clock
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
    bool everything = false;              //!< any yard or colony may be another
    std::set<book::ColonyId> colonies;    //!< else only records of these
    std::optional<book::ColonyId> added;  //!< a colony added by the edit
};

//! The book the window works on. Edits are on disk when changed() comes; one that cannot be made comes back through refused() and the
//! book is as before. Other programs' changes are noticed within two seconds. Tested: tests/app/yard_test.cpp.
class OpenBook : public QObject {
    Q_OBJECT

public:
    explicit OpenBook(Scribe scribe, QObject* parent = nullptr);
    ~OpenBook() override;

    void useReference(std::shared_ptr<const ReferenceData> reference) { reference_ = std::move(reference); }
    const std::shared_ptr<const ReferenceData>& reference() const { return reference_; }
    const Scribe& scribe() const { return scribe_; }

    //! Opens a book in place of the one at hand; that stays open where the other cannot be.
    void open(const QString& file, bool readOnly = false, bool takeOver = false);
    //! Makes a new book with what `first` makes (given the numbers of its first yard and colony) and opens it.
    using FirstEntries = std::function<book::Together(book::YardId, book::ColonyId)>;
    void create(const QString& file, const FirstEntries& first);
    void close();

    bool isOpen() const { return state_.has_value(); }
    bool writable() const { return state_ && state_->writable(); }
    const std::optional<BookState>& state() const { return state_; }
    bool idle() const { return worker_->idle(); }

    //! `done` is told first, before any signal: nothing where it was made, else why not.
    using Done = std::function<void(const Problems& problems)>;
    void apply(book::Edit edit, Done done = {});
    void undo();
    void redo();
    void restore(const QString& backup);
    void copyTo(const QString& copy);
    //! Work with the book at hand on its thread, and what to do with the result here; nothing where no book is open.
    void ask(std::function<BookWorker::Finish(book::Book&)> work);
    //! An edit that work of its own makes (an import); its outcome is told like any other edit's.
    using Change = std::function<Outcome<book::Applied>(book::Book&, book::Timestamp, const std::string&)>;
    void change(Change change, Done done = {});
    //! Whether another program has changed the book; done by itself every two seconds.
    void lookForChanges();

signals:
    void opened();
    void closed();
    void openFailed(const QString& file, const winterlarder::Problems& problems, bool salvageable);
    void stateChanged();
    void changed(const winterlarder::desk::BookChange& change);
    void refused(const winterlarder::Problems& problems); //!< an edit could not be made; what was shown of it must be taken back
    void copied(const QString& copy);
    void noticed(const QStringList& notices); //!< done, but the keeper should know
    void worksAgain();                        //!< nothing is under way

private:
    void take(BookState state);
    void tell(const Outcome<book::Applied>& outcome, const BookChange& change, BookState state);
    using Make = std::function<Outcome<book::Book>(const ReferenceData&)>;
    void adopt(const QString& file, const Make& make, const FirstEntries& first);
    void tellNotOpened(const QString& file, bool closedFirst, const Problems& problems);

    Scribe scribe_;
    std::shared_ptr<const ReferenceData> reference_;
    std::optional<BookState> state_;
    std::unique_ptr<BookWorker> worker_;
    QTimer* watch_;
    std::shared_ptr<std::optional<std::int64_t>> seenVersion_; //!< of the file as last read; touched on the book's thread only
};

} // namespace winterlarder::desk

Q_DECLARE_METATYPE(winterlarder::desk::BookChange)
