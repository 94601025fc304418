// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "book/entries/records.h"
#include "reference/reference.h"
#include "stores/tare.h"

#include <vector>

namespace winterlarder::answer {

//! The boxes of a hive from the floor up, each in a shipped format or by the keeper's own measures. Tested:
//! tests/answer/question_of_case_test.cpp (as part of a question).
std::vector<hive::CombFormat> boxesOf(const book::HiveRecord& hive, const ReferenceData& reference);

//! A comb as stores are reckoned from it, in that format (with the comb's own spacing, where it has one); its place is not set.
stores::Comb combOf(const book::CombRecord& record, const hive::CombFormat& format);

//! What a hive and its combs are made of, as its weight and room follow from. Tested: tests/answer/doubts_test.cpp.
stores::TareQuestion partsOf(const book::ColonyCase& record, const ReferenceData& reference);

//! Heat factor h of a hive's walls: timber 1.0, others and insulation above the combs of the two timbers as the rows shell... of
//! constants.csv say.
double shellFactor(book::Shell shell, bool topInsulation, const ModelConstants& constants);

//! The hive's part of a question: boxes and what they are for, walls, medicine without a day; its combs; its empty weight, given or from
//! its parts (in this order).
void fillHive(advice::ColonyQuestion& question, const book::HiveRecord& record, const ReferenceData& reference);
void fillCombs(advice::ColonyQuestion& question, const book::ColonyCase& record, const ReferenceData& reference);
void fillTare(advice::ColonyQuestion& question, const book::HiveRecord& record);

} // namespace winterlarder::answer
