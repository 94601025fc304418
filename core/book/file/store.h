// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/file/schema.h"
#include "book/form/edits.h"
#include "book/form/row.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
class Statement;
} // namespace SQLite

//! The book's file as rows: the inside of book/book.h, nothing for other folders. Failures of the file are thrown as
//! SQLite::Exception and become Problems in Book.
namespace winterlarder::book {

enum class OpenMode { Create, Write, Read };

//! A connection on guard: a book may come from a stranger. Defensive mode, no trusted schema, no triggers, no views, no
//! extensions, small limits, cell sizes checked, no memory mapping, an authorizer that knows only what a book needs, and a bound on
//! the work of one call (a crafted tree can otherwise keep a reader busy for ever). Tested: tests/book/hostile_test.cpp.
class Store {
public:
    Store(const std::filesystem::path& file, OpenMode mode);
    //! Everything of the other one, in memory: what a book that must not be written is migrated in.
    static std::unique_ptr<Store> memoryCopyOf(Store& other);
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    SQLite::Database& database() { return *database_; }
    //! A prepared statement, kept for the next use and reset for this one.
    SQLite::Statement& statement(const std::string& sql);
    std::int64_t number(const std::string& sql); //!< of the one row and column the statement gives
    std::vector<std::string> texts(const std::string& sql);
    void run(const std::string& sql);

    bool readOnly() const;
    //! The system's error behind the last one of this connection; 0 = none.
    int systemError() const;
    //! From now on only reading and changing rows; until then the schema may be made.
    void closeSchema();
    //! Runs something that needs the schema open (migration, VACUUM INTO).
    void withSchemaOpen(const std::function<void()>& work);
    //! Starts the work bound of one call anew.
    void startCall() { worked_ = 0; }
    //! Lets go of every read a failed call may have left open.
    void resetStatements();
    std::vector<SchemaPart> schema();

    std::optional<Row> row(Kind kind, std::int64_t id);
    std::vector<std::int64_t> ids(Kind kind);
    std::vector<std::int64_t> idsOf(Kind kind, std::int64_t colony); //!< by date, then id
    std::vector<std::int64_t> referring(Kind kind, const std::string& column, std::int64_t to);
    bool exists(Kind kind, std::int64_t id);
    //! The number new entries of the kind are counted on from: the largest ever given, 0 = none. Numbers so near largestId that counting
    //! on from them would end are passed over, and so are those beyond it that a stranger wrote; none is ever given twice.
    std::int64_t lastId(Kind kind);
    std::int64_t lastStep(); //!< the same for steps of the history
    //! Every row of a kind by id, lists included, in one pass.
    void each(Kind kind, const std::function<void(std::int64_t, Row)>& visit);

    void insert(Kind kind, std::int64_t id, const Row& row);
    void update(Kind kind, std::int64_t id, const Row& before, const Row& after);
    void erase(Kind kind, std::int64_t id);

private:
    Store();
    void watchWork();
    std::int64_t lastNumber(const std::string& table, const std::string& allGiven);
    std::vector<std::vector<Values>> lists(const Table& table, std::int64_t id);
    void insertItems(const ListTable& list, std::int64_t owner, const std::vector<Values>& items);
    static int countWork(void* store);

    std::unique_ptr<SQLite::Database> database_;
    std::map<std::string, std::unique_ptr<SQLite::Statement>, std::less<>> statements_;
    std::int64_t worked_ = 0, mayWork_ = 0;
};

} // namespace winterlarder::book
