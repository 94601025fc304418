// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/advice.h"

#include "advice/capacity.h"
#include "advice/decided.h"
#include "advice/harvest_rules.h"
#include "advice/health.h"
#include "advice/later.h"
#include "advice/looking/another_look.h"
#include "advice/looking/ask.h"
#include "advice/looking/evidence_first.h"
#include "advice/looking/evidence_today.h"
#include "advice/options.h"
#include "advice/refused.h"
#include "advice/remarks/five_cautions.h"
#include "advice/remarks/remarks.h"
#include "advice/reserve.h"
#include "advice/summer.h"
#include "advice/target.h"
#include "advice/winter_rules.h"
#include "numerics/normal_law.h"
#include "stores/bees.h"
#include "support/require.h"
#include "winter/locked_in.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

Spread<BeeCount> beesNow(const winter::DemandEnsemble& ensemble, SeasonDay day) {
    const auto bees = ensemble.bees(day);
    std::vector<double> sorted(bees.begin(), bees.end());
    std::sort(sorted.begin(), sorted.end());
    return {{winter::sortedQuantile(sorted, 0.1)},
            {winter::sortedQuantile(sorted, 0.5)},
            {winter::sortedQuantile(sorted, 0.9)}};
}

Mass sdForShares(const ColonyQuestion& question, Mass sd) {
    const auto& rules = question.decisions;
    return question.asOf.w < rules.earlyLookBefore ? kilograms(std::hypot(sd.value(), rules.earlyLookSd)) : sd;
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
        months.push_back({date.year(), date.month(), winter::massSpread(spent)});
        before = until;
    }
    return months;
}

// The doubt of the count widens what is told of the bees; the winters themselves are drawn with that of a usual count.
Spread<BeeCount> beesTold(const winter::DemandEnsemble& ensemble, const ColonyQuestion& q) {
    const auto drawn = beesNow(ensemble, q.asOf);
    if (drawn.typical.count <= 0 || drawn.low.count <= 0) return drawn;
    const double more = std::pow(tenthPercentile, 2) * (std::pow(q.beesLogSd, 2) - std::pow(q.drawnBeesLogSd, 2));
    const auto wider = [&](double count) {
        return std::sqrt(std::max(0.0, std::pow(std::log(count / drawn.typical.count), 2) + more));
    };
    return {{drawn.typical.count * std::exp(-wider(drawn.low.count))},
            drawn.typical,
            {drawn.typical.count * std::exp(wider(drawn.high.count))}};
}

// What the need would be if the queen has stopped, out of few winters: only to say what the answer would change.
std::optional<Mass> needIfStopped(const ColonyQuestion& q, const ModelConstants& constants, winter::Sampling sampling,
                                  const StoresAndReserve& today, const winter::AutumnFlow& flow) {
    if (!layingInDoubt(q, constants)) return std::nullopt;
    auto asked = winterQuestion(q, constants);
    asked.brood = q.brood;
    const auto preview = winter::simulate(
        asked, constants, {sampling.seed, std::min(sampling.winters, static_cast<int>(q.decisions.previewWinters))});
    return kilograms(winter::quantile(winter::lossesFrom(*preview, q.asOf, flow).largest, 1 - today.shortRisk)) +
           today.reserve;
}

AdviceBasis basisOf(const ColonyQuestion& q, const ModelConstants& constants, const winter::DemandEnsemble& ensemble,
                    winter::Sampling sampling) {
    const auto room = freeRoomAtLook(q);
    AdviceBasis r{
        .question = q, .constants = constants, .ensemble = ensemble, .flow = autumnFlow(q, room), .freeRoom = room};
    r.combs = stores::storesOfCombs(q.combs, stores::openFactor(q.freshlyFilled));
    r.estimate = q.joined
                     ? q.joined->together
                     : *stores::combine(carriedToAsking(q, evidenceSeen(q, constants, &ensemble), ensemble, r.flow));
    r.carried = lossBetween(ensemble, r.flow, std::max(q.lookedOn, ensemble.firstDay()), q.asOf).median;
    r.withFlow = winter::lossesFrom(ensemble, q.asOf, r.flow);
    r.withoutFlow = q.flowStrength > 0 ? winter::lossesFrom(ensemble, q.asOf, {}) : r.withFlow;
    r.days = phaseDays(q.season, q.decisions);
    r.phase = phaseOn(r.days, q.asOf);
    r.lockedInDays = winter::longestLockedIn(
        q.site->curve, q.season, constants,
        {sampling.seed, std::min(sampling.winters, static_cast<int>(q.decisions.previewWinters))});
    r.today = {std::max(kilograms(0), r.estimate.mean + r.brought()), sdForShares(q, r.estimate.sd),
               shortRiskOf(q, r.lockedInDays), reserveOn(q, r.days, q.asOf)};
    r.target = reckonTarget(r);
    r.capacity = capacityOf(r);
    r.level = levelFor(r);
    r.needIfStopped = needIfStopped(q, constants, sampling, r.today, r.flow);
    return r;
}

