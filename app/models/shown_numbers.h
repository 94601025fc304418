// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <map>
#include <utility>
#include <vector>

namespace winterlarder::desk {

//! Entries that are shown before the book has them go by numbers below 0, which no entry of a book has. This remembers which number the
//! book then gave, so that what is edited meanwhile reaches the entry it was meant for. Used on the book's thread only.
//! Tested: tests/app/yard_test.cpp.
class ShownNumbers {
public:
    //! Numbers given out for one edit, in the order of its new entries.
    using Issued = std::vector<std::pair<book::Kind, std::int64_t>>;
    //! The edit was made: its new entries of a kind are those issued, one after the other.
    void note(const Issued& issued, const std::vector<book::Touched>& touched);
    //! The edit with the book's numbers, where it changes or removes what is shown at once: looks, their combs, weighings.
    book::Edit asInBook(book::Edit edit) const;

private:
    template <class Entry> void turn(book::Id<Entry>& id) const;
    template <class Entry> void turnIn(book::AnyVerb& verb) const;
    void turnIn(book::SingleEdit& edit) const;

    std::map<std::pair<book::Kind, std::int64_t>, std::int64_t> given_;
};

} // namespace winterlarder::desk
