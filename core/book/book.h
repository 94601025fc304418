// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/backups.h"
#include "book/file/lock.h"
#include "book/form/edits.h"
#include "book/history.h"
#include "reference/reference.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

//! The keeper's book: years of yards, colonies and records in one file (an SQLite database, extension .larder) that never loses an
//! entry. Every edit is on disk when apply() returns: one transaction with a rollback journal and synchronous=EXTRA, so there is no
//! save and nothing unsaved, and at rest the book is a single file. Undo is the inverse edit, from a history kept in the file.
//!
//! A Book belongs to one thread. Other programs and threads may read the file meanwhile; one writes.
//! Tested: tests/book.
namespace winterlarder::book {

inline constexpr const char* bookExtension = ".larder";

enum class Access {
    Writable,
    AskedReadOnly,
    OpenElsewhere,  //!< see Book::holder
    MediumReadOnly, //!< the file or its folder cannot be written
    NewerVersion,   //!< made by a newer release
    DiskFull,       //!< no room for the sign that the book is open
    ManyNames,      //!< the file has more than one hard link, see BookLock
};

//! TakingOver: for writing, though another machine's sign says that it is open there (see BookLock).
enum class OpenFor { Writing, Reading, TakingOver };
struct Opening {
    Opener opener;
    OpenFor purpose = OpenFor::Writing;
};

struct Touched {
    Kind kind{};
    std::int64_t id = 0;
    ChangeHow how{};
    bool operator==(const Touched&) const = default;
};

//! What an edit did.
struct Applied {
    //! the step of the history it is part of; nothing when it changed nothing, or merged away
    std::optional<StepId> step;
    std::vector<Touched> touched; //!< each entry once; empty = nothing changed, nothing was recorded
    PutEntries inverse;           //!< applying it restores what was there
    //! done, but the keeper should know: the daily backup failed, backups are dated ahead of now
    std::vector<std::string> notices;

    //! Id of the first entry of the type that was added.
    template <class Entry> std::optional<Id<Entry>> added() const {
        for (const auto& one : touched)
            if (one.kind == kindOf<Entry> && one.how == ChangeHow::Add) return Id<Entry>{one.id};
        return std::nullopt;
    }
};

struct BookInfo {
    std::filesystem::path file;
    std::uintmax_t bytes = 0;
    int schemaVersion = 0;
    std::optional<Timestamp> madeAt;
    std::string madeBy;
    std::string mark; //!< 32 hexadecimal digits drawn when it was made, a copy's too; empty: older than marks are
    std::vector<std::pair<Kind, std::int64_t>> entries; //!< how many of each kind
    std::int64_t steps = 0;
};

struct BookInside;

class Book {
public:
    //! Makes a new book; a file of that name is never overwritten. `reference` must outlive the book.
    static Outcome<Book> create(const std::filesystem::path& file, const ReferenceData& reference,
                                const Opening& opening);
    //! Opens a book, migrating an older one (a backup is made first). A change that a killed program left half done is taken back, also
    //! where the book is only to be read. Problems: no such file, not a book, holds what no book holds, damaged (see
    //! book/salvage.h), an interrupted change that cannot be taken back.
    static Outcome<Book> open(const std::filesystem::path& file, const ReferenceData& reference,
                              const Opening& opening);

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    const std::filesystem::path& file() const;
    Access access() const;
    bool writable() const { return access() == Access::Writable; }
    const LockHolder& holder() const; //!< who has it open, where access() is OpenElsewhere
    //! Why it is read-only in a plain sentence; empty when it is not.
    std::string whyReadOnly() const;
    //! What happened at opening that the keeper should know: migrated, limits of an older release kept.
    const std::vector<std::string>& notices() const;
    const ReferenceData& reference() const;

    // ---- edits: on disk when these return ----------------------------------------------------------------------------
    Outcome<Applied> apply(const Edit& edit, Timestamp now, const std::string& who);
    //! Takes the last step back; Applied without a step where there is none.
    Outcome<Applied> undo(Timestamp now, const std::string& who);
    Outcome<Applied> redo(Timestamp now, const std::string& who);
    bool canUndo();
    bool canRedo();

    //! The story: at most `count` steps before `before` (nothing = the newest), newest first.
    Outcome<std::vector<Step>> story(int count, std::optional<StepId> before = std::nullopt);

    // ---- reads -------------------------------------------------------------------------------------------------------
    //! The entry, or nothing where it is gone.
    template <class Entry> Outcome<std::optional<Entry>> find(Id<Entry> id);
    //! Every entry of a type, by id.
    template <class Entry> Outcome<std::vector<Entry>> all();
    //! A colony's entries of a type, by date, then id. Not for Yard and Colony.
    template <class Entry> Outcome<std::vector<Entry>> of(ColonyId colony);
    //! The ends of colonies that were united into this one, by id.
    Outcome<std::vector<Fate>> unitedInto(ColonyId colony);
    //! The one of that name; a problem where there is none or more than one.
    Outcome<Yard> yardNamed(const std::string& name);
    Outcome<Colony> colonyNamed(const std::string& name);

    //! Several reads as of one moment: runs `work` with the file held still for this book (others may go on writing after).
    Outcome<Done> together(const std::function<void()>& work);
    //! Rows without their types, for exports: every entry of the kind by id.
    Outcome<Done> eachRow(Kind kind, const std::function<void(std::int64_t, const Row&)>& visit);
    //! The number the next new entry of the kind will get: what imports give ids from.
    Outcome<std::int64_t> nextId(Kind kind);
    //! A number that changes when another program or Book has changed the file.
    std::int64_t dataVersion();
    Outcome<BookInfo> info();

    //! One text for one content: every entry, by kind and id; the history is not part of it.
    Outcome<std::string> dump();
    //! Everything that is not as it should be: damaged pages, wrong references, values out of their limits, a history that cannot be
    //! read. Empty = sound.
    Outcome<std::vector<std::string>> check();

    // ---- copies ------------------------------------------------------------------------------------------------------
    //! A backup now, checked, beside the book; the oldest beyond backupsKept go.
    Outcome<Backup> backUp(Timestamp now);
    //! One compact file with everything (VACUUM INTO). Never overwrites.
    Outcome<Done> copyTo(const std::filesystem::path& copy);
    //! Entries become what they are in the other book (a backup, usually): one step, undoable; a backup of the present is made
    //! first. The history goes on.
    Outcome<Applied> restore(const std::filesystem::path& backup, Timestamp now, const std::string& who);

private:
    explicit Book(std::unique_ptr<BookInside> inside);
    Outcome<Applied> turnStep(Turned turned, Timestamp now, const std::string& who);

    std::unique_ptr<BookInside> inside_;
};

//! What several reads of a book make, as of one moment: an Outcome. See Book::together.
template <class Read> auto readTogether(Book& book, Read read) -> decltype(read()) {
    std::optional<decltype(read())> made;
    const auto done = book.together([&] { made.emplace(read()); });
    if (!done) return done.problems();
    return std::move(*made);
}

} // namespace winterlarder::book
