// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/describe_parts.h"

#include <algorithm>

namespace winterlarder::book {

WhereColumns columnsOf(const decltype(SiteRecord::where)& where) {
    WhereColumns columns{};
    if (const auto* station = std::get_if<std::string>(&where)) columns.station = *station;
    if (const auto* place = std::get_if<Coordinates>(&where)) {
        columns.latitude = place->latitude;
        columns.longitude = place->longitude;
    }
    if (const auto* climate = std::get_if<OwnClimateRecord>(&where)) {
        columns.latitude = climate->latitude;
        columns.longitude = climate->longitude;
        for (std::size_t month = 0; month < 12; ++month) columns.monthlyMean[month] = climate->monthlyMeanC[month];
        columns.dailySdWinter = climate->dailySdWinter;
        columns.dailySdSummer = climate->dailySdSummer;
        columns.lag1 = climate->lag1;
        columns.seasonOffsetSd = climate->seasonOffsetSd;
    }
    return columns;
}

decltype(SiteRecord::where) whereOf(const WhereColumns& columns) {
    if (columns.station) return *columns.station;
    if (!columns.monthlyMean[0]) return Coordinates{columns.latitude.value_or(0), columns.longitude.value_or(0)};
    OwnClimateRecord climate;
    climate.latitude = columns.latitude.value_or(0);
    climate.longitude = columns.longitude;
    for (std::size_t month = 0; month < 12; ++month)
        climate.monthlyMeanC[month] = columns.monthlyMean[month].value_or(0);
    climate.dailySdWinter = columns.dailySdWinter;
    climate.dailySdSummer = columns.dailySdSummer;
    climate.lag1 = columns.lag1;
    climate.seasonOffsetSd = columns.seasonOffsetSd;
    return climate;
}

FormatColumns columnsOf(const FormatChoice& format) {
    FormatColumns columns{};
    if (const auto* id = std::get_if<std::string>(&format)) {
        columns.format = *id;
        return columns;
    }
    const auto& own = std::get<OwnFormat>(format);
    columns.own.combWidth = own.combWidth;
    columns.own.combHeight = own.combHeight;
    columns.own.bottomWidth = own.bottomWidth;
    columns.own.combsPerBox = own.combsPerBox;
    columns.own.pitch = own.pitch;
    return columns;
}

FormatChoice formatOf(const FormatColumns& columns) {
    if (columns.format) return *columns.format;
    const auto& own = columns.own;
    return OwnFormat{own.combWidth.value_or(Length(0)), own.combHeight.value_or(Length(0)), own.bottomWidth,
                     own.combsPerBox.value_or(0), own.pitch.value_or(Length(0))};
}

QuickCountColumns columnsOf(const QuickCountRecord& quick) {
    return {quick.fullOfStores, quick.half, quick.cappedShare};
}

QuickCountRecord quickCountOf(const QuickCountColumns& columns) {
    return {columns.fullOfStores.value_or(0), columns.half.value_or(0), columns.cappedShare.value_or(1)};
}

CombsColumns columnsOf(const CombsRecord& combs) {
    CombsColumns columns{};
    if (const auto* listed = std::get_if<std::vector<CombRecord>>(&combs)) {
        columns.form = CombsForm::Listed;
        columns.combs = *listed;
    }
    if (const auto* quick = std::get_if<QuickCountRecord>(&combs)) {
        columns.form = CombsForm::Quick;
        columns.quick = columnsOf(*quick);
    }
    return columns;
}

CombsRecord combsOf(CombsColumns columns) {
    if (columns.form == CombsForm::Listed) return std::move(columns.combs);
    if (columns.form == CombsForm::None) return std::monostate{};
    return quickCountOf(columns.quick);
}

ReadingColumns columnsOf(const WeighingReading& reading) {
    ReadingColumns columns{};
    if (const auto* scale = std::get_if<ScaleReading>(&reading)) columns.gross = scale->gross;
    if (const auto* heft = std::get_if<HeftWord>(&reading)) columns.heft = *heft;
    if (const auto* lift = std::get_if<LiftReading>(&reading)) {
        const std::size_t sides = std::min(lift->sides.size(), columns.lift.size());
        std::copy_n(lift->sides.begin(), sides, columns.lift.begin());
    }
    return columns;
}

WeighingReading readingOf(const ReadingColumns& columns) {
    if (columns.heft) return *columns.heft;
    if (columns.gross) return ScaleReading{*columns.gross};
    LiftReading lift;
    for (const auto& side : columns.lift)
        if (side) lift.sides.push_back(*side);
    return lift;
}

FeederColumns columnsOf(const std::optional<FeederRecord>& feeder) {
    if (!feeder) return {};
    return {feeder->kind, feeder->capacity};
}

std::optional<FeederRecord> feederOf(const FeederColumns& columns) {
    if (!columns.kind) return std::nullopt;
    return FeederRecord{*columns.kind, columns.capacity};
}

} // namespace winterlarder::book
