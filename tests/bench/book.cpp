// SPDX-License-Identifier: GPL-3.0-or-later
#include "../support/large_book.h"

#include "book/case_of.h"

#include <SQLiteCpp/Database.h>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fcntl.h>
#include <sys/resource.h>

//! bench_book [COLONIES YEARS [FOLDER]]: makes a large book (500 x 20 unless said otherwise) and times what a keeper waits for, an
//! edit beside a bare 4 KiB write and fsync on the same disk.
namespace {

using namespace winterlarder;
using namespace winterlarder::book;
using namespace winterlarder::book::support;
using Clock = std::chrono::steady_clock;

double milliseconds(Clock::duration time) { return std::chrono::duration<double, std::milli>(time).count(); }

template <class Work> double median(int times, Work work) {
    std::vector<double> all;
    for (int time = 0; time < times; ++time) {
        const auto start = Clock::now();
        work(time);
        all.push_back(milliseconds(Clock::now() - start));
    }
    std::nth_element(all.begin(), all.begin() + times / 2, all.end());
    return all[static_cast<std::size_t>(times / 2)];
}

//! Over the same page again, or each time at the end of the file, which has the file system note the new length too.
double bareWrite(const std::filesystem::path& folder, bool atTheEnd) {
    const auto file = folder / "bare";
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_TRUNC, 0644);
    const std::string page(4096, 'p');
    const auto time = median(101, [&](int turn) {
        if (::pwrite(descriptor, page.data(), page.size(), atTheEnd ? 4096L * turn : 0) != 4096 ||
            ::fsync(descriptor) != 0)
            std::perror("fsync");
    });
    ::close(descriptor);
    return time;
}

//! What SQLite itself takes with the book's settings (rollback journal, synchronous=EXTRA): one row in one table.
double bareTransaction(const std::filesystem::path& folder) {
    SQLite::Database database((folder / "bare.sqlite").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA; CREATE TABLE rows (text TEXT)");
    return median(101, [&](int) { database.exec("INSERT INTO rows VALUES ('a row')"); });
}

void show(const char* what, double value, const char* unit, const char* bound = "") {
    std::printf("%-52s %10.2f %s%s\n", what, value, unit, bound);
}

} // namespace

int main(int argc, char** argv) {
    const int colonies = argc > 2 ? std::atoi(argv[1]) : 500, years = argc > 2 ? std::atoi(argv[2]) : 20;
    const BookFolder folder(argc > 3 ? argv[3] : ".");
    const auto file = folder / "large.larder";
    {
        auto book = newBook(file);
        const auto start = Clock::now();
        fillLarge(book, colonies, years, 1);
        show("making it", milliseconds(Clock::now() - start) / 1000, "s");
    }
    show("size of the file", static_cast<double>(std::filesystem::file_size(file)) / 1e6, "MB");
    show("opening", median(11, [&](int) { openBook(file); }), "ms", "   (bound 300)");
    auto book = openBook(file);
    show("all records of a colony", median(101, [&](int time) { must(historyOf(book, {time % colonies + 1})); }), "ms",
         "   (bound 20)");
    show("case of a colony",
         median(51, [&](int time) { must(caseOf(book, {time % colonies + 1}, day("2025-09-12"))); }), "ms");
    const auto bare = bareWrite(folder.path(), false);
    show("4 KiB written and synced, bare", bare, "ms");
    show("4 KiB added to a file and synced, bare", bareWrite(folder.path(), true), "ms");
    const auto smallest = bareTransaction(folder.path());
    show("the smallest transaction of SQLite with these settings", smallest, "ms");
    show("the same in bare writes", smallest / bare, "", "   (it syncs five times and takes a file away)");
    must(book.backUp(morning));
    const auto one = median(
        101, [&](int time) { edit(book, AddWeighing{weighingOf({time % colonies + 1}, day("2026-09-10"), 50)}); });
    show("an edit (a weighing)", one, "ms");
    show("an edit (a weighing) in bare writes", one / bare, "", "   (bound 3, which the settings exclude)");
    show("an edit (a weighing) in smallest transactions", one / smallest, "");
    Dice dice(2);
    const auto look =
        median(101, [&](int time) { edit(book, AddLook{someLook(dice, {time % colonies + 1}, day("2026-09-10"))}); });
    show("an edit (a look of fifteen combs)", look, "ms");
    show("an edit (a look) in bare writes", look / bare, "");
    const auto start = Clock::now();
    must(book.backUp(later(1)));
    show("a backup, checked", milliseconds(Clock::now() - start), "ms");
    rusage usage{};
    ::getrusage(RUSAGE_SELF, &usage);
    show("most memory of the whole program", static_cast<double>(usage.ru_maxrss) / 1024, "MB");
}
