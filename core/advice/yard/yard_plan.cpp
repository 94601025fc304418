// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/yard/yard_plan.h"

#include "advice/yard/share_combs.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

bool healthy(const std::vector<YardColony>& yard) {
    return std::none_of(yard.begin(), yard.end(), [](const YardColony& colony) { return colony.question->trouble; });
}

// Whether it has a queen is still to be seen: until then a partner that can winter alone is weighed and fed alone.
bool isUndecided(const std::vector<YardColony>& yard, const UnitedPair& pair) {
    return yard[pair.from].advice->decidedBy == DecidedBy::NoQueen && yard[pair.onto].advice->verdict != Verdict::Unite;
}

void unite(const std::vector<YardColony>& yard, YardPlan& plan, const UnitedPair& pair) {
    PartInYard &from = plan.parts[pair.from], &onto = plan.parts[pair.onto];
    from.uniteWith = yard[pair.onto].question->colony;
    from.uniteBy = yard[pair.from].advice->unite->by;
    if (isUndecided(yard, pair)) return;
    onto.uniteWith = yard[pair.from].question->colony;
    onto.uniteBy = from.uniteBy;
    onto.joinedBees = yard[pair.from].advice->bees->typical;
    onto.joinedStores = std::max(kilograms(0), yard[pair.from].advice->estimate->mean);
}

const UnitedPair* pairOnto(const YardPlan& plan, std::size_t place) {
    const auto found =
        std::find_if(plan.pairs.begin(), plan.pairs.end(), [&](const UnitedPair& pair) { return pair.onto == place; });
    return found == plan.pairs.end() ? nullptr : &*found;
}

bool goesOntoAnother(const YardPlan& plan, std::size_t place) {
    return std::any_of(plan.pairs.begin(), plan.pairs.end(),
                       [&](const UnitedPair& pair) { return pair.from == place; });
}

// Its winter is its partner's to plan.
void leaveWinterToPartner(Advice& advice, const std::string& partner) {
    advice.unite->partner = partner;
    advice.expectedLater.reset();
    advice.weighLine.clear();
}

} // namespace

Mass PartInYard::brought() const {
    Mass sum{0};
    for (const CombGift& gift : received) sum += gift.honey;
    for (const CombGift& gift : given) sum -= gift.honey;
    return sum;
}

YardPlan planFor(const std::vector<YardColony>& yard, MovingCombs combs) {
    YardPlan plan{std::vector<PartInYard>(yard.size()), {}};
    if (!healthy(yard)) return plan;
    plan.pairs = pairsOf(yard);
    std::set<std::size_t> apart;
    for (const UnitedPair& pair : plan.pairs) {
        unite(yard, plan, pair);
        apart.insert({pair.from, pair.onto});
    }
    if (combs == MovingCombs::Not) return plan;
    const auto moved = combsToShare(yard, apart);
    for (const SharedCombs& shared : moved) {
        plan.parts[shared.from].given.push_back(shared.gift);
        plan.parts[shared.to].received.push_back(shared.gift);
    }
    plan.noneGiven = whyNoneGiven(yard, apart, moved);
    return plan;
}

bool weighedAgain(const YardPlan& plan, std::size_t place) {
    const PartInYard& part = plan.parts[place];
    return !part.given.empty() || !part.received.empty() || (part.uniteBy && pairOnto(plan, place));
}

std::optional<ColonyInPlan> inPlan(const std::vector<YardColony>& yard, const YardPlan& plan, std::size_t place,
                                   const ModelConstants& constants, winter::Sampling sampling, int threads,
                                   std::stop_token stop) {
    const YardColony& colony = yard[place];
    const UnitedPair* pair = pairOnto(plan, place);
    const bool united = pair && !isUndecided(yard, *pair);
    ColonyInPlan planned{united ? unitedQuestion(colony, yard[pair->from]) : *colony.question, {}};
    planned.question.plan = plan.parts[place];
    if (weighedAgain(plan, place)) {
        auto answer = weigh(planned.question, constants, sampling, threads, std::move(stop));
        if (!answer) return std::nullopt;
        planned.answer = *std::move(answer);
        if (united && colony.advice->estimate && colony.advice->bees)
            planned.answer.advice.alone = AloneToday{colony.advice->estimate->spread, *colony.advice->bees};
        return planned;
    }
    planned.answer.advice = *colony.advice;
    planned.answer.advice.plan = plan.parts[place];
    if (pair)
        planned.answer.advice.reasons.push_back(
            {"may-be-united", {{"from", yard[pair->from].question->colony}, {"day", *plan.parts[pair->from].uniteBy}}});
    if (const auto why = plan.noneGiven.find(place); why != plan.noneGiven.end())
        planned.answer.advice.reasons.push_back(why->second);
    if (goesOntoAnother(plan, place)) leaveWinterToPartner(planned.answer.advice, plan.parts[place].uniteWith);
    return planned;
}

} // namespace winterlarder::advice
