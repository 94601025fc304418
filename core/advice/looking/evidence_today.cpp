// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/looking/evidence_today.h"

#include "numerics/normal_law.h"
#include "stores/bees.h"
#include "stores/room.h"
#include "stores/weighing.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace winterlarder::advice {

namespace {

double mean(std::span<const float> values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

struct Inhabitants {
    BeeCount bees, brood;
};

Inhabitants inhabitantsOn(SeasonDay day, const ColonyQuestion& question, const winter::DemandEnsemble* ensemble) {
    if (ensemble && ensemble->covers(day)) return {{mean(ensemble->bees(day))}, {ensemble->means(day).broodCells}};
    return {question.bees.value_or(BeeCount{0}), question.brood.value_or(BeeCount{0})};
}

// Full honey of every place of the hive: more than most of it no heft can stand for.
Mass mostOf(const ColonyQuestion& question) {
    Mass all{0};
    for (const auto& box : question.boxes) all += stores::quickFullComb(box) * box.combsPerBox;
    return all;
}

//! What a lift's word stands for on its day: its share of what is wanted from then on, the median loss to first forage and 4 kg, never more than the
//! hive holds. Where no winter can be simulated, of the usual winter stores. Judgement.
stores::Evidence heftOfAllBoxes(const WeighedHive& weighing, const ColonyQuestion& question, double share,
                                const ModelConstants& constants, const winter::DemandEnsemble* ensemble) {
    if (!ensemble || !ensemble->covers(weighing.day))
        return stores::evidenceOfHeft(stores::heftFactor(*weighing.heft), question.usualStores, constants,
                                      weighing.date);
    const double median = winter::quantile(winter::lossesFrom(*ensemble, weighing.day, {}).largest, 0.5);
    const Mass wanted = kilograms(median + question.decisions.heftBeyond);
    return stores::evidenceOfHeft(share, std::min(wanted, mostOf(question) / share), constants, weighing.date);
}

Mass takenAfter(const ColonyQuestion& question, SeasonDay day) {
    Mass total{0};
    for (const auto& harvest : question.harvests)
        if (harvest.day > day) total += harvest.honey;
    return total;
}

// A lift feels supers for people too: their honey is taken off it, and the error stays that of all that was lifted.
stores::Evidence evidenceOfHeft(const WeighedHive& weighing, const ColonyQuestion& question, double share,
                                const ModelConstants& constants, const winter::DemandEnsemble* ensemble) {
    auto heft = heftOfAllBoxes(weighing, question, share, constants, ensemble);
    const Mass apart = honeyApart(question, weighing.day);
    if (apart <= kilograms(0)) return heft;
    heft.absoluteSd = heft.sd(heft.typical);
    heft.relativeSd = 0;
    heft.typical -= apart;
    return heft;
}

stores::Evidence evidenceOf(const WeighedHive& weighing, const ColonyQuestion& question,
                            const ModelConstants& constants, const winter::DemandEnsemble* ensemble) {
    if (weighing.heft)
        return evidenceOfHeft(weighing, question, stores::heftShare(*weighing.heft, question.decisions), constants,
                              ensemble);
    const Inhabitants living = inhabitantsOn(weighing.day, question, ensemble);
    stores::HiveLoad load;
    load.tare = {question.tare, question.tareSd};
    load.bees = living.bees;
    load.beeMass = kilograms(constants.beeMass);
    load.broodCells = living.brood;
    if (question.beeBread) load.beeBread = *question.beeBread;
    load.waxNotInTare = honeyApart(question, weighing.day); // on the scale, and not the bees' to eat
    return stores::evidenceOfWeighing(weighing.kind, weighing.reading, load, weighing.longHive, constants,
                                      weighing.date);
}

// What is taken off first is the honey of supers that was never counted.
double givenAfter(const ColonyQuestion& question, SeasonDay day) {
    double total = 0;
    for (const auto& feed : question.feeds)
        if (feed.day > day) total += feed.stores.value();
    return total - std::max(0.0, (takenAfter(question, day) - honeyApart(question, day)).value());
}

} // namespace

Mass heftFollowed(const WeighedHive& lift, const ColonyQuestion& question, const ModelConstants& constants,
                  const winter::DemandEnsemble* ensemble) {
    const auto& rules = question.decisions;
    const double share =
        lift.heft == stores::HeftWord::Fair ? rules.heftFairFollowed : stores::heftShare(*lift.heft, rules);
    return evidenceOfHeft(lift, question, share, constants, ensemble).typical;
}

Mass honeyApart(const ColonyQuestion& question, SeasonDay day) {
    if (supersCount(question)) return kilograms(0);
    const Mass since = takenAfter(question, day) - takenAfter(question, question.lookedOn);
    return std::max(kilograms(0), honeyInSupers(question) + since);
}

Mass honeyInSupers(const ColonyQuestion& question) {
    Mass honey{0};
    const auto combs = stores::storesOfCombs(question.combs, stores::openFactor(question.freshlyFilled));
    for (std::size_t i = 0; combs && i < question.combs.size(); ++i)
        if (question.combs[i].inSuper) honey += (*combs)[i].total();
    return honey;
}

std::vector<stores::Comb> combsForBees(const ColonyQuestion& question) {
    if (stores::superAlone(question.combs)) return {};
    auto combs = question.combs;
    if (!supersCount(question)) std::erase_if(combs, [](const stores::Comb& comb) { return comb.inSuper; });
    return combs;
}

std::vector<stores::Evidence> evidenceSeen(const ColonyQuestion& question, const ModelConstants& constants,
                                           const winter::DemandEnsemble* ensemble) {
    std::vector<stores::Evidence> seen;
    const Date looked = question.winter.date(question.lookedOn);
    const double factor = stores::openFactor(question.freshlyFilled);
    const auto spreads = stores::combSpreads(constants);
    if (const auto visit = stores::evidenceOfVisit(combsForBees(question), factor, spreads, looked))
        seen.push_back(*visit);
    if (question.quick && question.quickFullComb)
        seen.push_back(stores::evidenceOfCount(*question.quick, *question.quickFullComb, factor, spreads, looked));
    for (const auto& weighing : question.weighings)
        if (question.bees || weighing.heft) // bees weigh a kilogram or two
            seen.push_back(evidenceOf(weighing, question, constants, ensemble));
    return seen;
}

LossBetween lossBetween(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow, SeasonDay from,
                        SeasonDay to) {
    if (to <= from) return {kilograms(0), kilograms(0)};
    std::vector<double> losses = winter::netLossBetween(ensemble, flow, from, to);
    std::sort(losses.begin(), losses.end());
    const double band = winter::sortedQuantile(losses, 0.9) - winter::sortedQuantile(losses, 0.1);
    return {kilograms(winter::sortedQuantile(losses, 0.5)), kilograms(band / (2 * tenthPercentile))};
}

std::vector<stores::Evidence> carriedToAsking(const ColonyQuestion& question, std::vector<stores::Evidence> seen,
                                              const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow) {
    for (auto& piece : seen) {
        const SeasonDay day = question.winter.nearestSeasonDay(piece.date);
        const LossBetween loss = lossBetween(ensemble, flow, day, question.asOf);
        piece.typical = piece.typical - loss.median + kilograms(givenAfter(question, day));
        piece.absoluteSd = kilograms(std::hypot(piece.absoluteSd.value(), loss.sd.value()));
        piece.lossSd = loss.sd;
    }
    return seen;
}

std::optional<Mass> freeRoomAtLook(const ColonyQuestion& question) {
    std::optional<int> days;
    if (question.season.syrupDeadline) days = std::max(0, question.season.syrupDeadline->day - question.lookedOn);
    return stores::freeRoom(
        {combsForBees(question), question.coveredCombs, stores::openFactor(question.freshlyFilled), days});
}

} // namespace winterlarder::advice
