// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/target.h"

#include "advice/capacity.h"
#include "advice/looking/evidence_today.h"
#include "numerics/normal_law.h"
#include "stores/weighing.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

// Food eaten and found by every winter from the start of one day to the start of a later one.
void eatenAndFound(const AdviceBasis& r, TargetBasis& t) {
    const SeasonDay from = r.question.asOf;
    if (t.day <= from) return;
    const auto net = winter::netLossBetween(r.ensemble, r.flow, from, t.day);
    const auto until = r.ensemble.used(t.day - 1);
    std::vector<double> eaten(net.size()), found(net.size());
    for (std::size_t i = 0; i < net.size(); ++i) {
        const double before = from > r.ensemble.firstDay() ? static_cast<double>(r.ensemble.used(from - 1)[i]) : 0.0;
        eaten[i] = static_cast<double>(until[i]) - before;
        found[i] = std::max(0.0, eaten[i] - net[i]);
    }
    t.eaten = winter::massSpread(std::move(eaten));
    t.found = winter::massSpread(std::move(found));
}

// Slope of the losses on the logarithm of the bees; where bees were not drawn the share of use that goes with their number.
double slopeOnBees(const AdviceBasis& r, const std::vector<double>& largest) {
    const auto draws = r.ensemble.draws();
    double n = 0, x = 0, y = 0, xx = 0, xy = 0;
    for (std::size_t i = 0; i < largest.size(); ++i) {
        const double bees = std::log(draws[i].beesFactor);
        n += 1, x += bees, y += largest[i], xx += bees * bees, xy += bees * largest[i];
    }
    const double variance = xx - x * x / n;
    return variance > 1e-6 * n ? std::max(0.0, (xy - x * y / n) / variance) : r.rules().useOnBees * y / n;
}

Mass wantedFrom(const AdviceBasis& r, const std::vector<double>& largest) {
    return kilograms(winter::quantile(largest, 1 - r.today.shortRisk)) + r.today.reserve;
}

Mass toSpareOf(const AdviceBasis& r, const TargetBasis& t) {
    const bool flows = r.question.flowStrength > 0;
    const auto without = flows ? winter::lossesFrom(r.ensemble, t.day, {}).largest : t.largest;
    Mass stays = wantedFrom(r, without);
    if (usualHoldsBack(r.question)) stays = std::max(stays, r.question.usual->low);
    const Mass until = flows ? lossBetween(r.ensemble, {}, r.question.asOf, t.day).median : t.netLoss;
    return std::max(kilograms(0), r.stores() - until - stays);
}

// Supers for people are off by then.
Mass emptyInWinter(const ColonyQuestion& q) {
    return supersCount(q) ? q.tare : std::max(kilograms(0), q.tare - q.supersTare);
}

} // namespace

TargetBasis reckonTarget(const AdviceBasis& r) {
    TargetBasis t;
    t.day = std::min(winterFrom(r.days, r.question.asOf), r.ensemble.lastDay());
    t.largest = winter::lossesFrom(r.ensemble, t.day, r.flow).largest;
    t.stores = wantedFrom(r, t.largest);
    eatenAndFound(r, t);
    const LossBetween until = lossBetween(r.ensemble, r.flow, r.question.asOf, t.day);
    t.netLoss = until.median;
    t.perLogBees = slopeOnBees(r, t.largest);
    const double sd = std::hypot(r.estimate.sd.value(), until.sd.value(), t.perLogBees * r.question.beesLogSd);
    const Mass typical = t.stores - r.stores() + until.median, half = kilograms(tenthPercentile * sd);
    t.missing = {typical - half, typical, typical + half};
    t.deadBand = deadBand(t.stores, t.missing, r.rules());
    t.toSpare = toSpareOf(r, t);
    return t;
}

Mass deadBand(Mass target, const Spread<Mass>& missing, const DecisionConstants& rules) {
    const Mass widest = std::max({kilograms(rules.deadLeast), target * rules.deadShareOfTarget,
                                  (missing.high - missing.low) * rules.deadShareOfBand});
    return std::min(widest, kilograms(rules.deadMost));
}

bool usualHoldsBack(const ColonyQuestion& question) { return question.usual && question.usual->quality != 'C'; }

NeedParts needParts(const AdviceBasis& r) {
    const Mass typical = kilograms(winter::quantile(r.withFlow.largest, 0.5));
    return {typical, kilograms(winter::quantile(r.withFlow.largest, 1 - r.today.shortRisk)) - typical, r.today.reserve};
}

Target targetOf(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    Target target{r.on(r.target.day), r.target.day};
    target.stores = r.target.stores;
    target.combs = std::round(2 * (target.stores / oneFullComb(q)).value()) / 2;
    target.tare = emptyInWinter(q);
    target.withoutSuper = superForPeople(q);
    target.tareGiven = q.tareSd.value() <= 0;
    const auto bees = r.ensemble.bees(target.day);
    const double count = winter::quantile({bees.begin(), bees.end()}, 0.5);
    target.gross = target.stores + target.tare + kilograms(r.constants.beeMass) * count +
                   q.beeBread.value_or(stores::HiveLoad{}.beeBread) +
                   stores::broodMass({r.ensemble.means(target.day).broodCells});
    target.usual = q.usual;
    return target;
}

} // namespace winterlarder::advice
