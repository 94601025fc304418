// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/book_document.h"
#include "exchange/book/book_values.h"

namespace winterlarder::exchange {
namespace {

using book::Column;
using book::ColumnType;

Json typed(const char* type) {
    auto schema = Json::object();
    schema.add("type", type);
    return schema;
}

Json patterned(const char* pattern) { return typed("string").add("pattern", pattern); }

Json ranged(Json schema, const FieldLimits& limits) {
    if (limits.minimum) schema.add("minimum", *limits.minimum);
    if (limits.maximum) schema.add("maximum", *limits.maximum);
    return schema;
}

Json schemaOf(const Column& column, const FieldLimits& limits) {
    switch (column.type) {
    case ColumnType::Text: {
        const auto length = book::textLength(column);
        return typed("string")
            .add("minLength", static_cast<double>(length.least))
            .add("maxLength", static_cast<double>(length.most));
    }
    case ColumnType::Number: return ranged(typed("number"), limits);
    case ColumnType::Integer:
    case ColumnType::Reference: return ranged(typed("integer"), limits);
    case ColumnType::Flag: return typed("boolean");
    case ColumnType::Date: return patterned("^[0-9]{4}-[0-1][0-9]-[0-3][0-9]$");
    case ColumnType::DayOfYear: return patterned("^[0-1][0-9]-[0-3][0-9]$");
    case ColumnType::Digits: return patterned("^[0-9]{1,20}$");
    case ColumnType::Weekdays: return patterned("^([1-7](,[1-7])*)?$");
    case ColumnType::Choice: {
        auto words = Json::list();
        for (const auto& word : column.choices) words.push(word);
        return typed("string").add("enum", std::move(words));
    }
    }
    return Json::object();
}

//! What every object has: its own keys and no others.
class ObjectSchema {
public:
    void add(const std::string& name, Json schema, bool required) {
        properties_.add(name, std::move(schema));
        if (required) required_.push(name);
    }
    void add(const std::vector<Column>& columns, const book::Limits& limits) {
        for (const auto& column : columns) {
            auto schema = schemaOf(column, limits.of(column));
            if (const auto& note = limits.of(column).note; !note.empty()) schema.add("description", note);
            add(column.name, std::move(schema), mustBeGiven(column, limits));
        }
    }
    Json whole() {
        auto schema = typed("object");
        schema.add("properties", std::move(properties_));
        if (!required_.empty()) schema.add("required", std::move(required_));
        return schema.add("additionalProperties", false);
    }

private:
    Json properties_ = Json::object(), required_ = Json::list();
};

Json listOf(Json items) { return typed("array").add("items", std::move(items)); }

Json entrySchema(const book::Table& table, const book::Limits& limits) {
    ObjectSchema entry;
    entry.add("id", typed("integer").add("minimum", 1).add("maximum", jsonOfWhole(book::largestId)), true);
    entry.add(table.columns, limits);
    for (const auto& list : table.lists) {
        ObjectSchema item;
        item.add(list.columns, limits);
        entry.add(list.name, listOf(item.whole()), false);
    }
    return entry.whole();
}

} // namespace

std::string bookSchema(const std::vector<FieldLimits>& fields) {
    const book::Limits limits(fields);
    ObjectSchema document;
    document.add("larder", Json::object().add("const", bookDocumentForm), true);
    for (const auto& table : book::tables()) document.add(table.name, listOf(entrySchema(table, limits)), false);
    auto schema = Json::object();
    schema.add("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.add("title", "The whole of a keeper's book");
    auto whole = document.whole();
    schema.add("$ref", "#/$defs/book");
    auto definitions = Json::object();
    definitions.add("book", std::move(whole));
    schema.add("$defs", std::move(definitions));
    return schema.pretty();
}

} // namespace winterlarder::exchange
