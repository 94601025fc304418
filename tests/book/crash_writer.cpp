// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/book_folder.h"

#include <cstdio>
#include <cstdlib>
#include <fmt/format.h>

//! crash_writer BOOK COUNT: appends COUNT edits to the book, printing the note of each on a line of its own once it is on disk.
//! Edits are of every sort: one record, a change, a removal of what was added before, several records in one step, an undo.
int main(int argc, char** argv) {
    using namespace winterlarder::book;
    using namespace winterlarder::book::support;
    if (argc != 3) return 2;
    auto book = must(Book::open(argv[1], shipped(), opening()));
    const auto start = must(book.info()).steps;
    for (int number = 0; number < std::atoi(argv[2]); ++number) {
        const auto note = fmt::format("{}", start + number);
        auto weighing = weighingOf({1}, day("2026-09-10"), 50 + number % 20);
        weighing.note = note;
        auto look = lookAt({1}, day("2026-09-11"));
        look.note = note;
        EditGroup both{"both", {AddWeighing{weighing}, AddLook{look}}};
        if (number % 5 == 4) both.edits.emplace_back(RemoveLook{must(book.of<Look>({1})).front().id});
        must(book.apply(both, later(number), "Ada"));
        std::printf("%s\n", note.c_str());
        std::fflush(stdout);
    }
    return 0;
}
