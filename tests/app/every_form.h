// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/window_desk.h"
#include "forms/entry_forms.h"

#include <functional>
#include <utility>
#include <vector>

namespace winterlarder::desk::invented {

using NamedForm = std::pair<const char*, std::function<EntryForm*()>>;

//! Every form there is, of a colony of the window's yard; each is opened by calling it.
inline std::vector<NamedForm> everyForm(MainWindow& window, ColonyId id) {
    auto* yard = window.yard();
    auto* over = &window;
    const auto today = day("2026-09-14");
    const auto here = yard->shownYard()->id;
    const auto hive = yard->find(id)->record.hive;
    return {
        {"look", [=] { return askForLook(over, yard, yard->lookToEdit(id)); }},
        {"note", [=] { return askForNote(over, yard, {.colony = id, .date = today}); }},
        {"weighing",
         [=] {
             return askForWeighing(over, yard, {.colony = id, .weighing = {today, book::ScaleReading{}}});
         }},
        {"feed",
         [=] {
             return askForFeed(over, yard, {.colony = id, .feed = {today, book::FeedKind::Syrup, {}, {}, {}, {}}});
         }},
        {"harvest",
         [=] {
             return askForHarvest(over, yard, {.colony = id, .harvest = {today, Mass(0)}});
         }},
        {"treatment", [=] { return askForTreatment(over, yard, {.colony = id, .date = today}); }},
        {"outcome", [=] { return askForOutcome(over, yard, {.colony = id, .date = today}); }},
        {"sighting", [=] { return askForSighting(over, yard, {.colony = id, .date = today}); }},
        {"colony", [=] { return askForColony(over, yard, yard->records(id)->colony); }},
        {"new colony", [=] { return askForColony(over, yard, {.yard = here, .hive = hive}); }},
        {"hive", [=] { return askForHive(over, yard, {.colony = id, .date = today, .hive = hive}); }},
        {"fate", [=] { return askForFate(over, yard, {.colony = id, .date = today}); }},
        {"move", [=] { return askForMove(over, yard, {.colony = id, .date = today, .yard = here}); }},
        {"yard", [=] { return askForYard(over, yard, {}); }},
    };
}

} // namespace winterlarder::desk::invented
