// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_sections.h"

#include <charconv>
#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

// Calls `read` for every object of a list; anything else in it is a fault.
template <class Read>
void eachObject(const JsonValue& value, std::string_view list, std::string_view example, CaseContext& context,
                Read read) {
    if (value.kind != JsonValue::Kind::List) return context.wrongType(value, list, "a list");
    if (value.items.size() > limits::listMembers)
        return context.fault(value.position, fmt::format("{} has {} members", inQuotes(list), value.items.size()), fmt::format("at most {}", limits::listMembers));
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        const std::string path = fmt::format("{}[{}]", list, i);
        if (value.items[i].kind != JsonValue::Kind::Object)
            context.wrongType(value.items[i], path, example);
        else
            read(value.items[i], path);
    }
}

std::optional<Date> neededDate(ObjectReader& reader, bool observation) {
    const JsonValue* value = reader.demand("date", "the day as YYYY-MM-DD");
    const auto date = reader.date("date");
    if (date) reader.context().checkRecorded(*date, value->position, "date", observation);
    return date;
}

std::optional<book::LiftReading> readLift(const JsonValue& value, CaseContext& context) {
    book::LiftReading lift;
    const auto side = [&](const JsonValue& number) {
        if (const auto kg = context.checkedNumber(number, "lift_kg", "weighings.lift_kg"))
            lift.sides.push_back(kilograms(*kg));
    };
    if (value.kind != JsonValue::Kind::List) {
        side(value);
        return lift.sides.empty() ? std::nullopt : std::optional(lift);
    }
    if (value.items.empty() || value.items.size() > 2) {
        context.fault(value.position, fmt::format("\"lift_kg\" has {} values", value.items.size()),
                      "one value, or [left, right]");
        return std::nullopt;
    }
    for (const JsonValue& number : value.items)
        side(number);
    return lift.sides.size() == value.items.size() ? std::optional(lift) : std::nullopt;
}

std::optional<decltype(book::WeighingRecord::reading)> readReading(ObjectReader& reader) {
    const bool one = reader.oneOf({"gross_kg", "lift_kg", "heft"}, true, "one of gross_kg, lift_kg and heft");
    const auto gross = reader.number("gross_kg");
    const JsonValue* liftValue = reader.find("lift_kg");
    const auto lift = liftValue ? readLift(*liftValue, reader.context()) : std::nullopt;
    const auto heft = reader.choice("heft", heftWords);
    if (!one) return std::nullopt;
    if (gross) return book::ScaleReading{kilograms(*gross)};
    if (lift) return *lift;
    if (heft) return *heft;
    return std::nullopt;
}

// What each kind of feed is measured by; every other measure is a fault.
void checkFeedMeasures(ObjectReader& reader, book::FeedKind kind) {
    if (kind == book::FeedKind::Syrup) {
        reader.oneOf({"sugar_kg", "syrup_l"}, true, "syrup is given as sugar_kg, or as syrup_l with its ratio");
        reader.forbid("fondant_kg", "does not go with syrup", "sugar_kg, or syrup_l with its ratio");
        if (reader.has("syrup_l")) reader.demand("ratio", "sugar to water by mass, such as \"3:2\"");
        return;
    }
    const bool fondant = kind == book::FeedKind::Fondant;
    const std::string_view wanted = fondant ? "fondant_kg" : "sugar_kg";
    reader.demand(wanted, "the kilograms given");
    for (std::string_view other : {"sugar_kg", "fondant_kg", "syrup_l", "ratio"})
        if (other != wanted)
            reader.forbid(other, fondant ? "does not go with fondant" : "does not go with dry sugar",
                          fmt::format("{} alone", wanted));
}

std::optional<std::string> readRatio(ObjectReader& reader) {
    const auto ratio = reader.text("ratio");
    if (!ratio || isRatio(*ratio)) return ratio;
    reader.context().fault(reader.find("ratio")->position, fmt::format("\"ratio\" is {}", inQuotes(*ratio)),
                           "kg of sugar to kg of water, both above 0, such as \"3:2\"");
    return std::nullopt;
}

