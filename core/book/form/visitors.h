// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/codec.h"
#include "book/form/describe.h"
#include "book/form/row.h"
#include "support/outcome.h"

#include <fmt/format.h>
#include <utility>

//! The three walks over book/describe.h: list the columns, write a row, read a row.
namespace winterlarder::book {

//! An entry, or an item of its list, with nothing said, for listing columns and to be read into.
template <class Entry> Entry blank() {
    const Date someDay = *Date::of(1970, 1, 1);
    if constexpr (std::is_same_v<Entry, Weighing>) return Weighing{.weighing = WeighingRecord{someDay, ScaleReading{}}};
    else if constexpr (std::is_same_v<Entry, Feed>) return Feed{.feed = FeedRecord{.date = someDay}};
    else if constexpr (std::is_same_v<Entry, Harvest>) return Harvest{.harvest = HarvestRecord{someDay, Mass(0)}};
    else if constexpr (requires { Entry{.date = someDay}; }) return Entry{.date = someDay};
    else return Entry{};
}

class ColumnList {
public:
    static constexpr bool reads = false, nested = false;
    //! Fields named after `prefixes` lose that part of their name in the file.
    explicit ColumnList(std::vector<std::string> prefixes) : prefixes_(std::move(prefixes)) {}

    template <class T> void field(std::string_view field, T&, int number = 0) {
        using Plain = typename WithoutOptional<T>::type;
        Column column;
        column.field = field;
        column.header = number ? fmt::format("{}.{}", field, number) : std::string(field);
        column.name = nameOf(column.header);
        column.type = Codec<Plain>::type;
        column.required = !IsOptional<T>::value;
        if constexpr (std::is_enum_v<Plain>) column.choices = allWords<Plain>();
        columns.push_back(std::move(column));
    }
    template <class Entry> void reference(std::string_view name, Id<Entry>&) {
        columns.push_back(referenceColumn(name, kindOf<Entry>, true));
    }
    template <class Entry> void reference(std::string_view name, std::optional<Id<Entry>>&) {
        columns.push_back(referenceColumn(name, kindOf<Entry>, false));
    }
    template <class Item> void list(std::string_view name, std::vector<Item>&) {
        ColumnList inner({"combs.", "hive.boxes.", "hive.", "photographs.", "records.", "weather_logs."});
        Item item = blank<Item>();
        describe(inner, item);
        lists.push_back({std::string(name), {}, std::move(inner.columns)});
    }

    std::vector<Column> columns;
    std::vector<ListTable> lists;

private:
    std::string nameOf(std::string header) const;
    static Column referenceColumn(std::string_view name, Kind kind, bool required);
    std::vector<std::string> prefixes_;
};

class RowWriter {
public:
    static constexpr bool reads = false, nested = false;

    template <class T> void field(std::string_view, T& member, int = 0) { row.values.push_back(encoded(member)); }
    template <class T> void reference(std::string_view, T& member) { row.values.push_back(encoded(member)); }
    template <class Item> void list(std::string_view, std::vector<Item>& items) {
        std::vector<Values> rows;
        for (auto& item : items) {
            RowWriter inner;
            describe(inner, item);
            rows.push_back(std::move(inner.row.values));
        }
        row.lists.push_back(std::move(rows));
    }

    Row row;

private:
    template <class T> static Value encoded(const T& member) { return Codec<T>::encode(member); }
    template <class T> static Value encoded(const std::optional<T>& member) {
        return member ? Codec<T>::encode(*member) : Value{};
    }
};

class RowReader {
public:
    static constexpr bool reads = true, nested = false;
    RowReader(const Values& values, const std::vector<std::vector<Values>>* lists) : values_(values), lists_(lists) {}

    template <class T> void field(std::string_view field, T& member, int = 0) {
        if (at_ >= values_.size() || !decode(values_[at_++], member)) faults.emplace_back(field);
    }
    template <class T> void reference(std::string_view name, T& member) { field(name, member); }
    template <class Item> void list(std::string_view name, std::vector<Item>& items) {
        items.clear();
        if (!lists_ || listAt_ >= lists_->size()) return faults.emplace_back(name), void();
        for (const auto& values : (*lists_)[listAt_++]) {
            RowReader inner(values, nullptr);
            Item item = blank<Item>();
            describe(inner, item);
            items.push_back(std::move(item));
            faults.insert(faults.end(), inner.faults.begin(), inner.faults.end());
        }
    }

    std::vector<std::string> faults; //!< fields whose value is not one

private:
    template <class T> static bool decode(const Value& value, T& member) {
        auto decoded = Codec<T>::decode(value);
        if (decoded) member = std::move(*decoded);
        return decoded.has_value();
    }
    template <class T> static bool decode(const Value& value, std::optional<T>& member) {
        if (std::holds_alternative<std::monostate>(value)) return member.reset(), true;
        member = Codec<T>::decode(value);
        return member.has_value();
    }

    const Values& values_;
    const std::vector<std::vector<Values>>* lists_;
    std::size_t at_ = 0, listAt_ = 0;
};

} // namespace winterlarder::book
