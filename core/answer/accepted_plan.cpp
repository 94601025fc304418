// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/accepted_plan.h"

#include "answer/evening_feeds.h"
#include "book/case_of.h"
#include "exchange/case/case_file.h"
#include "exchange/json/json_tree.h"
#include "numerics/normal_law.h"
#include "winter/question.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

using exchange::JsonValue;

// What a kept answer does not hold is nothing: it may be of another version of the program.
const JsonValue* member(const JsonValue* of, std::string_view name) {
    if (!of) return nullptr;
    for (const auto& each : of->members)
        if (each.name == name) return &each.value;
    return nullptr;
}

std::optional<double> numberIn(const JsonValue* value) {
    return value && value->kind == JsonValue::Kind::Number ? std::optional(value->number) : std::nullopt;
}

std::string textIn(const JsonValue* value) {
    return value && value->kind == JsonValue::Kind::Text ? value->text : std::string();
}

std::vector<int> positionsIn(const JsonValue* list) {
    std::vector<int> positions;
    if (!list) return positions;
    for (const auto& each : list->items)
        if (const auto position = numberIn(&each)) positions.push_back(static_cast<int>(*position));
    return positions;
}

std::vector<advice::CombGift> giftsIn(const JsonValue* list, const std::string& own, bool received) {
    std::vector<advice::CombGift> gifts;
    if (!list) return gifts;
    for (const auto& each : list->items) {
        const auto honey = numberIn(member(&each, "kg"));
        const std::string other = textIn(member(&each, "colony"));
        if (!honey) continue;
        advice::CombGift gift;
        gift.from = received ? other : own;
        gift.to = received ? own : other;
        gift.combs = positionsIn(member(&each, "combs"));
        gift.honey = kilograms(*honey);
        gifts.push_back(std::move(gift));
    }
    return gifts;
}

std::optional<Spread<Mass>> spreadIn(const JsonValue* value) {
    const auto low = numberIn(member(value, "low")), typical = numberIn(member(value, "typical")),
               high = numberIn(member(value, "high"));
    if (!low || !typical || !high) return std::nullopt;
    return Spread<Mass>{kilograms(*low), kilograms(*typical), kilograms(*high)};
}

AcceptedPlan planIn(const JsonValue& answer, const std::string& own) {
    AcceptedPlan plan;
    const auto* part = member(&answer, "plan");
    plan.part.received = giftsIn(member(part, "combs_from"), own, true);
    plan.part.given = giftsIn(member(part, "combs_to"), own, false);
    plan.part.uniteWith = textIn(member(part, "unite_with"));
    if (plan.part.uniteWith.empty() || textIn(member(&answer, "verdict")) == "unite") return plan;
    if (const auto bees = numberIn(member(member(&answer, "bees"), "typical"))) plan.beesTogether = BeeCount{*bees};
    plan.storesTogether = spreadIn(member(&answer, "stores_kg"));
    if (const auto tare = numberIn(member(member(&answer, "target"), "tare_kg"))) plan.tareTogether = kilograms(*tare);
    return plan;
}

const book::UnitedRecord* unitedWith(const book::ColonyCase& autumn, const std::string& colony) {
    const auto found = std::find_if(autumn.united.begin(), autumn.united.end(),
                                    [&](const book::UnitedRecord& each) { return each.colony == colony; });
    return found == autumn.united.end() ? nullptr : &*found;
}

// Whether the combs on record for the day are those the advice knew; where another colony came to it that day, its own are.
bool combsAsThen(const book::ActedAdvice& advice, const book::ColonyHistory& records, const book::ColonyCase& autumn,
                 const book::UnitedRecord* united, const ReferenceData& reference) {
    const auto then = exchange::readCaseWithPlaces(advice.inputs, {}, reference, 1);
    if (!then.record || !then.problems.empty()) return false;
    if (then.record->combs == autumn.combs) return true;
    const auto* look = united ? book::lookOfCase(records, autumn.asOf) : nullptr;
    return look && then.record->combs == look->combs;
}

} // namespace

std::optional<AcceptedPlan> acceptedPlan(const book::ColonyHistory& records, const book::ColonyCase& autumn,
                                         Date decided, const ReferenceData& reference) {
    const auto* acted = actedOn(records, decided);
    if (!acted) return std::nullopt;
    const auto answer = exchange::readJson(acted->answer, {});
    if (!answer.value || !answer.problems.empty()) return std::nullopt;
    auto plan = planIn(*answer.value, records.colony.name);
    const auto* united = unitedWith(autumn, plan.part.uniteWith);
    if (plan.part == advice::PartInYard{} || !combsAsThen(*acted, records, autumn, united, reference))
        return std::nullopt;
    if (united) plan.beesTogether.reset(), plan.storesTogether.reset(), plan.tareTogether.reset();
    return plan;
}

std::optional<advice::ColonyQuestion> withColonyJoined(const advice::ColonyQuestion& autumn, const AcceptedPlan& plan,
                                                       const advice::Advice& alone) {
    if (!plan.beesTogether || !plan.storesTogether || !autumn.bees || !alone.bees || !alone.estimate)
        return std::nullopt;
    const double times = plan.beesTogether->count / std::max(1.0, alone.bees->typical.count);
    if (!(times > 1)) return std::nullopt;
    advice::ColonyQuestion both = autumn;
    both.bees = BeeCount{autumn.bees->count * times};
    if (autumn.brood) both.brood = BeeCount{autumn.brood->count * times};
    both.tare = plan.tareTogether.value_or(autumn.tare);
    both.stream = winter::colonyStream(autumn.colony + " + " + plan.part.uniteWith);
    advice::JoinedColony joined{plan.part.uniteWith, *alone.estimate, kilograms(0)};
    joined.together.mean = plan.storesTogether->typical;
    joined.together.spread = *plan.storesTogether;
    joined.together.sd = (plan.storesTogether->high - plan.storesTogether->typical) * (1 / tenthPercentile);
    both.joined = std::move(joined);
    return both;
}

} // namespace winterlarder::answer
