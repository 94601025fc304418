// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book_folder.h"
#include "random_entries.h"

#include <optional>

//! A book with something of every kind in it, and random edits that fit it.
namespace winterlarder::book::support {

const Limits& limits();
Known knownIn(Book& book);

//! A random entry (made for every type of entry).
template <class Entry> Entry someEntry(Dice& dice, const Limits& limits, const Known& known);

//! `count` random entries of every kind, and a listed look with three combs at the end.
void furnish(Book& book, std::uint64_t seed, int count = 2);

//! A random edit that fits the book; nothing where there was nothing to edit. The book may refuse it (a yard still in use).
std::optional<SingleEdit> someEdit(Book& book, Dice& dice);

//! Applies a random edit; nothing where the book refused it (a yard still in use) or there was nothing to edit.
std::optional<Applied> applySome(Book& book, Dice& dice, Timestamp now);

} // namespace winterlarder::book::support
