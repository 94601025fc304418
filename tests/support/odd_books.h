// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book_folder.h"

#include <SQLiteCpp/Database.h>
#include <functional>
#include <sys/wait.h>
#include <unistd.h>

//! Books as this program leaves none: interrupted within a change, or written by a stranger.
namespace winterlarder::book::support {

//! Does to the file what somebody with another program could.
inline void runSql(const std::filesystem::path& file, const std::string& sql) {
    SQLite::Database(file.string(), SQLite::OPEN_READWRITE).exec(sql);
}

//! Leaves the file as a program does that is killed within the change: half of it written, what was there before in the journal.
inline void interruptWithin(const std::filesystem::path& file, const std::string& change) {
    namespace files = std::filesystem;
    const auto half = file.string() + ".half";
    {
        SQLite::Database writing(file.string(), SQLite::OPEN_READWRITE);
        writing.exec("PRAGMA cache_size = 2; PRAGMA cache_spill = 2; BEGIN IMMEDIATE");
        writing.exec(change);
        files::copy_file(file, half);
        files::copy_file(file.string() + "-journal", half + "-journal");
        writing.exec("ROLLBACK");
    }
    files::copy_file(half, file, files::copy_options::overwrite_existing);
    files::rename(half + "-journal", file.string() + "-journal");
    files::remove(half);
}

//! Runs work as a user whom permissions bind (root is bound by none), in a process of its own; whether it was true.
inline bool asBoundUser(const std::function<bool()>& work) {
    if (::geteuid() != 0) return work();
    const pid_t child = ::fork();
    if (child == 0) ::_exit(::setuid(65534) == 0 && work() ? 0 : 1);
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace winterlarder::book::support