void fillFigures(const AdviceBasis& r, Advice& advice) {
    const ColonyQuestion& q = r.question;
    advice.estimate = r.estimate;
    advice.storesSd = r.today.sd;
    advice.bees = beesTold(r.ensemble, q);
    advice.use = winter::massSpread(r.withFlow.used);
    advice.useByMonth = useByMonth(r.ensemble, q);
    advice.needParts = needParts(r);
    advice.need = advice.needParts->typicalUse + advice.needParts->harderWinter + advice.needParts->reserve;
    advice.needIfStopped = r.needIfStopped;
    advice.strength = Strength{{beesThatDecide(r)}, !tooWeak(r) && !q.nucleus};
    advice.freeRoom = r.freeRoom;
    advice.lockedInDays = r.lockedInDays;
}

void fillTarget(const AdviceBasis& r, Advice& advice) {
    advice.phase = r.phase;
    advice.shortRisk = r.today.shortRisk;
    advice.reserve = r.today.reserve;
    advice.target = targetOf(r);
    advice.untilTarget = UntilTarget{r.target.eaten, r.target.found};
    advice.missing = r.target.missing;
    advice.deadBand = r.target.deadBand;
    advice.toSpare = r.target.toSpare;
    advice.capacity = r.capacity;
    advice.room = r.room();
}

// Honey that stays until spring may be taken then only where it is honey for people, there is enough of it, and nothing else is to be done first.
bool mayTakeInSpring(const AdviceBasis& r, const Decided& decided, const Option& leave) {
    const bool well = decided.by == DecidedBy::Harvest || decided.by == DecidedBy::SummerHarvest ||
                      decided.by == DecidedBy::Enough || decided.by == DecidedBy::Full ||
                      decided.by == DecidedBy::SummerSafe;
    const bool free =
        !r.question.combs.empty() ? !combsToTake(r).empty() : mayBeHoney(r) && boxIsFree(r.question, r.days, 0);
    return well && free && r.target.toSpare >= r.target.deadBand && leave.touchReserve.share <= r.today.shortRisk &&
           leave.springSurplus.typical.value() >= r.rules().harvestLeast;
}

void fillOptions(const AdviceBasis& r, const Decided& decided, Advice& advice) {
    const Option leave = leaveOption(r);
    advice.options.push_back(leave);
    advice.runOut = leave.runOut;
    advice.touchReserve = leave.touchReserve;
    if (r.brought() != kilograms(0)) advice.options.push_back(moveOption(r));
    if (advice.harvest) advice.options.push_back(takeOption(r, *advice.harvest));
    if (mayTakeInSpring(r, decided, leave)) advice.options.push_back(springOption(r, leave));
    if (advice.feed) advice.options.push_back(feedOption(r, *advice.feed));
    if (advice.unite) advice.options.push_back(uniteOption(leave));
}

OptionKind recommended(Verdict verdict, const Advice& advice) {
    if (verdict == Verdict::Harvest) return OptionKind::TakeNow;
    if (advice.feed) return OptionKind::Feed;
    return advice.gifts.empty() ? OptionKind::Leave : OptionKind::MoveCombs;
}