std::optional<book::FeedRecord> readFeed(const JsonValue& value, const std::string& path, CaseContext& context) {
    ObjectReader reader(value, path, "feeds", context);
    const auto date = neededDate(reader, false);
    reader.demand("kind", "one of syrup, fondant and dry-sugar");
    const auto kind = reader.choice("kind", feedWords);
    const auto sugar = reader.number("sugar_kg"), syrup = reader.number("syrup_l"),
               fondant = reader.number("fondant_kg");
    const auto ratio = readRatio(reader);
    const bool sure = reader.flag("sure", false);
    const auto afterLook = reader.flag("after_look");
    if (kind) checkFeedMeasures(reader, *kind);
    reader.finish();
    if (!date || !kind) return std::nullopt;
    book::FeedRecord feed{*date, *kind, {}, {}, ratio, {}, sure, afterLook};
    if (sugar) feed.sugar = kilograms(*sugar);
    if (syrup) feed.syrup = litres(*syrup);
    if (fondant) feed.fondant = kilograms(*fondant);
    return feed;
}

bool readNumber(std::string_view text) {
    double number = 0;
    for (char c : text)
        if ((c < '0' || c > '9') && c != '.') return false;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() && number > 0 && number <= 1000;
}

} // namespace

bool isRatio(std::string_view text) {
    const auto colon = text.find(':');
    return colon != std::string_view::npos && readNumber(text.substr(0, colon)) && readNumber(text.substr(colon + 1));
}

std::vector<book::WeighingRecord> readWeighings(const JsonValue& value, CaseContext& context,
                                                std::optional<double>& moisturePercent) {
    std::vector<book::WeighingRecord> weighings;
    eachObject(value, "weighings", "a weighing: {\"date\": ..., \"gross_kg\": ...}", context,
               [&](const JsonValue& item, const std::string& path) {
                   ObjectReader reader(item, path, "weighings", context);
                   const auto date = neededDate(reader, true);
                   const auto reading = readReading(reader);
                   if (const JsonValue* moisture = reader.find("moisture_percent"))
                       if (const auto percent =
                               context.checkedNumber(*moisture, "moisture_percent", "moisture_percent"))
                           moisturePercent = percent;
                   const bool sure = reader.flag("sure", false);
                   reader.finish();
                   if (date && reading) weighings.push_back({*date, *reading, sure});
               });
    return weighings;
}

std::vector<book::FeedRecord> readFeeds(const JsonValue& value, CaseContext& context) {
    std::vector<book::FeedRecord> feeds;
    eachObject(value, "feeds", "a feed: {\"date\": ..., \"kind\": \"syrup\", \"sugar_kg\": ...}", context,
               [&](const JsonValue& item, const std::string& path) {
                   if (auto feed = readFeed(item, path, context)) feeds.push_back(std::move(*feed));
               });
    return feeds;
}

std::vector<book::HarvestRecord> readHarvests(const JsonValue& value, CaseContext& context) {
    std::vector<book::HarvestRecord> harvests;
    eachObject(value, "harvests", "a harvest: {\"date\": ..., \"kg\": ...}", context,
               [&](const JsonValue& item, const std::string& path) {
                   ObjectReader reader(item, path, "harvests", context);
                   const auto date = neededDate(reader, false);
                   reader.demand("kg", "the kilograms of honey taken");
                   const auto kg = reader.number("kg");
                   const bool sure = reader.flag("sure", false);
                   const auto afterLook = reader.flag("after_look");
                   reader.finish();
                   if (date && kg) harvests.push_back({*date, kilograms(*kg), sure, afterLook});
               });
    return harvests;
}

std::vector<book::TreatmentRecord> readTreatments(const JsonValue& value, CaseContext& context) {
    std::vector<book::TreatmentRecord> treatments;
    eachObject(value, "treatments", "a treatment: {\"date\": ..., \"until\": ...}", context,
               [&](const JsonValue& item, const std::string& path) {
                   ObjectReader reader(item, path, "treatments", context);
                   const auto date = neededDate(reader, false);
                   const auto until = reader.date("until");
                   auto what = reader.text("what").value_or("");
                   reader.finish();
                   if (date && until && *until < *date)
                       context.fault(reader.find("until")->position, fmt::format("\"until\" {} is before {}", until->iso(), date->iso()),
                                     "the last day honey is not for people, as the label says");
                   if (date) treatments.push_back({*date, until, std::move(what)});
               });
    return treatments;
}

} // namespace winterlarder::exchange
