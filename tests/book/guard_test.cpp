// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/odd_books.h"

#include "book/file/file_problems.h"
#include "book/file/guard.h"
#include "book/file/store.h"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <sqlite3.h>

//! What a stranger's file cannot make a connection do.
namespace winterlarder::book::guard_test {
namespace {

using namespace support;

void seven(sqlite3_context* context, int, sqlite3_value**) { sqlite3_result_int(context, 7); }

//! A function of the program that a schema must not reach: not said to be innocuous.
void addFunction(SQLite::Database& database) {
    sqlite3_create_function_v2(database.getHandle(), "seven", 0, SQLITE_UTF8 | SQLITE_DETERMINISTIC, nullptr, &seven,
                               nullptr, nullptr, nullptr);
}

TEST(Guard, AFilesOwnDefinitionsCallNoFunctionsOfTheProgram) {
    BookFolder folder;
    const auto file = (folder / "a.db").string();
    {
        SQLite::Database strange(file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        addFunction(strange);
        strange.exec("CREATE TABLE bees (one INTEGER, two INTEGER AS (seven())); INSERT INTO bees (one) VALUES (1)");
    }
    for (const auto connection : {Connection::Reads, Connection::Writes}) {
        SQLite::Database opened(file, SQLite::OPEN_READWRITE);
        addFunction(opened);
        EXPECT_EQ(opened.execAndGet("SELECT two FROM bees").getInt(), 7) << "unguarded";
        guard(opened, connection);
        EXPECT_EQ(opened.execAndGet("SELECT seven()").getInt(), 7) << "the program itself may";
        EXPECT_THROW(opened.execAndGet("SELECT two FROM bees").getInt(), SQLite::Exception);
    }
}

//! Some 600 million steps: far more than a small book is worth, few enough that a test of a reader without bounds ends.
constexpr const char* longWork =
    "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n LIMIT 40000000) SELECT count(*) FROM n WHERE i > 0";

TEST(Guard, ReadingThatDoesNotEndIsStopped) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    Store store(folder / "a.larder", OpenMode::Read);
    store.startCall();
    try {
        store.number(longWork);
        ADD_FAILURE() << "it was let go on";
    } catch (const std::exception& error) {
        EXPECT_EQ(problemOf(error, "a.larder").detail, "the book is damaged: reading it does not end");
    }
    store.startCall();
    EXPECT_GT(store.number("PRAGMA page_count"), 0) << "the next call has its own bound";
}

TEST(Guard, ABookThatIsReadForAgesIsStoppedWhateverIsAskedOfIt) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        for (int yards = 0; yards < 3; ++yards) edit(book, AddYard{orchard()});
    }
    makeReadingLong(folder / "a.larder", "yards");
    auto book = openBook(folder / "a.larder", OpenFor::Reading);
    const auto info = book.info();
    ASSERT_FALSE(info) << "a number nobody could have counted";
    EXPECT_EQ(info.problems().front().detail, "the book is damaged: reading it does not end");
    EXPECT_FALSE(must(book.check()).empty());
}

} // namespace
} // namespace winterlarder::book::guard_test
