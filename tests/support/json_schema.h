// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/json/json_tree.h"

#include <algorithm>
#include <cmath>
#include <regex>
#include <stdexcept>
#include <string>
#include <vector>

//! A reader of the part of JSON Schema that shipped schemas use; a keyword it does not know is an error, never passed over.
namespace winterlarder::book::support {

class SchemaCheck {
public:
    explicit SchemaCheck(const exchange::JsonValue& root) : root_(root) {}

    void check(const exchange::JsonValue& value, const exchange::JsonValue& schema, const std::string& path) {
        for (const auto& rule : schema.members) apply(rule.name, rule.value, value, schema, path);
    }

    std::vector<std::string> faults;

private:
    using Value = exchange::JsonValue;
    using Form = exchange::JsonValue::Kind;

    static const Value* member(const Value& object, const std::string& name) {
        for (const auto& one : object.members)
            if (one.name == name) return &one.value;
        return nullptr;
    }
    void fault(const std::string& path, const std::string& what) { faults.push_back(path + ": " + what); }

    static bool isOf(const Value& value, const std::string& type) {
        if (type == "integer") return value.kind == Form::Number && value.number == std::floor(value.number);
        if (type == "number") return value.kind == Form::Number;
        if (type == "string") return value.kind == Form::Text;
        if (type == "boolean") return value.kind == Form::Flag;
        if (type == "array") return value.kind == Form::List;
        if (type == "object") return value.kind == Form::Object;
        throw std::runtime_error("unknown type " + type);
    }

    void apply(const std::string& name, const Value& rule, const Value& value, const Value& schema,
               const std::string& path) {
        if (name == "$schema" || name == "title" || name == "description" || name == "$defs" || name == "default")
            return;
        if (name == "$ref") return check(value, resolve(rule.text), path);
        if (name == "type") return isOf(value, rule.text) ? void() : fault(path, "is not of type " + rule.text);
        if (name == "const")
            return value.kind == rule.kind && value.number == rule.number ? void() : fault(path, "is another constant");
        if (name == "enum") return contains(rule, value.text) ? void() : fault(path, value.text + " is no choice");
        if (name == "minimum") return value.number < rule.number ? fault(path, "is too small") : void();
        if (name == "maximum") return value.number > rule.number ? fault(path, "is too large") : void();
        if (name == "minLength") return length(value) < rule.number ? fault(path, "is too short") : void();
        if (name == "maxLength") return length(value) > rule.number ? fault(path, "is too long") : void();
        if (name == "pattern")
            return std::regex_search(value.text, std::regex(rule.text)) ? void()
                                                                        : fault(path, "does not match " + rule.text);
        if (name == "items") return items(rule, value, path);
        if (name == "required") return required(rule, value, path);
        if (name == "properties") return properties(rule, value, path);
        if (name == "additionalProperties") return noMore(member(schema, "properties"), value, path);
        throw std::runtime_error("unknown keyword " + name);
    }

    const Value& resolve(const std::string& reference) const {
        const Value* at = &root_;
        std::string rest = reference.substr(2);
        while (at && !rest.empty()) {
            const auto end = std::min(rest.find('/'), rest.size());
            at = member(*at, rest.substr(0, end));
            rest = end < rest.size() ? rest.substr(end + 1) : "";
        }
        if (!at) throw std::runtime_error("no such definition " + reference);
        return *at;
    }
    static bool contains(const Value& list, const std::string& text) {
        return std::any_of(list.items.begin(), list.items.end(), [&](const Value& item) { return item.text == text; });
    }
    static double length(const Value& value) {
        return static_cast<double>(
            std::count_if(value.text.begin(), value.text.end(), [](char byte) { return (byte & 0xC0) != 0x80; }));
    }
    void items(const Value& rule, const Value& list, const std::string& path) {
        for (std::size_t at = 0; at < list.items.size(); ++at)
            check(list.items[at], rule, path + "[" + std::to_string(at) + "]");
    }
    void required(const Value& names, const Value& object, const std::string& path) {
        for (const auto& name : names.items)
            if (!member(object, name.text)) fault(path, "lacks " + name.text);
    }
    void properties(const Value& rules, const Value& object, const std::string& path) {
        for (const auto& one : object.members)
            if (const auto* rule = member(rules, one.name)) check(one.value, *rule, path + "." + one.name);
    }
    void noMore(const Value* properties, const Value& object, const std::string& path) {
        for (const auto& one : object.members)
            if (!properties || !member(*properties, one.name)) fault(path, "has an unknown key " + one.name);
    }

    const Value& root_;
};

inline std::vector<std::string> schemaFaults(const exchange::JsonValue& value, const exchange::JsonValue& schema) {
    SchemaCheck check(schema);
    check.check(value, schema, "$");
    return check.faults;
}

} // namespace winterlarder::book::support
