// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/advice.h"

#include "advice/another_look.h"
#include "advice/evidence_today.h"
#include "advice/options.h"
#include "advice/remarks.h"
#include "advice/verdict.h"
#include "stores/bees.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

constexpr SeasonDay earlyLookBefore{-92};
constexpr double earlyLookSdKg = 2;

template <class Values>
Spread<double> spreadOver(const Values& values) {
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    return {winter::sortedQuantile(sorted, 0.1), winter::sortedQuantile(sorted, 0.5), winter::sortedQuantile(sorted, 0.9)};
}

Spread<Mass> massSpread(const std::vector<double>& kg) {
    const auto s = spreadOver(kg);
    return {kilograms(s.low), kilograms(s.typical), kilograms(s.high)};
}

Spread<BeeCount> beesNow(const winter::DemandEnsemble& ensemble, SeasonDay day) {
    const auto s = spreadOver(ensemble.bees(day));
    return {{s.low}, {s.typical}, {s.high}};
}

Mass sdForShares(const ColonyQuestion& question, Mass sd) {
    return question.asOf < earlyLookBefore ? kilograms(std::hypot(sd.value(), earlyLookSdKg)) : sd;
}

// Food eaten in each calendar month from the asking day to each winter's own forage.
std::vector<MonthUse> useByMonth(const winter::DemandEnsemble& ensemble, const ColonyQuestion& question) {
    std::vector<MonthUse> months;
    const auto draws = ensemble.draws();
    std::vector<double> before(draws.size()), until(draws.size()), spent(draws.size());
    const auto usedAt = [&](SeasonDay day, std::size_t i) {
        const SeasonDay last = std::min(day, SeasonDay{draws[i].forage - 1});
        return last < ensemble.firstDay() ? 0.0 : static_cast<double>(ensemble.used(last)[i]);
    };
    for (std::size_t i = 0; i < draws.size(); ++i) before[i] = usedAt(question.asOf - 1, i);
    for (SeasonDay day = question.asOf; day <= ensemble.lastDay() && day < question.season.forage->day; day = day + 1) {
        const Date date = question.winter.date(day);
        const SeasonDay next = day + 1;
        const bool last = next > ensemble.lastDay() || next >= question.season.forage->day;
        if (!last && question.winter.date(next).month() == date.month()) continue;
        for (std::size_t i = 0; i < draws.size(); ++i) {
            until[i] = usedAt(last ? ensemble.lastDay() : day, i);
            spent[i] = until[i] - before[i];
        }
        months.push_back({date.year(), date.month(), massSpread(spent)});
        before = until;
    }
    return months;
}

std::optional<Mass> roomOnAsking(const Reckoning& r) {
    if (!r.freeRoom) return std::nullopt;
    double room = r.freeRoom->value() + r.carried.value();
    for (const auto& feed : r.question.feeds)
        if (feed.day > r.question.lookedOn) room -= feed.stores.value();
    return kilograms(std::max(0.0, room));
}

Reckoning reckon(const ColonyQuestion& q, const ModelConstants& constants, const winter::DemandEnsemble& ensemble) {
    const auto room = freeRoomAtLook(q);
    Reckoning r{q, constants, ensemble, autumnFlow(q, room), {}, room, {}, {}, {}, {}, {}, {}, {}, false};
    r.combs = stores::storesOfCombs(q.combs, stores::openFactor(q.freshlyFilled));
    const auto pieces = carriedToAsking(q, evidenceSeen(q, constants, &ensemble), ensemble, r.flow);
    r.estimate = *stores::combine(pieces);
    r.carried = lossBetween(ensemble, r.flow, std::max(q.lookedOn, ensemble.firstDay()), q.asOf).median;
    r.roomNow = roomOnAsking(r);
    r.withFlow = winter::lossesFrom(ensemble, q.asOf, r.flow);
    r.withoutFlow = q.flowStrength > 0 ? winter::lossesFrom(ensemble, q.asOf, {}) : r.withFlow;
    r.wish = {std::max(kilograms(0), r.estimate.mean), sdForShares(q, r.estimate.sd), q.shortRisk, q.reserve};
    r.amounts = {spareOf(r.withoutFlow.largest, r.wish), missingOf(r.withFlow.largest, r.wish)};
    r.harvestable = mayHarvest(r);
    return r;
}

