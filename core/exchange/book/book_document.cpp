// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/book_document.h"

#include "exchange/book/book_values.h"
#include "exchange/json/suggestion.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace winterlarder::exchange {
namespace {

using book::Column;
using book::Kind;
using book::ListTable;
using book::Row;
using book::Table;
using book::Target;
using book::Values;

// ---- writing --------------------------------------------------------------------------------------------------------------

void addValues(Json& object, const std::vector<Column>& columns, const Values& values) {
    for (std::size_t at = 0; at < columns.size(); ++at)
        if (!std::holds_alternative<std::monostate>(values[at]))
            object.add(columns[at].name, jsonOfValue(columns[at], values[at]));
}

Json jsonOfEntry(const Table& table, std::int64_t id, const Row& row) {
    auto entry = Json::object();
    entry.add("id", jsonOfWhole(id));
    addValues(entry, table.columns, row.values);
    for (std::size_t list = 0; list < table.lists.size(); ++list) {
        if (row.lists[list].empty()) continue;
        auto items = Json::list();
        for (const auto& values : row.lists[list]) {
            auto item = Json::object();
            addValues(item, table.lists[list].columns, values);
            items.push(std::move(item));
        }
        entry.add(table.lists[list].name, std::move(items));
    }
    return entry;
}

// ---- reading --------------------------------------------------------------------------------------------------------------

class DocumentReader {
public:
    DocumentReader(std::string file, const ReferenceData& reference)
        : file_(std::move(file)), limits_(reference.fields) {}

    void read(const JsonValue& document) {
        if (document.kind != JsonValue::Kind::Object)
            return fault(document.position, "the document is not an object", "begin it with {");
        bool form = false;
        std::size_t unknown = 0;
        std::vector<std::string> known{"larder"};
        for (const auto& table : book::tables()) known.push_back(table.name);
        for (const auto& member : document.members) {
            if (member.name == "larder") form = isOurForm(member);
            else if (const auto kind = book::kindNamed(member.name)) readEntries(book::tableOf(*kind), member.value);
            else
                fault(member.position, fmt::format("unknown key {}", inQuotes(member.name)),
                      unknown++ < limits::suggestedKeys ? suggestion(member.name, known) : std::string());
        }
        if (!form && problems.empty())
            fault(document.position, "the key \"larder\" is missing", fmt::format("\"larder\": {}", bookDocumentForm));
        checkReferences();
    }

    std::vector<Place> placesOfEntries() const {
        std::vector<Place> all;
        for (const auto& read : read_) all.push_back({file_, read.at.line, read.at.column});
        return all;
    }
    std::vector<Target> targets() {
        std::vector<Target> all;
        for (auto& read : read_) all.push_back(std::move(read.target));
        return all;
    }

    Problems problems;

private:
    struct Read {
        Target target;
        std::map<std::string, Position> places; //!< of references
        Position at{};
    };

    void fault(Position position, std::string detail, std::string remedy) {
        problems.push_back(
            {ProblemKind::Input, {file_, position.line, position.column}, std::move(detail), std::move(remedy)});
    }

    bool isOurForm(const JsonMember& member) {
        const bool ours = member.value.kind == JsonValue::Kind::Number && member.value.number == bookDocumentForm;
        if (!ours)
            fault(member.value.position, "this form of document is not known", fmt::format("{}", bookDocumentForm));
        return ours;
    }

    void readEntries(const Table& table, const JsonValue& list) {
        if (list.kind != JsonValue::Kind::List)
            return fault(list.position, table.name + " is not a list", "a list of entries");
        std::set<std::int64_t> ids;
        for (const auto& item : list.items) {
            if (item.kind != JsonValue::Kind::Object) {
                fault(item.position, fmt::format("{} is not an object", table.singular), "an object");
                continue;
            }
            readEntry(table, item, ids);
        }
    }

    void readEntry(const Table& table, const JsonValue& object, std::set<std::int64_t>& ids) {
        static const Column idColumn = [] {
            Column column;
            column.header = column.name = "id";
            column.type = book::ColumnType::Reference;
            column.required = true;
            column.refersTo = Kind::Yard;
            return column;
        }();
        Read read{{table.kind, 0, Row{}}, {}, object.position};
        std::vector<std::string> known;
        const auto id = valueOf(object, idColumn, known);
        if (const auto* number = std::get_if<std::int64_t>(&id)) read.target.id = *number;
        if (read.target.id > 0 && !ids.insert(read.target.id).second)
            fault(object.position, fmt::format("{} {} is there twice", table.singular, read.target.id),
                  "number each once");
        read.target.row->values = valuesOf(object, table.columns, known, &read.places);
        for (const auto& list : table.lists) read.target.row->lists.push_back(itemsOf(object, list, known));
        refuseUnknown(object, known);
        read_.push_back(std::move(read));
    }

    static const JsonMember* member(const JsonValue& object, const std::string& name) {
        for (const auto& one : object.members)
            if (one.name == name) return &one;
        return nullptr;
    }

    book::Value valueOf(const JsonValue& object, const Column& column, std::vector<std::string>& known) {
        known.push_back(column.name);
        const auto* found = member(object, column.name);
        if (!found) {
            if (!mustBeGiven(column, limits_)) return defaultOf(column, limits_);
            fault(object.position, fmt::format("\"{}\" is missing", column.name), formOf(column));
            return {};
        }
        auto value = valueOfJson(column, found->value);
        if (!value) {
            fault(found->value.position, fmt::format("\"{}\" is {}", column.name, name(found->value.kind)),
                  formOf(column));
            return {};
        }
        auto problem = limits_.fault(column, *value);
        if (!problem) problem = book::faultOfNewName(column, *value);
        if (problem) fault(found->value.position, problem->detail, problem->remedy);
        return std::move(*value);
    }

