// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <filesystem>
#include <string>
#include <vector>

namespace winterlarder::book {

//! What came of a salvage: how many entries of each kind were saved, and a sentence for everything that was not.
struct Salvaged {
    std::vector<std::pair<Kind, std::int64_t>> saved;
    std::vector<std::string> lost;
};

//! Reads what can be read of a damaged book into a new one. The damaged file is judged, then copied, and never touched. Values outside their
//! limits and entries on unreadable pages are lost and listed; a colony whose yard is lost, or records whose colony is lost, are
//! kept under a yard or colony named "lost yard N", "lost colony N". The new book's history begins with the salvage, which
//! can be undone like any step; the history of edits stays behind.
//! Problems: the file cannot be read at all or nothing in it can; the new name is taken. Tested: tests/book/salvage_test.cpp.
Outcome<Salvaged> salvage(const std::filesystem::path& damaged, const std::filesystem::path& newBook,
                          const ReferenceData& reference, const Opener& opener);

} // namespace winterlarder::book
