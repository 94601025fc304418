// SPDX-License-Identifier: GPL-3.0-or-later
#include "furnished_book.h"

#include "book/form/entry_rows.h"

#include <algorithm>
#include <tuple>

namespace winterlarder::book::support {

const Limits& limits() {
    static const Limits all(shipped().fields);
    return all;
}

Known knownIn(Book& book) {
    Known known;
    for (const auto& table : tables())
        must(book.eachRow(table.kind, [&](std::int64_t id, const Row&) { known.of(table.kind).push_back(id); }));
    return known;
}

template <class Entry> Entry someEntry(Dice& dice, const Limits& limits, const Known& known) {
    auto entry = entryOf<Entry>(0, someRow(dice, kindOf<Entry>, limits, known));
    if (!entry)
        throw std::runtime_error("a random " + tableOf(kindOf<Entry>).singular +
                                 " is not one: " + entry.problems().front().detail);
    return std::move(entry).value();
}

template Yard someEntry(Dice&, const Limits&, const Known&);
template Colony someEntry(Dice&, const Limits&, const Known&);
template Move someEntry(Dice&, const Limits&, const Known&);
template Fate someEntry(Dice&, const Limits&, const Known&);
template Housing someEntry(Dice&, const Limits&, const Known&);
template Look someEntry(Dice&, const Limits&, const Known&);
template Weighing someEntry(Dice&, const Limits&, const Known&);
template Feed someEntry(Dice&, const Limits&, const Known&);
template Harvest someEntry(Dice&, const Limits&, const Known&);
template Treatment someEntry(Dice&, const Limits&, const Known&);
template Manipulation someEntry(Dice&, const Limits&, const Known&);
template ActedAdvice someEntry(Dice&, const Limits&, const Known&);
template PlannedVisit someEntry(Dice&, const Limits&, const Known&);
template WinterOutcome someEntry(Dice&, const Limits&, const Known&);
template Sighting someEntry(Dice&, const Limits&, const Known&);
template WeatherLog someEntry(Dice&, const Limits&, const Known&);

namespace {

template <class Entry> void addSome(Book& book, Dice& dice, int count) {
    for (int made = 0; made < count; ++made) {
        const auto known = knownIn(book);
        edit(book, Add<Entry>{someEntry<Entry>(dice, limits(), known)});
    }
}

template <class... Entries> void addSomeOfAll(Book& book, Dice& dice, int count, std::tuple<Entries...>*) {
    (addSome<Entries>(book, dice, count), ...);
}

template <class Entry> std::optional<Id<Entry>> someId(Dice& dice, const Known& known) {
    const auto& ids = known.of(kindOf<Entry>);
    if (ids.empty()) return std::nullopt;
    return Id<Entry>{dice.of(ids)};
}

//! Something stands in the book for every reference the kind cannot be without.
bool possible(Kind kind, const Known& known) {
    const auto& columns = tableOf(kind).columns;
    return std::none_of(columns.begin(), columns.end(), [&](const Column& column) {
        return column.refersTo && column.required && known.of(*column.refersTo).empty();
    });
}

//! A random edit of the kind of entry: mostly changes, of one field or all.
template <class Entry> std::optional<SingleEdit> someEditOf(Book& book, Dice& dice, const Known& known) {
    if (!possible(kindOf<Entry>, known)) return std::nullopt;
    const auto what = dice.below(6);
    if (what == 0) return Add<Entry>{someEntry<Entry>(dice, limits(), known)};
    const auto id = someId<Entry>(dice, known);
    if (!id) return std::nullopt;
    if (what == 1) return Remove<Entry>{*id};
    auto entry = what == 2 ? someEntry<Entry>(dice, limits(), known) : must(book.find(*id)).value();
    entry.id = *id;
    if (what > 2) entry.note = someText(dice);
    return Change<Entry>{std::move(entry)};
}

template <class... Entries> std::optional<SingleEdit> someEditAmong(Book& book, Dice& dice, std::tuple<Entries...>*) {
    const auto known = knownIn(book);
    std::optional<SingleEdit> made;
    auto chosen = dice.below(sizeof...(Entries));
    ((chosen-- == 0 ? (made = someEditOf<Entries>(book, dice, known), 0) : 0), ...);
    return made;
}

} // namespace

void furnish(Book& book, std::uint64_t seed, int count) {
    Dice dice(seed);
    addSomeOfAll(book, dice, count, static_cast<EntryTypes*>(nullptr));
    edit(book, AddLook{lookAt({1}, day("2026-09-10"))});
}

std::optional<SingleEdit> someEdit(Book& book, Dice& dice) {
    return someEditAmong(book, dice, static_cast<EntryTypes*>(nullptr));
}

std::optional<Applied> applySome(Book& book, Dice& dice, Timestamp now) {
    const auto made = someEdit(book, dice);
    if (!made) return std::nullopt;
    auto applied = book.apply(Edit(*made), now, "Ada");
    if (!applied) return std::nullopt;
    return std::move(applied).value();
}

} // namespace winterlarder::book::support
