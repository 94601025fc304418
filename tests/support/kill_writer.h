// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book_folder.h"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <random>
#include <set>
#include <sys/wait.h>
#include <thread>

//! A writer (tests/book/crash_writer.cpp) is killed (SIGKILL) at a random moment; afterwards every edit it has said to be on disk is
//! there, at most one more, none in part, and the book is sound.
namespace winterlarder::book::support {

struct Writer {
    pid_t process;
    int output;
};

inline Writer start(const std::filesystem::path& book, int edits) {
    int ends[2];
    if (::pipe(ends) != 0) throw std::runtime_error("no pipe");
    const auto count = std::to_string(edits);
    const pid_t process = ::fork();
    if (process == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::close(ends[1]);
        ::execl(BUILD_FOLDER "/crash_writer", "crash_writer", book.c_str(), count.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    return {process, ends[0]};
}

//! Reads acknowledgements until `enough` are there, waits a little more, kills, and gives all that arrived.
inline std::vector<std::string> killAfter(const Writer& writer, int enough, std::chrono::microseconds more) {
    std::string text;
    char part[256];
    int lines = 0;
    ssize_t got = 0;
    while (lines < enough && (got = ::read(writer.output, part, sizeof part)) > 0) {
        text.append(part, static_cast<std::size_t>(got));
        lines = static_cast<int>(std::count(text.begin(), text.end(), '\n'));
    }
    std::this_thread::sleep_for(more);
    ::kill(writer.process, SIGKILL);
    while ((got = ::read(writer.output, part, sizeof part)) > 0) text.append(part, static_cast<std::size_t>(got));
    ::close(writer.output);
    int status = 0;
    ::waitpid(writer.process, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status) || WEXITSTATUS(status) == 0) << "the writer failed by itself";
    std::vector<std::string> acknowledged;
    for (std::size_t at = 0, end; (end = text.find('\n', at)) != text.npos; at = end + 1)
        acknowledged.push_back(text.substr(at, end - at));
    return acknowledged;
}

inline std::set<std::string> notesIn(Book& book) {
    std::set<std::string> notes;
    for (const auto& weighing : must(book.of<Weighing>({1}))) notes.insert(weighing.note);
    return notes;
}

inline void makeBook(const std::filesystem::path& file) {
    auto book = newBook(file);
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
}

//! Kills `kills` writers of `edits` edits one after the other on the same book, begun anew now and then so that it stays small.
inline void killAndLook(const BookFolder& folder, int kills, int edits, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    int unacknowledged = 0, killed = 0;
    for (int round = 0; round < kills; ++round) {
        const auto file = folder / fmt::format("{}.larder", round / 4);
        if (round % 4 == 0) makeBook(file);
        std::set<std::string> before;
        {
            auto book = openBook(file, OpenFor::Reading);
            before = notesIn(book);
        }
        const auto acknowledged =
            killAfter(start(file, edits), static_cast<int>(random() % static_cast<unsigned>(edits)),
                      std::chrono::microseconds(random() % 3000));
        auto book = openBook(file);
        ASSERT_TRUE(book.writable()) << "the sign of a killed writer keeps nobody out";
        ASSERT_THAT(must(book.check()), testing::IsEmpty()) << "round " << round;
        const auto after = notesIn(book);
        for (const auto& note : acknowledged)
            ASSERT_TRUE(after.contains(note)) << "acknowledged edit " << note << " is lost, round " << round;
        ASSERT_LE(after.size(), before.size() + acknowledged.size() + 1) << "round " << round;
        unacknowledged += static_cast<int>(after.size() - before.size() - acknowledged.size());
        killed += static_cast<int>(acknowledged.size()) < edits;
        if (round % 4 == 3) std::filesystem::remove(file);
    }
    EXPECT_GT(killed, kills * 9 / 10) << "the writers must not finish before they are killed";
    testing::Test::RecordProperty("unacknowledged", unacknowledged);
}

} // namespace winterlarder::book::support
