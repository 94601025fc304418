// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/visitors.h"
#include "support/require.h"

#include <algorithm>
#include <charconv>

namespace winterlarder::book {
namespace {

struct Names {
    const char* plural;
    const char* singular;
};
constexpr std::array<Names, kindCount> names{{{"yards", "yard"},
                                              {"colonies", "colony"},
                                              {"moves", "move"},
                                              {"fates", "fate"},
                                              {"housings", "housing"},
                                              {"looks", "look"},
                                              {"weighings", "weighing"},
                                              {"feeds", "feed"},
                                              {"harvests", "harvest"},
                                              {"treatments", "treatment"},
                                              {"manipulations", "manipulation"},
                                              {"acted_advice", "acted_advice"},
                                              {"planned_visits", "planned_visit"},
                                              {"winter_outcomes", "winter_outcome"},
                                              {"sightings", "sighting"},
                                              {"weather_logs", "weather_log"}}};

template <class Entry> Table tableFor() {
    const auto& named = names[static_cast<std::size_t>(kindOf<Entry>)];
    ColumnList visitor({std::string(named.plural) + ".", "records."});
    Entry entry = blank<Entry>();
    describeWhole(visitor, entry);
    for (auto& list : visitor.lists) list.table = fmt::format("{}_{}", named.singular, list.name);
    return {kindOf<Entry>, named.plural, named.singular, std::move(visitor.columns), std::move(visitor.lists)};
}

template <class... Entries> std::vector<Table> allTables(std::tuple<Entries...>*) { return {tableFor<Entries>()...}; }

} // namespace

std::string ColumnList::nameOf(std::string header) const {
    for (const auto& prefix : prefixes_)
        if (header.starts_with(prefix)) {
            header.erase(0, prefix.size());
            break;
        }
    std::replace(header.begin(), header.end(), '.', '_');
    return header;
}

Column ColumnList::referenceColumn(std::string_view name, Kind kind, bool required) {
    Column column;
    column.header = column.name = name;
    column.type = ColumnType::Reference;
    column.required = required;
    column.refersTo = kind;
    return column;
}

std::optional<std::size_t> Table::column(std::string_view wanted) const {
    for (std::size_t at = 0; at < columns.size(); ++at)
        if (columns[at].name == wanted) return at;
    return std::nullopt;
}

const std::vector<Table>& tables() {
    static const std::vector<Table> all = allTables(static_cast<EntryTypes*>(nullptr));
    return all;
}

const Table& tableOf(Kind kind) { return tables().at(static_cast<std::size_t>(kind)); }

std::optional<Kind> kindNamed(std::string_view tableName) {
    for (const auto& table : tables())
        if (table.name == tableName) return table.kind;
    return std::nullopt;
}

std::string shortest(double number) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number == 0 ? 0.0 : number).ptr;
    return {text.data(), end};
}

} // namespace winterlarder::book
