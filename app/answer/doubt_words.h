// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/doubts.h"
#include "answer/question_of_case.h"
#include "text/style.h"

//! Doubts of entries (answer/doubts.h) said in words.
namespace winterlarder::answer {

//! A doubt as a problem: what is wrong, then what is asked and, where the keeper may be sure, `whereSure` ("If ...").
Problem problemOf(const stores::Doubt& doubt, Place place, const std::string& whereSure,
                  const text::WordStyle& style = {});

//! The same of something written down of a hive at a place: in the words of the place.
Problem problemOf(const stores::Doubt& doubt, Place place, const std::string& whereSure, const book::SiteRecord& site,
                  const book::HiveRecord& hive, const ReferenceData& reference, text::WordStyle style = {});

//! As readQuestion of the core, with impossible records, and what is asked, said in English and in the words of the place.
Outcome<ReadQuestion> readQuestion(std::string_view text, std::string file, const ReferenceData& reference,
                                   std::uint64_t positionInBatch, int firstLine = 1);

} // namespace winterlarder::answer
