// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/describe_parts.h"
#include "exchange/case/object_reader.h"

#include <string>
#include <string_view>

//! What the keys and values of an object of a case must be together, beyond what the description
//! (book/form/describe_case.h) and shared/fields.csv say of each alone. CaseReader calls both of every object; most
//! have no rules. Each adds its faults to the reader's context. Tested: tests/exchange/case_faults_test.cpp.
namespace winterlarder::exchange {

//! Before values are read: keys that are needed, and keys that exclude each other.
template <class Record> void checkKeys(ObjectReader&, const Record&) {}
void checkKeys(ObjectReader& object, const book::ColonyCase&);
void checkKeys(ObjectReader& object, const book::SiteRecord&);
void checkKeys(ObjectReader& object, const book::OwnFormatColumns&);
void checkKeys(ObjectReader& object, const book::BoxRecord& usual);
void checkKeys(ObjectReader& object, const book::BeesRecord&);
void checkKeys(ObjectReader& object, const book::QuickCountColumns&);
void checkKeys(ObjectReader& object, const book::WeighingRecord&);
void checkKeys(ObjectReader& object, const book::FeedRecord&);
void checkKeys(ObjectReader& object, const book::HarvestRecord&);
void checkKeys(ObjectReader& object, const book::TreatmentRecord&);

//! Once they are read.
template <class Record> void checkValues(ObjectReader&, Record&) {}
void checkValues(ObjectReader& object, book::ColonyCase& record);
void checkValues(ObjectReader& object, book::SiteRecord& site);
void checkValues(ObjectReader& object, book::SeasonRecord& season);
void checkValues(ObjectReader& object, book::BoxRecord& box);
void checkValues(ObjectReader& object, book::CombRecord& comb);
void checkValues(ObjectReader& object, book::WeighingRecord& weighing);
void checkValues(ObjectReader& object, book::FeedRecord& feed);
void checkValues(ObjectReader& object, book::HarvestRecord& harvest);
void checkValues(ObjectReader& object, book::TreatmentRecord& treatment);

//! A fault where the id under "format" is not that of a shipped hive format, with near ones.
void checkFormat(ObjectReader& object, const std::string& id);
inline constexpr std::string_view formatRemedy = "an id that the command \"hive-formats\" lists, or own measures";

} // namespace winterlarder::exchange
