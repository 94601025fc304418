// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_sections.h"
#include "exchange/json/json_output.h"
#include "exchange/json/suggestion.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

std::optional<book::FormatChoice> ownFormat(const JsonValue& value, const std::string& path, CaseContext& context) {
    ObjectReader format(value, path, "hive.format", context);
    for (std::string_view key : {"comb_width_mm", "comb_height_mm", "combs_per_box", "pitch_mm"})
        format.demand(key, "own measures need comb_width_mm, comb_height_mm, combs_per_box and pitch_mm");
    const auto width = format.number("comb_width_mm"), height = format.number("comb_height_mm"),
               bottom = format.number("bottom_width_mm"), pitch = format.number("pitch_mm");
    const auto combs = format.integer("combs_per_box");
    format.finish();
    if (!width || !height || !combs || !pitch) return std::nullopt;
    book::OwnFormat own;
    own.combWidth = millimetres(*width);
    own.combHeight = millimetres(*height);
    if (bottom) own.bottomWidth = millimetres(*bottom);
    own.combsPerBox = *combs;
    own.pitch = millimetres(*pitch);
    return book::FormatChoice(own);
}

constexpr std::string_view formatRemedy = "an id that the command \"hive-formats\" lists, or own measures";

// The format written in a hive or box; nothing, without a fault, where none is.
std::optional<book::FormatChoice> formatChoice(ObjectReader& reader) {
    const JsonValue* value = reader.find("format");
    if (!value) return std::nullopt;
    if (value->kind == JsonValue::Kind::Object) return ownFormat(*value, reader.pathOf("format"), reader.context());
    const auto id = checkedFormat(*value, "format", reader.context());
    if (!id) return std::nullopt;
    return book::FormatChoice(*id);
}

// A box without a format of its own has the hive's.
std::optional<book::BoxRecord> readBox(const JsonValue& value, const std::string& path,
                                       const std::optional<book::FormatChoice>& hiveFormat, bool hiveHasFormat,
                                       CaseContext& context) {
    if (value.kind != JsonValue::Kind::Object) {
        context.wrongType(value, path, "a box: {\"format\": ..., \"combs\": ..., \"super\": false}");
        return std::nullopt;
    }
    ObjectReader box(value, path, "hive.boxes", context);
    if (!hiveHasFormat) box.demand("format", formatRemedy);
    const auto format = box.has("format") ? formatChoice(box) : hiveFormat;
    book::BoxRecord record;
    record.combs = box.integer("combs");
    record.super = box.flag("super", false);
    record.putOn = box.date("put_on");
    if (record.putOn) context.checkRecorded(*record.putOn, box.find("put_on")->position, "put_on", false);
    box.finish();
    if (!format) return std::nullopt;
    record.format = *format;
    return record;
}

std::optional<std::vector<book::BoxRecord>> listedBoxes(ObjectReader& hive, const JsonValue& list) {
    const auto hiveFormat = formatChoice(hive);
    const FieldLimits& limits = hive.context().limits("hive.boxes");
    if (list.items.empty() || static_cast<double>(list.items.size()) > limits.maximum.value_or(12)) {
        hive.context().fault(list.position, fmt::format("{} boxes are listed", list.items.size()),
                             fmt::format("from 1 to {} boxes", shortestNumber(limits.maximum.value_or(12))));
        return std::nullopt;
    }
    std::vector<book::BoxRecord> boxes;
    for (std::size_t i = 0; i < list.items.size(); ++i)
        if (auto box = readBox(list.items[i], fmt::format("hive.boxes[{}]", i), hiveFormat, hive.has("format"),
                               hive.context()))
            boxes.push_back(std::move(*box));
    return boxes.size() == list.items.size() ? std::optional(std::move(boxes)) : std::nullopt;
}

std::optional<std::vector<book::BoxRecord>> readBoxes(ObjectReader& hive) {
    const JsonValue* boxes = hive.find("boxes");
    if (boxes && boxes->kind == JsonValue::Kind::List) return listedBoxes(hive, *boxes);
    const auto count = hive.integer("boxes");
    hive.demand("format", formatRemedy);
    const auto format = formatChoice(hive);
    if (!format || (boxes && !count)) return std::nullopt;
    return std::vector<book::BoxRecord>(static_cast<std::size_t>(count.value_or(1)),
                                        book::BoxRecord{*format, {}, false});
}

int placesOfBox(const book::BoxRecord& box, const ReferenceData& reference) {
    if (box.combs) return *box.combs;
    if (const auto* own = std::get_if<book::OwnFormat>(&box.format)) return own->combsPerBox;
    const HiveFormat* format = reference.format(std::get<std::string>(box.format));
    return format ? format->combsPerBox : 0;
}

} // namespace

std::optional<std::string> checkedFormat(const JsonValue& value, std::string_view what, CaseContext& context) {
    const auto id = context.checkedText(value, what);
    if (!id || context.reference().format(*id)) return id;
    std::vector<std::string> known;
    for (const HiveFormat& format : context.reference().formats)
        known.push_back(format.id);
    context.fault(value.position, fmt::format("no hive format {}", inQuotes(*id)),
                  nearWords(*id, known).empty() ? std::string(formatRemedy) : suggestion(*id, known));
    return std::nullopt;
}

std::optional<book::HiveRecord> readHive(const JsonValue& value, CaseContext& context) {
    ObjectReader hive(value, "hive", "hive", context);
    auto boxes = readBoxes(hive);
    book::HiveRecord record;
    record.shell = hive.choice("shell", shellWords).value_or(book::Shell::Timber);
    record.topInsulation = hive.flag("top_insulation", false);
    record.treated = hive.flag("treated", false);
    record.nucleus = hive.flag("nucleus", false);
    if (const auto tare = hive.number("tare_kg")) record.tare = kilograms(*tare);
    record.supersFor = hive.choice("supers_for", supersForWords);
    hive.finish();
    if (!boxes) return std::nullopt;
    record.boxes = std::move(*boxes);
    return record;
}

int placesOf(const book::HiveRecord& hive, const ReferenceData& reference) {
    int places = 0;
    for (const book::BoxRecord& box : hive.boxes)
        places += placesOfBox(box, reference);
    return places;
}

} // namespace winterlarder::exchange
