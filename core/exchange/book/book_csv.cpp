// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/book_csv.h"

#include "calendar/other_date_forms.h"
#include "exchange/book/book_csv_references.h"
#include "exchange/book/book_values.h"
#include "exchange/book/csv_cells.h"
#include "exchange/json/suggestion.h"
#include "reference/csv_table.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace winterlarder::exchange {
namespace {

using book::Column;
using book::ColumnType;
using book::Kind;
using book::Row;
using book::Table;
using book::Value;
using book::Values;

constexpr std::int64_t farAbove = std::int64_t{1} << 32;

//! The table of an entry, or of a list of one.
struct Named {
    const Table* table = nullptr;
    std::optional<std::size_t> list;
    const std::vector<Column>& columns() const { return list ? table->lists[*list].columns : table->columns; }
};

std::optional<Named> tableNamed(const std::string& name) {
    for (const auto& table : book::tables()) {
        if (table.name == name) return Named{&table, std::nullopt};
        for (std::size_t list = 0; list < table.lists.size(); ++list)
            if (table.lists[list].table == name) return Named{&table, list};
    }
    return std::nullopt;
}

Problem noSuchTable(const std::string& name) {
    return {ProblemKind::Input, {}, fmt::format("there is no table \"{}\"", name), suggestion(name, csvTables())};
}

// ---- writing --------------------------------------------------------------------------------------------------------------

std::vector<std::string> cellsOf(const std::vector<Column>& columns, const Values& values,
                                 const CsvReferences& references) {
    std::vector<std::string> cells;
    for (std::size_t at = 0; at < columns.size(); ++at) {
        const auto* to = std::get_if<std::int64_t>(&values[at]);
        if (columns[at].refersTo && to) cells.push_back(guarded(references.textOf(*columns[at].refersTo, *to)));
        else
            cells.push_back(columns[at].type == ColumnType::Text ? guarded(textOfValue(columns[at], values[at]))
                                                                 : textOfValue(columns[at], values[at]));
    }
    return cells;
}

std::string headerOf(const Named& named) {
    std::vector<std::string> cells;
    if (named.list) cells = {"owner", "place"};
    else cells = {"id"};
    for (const auto& column : named.columns()) cells.push_back(column.header);
    return csvLine(cells);
}

// ---- reading --------------------------------------------------------------------------------------------------------------

class CsvImport {
public:
    CsvImport(book::Book& into, const Named& named, const CsvTable& csv, CsvReferences references, std::string who)
        : into_(into), named_(named), csv_(csv), references_(std::move(references)), limits_(into.reference().fields),
          who_(std::move(who)) {}

    Outcome<CsvPreview> preview() {
        findColumns();
        if (!readBook()) return problems_;
        if (named_.list) readItems();
        else readEntries();
        if (!problems_.empty()) return std::move(problems_);
        preview_.edit.verb =
            fmt::format("import {}", named_.list ? named_.table->lists[*named_.list].table : named_.table->name);
        return std::move(preview_);
    }

private:
    void fault(const CsvCell& at, std::string detail, std::string remedy) {
        problems_.push_back({ProblemKind::Input, csv_.place(at), std::move(detail), std::move(remedy)});
    }

    std::optional<std::size_t> places(const std::string& header, const std::string& name) const {
        if (const auto found = csv_.column(header)) return found;
        return csv_.column(name);
    }

    void findColumns() {
        std::set<std::size_t> used;
        const auto use = [&](std::optional<std::size_t> at) {
            if (at) used.insert(*at);
            return at;
        };
        key_ = use(csv_.column(named_.list ? "owner" : "id"));
        place_ = use(named_.list ? csv_.column("place") : std::nullopt);
        for (const auto& column : named_.columns()) at_.push_back(use(places(column.header, column.name)));
        std::vector<std::string> known{named_.list ? "owner" : "id"};
        if (named_.list) known.emplace_back("place");
        for (const auto& column : named_.columns()) known.push_back(column.header);
        std::size_t unknown = 0;
        for (std::size_t at = 0; at < csv_.header().size(); ++at)
            if (!used.contains(at))
                fault(csv_.header()[at], fmt::format("unknown column {}", inQuotes(csv_.header()[at].text)),
                      unknown++ < limits::suggestedKeys ? suggestion(csv_.header()[at].text, known) : std::string());
        if (named_.list && !key_ && !csv_.header().empty())
            fault(csv_.header()[0], "the column owner is missing",
                  "the entry each row belongs to, by its number, or a colony by its name");
    }

    bool readBook() {
        const auto rows =
            into_.eachRow(named_.table->kind, [&](std::int64_t id, const Row& row) { there_.emplace(id, row); });
        if (!rows) problems_ = rows.problems();
        return rows.ok();
    }

