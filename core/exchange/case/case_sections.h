// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "exchange/case/object_reader.h"

//! The parts of a case file, one function each. Each adds its faults to the reader's context and gives what it could
//! read; nothing only where the part is unusable as a whole.
namespace winterlarder::exchange {

std::optional<book::SiteRecord> readSite(const JsonValue& value, CaseContext& context);

std::optional<book::HiveRecord> readHive(const JsonValue& value, CaseContext& context);
//! Places for combs, all boxes together; an unknown format counts none.
int placesOf(const book::HiveRecord& hive, const ReferenceData& reference);

book::BeesRecord readBees(const JsonValue& value, CaseContext& context);
book::CombsRecord readCombs(const JsonValue& value, CaseContext& context);

std::vector<book::WeighingRecord> readWeighings(const JsonValue& value, CaseContext& context,
                                                std::optional<double>& moisturePercent);
std::vector<book::FeedRecord> readFeeds(const JsonValue& value, CaseContext& context);
std::vector<book::HarvestRecord> readHarvests(const JsonValue& value, CaseContext& context);
std::vector<book::TreatmentRecord> readTreatments(const JsonValue& value, CaseContext& context);

book::SeasonRecord readSeason(const JsonValue& value, CaseContext& context);
book::FeederRecord readFeeder(const JsonValue& value, CaseContext& context);
book::WishRecord readWish(const JsonValue& value, CaseContext& context);
book::LearnedRecord readLearned(const JsonValue& value, CaseContext& context);

//! "3:2": two numbers above 0, at most 1000, with a colon between.
bool isRatio(std::string_view text);

//! The id of a shipped hive format, else a fault with near ones.
std::optional<std::string> checkedFormat(const JsonValue& value, std::string_view what, CaseContext& context);

} // namespace winterlarder::exchange
