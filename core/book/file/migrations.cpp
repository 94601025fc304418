// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/migrations.h"

#include "book/file/store.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace winterlarder::book {
namespace {

std::vector<std::string> columnsOf(Store& store, const std::string& table) {
    SQLite::Statement info(store.database(), "SELECT name FROM pragma_table_info(?)");
    info.bind(1, table);
    std::vector<std::string> names;
    while (info.executeStep()) names.push_back(info.getColumn(0).getString());
    return names;
}

std::string common(const std::vector<std::string>& old, const std::vector<std::string>& present) {
    std::vector<std::string> names;
    for (const auto& name : present)
        if (std::find(old.begin(), old.end(), name) != old.end()) names.push_back(quotedName(name));
    return fmt::format("{}", fmt::join(names, ", "));
}

bool holds(const std::vector<SchemaPart>& parts, const std::string& name) {
    return std::any_of(parts.begin(), parts.end(), [&](const SchemaPart& part) { return part.name == name; });
}

//! Makes the table anew under its own name (so that its text is exactly ours) and carries its rows over.
void remake(Store& store, const SchemaPart& part, bool wasThere) {
    const auto name = quotedName(part.name), old = quotedName("old_" + part.name);
    if (wasThere) store.run(fmt::format("ALTER TABLE {} RENAME TO {}", name, old));
    store.run(part.sql);
    if (!wasThere) return;
    const auto columns = common(columnsOf(store, "old_" + part.name), columnsOf(store, part.name));
    store.run(fmt::format("INSERT INTO {} ({}) SELECT {} FROM {}", name, columns, columns, old));
    store.run(fmt::format("DELETE FROM sqlite_sequence WHERE name = '{}'", part.name));
    store.run(fmt::format("UPDATE sqlite_sequence SET name = '{}' WHERE name = 'old_{}'", part.name, part.name));
    store.run(fmt::format("DROP TABLE {}", old));
}

void remakeAll(Store& store, const std::vector<SchemaPart>& target) {
    const auto found = store.schema();
    for (const auto& part : found)
        if (part.type == "index" && !part.sql.empty()) store.run("DROP INDEX " + quotedName(part.name));
    for (const auto& part : target) {
        if (part.type == "table") remake(store, part, holds(found, part.name));
        else store.run(part.sql);
    }
}

} // namespace

const std::vector<Migration>& migrations() {
    // 2: entries that were asked about keep that the keeper is sure of them.
    // 3: answers to what the keeper is asked; what was not asked then stays not known, what was written stays.
    // 4: a mark of the book, drawn when it is made; older books have none, and their calendars keep the ids they had.
    static const std::vector<Migration> all{{1, {}}, {2, {}}, {3, {}}};
    return all;
}

void migrate(Store& store, int from, const std::vector<Migration>& steps, const std::vector<SchemaPart>& target) {
    // Renaming must leave the references of other tables alone: they are made anew as well.
    store.run("PRAGMA foreign_keys = OFF; PRAGMA legacy_alter_table = ON");
    try {
        SQLite::Transaction all(store.database(), SQLite::TransactionBehavior::IMMEDIATE);
        int version = from;
        for (const auto& step : steps) {
            if (step.from != version) continue;
            for (const auto& statement : step.statements) store.run(statement);
            ++version;
        }
        remakeAll(store, target);
        store.run(fmt::format("PRAGMA user_version = {}", version));
        if (!store.texts("PRAGMA foreign_key_check").empty())
            throw SQLite::Exception("entries refer to entries that are not there", 19);
        if (const auto left = compareSchema(store.schema(), target).surprises; !left.empty())
            throw SQLite::Exception(left.front(), 11);
        all.commit();
    } catch (...) {
        store.run("PRAGMA legacy_alter_table = OFF; PRAGMA foreign_keys = ON");
        throw;
    }
    store.run("PRAGMA legacy_alter_table = OFF; PRAGMA foreign_keys = ON");
}

} // namespace winterlarder::book