    Values valuesOf(const JsonValue& object, const std::vector<Column>& columns, std::vector<std::string>& known,
                    std::map<std::string, Position>* places) {
        Values values;
        for (const auto& column : columns) {
            values.push_back(valueOf(object, column, known));
            const auto* found = member(object, column.name);
            if (places && column.refersTo && found) places->emplace(column.name, found->value.position);
        }
        return values;
    }

    std::vector<Values> itemsOf(const JsonValue& object, const ListTable& list, std::vector<std::string>& known) {
        known.push_back(list.name);
        std::vector<Values> items;
        const auto* found = member(object, list.name);
        if (!found) return items;
        if (found->value.kind != JsonValue::Kind::List) {
            fault(found->value.position, fmt::format("\"{}\" is {}", list.name, name(found->value.kind)), "a list");
            return items;
        }
        for (const auto& item : found->value.items) {
            if (item.kind != JsonValue::Kind::Object) {
                fault(item.position, fmt::format("an item of \"{}\" is {}", list.name, name(item.kind)), "an object");
                continue;
            }
            std::vector<std::string> knownInItem;
            items.push_back(valuesOf(item, list.columns, knownInItem, nullptr));
            refuseUnknown(item, knownInItem);
        }
        return items;
    }

    void refuseUnknown(const JsonValue& object, const std::vector<std::string>& known) {
        std::size_t unknown = 0;
        for (const auto& one : object.members)
            if (std::find(known.begin(), known.end(), one.name) == known.end())
                fault(one.position, fmt::format("unknown key {}", inQuotes(one.name)),
                      unknown++ < limits::suggestedKeys ? suggestion(one.name, known) : std::string());
    }

    void checkReferences() {
        std::map<Kind, std::set<std::int64_t>> there;
        for (const auto& read : read_) there[read.target.kind].insert(read.target.id);
        for (const auto& read : read_) {
            const auto& table = book::tableOf(read.target.kind);
            for (std::size_t at = 0; at < table.columns.size(); ++at) {
                const auto& column = table.columns[at];
                const auto* to = std::get_if<std::int64_t>(&read.target.row->values[at]);
                if (!column.refersTo || !to || there[*column.refersTo].contains(*to)) continue;
                fault(read.places.at(column.name),
                      fmt::format("there is no {} {}", book::tableOf(*column.refersTo).singular, *to),
                      "name one that is in the document");
            }
        }
    }

    std::string file_;
    book::Limits limits_;
    std::vector<Read> read_;
};

} // namespace

Outcome<Done> writeBook(book::Book& from, const std::function<void(std::string_view)>& part) {
    Problems problems;
    const auto read = from.together([&] {
        part(fmt::format("{{\n\"larder\": {}", bookDocumentForm));
        for (const auto& table : book::tables()) {
            part(fmt::format(",\n\"{}\": [", table.name));
            const char* before = "\n";
            const auto rows = from.eachRow(table.kind, [&](std::int64_t id, const Row& row) {
                part(before);
                part(jsonOfEntry(table, id, row).compact());
                before = ",\n";
            });
            if (!rows) problems = rows.problems();
            part("]");
        }
        part("\n}\n");
    });
    if (!read) return read.problems();
    if (!problems.empty()) return problems;
    return Done{};
}

Outcome<std::string> writeBook(book::Book& from) {
    std::string text;
    const auto written = writeBook(from, [&](std::string_view part) { text += part; });
    if (!written) return written.problems();
    return text;
}

Outcome<std::vector<Target>> readBook(std::string_view text, const std::string& file, const ReferenceData& reference,
                                      std::vector<Place>* places) {
    if (text.size() > limits::documentText.bytes) return limits::tooLarge({file}, limits::documentText);
    auto json = readJson(text, file);
    if (!json.value) return std::move(json.problems);
    DocumentReader reader(file, reference);
    reader.problems = std::move(json.problems);
    reader.read(*json.value);
    json.value.reset();
    if (!reader.problems.empty()) return std::move(reader.problems);
    if (places) *places = reader.placesOfEntries();
    return reader.targets();
}

Outcome<book::Applied> importBook(book::Book& into, std::string_view text, const std::string& file, book::Timestamp now,
                                  const std::string& who) {
    auto entries = readBook(text, file, into.reference());
    if (!entries) return entries.problems();
    return importBook(into, std::move(entries).value(), now, who);
}

Outcome<book::Applied> importBook(book::Book& into, std::vector<book::Target> entries, book::Timestamp now,
                                  const std::string& who) {
    std::set<std::pair<Kind, std::int64_t>> wanted;
    for (const auto& target : entries) wanted.emplace(target.kind, target.id);
    bool empty = true;
    for (const auto& table : book::tables()) {
        const auto rows = into.eachRow(table.kind, [&](std::int64_t id, const Row&) {
            empty = false;
            if (!wanted.contains({table.kind, id})) entries.push_back({table.kind, id, std::nullopt});
        });
        if (!rows) return rows.problems();
    }
    if (!empty)
        if (auto backup = into.backUp(now); !backup) return backup.problems();
    return into.apply(book::PutEntries{"import document", std::move(entries)}, now, who);
}

} // namespace winterlarder::exchange
