// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/timestamp.h"
#include "support/outcome.h"

#include <filesystem>
#include <optional>
#include <string>

namespace winterlarder::book {

//! Who opens a book, when, and on which machine: given by the caller, the core asks neither clock nor system.
struct Opener {
    std::string who;
    std::string machine;
    Timestamp now;
};

//! Who has a book open for writing; texts a stranger may have written, made harmless to show (book/plain_text.h).
struct LockHolder {
    std::string who;
    std::string machine;
    std::optional<Timestamp> since;
    bool operator==(const LockHolder&) const = default;
};

//! The sign that a book is open for writing: a small file beside it, "BOOK.lock", that says by whom and since when. On one machine the
//! system holds a lock on it that ends with the program, however it ends, so a killed program's sign is simply taken over. A sign
//! left by another machine (a synced or network folder) cannot be proved stale and counts until somebody says it is.
//! The lock is the file's, not the name's: every symbolic link leads to one sign, one journal and one folder of backups. Hard links
//! cannot be followed that way (a change interrupted under one name is not taken back under the other), so a book
//! with more than one of them is only read (Access::ManyNames). Tested: tests/book/access_test.cpp.
class BookLock {
public:
    enum class Failure { Held, CannotWrite, DiskFull };
    struct Attempt;

    //! A sign of another machine that the book is open there: it holds, or is known to be stale.
    enum class OtherSign { Holds, Stale };
    //! Tries to take the lock of the book.
    static Attempt take(const std::filesystem::path& book, const Opener& opener, OtherSign other);

    BookLock(BookLock&& other) noexcept;
    BookLock& operator=(BookLock&& other) noexcept;
    //! Removes the sign.
    ~BookLock();

private:
    BookLock(std::filesystem::path file, int descriptor) : file_(std::move(file)), descriptor_(descriptor) {}
    std::filesystem::path file_;
    int descriptor_ = -1;
};

struct BookLock::Attempt {
    std::optional<BookLock> lock;
    std::optional<Failure> failure;
    LockHolder holder; //!< where it is held; what its sign says
};

//! "by Ada on the laptop since 2026-09-12T08:00:00Z", as far as it is known.
std::string saidOf(const LockHolder& holder);

//! The file a name of a book leads to through symbolic links, as an absolute path.
std::filesystem::path fileBehind(const std::filesystem::path& book);
//! Whether the file has more than one hard link.
bool hasManyNames(const std::filesystem::path& book);

std::filesystem::path lockFileOf(const std::filesystem::path& book);

} // namespace winterlarder::book
