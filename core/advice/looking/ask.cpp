// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/looking/ask.h"

#include "advice/harvest_rules.h"
#include "advice/looking/evidence_today.h"
#include "advice/winter_rules.h"

#include <algorithm>
#include <array>

namespace winterlarder::advice {

namespace {

bool workSeason(const AdviceBasis& r) { return r.phase <= Phase::Closing; }

double queenMoves(const AdviceBasis& r, const Decided&) {
    const auto& q = r.question;
    if (q.queenSeen || q.eggsSeen || !workSeason(r) || (q.brood && q.brood->count > 0)) return 0;
    const double least = r.rules().askQueen;
    return r.needIfStopped ? std::max(least, (r.target.stores - *r.needIfStopped).value()) : least;
}

double mitesMove(const AdviceBasis& r, const Decided&) {
    const auto& a = r.question.answers;
    return workSeason(r) && !a.mitesCounted && !a.mitesTreated ? r.rules().askMites : 0;
}

double fedMoves(const AdviceBasis& r, const Decided& decided) {
    const auto& q = r.question;
    if (!decided.harvest || q.answers.fedOrTreated || q.treated || wasFed(q, r.days)) return 0;
    return decided.harvest->upTo.value();
}

double superMoves(const AdviceBasis& r, const Decided&) {
    if (r.question.answers.supersFor || !workSeason(r)) return 0;
    return honeyInSupers(r.question).value();
}

double tareMoves(const AdviceBasis& r, const Decided&) {
    return stores::shareOfTare(r.estimate) * r.question.tareSd.value();
}

double flowMoves(const AdviceBasis& r, const Decided&) {
    const auto& q = r.question;
    if (q.answers.autumnFlow || q.flowStrength > 0 || !q.lateFlowNear || !q.season.lastIncome ||
        q.asOf >= q.season.lastIncome->day)
        return 0;
    const auto without = winter::netLossBetween(r.ensemble, {}, q.asOf, r.target.day);
    const auto with = winter::netLossBetween(r.ensemble, {q.decisions.flowFair, {}, r.freeRoom}, q.asOf, r.target.day);
    return winter::quantile(without, 0.5) - winter::quantile(with, 0.5);
}

double fullCombsMove(const AdviceBasis& r, const Decided& decided) {
    if (r.question.answers.fullCombs || !decided.feed || decided.by == DecidedBy::Disease || r.phase > Phase::Late)
        return 0;
    return std::min(decided.feed->stores.value(), r.rules().askFullCombs);
}

double visitsMove(const AdviceBasis& r, const Decided&) {
    const auto& a = r.question.answers;
    if (a.visitsInWinter || a.shortRisk || r.phase > Phase::Late) return 0;
    return winter::quantile(r.target.largest, 1 - r.rules().riskUnvisited) -
           winter::quantile(r.target.largest, 1 - r.today.shortRisk);
}

double besideMoves(const AdviceBasis& r, const Decided&) {
    const bool clustered = r.phase == Phase::Late || r.phase == Phase::Winter;
    return clustered && !r.question.answers.foodBeside && !foodInReach(r) ? r.rules().askFoodBeside : 0;
}

struct Question {
    AskKind kind;
    double (*moves)(const AdviceBasis&, const Decided&);
};
constexpr std::array<Question, 9> questions{{{AskKind::Queen, queenMoves},
                                             {AskKind::Mites, mitesMove},
                                             {AskKind::FedOrTreated, fedMoves},
                                             {AskKind::SuperFor, superMoves},
                                             {AskKind::Tare, tareMoves},
                                             {AskKind::FlowToCome, flowMoves},
                                             {AskKind::FullCombs, fullCombsMove},
                                             {AskKind::WinterVisits, visitsMove},
                                             {AskKind::FoodBesideBees, besideMoves}}};

} // namespace

std::optional<Ask> nextQuestion(const AdviceBasis& r, const Decided& decided) {
    if (decided.by == DecidedBy::Disease) return std::nullopt;
    if (layingInDoubt(r.question, r.constants)) return Ask{AskKind::Queen, queenMoves(r, decided)};
    const bool united =
        decided.by == DecidedBy::NoQueen || decided.by == DecidedBy::Weak; // neither honey nor a winter of their own
    if (united)
        return mitesMove(r, decided) > 0 ? std::optional(Ask{AskKind::Mites, mitesMove(r, decided)}) : std::nullopt;
    if (const double moves = superMoves(r, decided); moves > r.rules().worthLookingBand)
        return Ask{AskKind::SuperFor, moves};
    std::optional<Ask> best;
    for (const Question& question : questions) {
        const double moves = question.moves(r, decided);
        if (moves >= r.rules().worthAskingLeast && (!best || moves > best->movesKg)) best = Ask{question.kind, moves};
    }
    if (best && best->kind == AskKind::FlowToCome) best->flows = r.question.lateFlows;
    return best;
}

} // namespace winterlarder::advice
