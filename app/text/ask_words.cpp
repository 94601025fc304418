// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/ask_words.h"

#include "text/contexts.h"

#include <array>

namespace winterlarder::text {

namespace {

struct AskWords {
    advice::AskKind kind;
    const char* id;
    const char* key;
    const char* text;
};

constexpr std::array<AskWords, 9> asks{{
    {advice::AskKind::Queen, "queen", "bees.eggs_seen",
     QT_TRANSLATE_NOOP("Words", "Does the queen lay: have you seen her, or eggs?")},
    {advice::AskKind::Mites, "mites", "bees.mites_counted",
     QT_TRANSLATE_NOOP("Words", "Have you counted the mites, and treated where it was needed?")},
    {advice::AskKind::FedOrTreated, "fed_or_treated", "fed_or_treated",
     QT_TRANSLATE_NOOP("Words", "Was sugar fed or medicine given while this honey was being made?")},
    {advice::AskKind::SuperFor, "super_for", "hive.supers_for",
     QT_TRANSLATE_NOOP("Words", "Is the super for you, or for the bees?")},
    {advice::AskKind::Tare, "tare", "hive.tare_kg",
     QT_TRANSLATE_NOOP("Words", "What does the empty hive weigh, with its drawn %{combs}?")},
    {advice::AskKind::FlowToCome, "flow_to_come", "site.autumn_flow",
     QT_TRANSLATE_NOOP("Words", "Is a flow still to come near you?")},
    {advice::AskKind::FullCombs, "full_combs", "full_combs",
     QT_TRANSLATE_NOOP("Words", "How many full %{combs} have you in store?")},
    {advice::AskKind::WinterVisits, "winter_visits", "wish.visits_in_winter",
     QT_TRANSLATE_NOOP("Words", "Can you get to the hive in the second half of winter, to lift and feed it?")},
    {advice::AskKind::FoodBesideBees, "food_beside_bees", "bees.food_beside",
     QT_TRANSLATE_NOOP("Words", "Is there food beside the bees, without an empty %{comb} between?")},
}};

const AskWords& of(advice::AskKind kind) { return asks[static_cast<std::size_t>(kind)]; }

} // namespace

QString question(const advice::Ask& ask, const WordStyle& style) {
    const auto name = [&](std::size_t at) { return QString::fromStdString(ask.flows[at]); };
    if (ask.flows.size() == 1) return say::Words::tr("Is a flow still to come near you, such as %1?").arg(name(0));
    if (ask.flows.size() > 1)
        return say::Words::tr("Is a flow still to come near you, such as %1 or %2?").arg(name(0), name(1));
    return worded(say::Words::tr(of(ask.kind).text), style);
}
std::string_view idOf(advice::AskKind kind) { return of(kind).id; }
std::string_view keyOf(advice::AskKind kind) { return of(kind).key; }

} // namespace winterlarder::text
