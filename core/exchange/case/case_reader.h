// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/describe_case.h"
#include "book/form/visitors.h"
#include "exchange/case/case_rules.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

//! What an item of a list should look like; said where one is no object.
template <class Item> inline constexpr std::string_view exampleOf{};
template <>
inline constexpr std::string_view exampleOf<book::BoxRecord> =
    "a box: {\"format\": ..., \"combs\": ..., \"super\": false}";
template <>
inline constexpr std::string_view exampleOf<book::CombRecord> = "a comb: {\"capped\": 0.5, \"open\": 0.1, ...}";
template <>
inline constexpr std::string_view exampleOf<book::WeighingRecord> = "a weighing: {\"date\": ..., \"gross_kg\": ...}";
template <>
inline constexpr std::string_view exampleOf<book::FeedRecord> =
    "a feed: {\"date\": ..., \"kind\": \"syrup\", \"sugar_kg\": ...}";
template <>
inline constexpr std::string_view exampleOf<book::HarvestRecord> = "a harvest: {\"date\": ..., \"kg\": ...}";
template <>
inline constexpr std::string_view exampleOf<book::TreatmentRecord> = "a treatment: {\"date\": ..., \"until\": ...}";

template <class Record> void readRecord(const JsonValue& value, std::string path, Record& record, CaseContext& context);
template <class Item>
std::vector<Item> readItems(const JsonValue& list, const std::string& path, const Item& blank, CaseContext& context);
book::CombsRecord readCombs(const JsonValue& value, CaseContext& context);

//! The walk over book/form/describe_case.h that reads one object of a case. A member whose key is not written, or is
//! at fault, becomes nothing where it can, and else stays as it was.
class CaseReader {
public:
    static constexpr bool reads = true, nested = true;
    explicit CaseReader(ObjectReader& object) : object_(object) {}

    template <class T> void field(std::string_view field, std::optional<T>& member) {
        member = object_.value<T>(field);
    }
    template <class T> void field(std::string_view field, T& member) {
        if (auto value = object_.value<T>(field)) member = std::move(*value);
    }
    template <class T, std::size_t N>
    void series(std::string_view field, std::array<std::optional<T>, N>& members, book::SeriesForm form) {
        members = {};
        const auto values = object_.values(keyOf(field), form.least, N, form.inWords);
        for (std::size_t at = 0; at < values.size(); ++at)
            members[at] = object_.context().checked<T>(*values[at], field);
    }
    template <class Part> void textOrPart(std::string_view field, std::optional<std::string>& text, Part& part) {
        const JsonValue* value = object_.ask(keyOf(field));
        if (!value) return;
        text.reset();
        if (value->kind == JsonValue::Kind::Object)
            readRecord(*value, object_.pathOf(keyOf(field)), part, object_.context());
        else if ((text = object_.value<std::string>(field))) checkFormat(object_, *text);
    }
    template <class Part> void part(std::string_view key, Part& part) {
        const std::size_t before = object_.context().faults();
        if (const JsonValue* value = object_.object(key))
            readRecord(*value, object_.pathOf(key), part, object_.context());
        if (object_.has(key) && object_.context().faults() == before) object_.noteSound(key);
    }
    template <class Part> void part(std::string_view key, std::optional<Part>& part) {
        if (const JsonValue* value = object_.object(key))
            readRecord(*value, object_.pathOf(key), part.emplace(), object_.context());
    }
    void part(std::string_view key, book::CombsRecord& combs) {
        if (const JsonValue* value = object_.ask(key)) combs = readCombs(*value, object_.context());
    }
    template <class Item> void list(std::string_view key, std::vector<Item>& items) {
        if (const JsonValue* list = notTooLong(key))
            items = readItems(*list, object_.pathOf(key), book::blank<Item>(), object_.context());
    }
    //! With "format" beside "boxes": so many boxes of that format, or a list of boxes, where those that have none
    //! have that.
    void list(std::string_view key, std::vector<book::BoxRecord>& boxes);

private:
    const JsonValue* notTooLong(std::string_view key);
    ObjectReader& object_;
};

template <class Record>
void readRecord(const JsonValue& value, std::string path, Record& record, CaseContext& context) {
    ObjectReader object(value, std::move(path), context);
    checkKeys(object, record);
    CaseReader reader(object);
    describe(reader, record);
    checkValues(object, record);
    object.finish();
}

//! An item for every value, also for those that are at fault.
template <class Item>
std::vector<Item> readItems(const JsonValue& list, const std::string& path, const Item& blank, CaseContext& context) {
    std::vector<Item> items(list.items.size(), blank);
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string place = fmt::format("{}[{}]", path, i);
        if (list.items[i].kind == JsonValue::Kind::Object) readRecord(list.items[i], place, items[i], context);
        else context.wrongType(list.items[i], place, exampleOf<Item>);
    }
    return items;
}

} // namespace winterlarder::exchange
