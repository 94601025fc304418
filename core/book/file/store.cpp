// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/store.h"

#include "book/file/guard.h"
#include "book/file/sql_values.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <sqlite3.h>

namespace winterlarder::book {
namespace {

constexpr int busyMilliseconds = 5000;
constexpr int stepsPerCount = 1000000;

int flagsOf(OpenMode mode) {
    switch (mode) {
    case OpenMode::Create: return SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE;
    case OpenMode::Write: return SQLite::OPEN_READWRITE;
    case OpenMode::Read: return SQLite::OPEN_READONLY;
    }
    return SQLite::OPEN_READONLY;
}

std::string columnNames(const std::vector<Column>& columns) {
    std::vector<std::string> names;
    for (const auto& column : columns) names.push_back(quotedName(column.name));
    return fmt::format("{}", fmt::join(names, ", "));
}

std::string placeholders(std::size_t count) {
    std::string text = "?";
    for (std::size_t at = 1; at < count; ++at) text += ", ?";
    return text;
}

Values valuesOf(SQLite::Statement& statement, int first, const std::vector<Column>& columns) {
    Values values;
    values.reserve(columns.size());
    for (std::size_t at = 0; at < columns.size(); ++at)
        values.push_back(valueAt(statement, first + static_cast<int>(at)));
    return values;
}

std::vector<std::int64_t> numbers(SQLite::Statement& statement) {
    std::vector<std::int64_t> result;
    while (statement.executeStep()) result.push_back(statement.getColumn(0).getInt64());
    statement.reset();
    return result;
}

} // namespace

Store::Store(const std::filesystem::path& file, OpenMode mode)
    : database_(std::make_unique<SQLite::Database>(std::filesystem::absolute(file).string(), flagsOf(mode),
                                                   busyMilliseconds)) {
    guard(*database_, mode == OpenMode::Read ? Connection::Reads : Connection::Writes);
    watchWork();
}

Store::Store()
    : database_(std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)) {}

std::unique_ptr<Store> Store::memoryCopyOf(Store& other) {
    std::unique_ptr<Store> copy(new Store());
    SQLite::Backup(*copy->database_, *other.database_).executeStep(-1);
    guard(*copy->database_, Connection::Writes);
    copy->watchWork();
    return copy;
}

void Store::watchWork() {
    // Reading every row once takes fewer than a hundred thousand steps a page.
    mayWork_ = 300 + number("PRAGMA page_count") / 10;
    sqlite3_progress_handler(database_->getHandle(), stepsPerCount, &Store::countWork, this);
}

void Store::resetStatements() {
    for (auto& kept : statements_)
        if (kept.second) kept.second->tryReset();
}

Store::~Store() { statements_.clear(); }

int Store::countWork(void* store) {
    auto& self = *static_cast<Store*>(store);
    return ++self.worked_ > self.mayWork_ ? 1 : 0;
}

SQLite::Statement& Store::statement(const std::string& sql) {
    auto& kept = statements_[sql];
    if (!kept) kept = std::make_unique<SQLite::Statement>(*database_, sql);
    kept->tryReset();
    kept->clearBindings();
    return *kept;
}

std::int64_t Store::number(const std::string& sql) {
    SQLite::Statement once(*database_, sql);
    return once.executeStep() ? once.getColumn(0).getInt64() : 0;
}

std::vector<std::string> Store::texts(const std::string& sql) {
    SQLite::Statement once(*database_, sql);
    std::vector<std::string> result;
    while (once.executeStep()) result.push_back(once.getColumn(0).getString());
    return result;
}

void Store::run(const std::string& sql) { database_->exec(sql); }

bool Store::readOnly() const { return sqlite3_db_readonly(database_->getHandle(), "main") == 1; }

int Store::systemError() const { return sqlite3_system_errno(database_->getHandle()); }

void Store::closeSchema() { allowRowsOnly(*database_); }

void Store::withSchemaOpen(const std::function<void()>& work) {
    statements_.clear();
    allowTablesToo(*database_);
    try {
        work();
    } catch (...) {
        allowRowsOnly(*database_);
        throw;
    }
    allowRowsOnly(*database_);
}

std::vector<SchemaPart> Store::schema() {
    SQLite::Statement all(*database_, "SELECT type, name, tbl_name, sql FROM sqlite_schema");
    std::vector<SchemaPart> parts;
    while (all.executeStep())
        parts.push_back({all.getColumn(0).getString(), all.getColumn(1).getString(), all.getColumn(2).getString(),
                         all.getColumn(3).getString()});
    return parts;
}

std::vector<std::vector<Values>> Store::lists(const Table& table, std::int64_t id) {
    std::vector<std::vector<Values>> result;
    for (const auto& list : table.lists) {
        auto& items = statement(fmt::format("SELECT {} FROM {} WHERE owner = ? ORDER BY place",
                                            columnNames(list.columns), quotedName(list.table)));
        items.bind(1, id);
        result.emplace_back();
        while (items.executeStep()) result.back().push_back(valuesOf(items, 0, list.columns));
        items.reset();
    }
    return result;
}

std::optional<Row> Store::row(Kind kind, std::int64_t id) {
    const auto& table = tableOf(kind);
    auto& one =
        statement(fmt::format("SELECT {} FROM {} WHERE id = ?", columnNames(table.columns), quotedName(table.name)));
    one.bind(1, id);
    if (!one.executeStep()) return std::nullopt;
    Row row{valuesOf(one, 0, table.columns), {}};
    one.reset();
    row.lists = lists(table, id);
    return row;
}

