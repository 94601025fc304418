// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/describe_case.h"
#include "exchange/case/object_reader.h"
#include "exchange/json/json_output.h"

#include <algorithm>

namespace winterlarder::exchange {

namespace {

Json jsonOf(bool flag) { return flag; }
Json jsonOf(int number) { return number; }
Json jsonOf(double number) { return number; }
Json jsonOf(Date date) { return date.iso(); }
Json jsonOf(const std::string& text) { return text; }
Json jsonOf(const std::vector<int>& numbers) { return Json::List(numbers.begin(), numbers.end()); }
template <class T> Json jsonOf(const T& value) {
    if constexpr (std::is_enum_v<T>) return book::wordOf(value);
    else return value.value(); // a quantity, in the unit of its type
}

//! Parts that are what is usual where nothing is said of them; what happened on a day, and what was learned, is
//! written whole.
template <class Part> inline constexpr bool hasUsual = false;
template <> inline constexpr bool hasUsual<book::HiveRecord> = true;
template <> inline constexpr bool hasUsual<book::CombRecord> = true;
template <> inline constexpr bool hasUsual<book::WishRecord> = true;

template <class Record> Json written(Record& record);

//! The walk over book/form/describe_case.h that writes one object: only what was said, or differs from what is usual.
class CaseWriter {
public:
    static constexpr bool reads = false, nested = true;
    //! `usual`: what the same walk over a part of which nothing is said has written; none for the walk itself and for parts without.
    explicit CaseWriter(const Json* usual = nullptr) : usual_(usual) {}

    template <class T> void field(std::string_view field, const std::optional<T>& member) {
        if (member) object.add(keyOf(field), jsonOf(*member));
    }
    template <class T> void field(std::string_view field, const T& member) {
        if constexpr (std::is_same_v<T, bool> || std::is_same_v<T, std::string> || std::is_same_v<T, std::vector<int>>)
            if (member == T()) return;
        if (Json value = jsonOf(member); !usual_ || !usual_->has(keyOf(field), value))
            object.add(keyOf(field), std::move(value));
    }
    template <class T, std::size_t N>
    void series(std::string_view field, const std::array<std::optional<T>, N>& members, book::SeriesForm form) {
        Json::List list;
        for (const auto& member : members)
            if (member) list.push_back(jsonOf(*member));
        if (list.size() == 1 && form.least == 1) object.add(keyOf(field), list.front());
        else if (!list.empty()) object.add(keyOf(field), std::move(list));
    }
    template <class Part> void textOrPart(std::string_view field, const std::optional<std::string>& text, Part& part) {
        object.add(keyOf(field), text ? Json(*text) : written(part));
    }
    template <class Part> void part(std::string_view key, Part& part) {
        if (Json json = written(part); !json.empty()) object.add(key, std::move(json));
    }
    template <class Part> void part(std::string_view key, std::optional<Part>& part) {
        if (part) this->part(key, *part);
    }
    void part(std::string_view key, book::CombsRecord& combs) {
        if (auto* list = std::get_if<std::vector<book::CombRecord>>(&combs)) object.add(key, listOf(*list));
        if (const auto* quick = std::get_if<book::QuickCountRecord>(&combs)) {
            auto columns = book::columnsOf(*quick);
            object.add(key, written(columns));
        }
    }
    template <class Item> void list(std::string_view key, std::vector<Item>& items) {
        if (!items.empty()) object.add(key, listOf(items));
    }
    void list(std::string_view key, std::vector<book::BoxRecord>& boxes);

    Json object = Json::object();

private:
    template <class Item> static Json listOf(std::vector<Item>& items) {
        Json list = Json::list();
        for (Item& item : items) list.push(written(item));
        return list;
    }
    const Json* usual_;
};

template <class Record> Json writtenBeside(const Json* usual, Record& record) {
    CaseWriter writer(usual);
    describe(writer, record);
    return std::move(writer.object);
}

template <class Record> Json written(Record& record) {
    if constexpr (hasUsual<Record>) {
        static const Json usual = [] {
            Record nothingSaid;
            return writtenBeside(nullptr, nothingSaid);
        }();
        return writtenBeside(&usual, record);
    }
    return writtenBeside(nullptr, record);
}

//! Boxes that are all alike are a number of boxes.
void CaseWriter::list(std::string_view key, std::vector<book::BoxRecord>& boxes) {
    const bool alike = !boxes.empty() && std::all_of(boxes.begin(), boxes.end(), [&](const book::BoxRecord& box) {
        return box == book::BoxRecord{boxes.front().format, {}, false};
    });
    if (!alike) return object.add(key, listOf(boxes)), void();
    describeFormat(*this, "hive.format", boxes.front().format);
    object.add(key, static_cast<int>(boxes.size()));
}

Json jsonOf(book::ColonyCase record) {
    CaseWriter writer;
    writer.object.add("case", caseFileForm);
    describe(writer, record);
    return std::move(writer.object);
}

} // namespace

std::string writeCase(const book::ColonyCase& record) { return jsonOf(record).pretty(); }

std::string writeCaseLine(const book::ColonyCase& record) { return jsonOf(record).compact(); }

} // namespace winterlarder::exchange