    //! The number in a key cell, "#12" or "12"; 0 where it is empty.
    std::int64_t keyOf(std::size_t row) {
        if (!key_) return 0;
        const auto& at = csv_.cell(row, *key_);
        if (at.text.empty()) return 0;
        if (const auto id = CsvReferences::idOf(at.text)) return *id;
        fault(at, fmt::format("{} is not a number of an entry", inQuotes(at.text)),
              fmt::format("a whole number from 1 to {}", book::largestId));
        return 0;
    }

    //! The owner of an item: its number, or its name where its kind has names; 0 where it is neither.
    std::int64_t ownerAt(const CsvCell& at) const {
        if (const auto number = CsvReferences::numberOf(at.text)) return *number;
        if (at.text.empty()) return 0;
        const auto named = references_.find(named_.table->kind, withoutGuard(at.text));
        return named ? *named : 0;
    }

    Value valueAt(const Column& column, const CsvCell& at) {
        if (column.refersTo && !at.text.empty()) {
            const auto to = references_.find(*column.refersTo, withoutGuard(at.text));
            if (to) return *to;
            fault(at, to.problems().front().detail, to.problems().front().remedy);
            return {};
        }
        auto value = valueOfText(column, column.type == ColumnType::Text ? withoutGuard(at.text) : at.text);
        if (!value) {
            fault(at, fmt::format("{} is {}", column.header, inQuotes(at.text)),
                  column.type == book::ColumnType::Date ? dateMeant(at.text) : formOf(column));
            return {};
        }
        if (std::holds_alternative<std::monostate>(*value) && !mustBeGiven(column, limits_))
            *value = defaultOf(column, limits_);
        if (auto problem = limits_.fault(column, *value)) fault(at, problem->detail, problem->remedy);
        return std::move(*value);
    }

    //! A name that is there already may stay; a new one must be fit to be shown.
    void put(const Column& column, const CsvCell& at, Value& value) {
        auto read = valueAt(column, at);
        if (read != value)
            if (const auto problem = book::faultOfNewName(column, read)) fault(at, problem->detail, problem->remedy);
        value = std::move(read);
    }

    //! Lays the cells of a line over values that hold where the file has no column.
    void read(std::size_t row, Values& values, bool isNew) {
        const auto& columns = named_.columns();
        for (std::size_t at = 0; at < columns.size(); ++at) {
            if (at_[at]) put(columns[at], csv_.cell(row, *at_[at]), values[at]);
            else if (isNew && mustBeGiven(columns[at], limits_))
                fault(csv_.cell(row, std::size_t{0}), fmt::format("{} is missing", columns[at].header),
                      formOf(columns[at]));
        }
    }

    Values defaults() const {
        Values values;
        for (const auto& column : named_.columns()) values.push_back(defaultOf(column, limits_));
        return values;
    }

    //! What makes two entries the same for a person: everything but who wrote it and was sure of it, its lists, and its number.
    std::string sameness(const Row& row) const {
        std::string text;
        for (std::size_t at = 0; at + 1 < named_.table->columns.size(); ++at)
            if (named_.table->columns[at].name != "sure")
                text += textOfValue(named_.table->columns[at], row.values[at]) + '\0' +
                        (std::holds_alternative<std::monostate>(row.values[at]) ? '-' : '+');
        return text;
    }

    void readEntries() {
        std::set<std::string> same;
        for (const auto& entry : there_) same.insert(sameness(entry.second));
        std::set<std::int64_t> ids;
        for (std::size_t row = 0; row < csv_.rows(); ++row) {
            const auto id = keyOf(row);
            if (id != 0 && !ids.insert(id).second)
                fault(csv_.cell(row, *key_), fmt::format("{} is there twice", id), "give each number once");
            readEntry(row, id, same);
        }
        numberNewOnes(ids);
    }

    void readEntry(std::size_t row, std::int64_t id, std::set<std::string>& same) {
        const int lineNumber = csv_.cell(row, std::size_t{0}).line;
        const auto existing = there_.find(id);
        const bool isNew = existing == there_.end();
        Row entry =
            isNew ? Row{defaults(), std::vector<std::vector<Values>>(named_.table->lists.size())} : existing->second;
        read(row, entry.values, isNew);
        if (auto* by = std::get_if<std::string>(&entry.values.back()); isNew && by && by->empty()) *by = who_;
        if (!problems_.empty()) return;
        const bool said = isNew ? id == 0 && !same.insert(sameness(entry)).second : entry == existing->second;
        if (said) return preview_.duplicates.push_back(lineNumber);
        (isNew ? preview_.added : preview_.changed).push_back(lineNumber);
        preview_.lines.push_back(lineNumber);
        preview_.edit.targets.push_back({named_.table->kind, id, std::move(entry)});
    }

