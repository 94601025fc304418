// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "furnished_book.h"

#include <vector>

//! Random books as keepers might write them: some yards anywhere on earth, some colonies, years of looks, weighings, feeds, harvests, glances
//! and outcomes near each other, most of them sensible, some mistyped, some beyond all sense but within what a book takes.
namespace winterlarder::book::support {

//! A book furnished from a seed, and days worth asking about: days of its records, the days round them, and odd ones.
struct RandomYards {
    Book book;
    std::vector<Date> days;
};
RandomYards randomYards(const std::filesystem::path& file, std::uint64_t seed);

} // namespace winterlarder::book::support
