// SPDX-License-Identifier: GPL-3.0-or-later
// A case file, its reader and the data dictionary follow from one description.
#include "book/form/describe_case.h"
#include "book/form/visitors.h"
#include "exchange/shipped_data.h"

#include <gmock/gmock.h>
#include <map>
#include <set>

namespace winterlarder::exchange::case_description_test {
namespace {

using winterlarder::testing::shippedData;

struct Described {
    std::string type;
    std::vector<std::string> choices;
    std::string usual; // of a member that always has a value
};

// Lists what the description says. It "reads", so that every field is met.
class FieldList {
public:
    static constexpr bool reads = true, nested = true;
    explicit FieldList(std::map<std::string, Described>& fields) : fields_(fields) {}

    template <class T> void field(std::string_view name, std::optional<T>&) { add<T>(name, ""); }
    template <class T> void field(std::string_view name, T& member) { add<T>(name, textOf(member)); }
    template <class T, std::size_t N>
    void series(std::string_view name, std::array<std::optional<T>, N>&, book::SeriesForm form) {
        EXPECT_LE(form.least, N) << name;
        add<T>(name, "");
    }
    template <class Part> void textOrPart(std::string_view name, std::optional<std::string>&, Part& part) {
        add<std::string>(name, "");
        describe(*this, part);
    }
    template <class Part> void part(std::string_view, Part& part) { describe(*this, part); }
    template <class Part> void part(std::string_view, std::optional<Part>&) {
        Part part;
        describe(*this, part);
    }
    void part(std::string_view, book::CombsRecord&) {
        book::CombRecord comb;
        describe(*this, comb);
        book::QuickCountColumns quick;
        describe(*this, quick);
    }
    template <class Item> void list(std::string_view, std::vector<Item>&) {
        Item item = book::blank<Item>();
        describe(*this, item);
    }

private:
    template <class T> static std::string textOf(const T& member) {
        const book::Value value = book::Codec<T>::encode(member);
        if (std::is_same_v<T, bool>) return std::get<std::int64_t>(value) ? "true" : "false";
        if (const auto* whole = std::get_if<std::int64_t>(&value)) return std::to_string(*whole);
        if (const auto* number = std::get_if<double>(&value)) return book::shortest(*number);
        return std::get<std::string>(value);
    }
    template <class T> static std::string typeOf() {
        if (std::is_same_v<T, bool>) return "flag";
        if (std::is_same_v<T, Date>) return "date";
        if (std::is_same_v<T, std::string>) return "text";
        if (std::is_same_v<T, int> || std::is_same_v<T, std::vector<int>>) return "integer";
        return std::is_enum_v<T> ? "choice" : "number";
    }
    template <class T> void add(std::string_view name, std::string usual) {
        Described described{typeOf<T>(), {}, std::move(usual)};
        if constexpr (std::is_enum_v<T>) described.choices = book::allWords<T>();
        EXPECT_TRUE(fields_.emplace(name, described).second) << name << " is described twice";
    }
    std::map<std::string, Described>& fields_;
};

std::map<std::string, Described> describedFields() {
    std::map<std::string, Described> fields;
    FieldList list(fields);
    book::ColonyCase record{.asOf = *Date::of(2026, 9, 12)};
    describe(list, record);
    return fields;
}

// What a keeper may say of a case in a way of its own: read by the rules of the reader.
const std::vector<std::string> otherKeys = {"case", "fed_after_look", "hive.format", "hive.boxes"};

TEST(CaseDescription, EveryFieldIsInTheDataDictionaryAsItIsDescribed) {
    for (const auto& [name, described] : describedFields()) {
        const FieldLimits* field = shippedData().field(name);
        ASSERT_NE(field, nullptr) << name;
        EXPECT_EQ(field->type, described.type) << name;
        EXPECT_EQ(field->choices, described.choices) << name;
    }
    for (const auto& key : otherKeys) EXPECT_NE(shippedData().field(key), nullptr) << key;
}

TEST(CaseDescription, EveryFieldOfTheDataDictionaryIsDescribed) {
    std::set<std::string> known(otherKeys.begin(), otherKeys.end());
    for (const auto& [name, described] : describedFields()) known.insert(name);
    for (const auto& table : book::tables()) {
        for (const auto& column : table.columns) known.insert(column.field);
        for (const auto& list : table.lists)
            for (const auto& column : list.columns) known.insert(column.field);
    }
    for (const auto& field : shippedData().fields)
        EXPECT_TRUE(known.contains(field.name) || field.name.starts_with("run."))
            << field.name << " is neither of a case nor of a book";
}

TEST(CaseDescription, WhatIsUsualIsTheDefaultOfTheDataDictionary) {
    int compared = 0;
    for (const auto& [name, described] : describedFields()) {
        const std::string& usual = shippedData().field(name)->defaultText;
        if (described.usual.empty() || usual.empty()) continue;
        EXPECT_EQ(described.usual, usual) << name;
        ++compared;
    }
    EXPECT_GT(compared, 20);
}

} // namespace
} // namespace winterlarder::exchange::case_description_test
