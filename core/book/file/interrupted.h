// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/file/lock.h"

#include <optional>

namespace winterlarder::book {

//! A program that was killed within a change leaves half of it in the file and what was there before in "BOOK-journal". Who opens the
//! book for reading cannot take that back, so it is done here, through a short opening for writing under the book's lock.
//! Problem: it cannot be done here or now; why, and what to do instead. Nothing = the book is as it was before that change, or was
//! never interrupted. Tested: tests/book/interrupted_test.cpp.
std::optional<Problem> takeBackInterrupted(const std::filesystem::path& book, const Opener& opener);

} // namespace winterlarder::book