void fillDecision(const AdviceBasis& r, const Decided& decided, Advice& advice) {
    advice.verdict = decided.verdict;
    advice.decidedBy = decided.by;
    advice.harvest = decided.harvest;
    advice.feed = decided.feed;
    advice.unite = decided.unite;
    advice.plan = r.question.plan;
    if (advice.plan) {
        advice.gifts = advice.plan->given;
        advice.gifts.insert(advice.gifts.end(), advice.plan->received.begin(), advice.plan->received.end());
    }
    if (decided.by == DecidedBy::Heft) advice.heft = heftAlone(r.question);
    advice.weighLine = weighLine(r, decided);
    advice.weighedWithSuper = weighedWithSuper(r, decided);
    advice.hardlyLives = hardlyLives(r, decided);
    advice.expectedLater = expectedLater(r, decided);
    advice.nextLook = nextLook(r, decided);
    advice.ask = nextQuestion(r, decided);
    const auto planned = winter::lossesFrom(r.ensemble, r.question.asOf, r.flow, stepsOf(r, decided), r.target.day);
    advice.shortAsPlanned =
        winter::shareShort(planned.largest, r.stores(), kilograms(0), r.today.reserve, winter::Short::Undercut);
    fillOptions(r, decided, advice);
    const OptionKind kind = recommended(advice.verdict, advice);
    for (const auto& option : advice.options)
        if (option.kind == kind) advice.springReserve = option.springReserve;
}

// In summer a super comes off for its own sake where even at the low end of what is known the safety amount stays.
bool harvestHangsOnStores(const AdviceBasis& r, const Decided& decided) {
    if (!decided.harvest || decided.harvest->fromStores <= kilograms(0)) return false;
    return decided.by == DecidedBy::Harvest || r.estimate.spread.low - decided.harvest->fromStores < safetyAmount(r);
}

Advice adviceFrom(const AdviceBasis& r, winter::Sampling sampling) {
    Advice advice;
    advice.asOf = r.on(r.question.asOf);
    advice.season = r.question.season;
    advice.winters = sampling.winters;
    advice.seed = sampling.seed;
    fillFigures(r, advice);
    fillTarget(r, advice);
    const Decided decided = decide(r);
    fillDecision(r, decided, advice);
    advice.anotherLook = anotherLook(r, decided);
    advice.lookFirst = advice.anotherLook.worthIt && harvestHangsOnStores(r, decided);
    advice.superOffFirst = !supersCount(r.question) && decided.feed && decided.feed->syrup.sugar.value() > 0 &&
                           honeyInSupers(r.question).value() > 0;
    advice.reasons = reasonsOf(r, advice);
    auto said = fiveCautions(cautionsOf(r, advice), advice);
    advice.cautions = std::move(said.cautions);
    advice.goodPractice = std::move(said.goodPractice);
    return advice;
}

// Of a nest that nobody looked at no comb tells anything, and those stand last.
std::optional<std::vector<stores::CombStores>> storesListed(const ColonyQuestion& question) {
    auto combs = stores::storesOfCombs(question.combs, stores::openFactor(question.freshlyFilled));
    if (!combs || !stores::superAlone(question.combs)) return combs;
    const auto seen = std::find_if(question.combs.rbegin(), question.combs.rend(),
                                   [](const stores::Comb& comb) { return comb.lookedAt(); });
    combs->resize(static_cast<std::size_t>(question.combs.rend() - seen));
    return combs;
}

} // namespace

bool setsAside(const Advice& advice) {
    return !advice.reasons.empty() && advice.reasons.front().details.contains("record");
}

StoresToday storesToday(const ColonyQuestion& question, const ModelConstants& constants, winter::Sampling sampling,
                        int threads) {
    StoresToday today;
    today.combs = storesListed(question);
    today.freeRoom = freeRoomAtLook(question);
    const bool carried = question.site && question.season.derivable() && question.bees && question.bees->count > 0 &&
                         question.asOf <= lastSimulatedDay && question.asOf < question.season.forage->day;
    if (!carried) {
        today.seen = evidenceSeen(question, constants, nullptr);
        today.estimate = stores::combine(today.seen);
        if (question.bees) today.bees = stores::spreadOf(*question.bees, question.beesLogSd);
        return today;
    }
    const auto ensemble = winter::simulate(winterQuestion(question, constants), constants, sampling, threads);
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
        answer.advice = refusedAdvice(question, refusals, constants, sampling, threads);
        return answer;
    }
    auto simulated =
        winter::simulate(winterQuestion(question, constants), constants, sampling, threads, stop, progress);
    if (!simulated) return std::nullopt;
    const auto ensemble = std::make_shared<const winter::DemandEnsemble>(std::move(*simulated));
    const AdviceBasis basis = basisOf(question, constants, *ensemble, sampling);
    answer.advice = adviceFrom(basis, sampling);
    answer.workings = {ensemble, basis.flow};
    return answer;
}

} // namespace winterlarder::advice
