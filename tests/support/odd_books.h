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

//! A page of a table that says 400 times that its entries lie on the page `below`.
inline std::string pageAbove(std::uint32_t below) {
    std::string page(4096, '\0');
    const auto put = [&](std::size_t at, std::uint32_t number, std::size_t bytes) {
        for (std::size_t byte = 0; byte < bytes; ++byte)
            page[at + byte] = static_cast<char>(number >> (8 * (bytes - 1 - byte)));
    };
    constexpr std::uint32_t cells = 400, cell = 6, first = 4096 - cells * cell;
    page[0] = 5;
    put(3, cells, 2);
    put(5, first, 2);
    put(8, below, 4);
    for (std::uint32_t at = 0; at < cells; ++at) {
        put(12 + 2 * at, first + cell * at, 2);
        put(first + cell * at, below, 4);
        put(first + cell * at + 4, 0x8000 | (at >> 7) << 8 | (at & 0x7F), 2);
    }
    return page;
}

//! Makes a table of a few pages one that is read for ages: each of 401 entries of a page leads to the same page below, three times over.
inline void makeReadingLong(const std::filesystem::path& file, const std::string& table) {
    const int root = SQLite::Database(file.string(), SQLite::OPEN_READONLY)
                         .execAndGet("SELECT rootpage FROM sqlite_schema WHERE name = '" + table + "'")
                         .getInt();
    auto bytes = bytesOf(file);
    const auto at = static_cast<std::size_t>(root - 1) * 4096, pages = bytes.size() / 4096;
    const auto leaf = bytes.substr(at, 4096);
    bytes.replace(at, 4096, pageAbove(static_cast<std::uint32_t>(pages + 1)));
    bytes += pageAbove(static_cast<std::uint32_t>(pages + 2)) + pageAbove(static_cast<std::uint32_t>(pages + 3)) + leaf;
    for (std::size_t byte = 0; byte < 4; ++byte) bytes[28 + byte] = static_cast<char>((pages + 3) >> (8 * (3 - byte)));
    writeBytes(file, bytes);
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
