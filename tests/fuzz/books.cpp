// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/book_csv.h"
#include "exchange/book/book_document.h"

#include "book/salvage.h"
#include "fuzz/targets.h"
#include "support/furnished_book.h"

namespace winterlarder::fuzz {

using namespace book;
using namespace book::support;

namespace {

template <class T> T sure(Outcome<T> outcome, const char* what) {
    hold(outcome.ok(), std::string(what) + (outcome.ok() ? "" : ": " + describe(outcome.problems().front())));
    return std::move(outcome).value();
}

// A book that everything is tried on; each try is taken back.
struct TriedBook {
    BookFolder folder;
    Book book = newBook(folder / "tried.larder");
    TriedBook() {
        furnish(book, 1, 2);
        // A table of CSV cannot tell an empty text from none.
        for (auto yard : must(book.all<Yard>())) yard.currency = "CAD", edit(book, ChangeYard{yard});
    }
};
Book& tried() {
    static TriedBook one;
    return one.book;
}

const Opener opener{"Fuzz", "here", morning};

void readAll(Book& book) {
    if (const auto said = book.check(); !said) holdRefusal(said.problems());
    if (const auto info = book.info(); !info) holdRefusal(info.problems());
    if (const auto steps = book.story(20); !steps) holdRefusal(steps.problems());
    if (const auto text = exchange::writeBook(book); !text) holdRefusal(text.problems());
    for (const auto& table : exchange::csvTables())
        if (const auto text = exchange::writeCsv(book, table); !text) holdRefusal(text.problems());
}

} // namespace

void bookCsv(std::string_view input) {
    if (input.empty()) return;
    const auto tables = exchange::csvTables();
    const auto& table = tables[static_cast<unsigned char>(input.front()) % tables.size()];
    const auto preview = exchange::previewCsv(tried(), table, input.substr(1), "t.csv", "Fuzz");
    if (!preview) return holdRefusal(preview.problems(), "t.csv");
    const auto before = sure(tried().dump(), "the book cannot be dumped");
    const auto applied = exchange::importCsv(tried(), *preview, morning, "Fuzz");
    if (!applied) return holdRefusal(applied.problems());
    hold(sure(tried().check(), "the book cannot be checked").empty(), "an import left the book unsound");
    if (!applied->step) return;
    const auto exported = sure(exchange::writeCsv(tried(), table), "an imported table cannot be exported");
    const auto again = exchange::previewCsv(tried(), table, exported, "again.csv", "Fuzz");
    hold(again.ok(), "an exported table cannot be read");
    const auto& other = again->added.empty() ? again->changed : again->added;
    hold(other.empty(), "an exported table is not what the book holds, from line " +
                            std::to_string(other.empty() ? 0 : other.front()));
    sure(tried().undo(morning, "Fuzz"), "an import cannot be undone");
    hold(sure(tried().dump(), "the book cannot be dumped") == before, "an import that was undone left something");
}

void bookJson(std::string_view input) {
    const auto read = exchange::readBook(input, "b.json", shipped());
    if (!read) return holdRefusal(read.problems(), "b.json");
    BookFolder folder;
    auto into = newBook(folder / "b.larder");
    const auto applied = exchange::importBook(into, *read, morning, "Fuzz");
    if (!applied) return holdRefusal(applied.problems());
    hold(sure(into.check(), "the book cannot be checked").empty(), "an import left the book unsound");
    const auto text = sure(exchange::writeBook(into), "an imported book cannot be exported");
    const auto again = exchange::readBook(text, "again.json", shipped());
    hold(again.ok(), "an exported book cannot be read");
    auto other = newBook(folder / "c.larder");
    sure(exchange::importBook(other, *again, morning, "Fuzz"), "an exported book cannot be imported");
    hold(sure(other.dump(), "dump") == sure(into.dump(), "dump"), "an exported book is another book");
}

void bookFile(std::string_view input) {
    BookFolder folder;
    const auto file = folder / "strange.larder";
    writeBytes(file, std::string(input));
    auto opened = Book::open(file, shipped(), {opener, OpenFor::Reading});
    if (opened) readAll(*opened);
    else holdRefusal(opened.problems());
    hold(bytesOf(file) == input, "reading a book changed it");
    const auto salvaged = salvage(file, folder / "salvaged.larder", shipped(), opener);
    if (!salvaged) return holdRefusal(salvaged.problems());
    auto saved = sure(Book::open(folder / "salvaged.larder", shipped(), {opener, OpenFor::Writing}),
                      "a salvaged book cannot be opened");
    hold(sure(saved.check(), "a salvaged book cannot be checked").empty(), "a salvaged book is unsound");
    readAll(saved);
    hold(bytesOf(file) == input, "a salvage changed the damaged book");
}

} // namespace winterlarder::fuzz