    void numberNewOnes(const std::set<std::int64_t>& ids) {
        const auto next = into_.nextId(named_.table->kind);
        if (!next) {
            problems_ = next.problems();
            return;
        }
        auto number = *next;
        for (const auto id :
             ids) // ascending; what lies far above the others is passed over, so that numbers do not end
            if (id >= number && id - number < farAbove) number = id + 1;
        for (auto& target : preview_.edit.targets)
            if (target.id == 0) target.id = number++;
    }

    void readItems() {
        std::map<std::int64_t, std::map<std::pair<std::int64_t, std::size_t>, Values>> items;
        std::map<std::int64_t, std::vector<int>> lines;
        for (std::size_t row = 0; row < csv_.rows() && key_; ++row) {
            const auto& keyCell = csv_.cell(row, *key_);
            const auto owner = ownerAt(keyCell);
            if (!there_.contains(owner))
                fault(keyCell, fmt::format("there is no {} {}", named_.table->singular, inQuotes(keyCell.text)),
                      "name one that is in the book");
            const auto place = place_ ? CsvReferences::numberOf(csv_.cell(row, *place_).text) : std::int64_t{0};
            if (!place) fault(csv_.cell(row, *place_), "the place is not a number", "a whole number from 0");
            auto values = defaults();
            read(row, values, true);
            items[owner].emplace(std::make_pair(place.value_or(0), row), std::move(values));
            lines[owner].push_back(keyCell.line);
        }
        if (!problems_.empty()) return;
        for (auto& [owner, all] : items) putItems(owner, all, lines[owner]);
    }

    void putItems(std::int64_t owner, std::map<std::pair<std::int64_t, std::size_t>, Values>& items,
                  const std::vector<int>& lines) {
        Row row = there_.at(owner);
        auto& list = row.lists[*named_.list];
        list.clear();
        for (auto& item : items) list.push_back(std::move(item.second));
        if (const auto form = named_.table->column("combs_form");
            form && named_.table->lists[*named_.list].name == "combs")
            row.values[*form] = std::string("listed");
        auto& where = row == there_.at(owner) ? preview_.duplicates : preview_.changed;
        where.insert(where.end(), lines.begin(), lines.end());
        if (row == there_.at(owner)) return;
        preview_.lines.push_back(lines.front());
        preview_.edit.targets.push_back({named_.table->kind, owner, std::move(row)});
    }

    book::Book& into_;
    Named named_;
    const CsvTable& csv_;
    CsvReferences references_;
    book::Limits limits_;
    std::string who_;
    std::map<std::int64_t, Row> there_;
    std::optional<std::size_t> key_, place_;
    std::vector<std::optional<std::size_t>> at_; //!< of each column of the book in the file
    CsvPreview preview_;
    Problems problems_;
};

} // namespace

std::vector<std::string> csvTables() {
    std::vector<std::string> names;
    for (const auto& table : book::tables()) {
        names.push_back(table.name);
        for (const auto& list : table.lists) names.push_back(list.table);
    }
    return names;
}

Outcome<std::string> writeCsv(book::Book& from, const std::string& name) {
    const auto named = tableNamed(name);
    if (!named) return noSuchTable(name);
    const auto references = CsvReferences::in(from);
    if (!references) return references.problems();
    auto text = headerOf(*named);
    const auto rows = from.eachRow(named->table->kind, [&](std::int64_t id, const Row& row) {
        if (!named->list) {
            auto cells = cellsOf(named->columns(), row.values, *references);
            cells.insert(cells.begin(), std::to_string(id));
            text += csvLine(cells);
            return;
        }
        const auto& items = row.lists[*named->list];
        for (std::size_t place = 0; place < items.size(); ++place) {
            auto cells = cellsOf(named->columns(), items[place], *references);
            cells.insert(cells.begin(), {std::to_string(id), std::to_string(place)});
            text += csvLine(cells);
        }
    });
    if (!rows) return rows.problems();
    return text;
}

Outcome<CsvPreview> previewCsv(book::Book& into, const std::string& name, std::string_view text,
                               const std::string& file, const std::string& who) {
    const auto named = tableNamed(name);
    if (!named) return noSuchTable(name);
    const auto csv = CsvTable::parse(text, file);
    if (!csv) return csv.problems();
    auto references = CsvReferences::in(into);
    if (!references) return references.problems();
    return CsvImport(into, *named, *csv, std::move(references).value(), who).preview();
}

Outcome<book::Applied> importCsv(book::Book& into, const CsvPreview& preview, book::Timestamp now,
                                 const std::string& who) {
    if (!preview.edit.targets.empty())
        if (auto backup = into.backUp(now); !backup) return backup.problems();
    return into.apply(preview.edit, now, who);
}

} // namespace winterlarder::exchange
