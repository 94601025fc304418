// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/guard.h"

#include <SQLiteCpp/Database.h>
#include <array>
#include <sqlite3.h>
#include <string_view>
#include <utility>

namespace winterlarder::book {
namespace {

constexpr int longestValue = 32 * 1024 * 1024;

constexpr std::array<std::pair<int, int>, 10> sqliteLimits{{
    {SQLITE_LIMIT_LENGTH, longestValue},
    {SQLITE_LIMIT_SQL_LENGTH, 100000},
    {SQLITE_LIMIT_COLUMN, 200},
    {SQLITE_LIMIT_EXPR_DEPTH, 100},
    {SQLITE_LIMIT_COMPOUND_SELECT, 10},
    {SQLITE_LIMIT_FUNCTION_ARG, 16},
    {SQLITE_LIMIT_ATTACHED, 1}, // 0 would break VACUUM INTO
    {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 50},
    {SQLITE_LIMIT_VARIABLE_NUMBER, 200}, // an entry is added with one statement, a variable a column
    {SQLITE_LIMIT_TRIGGER_DEPTH, 1},
}};

bool isOneOf(const char* name, std::initializer_list<std::string_view> names) {
    for (const auto allowed : names)
        if (name && allowed == name) return true;
    return false;
}

int rowsOnlyAuthorizer(void*, int action, const char* first, const char* second, const char*, const char*) {
    switch (action) {
    case SQLITE_SELECT:
    case SQLITE_READ:
    case SQLITE_TRANSACTION: return SQLITE_OK;
    case SQLITE_INSERT:
    case SQLITE_UPDATE:
    case SQLITE_DELETE: return isOneOf(first, {"sqlite_schema", "sqlite_master"}) ? SQLITE_DENY : SQLITE_OK;
    case SQLITE_FUNCTION:
        return isOneOf(second, {"count", "max", "min", "coalesce", "length", "glob", "typeof"}) ? SQLITE_OK
                                                                                                : SQLITE_DENY;
    case SQLITE_PRAGMA:
        return isOneOf(first,
                       {"integrity_check", "foreign_key_check", "defer_foreign_keys", "data_version", "page_count"})
                   ? SQLITE_OK
                   : SQLITE_DENY;
    default: return SQLITE_DENY;
    }
}

void configure(sqlite3* handle, int option, int on) {
    const int code = sqlite3_db_config(handle, option, on, nullptr);
    if (code != SQLITE_OK) throw SQLite::Exception(handle, code);
}

} // namespace

void guard(SQLite::Database& database, Connection connection) {
    auto* handle = database.getHandle();
    configure(handle, SQLITE_DBCONFIG_DEFENSIVE, 1);
    configure(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
    configure(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0);
    configure(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0);
    configure(handle, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0);
    configure(handle, SQLITE_DBCONFIG_DQS_DDL, 0);
    configure(handle, SQLITE_DBCONFIG_DQS_DML, 0);
    for (const auto& [limit, value] : sqliteLimits) sqlite3_limit(handle, limit, value);
    sqlite3_limit(handle, SQLITE_LIMIT_WORKER_THREADS, 0);
    database.exec(
        "PRAGMA mmap_size = 0; PRAGMA cell_size_check = ON; PRAGMA temp_store = MEMORY; PRAGMA cache_size = -8000");
    if (connection == Connection::Writes)
        database.exec("PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA; PRAGMA foreign_keys = ON");
}

void allowRowsOnly(SQLite::Database& database) {
    sqlite3_set_authorizer(database.getHandle(), &rowsOnlyAuthorizer, nullptr);
}

void allowTablesToo(SQLite::Database& database) { sqlite3_set_authorizer(database.getHandle(), nullptr, nullptr); }

void allowBrokenSchema(SQLite::Database& database) {
    configure(database.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 0);
    configure(database.getHandle(), SQLITE_DBCONFIG_WRITABLE_SCHEMA, 1);
}

} // namespace winterlarder::book
