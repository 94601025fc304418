// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/describe.h"

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
    for (std::size_t month = 0; month < 12; ++month) climate.monthlyMeanC[month] = columns.monthlyMean[month].value_or(0);
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
    columns.combWidth = own.combWidth;
    columns.combHeight = own.combHeight;
    columns.bottomWidth = own.bottomWidth;
    columns.combsPerBox = own.combsPerBox;
    columns.pitch = own.pitch;
    return columns;
}

FormatChoice formatOf(const FormatColumns& columns) {
    if (columns.format) return *columns.format;
    return OwnFormat{columns.combWidth.value_or(Length(0)), columns.combHeight.value_or(Length(0)), columns.bottomWidth,
                     columns.combsPerBox.value_or(0), columns.pitch.value_or(Length(0))};
}

CombsColumns columnsOf(const CombsRecord& combs) {
    CombsColumns columns{};
    if (const auto* listed = std::get_if<std::vector<CombRecord>>(&combs)) {
        columns.form = CombsForm::Listed;
        columns.combs = *listed;
    }
    if (const auto* quick = std::get_if<QuickCountRecord>(&combs)) {
        columns.form = CombsForm::Quick;
        columns.fullOfStores = quick->fullOfStores;
        columns.half = quick->half;
        columns.cappedShare = quick->cappedShare;
    }
    return columns;
}

CombsRecord combsOf(CombsColumns columns) {
    if (columns.form == CombsForm::Listed) return std::move(columns.combs);
    if (columns.form == CombsForm::None) return std::monostate{};
    return QuickCountRecord{columns.fullOfStores.value_or(0), columns.half.value_or(0), columns.cappedShare.value_or(1)};
}

ReadingColumns columnsOf(const decltype(WeighingRecord::reading)& reading) {
    ReadingColumns columns{};
    if (const auto* scale = std::get_if<ScaleReading>(&reading)) columns.gross = scale->gross;
    if (const auto* heft = std::get_if<HeftWord>(&reading)) columns.heft = *heft;
    if (const auto* lift = std::get_if<LiftReading>(&reading)) {
        if (!lift->sides.empty()) columns.firstLift = lift->sides[0];
        if (lift->sides.size() > 1) columns.secondLift = lift->sides[1];
    }
    return columns;
}

decltype(WeighingRecord::reading) readingOf(const ReadingColumns& columns) {
    if (columns.heft) return *columns.heft;
    if (columns.gross) return ScaleReading{*columns.gross};
    LiftReading lift;
    if (columns.firstLift) lift.sides.push_back(*columns.firstLift);
    if (columns.secondLift) lift.sides.push_back(*columns.secondLift);
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