void fillFigures(const Reckoning& r, Advice& advice) {
    const ColonyQuestion& q = r.question;
    advice.estimate = r.estimate;
    advice.storesSd = r.wish.sd;
    advice.bees = beesNow(r.ensemble, q.asOf);
    advice.use = massSpread(r.withFlow.used);
    advice.useByMonth = useByMonth(r.ensemble, q);
    advice.need = kilograms(winter::quantile(r.withFlow.largest, 1 - q.shortRisk)) + q.reserve;
    advice.freeRoom = r.freeRoom;
    std::vector<double> lockedIn;
    for (const auto& draw : r.ensemble.draws()) lockedIn.push_back(draw.longestLockedIn);
    advice.lockedInDays = winter::quantile(std::move(lockedIn), 0.9);
}

void fillOptions(const Reckoning& r, Advice& advice) {
    advice.options.push_back(leaveOption(r));
    advice.runOut = advice.options.front().runOut;
    advice.touchReserve = advice.options.front().touchReserve;
    if (advice.harvest) advice.options.push_back(takeOption(r, advice.harvest->upTo));
    if (r.amounts.spare.value() >= amountStepKg / 2) advice.options.push_back(springOption(r, advice.options.front()));
    if (advice.feed) advice.options.push_back(feedOption(r, *advice.feed));
}

OptionKind recommended(Verdict verdict, const Advice& advice) {
    if (verdict == Verdict::Harvest) return OptionKind::TakeNow;
    return advice.feed ? OptionKind::Feed : OptionKind::Leave;
}

Advice adviceFrom(const Reckoning& r, winter::Sampling sampling) {
    Advice advice;
    advice.season = r.question.season;
    advice.winters = sampling.winters;
    advice.seed = sampling.seed;
    fillFigures(r, advice);
    advice.verdict = verdictFor(r, r.amounts, advice.bees->typical.count);
    if (advice.verdict == Verdict::Harvest) advice.harvest = harvestOf(r, r.amounts.spare);
    if (r.amounts.missing.value() >= leastAmountKg) advice.feed = planFor(r, r.amounts.missing);
    fillOptions(r, advice);
    const OptionKind kind = recommended(advice.verdict, advice);
    for (const auto& option : advice.options)
        if (option.kind == kind) advice.springReserve = option.springReserve;
    advice.anotherLook = anotherLook(r, advice.verdict);
    advice.reasons = reasonsOf(r, advice);
    advice.cautions = cautionsOf(r, advice);
    return advice;
}

} // namespace

bool setsAside(const Advice& advice) {
    return !advice.reasons.empty() && advice.reasons.front().details.contains("record");
}

StoresToday storesToday(const ColonyQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                        int threads) {
    StoresToday today;
    today.combs = stores::storesOfCombs(question.combs, stores::openFactor(question.freshlyFilled));
    today.freeRoom = freeRoomAtLook(question);
    const bool carried = question.site && question.season.derivable() && question.bees && question.bees->count > 0 &&
                         question.asOf <= lastSimulatedDay && question.asOf < question.season.forage->day;
    if (!carried) {
        today.seen = evidenceSeen(question, constants, nullptr);
        today.estimate = stores::combine(today.seen);
        if (question.bees) today.bees = stores::spreadOf(*question.bees, question.beesLogSd);
        return today;
    }
    const auto ensemble = winter::simulate(winterQuestion(question), constants, sampling, threads);
    const auto flow = autumnFlow(question, today.freeRoom);
    today.seen = evidenceSeen(question, constants, &*ensemble);
    today.estimate = stores::combine(carriedToAsking(question, today.seen, *ensemble, flow));
    today.bees = beesNow(*ensemble, question.asOf);
    return today;
}

std::optional<Answer> weigh(const ColonyQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                            int threads, std::stop_token stop, const winter::ProgressSink& progress) {
    Answer answer;
    const auto refusals = refusalsOf(question);
    if (!refusals.empty()) {
        answer.advice.refusals = refusals;
        answer.advice.season = question.season;
        answer.advice.reasons = refusalRemarks(question, refusals);
        answer.advice.winters = sampling.winters;
        answer.advice.seed = sampling.seed;
        if (question.bees) answer.advice.bees = stores::spreadOf(*question.bees, question.beesLogSd);
        answer.advice.estimate = storesToday(question, constants, sampling, threads).estimate;
        return answer;
    }
    auto simulated = winter::simulate(winterQuestion(question), constants, sampling, threads, stop, progress);
    if (!simulated) return std::nullopt;
    const auto ensemble = std::make_shared<const winter::DemandEnsemble>(std::move(*simulated));
    const Reckoning reckoning = reckon(question, constants, *ensemble);
    answer.advice = adviceFrom(reckoning, sampling);
    answer.workings = {ensemble, reckoning.flow};
    return answer;
}

} // namespace winterlarder::advice
