// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/json_output.h"

#include "support/require.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
#include <rapidjson/prettywriter.h>
#include <rapidjson/stringbuffer.h>
#pragma GCC diagnostic pop

namespace winterlarder::exchange {

namespace {

rapidjson::SizeType lengthOf(std::string_view text) { return static_cast<rapidjson::SizeType>(text.size()); }

} // namespace

Json::Json(double number) : value_(number) { require(std::isfinite(number), "{} cannot be written as JSON", number); }

Json& Json::add(std::string_view name, Json value) {
    std::get<Object>(value_).emplace_back(std::string(name), std::move(value));
    return *this;
}

Json& Json::replace(std::string_view name, Json value) {
    auto& members = std::get<Object>(value_);
    const auto found =
        std::find_if(members.begin(), members.end(), [&](const auto& member) { return member.first == name; });
    require(found != members.end(), "there is no member {} to replace", name);
    found->second = std::move(value);
    return *this;
}

void Json::push(Json value) { std::get<List>(value_).push_back(std::move(value)); }

bool Json::empty() const {
    if (const auto* items = std::get_if<List>(&value_)) return items->empty();
    return std::get<Object>(value_).empty();
}

bool Json::has(std::string_view name, const Json& value) const {
    const auto& members = std::get<Object>(value_);
    return std::any_of(members.begin(), members.end(),
                       [&](const auto& member) { return member.first == name && member.second == value; });
}

bool Json::plain() const { return !std::holds_alternative<List>(value_) && !std::holds_alternative<Object>(value_); }

template <class Writer> void Json::writeList(Writer& writer, const List& items) const {
    constexpr bool indented = !std::is_same_v<Writer, rapidjson::Writer<rapidjson::StringBuffer>>;
    if (indented && std::all_of(items.begin(), items.end(), [](const Json& item) { return item.plain(); })) {
        std::string line = "[";
        for (const Json& item : items) line += (line.size() > 1 ? ", " : "") + item.compact();
        line += "]";
        writer.RawValue(line.data(), line.size(), rapidjson::kArrayType);
        return;
    }
    writer.StartArray();
    for (const Json& item : items) item.write(writer);
    writer.EndArray();
}

template <class Writer> void Json::write(Writer& writer) const {
    if (const auto* flag = std::get_if<bool>(&value_)) {
        writer.Bool(*flag);
    } else if (const auto* number = std::get_if<double>(&value_)) {
        const std::string text = shortestNumber(*number);
        writer.RawValue(text.data(), text.size(), rapidjson::kNumberType);
    } else if (const auto* whole = std::get_if<std::uint64_t>(&value_)) {
        writer.Uint64(*whole);
    } else if (const auto* text = std::get_if<std::string>(&value_)) {
        writer.String(text->data(), lengthOf(*text));
    } else if (const auto* items = std::get_if<List>(&value_)) {
        writeList(writer, *items);
    } else if (const auto* members = std::get_if<Object>(&value_)) {
        writer.StartObject();
        for (const auto& member : *members) {
            writer.Key(member.first.data(), lengthOf(member.first));
            member.second.write(writer);
        }
        writer.EndObject();
    } else {
        writer.Null();
    }
}

std::string Json::compact() const {
    rapidjson::StringBuffer buffer;
    rapidjson::Writer<rapidjson::StringBuffer> writer(buffer);
    write(writer);
    return {buffer.GetString(), buffer.GetSize()};
}

std::string Json::pretty() const {
    rapidjson::StringBuffer buffer;
    rapidjson::PrettyWriter<rapidjson::StringBuffer> writer(buffer);
    writer.SetIndent(' ', 2);
    write(writer);
    return std::string(buffer.GetString(), buffer.GetSize()) + '\n';
}

std::string shortestNumber(double number) {
    if (number == 0) return "0";
    std::array<char, 64> text{};
    const double size = std::abs(number);
    const bool plain = size >= 1e-5 && size < 1e15;
    const auto result = plain ? std::to_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed)
                              : std::to_chars(text.data(), text.data() + text.size(), number);
    return {text.data(), result.ptr};
}

} // namespace winterlarder::exchange
