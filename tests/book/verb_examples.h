// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/furnished_book.h"

namespace winterlarder::book::support {

//! An edit of each verb that changes something in a furnished book. A verb without one here does not compile.
struct Example {
    Book& book;
    Dice dice{11};

    template <class Entry> Add<Entry> operator()(Add<Entry>*) {
        return {someEntry<Entry>(dice, limits(), knownIn(book))};
    }
    template <class Entry> Change<Entry> operator()(Change<Entry>*) {
        auto entry = must(book.all<Entry>()).front();
        entry.note += " and more";
        return {entry};
    }
    RemoveYard operator()(RemoveYard*) { return {edit(book, AddYard{orchard()}).added<Yard>().value()}; }
    template <class Entry> Remove<Entry> operator()(Remove<Entry>*) { return {must(book.all<Entry>()).front().id}; }
    ChangeComb operator()(ChangeComb*) { return {must(book.all<Look>()).back().id, 1, comb(0.25, 0.5)}; }
    MarkVisitDone operator()(MarkVisitDone*) {
        PlannedVisit visit{.colony = {1}, .date = day("2026-09-20"), .what = VisitKind::Syrup, .sugar = kilograms(3)};
        return {edit(book, AddPlannedVisit{visit}).added<PlannedVisit>().value(), day("2026-09-21"), "3:2"};
    }
    SkipVisit operator()(SkipVisit*) {
        PlannedVisit visit{.colony = {1}, .date = day("2026-09-20")};
        return {edit(book, AddPlannedVisit{visit}).added<PlannedVisit>().value()};
    }
    AcceptAdvice operator()(AcceptAdvice*) {
        ActedAdvice advice{.colony = {1},
                           .date = day("2026-09-12"),
                           .verdict = "feed",
                           .inputs = "{}",
                           .answer = "{}",
                           .seed = 1,
                           .winters = 2500};
        PlannedVisit visit{.colony = {1}, .date = day("2026-09-15"), .what = VisitKind::Syrup, .sugar = kilograms(3)};
        return {advice, {visit, visit}};
    }
    ChangeHive operator()(ChangeHive*) {
        return {{.colony = {1}, .date = day("2026-09-20"), .what = ManipulationKind::BoxesAdded, .count = 1},
                {.colony = {1}, .date = day("2026-09-20"), .hive = twoDeeps()}};
    }
    MoveCombs operator()(MoveCombs*) {
        Manipulation done{.colony = {1},
                          .date = day("2026-09-20"),
                          .what = ManipulationKind::CombsMoved,
                          .count = 2,
                          .toColony = ColonyId{2}};
        return {done, Housing{.colony = {1}, .date = done.date, .hive = twoDeeps()}, {}};
    }
    UniteColonies operator()(UniteColonies*) { return {{1}, {2}, day("2026-09-25"), "queenless"}; }
};

} // namespace winterlarder::book::support
