// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_sections.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

constexpr std::array<std::string_view, 7> weekdayNames{"monday", "tuesday",  "wednesday", "thursday",
                                                       "friday", "saturday", "sunday"};

// A name of at least three letters ("sat", "Saturday"), or nothing.
std::optional<int> weekdayNamed(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    for (std::size_t i = 0; i < weekdayNames.size(); ++i)
        if (text.size() >= 3 && weekdayNames[i].substr(0, text.size()) == text) return static_cast<int>(i) + 1;
    return std::nullopt;
}

std::optional<int> readWeekday(const JsonValue& value, CaseContext& context) {
    if (value.kind != JsonValue::Kind::Text) {
        const auto number = context.checkedNumber(value, "visit_weekdays", "wish.visit_weekdays");
        return number ? std::optional(static_cast<int>(*number)) : std::nullopt;
    }
    const auto day = weekdayNamed(value.text);
    if (!day)
        context.fault(value.position, fmt::format("{} is not a weekday", inQuotes(value.text)),
                      "Monday to Sunday, or 1 (Monday) to 7 (Sunday)");
    return day;
}

std::vector<int> readWeekdays(ObjectReader& wish) {
    std::vector<int> days;
    const JsonValue* list = wish.list("visit_weekdays");
    if (!list) return days;
    for (const JsonValue& value : list->items) {
        const auto day = readWeekday(value, wish.context());
        if (!day) continue;
        if (std::find(days.begin(), days.end(), *day) != days.end())
            wish.context().fault(value.position, "the same weekday is given twice", "each weekday once");
        else
            days.push_back(*day);
    }
    return days;
}

// A given date must be a day the model of the winter asked about can reach.
std::optional<Date> readSeasonDate(ObjectReader& season, std::string_view key) {
    const auto date = season.date(key);
    const auto& winter = season.context().winter;
    if (!date || !winter) return date;
    if (winter->contains(*date) && winter->seasonDay(*date) <= lastSimulatedDay) return date;
    season.context().fault(
        season.find(key)->position,
        fmt::format("{} {} is not a day of the winter asked about", inQuotes(key), date->iso()),
        fmt::format("a day from {} to {}", winter->date(firstSeasonDay).iso(), winter->date(lastSimulatedDay).iso()));
    return date;
}

} // namespace

book::SeasonRecord readSeason(const JsonValue& value, CaseContext& context) {
    ObjectReader reader(value, "season", "season", context);
    book::SeasonRecord season;
    season.lastIncome = readSeasonDate(reader, "last_income");
    season.broodStop = readSeasonDate(reader, "brood_stop");
    season.broodRestart = readSeasonDate(reader, "brood_restart");
    season.buildup = readSeasonDate(reader, "buildup");
    season.forage = readSeasonDate(reader, "forage");
    season.feedAdvisedBy = readSeasonDate(reader, "feed_advised_by");
    season.syrupDeadline = readSeasonDate(reader, "syrup_deadline");
    season.syrupRefused = readSeasonDate(reader, "syrup_refused");
    reader.finish();
    return season;
}

book::FeederRecord readFeeder(const JsonValue& value, CaseContext& context) {
    ObjectReader reader(value, "feeder", "feeder", context);
    book::FeederRecord feeder;
    feeder.kind = reader.choice("kind", feederWords).value_or(book::FeederKind::Round);
    if (const auto capacity = reader.number("capacity_l")) feeder.capacity = litres(*capacity);
    reader.finish();
    return feeder;
}

book::WishRecord readWish(const JsonValue& value, CaseContext& context) {
    ObjectReader reader(value, "wish", "wish", context);
    book::WishRecord wish;
    wish.shortRisk = reader.number("short_risk");
    if (const auto reserve = reader.number("reserve_kg")) wish.reserve = kilograms(*reserve);
    wish.visitEveryDays = reader.integer("visit_every_days").value_or(wish.visitEveryDays);
    wish.visitWeekdays = readWeekdays(reader);
    wish.visitsInWinter = reader.flag("visits_in_winter");
    reader.finish();
    return wish;
}

book::LearnedRecord readLearned(const JsonValue& value, CaseContext& context) {
    ObjectReader reader(value, "learned", "learned", context);
    book::LearnedRecord learned;
    learned.winters = reader.integer("winters").value_or(0);
    learned.use = reader.number("use").value_or(1);
    learned.useLogSd = reader.number("use_spread").value_or(0);
    learned.death = reader.number("death").value_or(1);
    learned.deathLogSd = reader.number("death_spread").value_or(0);
    learned.forageYears = reader.integer("forage_years").value_or(0);
    learned.forageShiftDays = reader.number("forage_shift_days").value_or(0);
    learned.forageShiftSdDays = reader.number("forage_shift_sd_days").value_or(0);
    reader.finish();
    return learned;
}

} // namespace winterlarder::exchange