std::vector<std::int64_t> Store::ids(Kind kind) {
    return numbers(statement(fmt::format("SELECT id FROM {} ORDER BY id", quotedName(tableOf(kind).name))));
}

std::vector<std::int64_t> Store::idsOf(Kind kind, std::int64_t colony) {
    auto& some = statement(
        fmt::format("SELECT id FROM {} WHERE \"colony\" = ? ORDER BY \"date\", id", quotedName(tableOf(kind).name)));
    some.bind(1, colony);
    return numbers(some);
}

std::vector<std::int64_t> Store::referring(Kind kind, const std::string& column, std::int64_t to) {
    auto& some = statement(
        fmt::format("SELECT id FROM {} WHERE {} = ? ORDER BY id", quotedName(tableOf(kind).name), quotedName(column)));
    some.bind(1, to);
    return numbers(some);
}

bool Store::exists(Kind kind, std::int64_t id) {
    auto& one = statement(fmt::format("SELECT id FROM {} WHERE id = ?", quotedName(tableOf(kind).name)));
    one.bind(1, id);
    return !numbers(one).empty();
}

std::int64_t Store::lastNumber(const std::string& table, const std::string& allGiven) {
    constexpr std::int64_t room = std::int64_t{1} << 32; // what may be added to a book before its numbers end
    const auto largest = [&](const std::string& sql) {
        const auto found = numbers(statement(sql));
        return found.empty() ? 0 : found[0];
    };
    const auto given = largest(fmt::format("SELECT max(seq) FROM sqlite_sequence WHERE name = '{}'", table));
    const auto present = largest(fmt::format("SELECT max(id) FROM {}", quotedName(table)));
    if (std::max(given, present) <= largestId - room) return std::max({std::int64_t{0}, given, present});
    auto above = largestId;
    for (const auto one : numbers(statement(
             fmt::format("SELECT id FROM ({}) WHERE id BETWEEN 1 AND {} ORDER BY id DESC", allGiven, largestId)))) {
        if (above - one > room) return one;
        above = one;
    }
    return 0;
}

std::int64_t Store::lastId(Kind kind) {
    const auto& table = tableOf(kind);
    return lastNumber(table.name,
                      fmt::format("SELECT id FROM {} UNION SELECT entry FROM step_changes WHERE kind = '{}'",
                                  quotedName(table.name), table.singular));
}

std::int64_t Store::lastStep() {
    return lastNumber("steps", "SELECT id FROM steps UNION SELECT step FROM step_changes");
}

void Store::each(Kind kind, const std::function<void(std::int64_t, Row)>& visit) {
    const auto& table = tableOf(kind);
    SQLite::Statement all(*database_, fmt::format("SELECT id, {} FROM {} ORDER BY id", columnNames(table.columns),
                                                  quotedName(table.name)));
    while (all.executeStep()) {
        const auto id = all.getColumn(0).getInt64();
        visit(id, Row{valuesOf(all, 1, table.columns), lists(table, id)});
    }
}

void Store::insertItems(const ListTable& list, std::int64_t owner, const std::vector<Values>& items) {
    const auto sql = fmt::format("INSERT INTO {} (owner, place, {}) VALUES ({})", quotedName(list.table),
                                 columnNames(list.columns), placeholders(list.columns.size() + 2));
    for (std::size_t place = 0; place < items.size(); ++place) {
        auto& add = statement(sql);
        add.bind(1, owner);
        add.bind(2, static_cast<std::int64_t>(place));
        bindValues(add, 3, items[place]);
        add.exec();
    }
}

void Store::insert(Kind kind, std::int64_t id, const Row& row) {
    const auto& table = tableOf(kind);
    auto& add = statement(fmt::format("INSERT INTO {} (id, {}) VALUES ({})", quotedName(table.name),
                                      columnNames(table.columns), placeholders(table.columns.size() + 1)));
    add.bind(1, id);
    bindValues(add, 2, row.values);
    add.exec();
    for (std::size_t list = 0; list < table.lists.size(); ++list) insertItems(table.lists[list], id, row.lists[list]);
}

void Store::update(Kind kind, std::int64_t id, const Row& before, const Row& after) {
    const auto& table = tableOf(kind);
    for (std::size_t at = 0; at < table.columns.size(); ++at) {
        if (before.values[at] == after.values[at]) continue;
        std::vector<std::string> settings;
        for (const auto& column : table.columns) settings.push_back(quotedName(column.name) + " = ?");
        auto& change =
            statement(fmt::format("UPDATE {} SET {} WHERE id = ?", quotedName(table.name), fmt::join(settings, ", ")));
        bindValues(change, 1, after.values);
        change.bind(static_cast<int>(after.values.size()) + 1, id);
        change.exec();
        break;
    }
    for (std::size_t list = 0; list < table.lists.size(); ++list) {
        if (before.lists[list] == after.lists[list]) continue;
        auto& clear = statement(fmt::format("DELETE FROM {} WHERE owner = ?", quotedName(table.lists[list].table)));
        clear.bind(1, id);
        clear.exec();
        insertItems(table.lists[list], id, after.lists[list]);
    }
}

void Store::erase(Kind kind, std::int64_t id) {
    const auto& table = tableOf(kind);
    for (const auto& list : table.lists) {
        auto& clear = statement(fmt::format("DELETE FROM {} WHERE owner = ?", quotedName(list.table)));
        clear.bind(1, id);
        clear.exec();
    }
    auto& gone = statement(fmt::format("DELETE FROM {} WHERE id = ?", quotedName(table.name)));
    gone.bind(1, id);
    gone.exec();
}

} // namespace winterlarder::book
