// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/ask_answers.h"

#include "models/yard.h"
#include "text/choice_words.h"
#include "text/contexts.h"

namespace winterlarder::desk {

namespace {

std::vector<AskChoice> yesOrNo() { return {{say::WindowWords::tr("Yes"), 1}, {say::WindowWords::tr("No"), 0}}; }

std::vector<AskChoice> flows() {
    std::vector<AskChoice> all;
    for (const auto& [words, flow] : text::choices<book::FlowStrength>())
        all.push_back({words, static_cast<double>(flow)});
    return all;
}

void changeLook(Yard& yard, ColonyId id, advice::AskKind kind, bool yes) {
    if (!yard.find(id)) return;
    auto look = yard.lookToEdit(id);
    switch (kind) {
    case advice::AskKind::Queen:
        look.bees.eggsSeen = yes;
        if (!yes) look.bees.queenSeen = false;
        break;
    case advice::AskKind::Mites: look.bees.mitesCounted = look.bees.mitesTreated = yes; break;
    case advice::AskKind::FoodBesideBees: look.bees.foodBeside = yes; break;
    default: look.fedOrTreated = yes; break;
    }
    yard.writeLook(look);
}

void changeYard(Yard& yard, advice::AskKind kind, double value) {
    if (!yard.shownYard()) return;
    auto changed = *yard.shownYard();
    switch (kind) {
    case advice::AskKind::FlowToCome:
        changed.site.autumnFlow = static_cast<book::FlowStrength>(static_cast<int>(value));
        break;
    case advice::AskKind::WinterVisits: changed.wish.visitsInWinter = value > 0; break;
    default: changed.fullCombs = value; break;
    }
    yard.writeYard(changed);
}

// The hive as it is on the day: the one the colony began in, or the newest after it.
void changeHive(Yard& yard, ColonyId id, advice::AskKind kind, double value) {
    const auto* records = yard.records(id);
    if (!records) return;
    const auto put = [&](book::HiveRecord& hive) {
        if (kind == advice::AskKind::Tare) hive.tare = kilograms(value);
        else hive.supersFor = value > 0 ? book::SupersFor::Bees : book::SupersFor::People;
    };
    const book::Housing* newest = nullptr;
    for (const auto& housing : records->housings)
        if (!yard.asOf() || housing.date <= *yard.asOf()) newest = &housing;
    if (newest) {
        auto housing = *newest;
        put(housing.hive);
        return yard.apply(book::SingleEdit(book::Change<book::Housing>{std::move(housing)}));
    }
    auto colony = records->colony;
    put(colony.hive);
    yard.apply(book::SingleEdit(book::Change<book::Colony>{std::move(colony)}));
}

} // namespace

std::vector<AskChoice> choicesOf(advice::AskKind kind) {
    switch (kind) {
    case advice::AskKind::SuperFor:
        return {{say::WindowWords::tr("For me"), 0}, {say::WindowWords::tr("For the bees"), 1}};
    case advice::AskKind::FlowToCome: return flows();
    case advice::AskKind::Tare:
    case advice::AskKind::FullCombs: return {};
    default: return yesOrNo();
    }
}

const char* fieldOf(advice::AskKind kind) { return kind == advice::AskKind::Tare ? "hive.tare_kg" : "full_combs"; }

void answerAsked(Yard& yard, ColonyId colony, advice::AskKind kind, double value) {
    switch (kind) {
    case advice::AskKind::FlowToCome:
    case advice::AskKind::WinterVisits:
    case advice::AskKind::FullCombs: return changeYard(yard, kind, value);
    case advice::AskKind::SuperFor:
    case advice::AskKind::Tare: return changeHive(yard, colony, kind, value);
    default: return changeLook(yard, colony, kind, value > 0);
    }
}

} // namespace winterlarder::desk
