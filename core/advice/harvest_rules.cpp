// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/harvest_rules.h"

#include "advice/outer_combs.h"
#include "advice/reserve.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace winterlarder::advice {

namespace {

const stores::Comb& combAt(const AdviceBasis& r, int position) {
    return r.question.combs[static_cast<std::size_t>(position)];
}

bool superMayGo(const ColonyQuestion& q) { return q.answers.supersFor != SupersFor::Bees; }

bool isGiven(const ColonyQuestion& q, int position) {
    const auto holds = [&](const CombGift& gift) {
        return std::find(gift.combs.begin(), gift.combs.end(), position) != gift.combs.end();
    };
    return q.plan && std::any_of(q.plan->given.begin(), q.plan->given.end(), holds);
}

//! Honey for people needs its box free of sugar and medicine; its combs are told by stores::harvestOrder.
std::vector<stores::HarvestComb> freeCombs(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    if (!mayBeHoney(r) || q.combs.empty()) return {};
    auto order = stores::harvestOrder(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
    std::erase_if(order, [&](const stores::HarvestComb& comb) {
        return !boxIsFree(q, r.days, combAt(r, comb.position).box) || isGiven(q, comb.position);
    });
    return order;
}

//! Sugar fed since then is in this year's honey.
Date lastSpringForage(const ColonyQuestion& q, const PhaseDays& days) {
    return q.winter.date(days.forage).plusDays(-daysInYear);
}

Mass honeyIn(const AdviceBasis& r, int box) {
    Mass sum{0};
    for (std::size_t i = 0; i < r.question.combs.size(); ++i)
        if (r.question.combs[i].box == box) sum += (*r.combs)[i].total();
    return sum;
}

void take(const AdviceBasis& r, HarvestAdvice& harvest, const stores::HarvestComb& comb) {
    harvest.combs.push_back(comb.position);
    harvest.combsHold += comb.honey;
    if (!comb.inSuper || supersCount(r.question)) harvest.fromStores += comb.honey;
}

// The supers' combs by box, top first.
std::map<int, std::vector<stores::HarvestComb>, std::greater<>> bySuper(const AdviceBasis& r,
                                                                        const std::vector<stores::HarvestComb>& free) {
    std::map<int, std::vector<stores::HarvestComb>, std::greater<>> supers;
    if (!superMayGo(r.question)) return supers;
    for (const auto& comb : free)
        if (comb.inSuper) supers[combAt(r, comb.position).box].push_back(comb);
    return supers;
}

void takeWholeSupers(const AdviceBasis& r, const std::vector<stores::HarvestComb>& free, Mass toSpare,
                     HarvestAdvice& harvest) {
    for (const auto& super : bySuper(r, free)) {
        Mass honey{0};
        for (const auto& comb : super.second) honey += comb.honey;
        const bool whole = honey >= honeyIn(r, super.first) * r.rules().wholeSuperShare;
        if (!whole || (supersCount(r.question) && harvest.combsHold + honey > toSpare)) continue;
        for (const auto& comb : super.second) take(r, harvest, comb);
    }
}

bool taken(const HarvestAdvice& harvest, int position) {
    return std::find(harvest.combs.begin(), harvest.combs.end(), position) != harvest.combs.end();
}

// Where a whole super is too much, its fullest combs; then full outer combs of the top box.
void takeCombs(const AdviceBasis& r, std::vector<stores::HarvestComb> free, Mass toSpare, HarvestAdvice& harvest) {
    std::erase_if(free, [&](const stores::HarvestComb& comb) {
        const bool mayGo =
            comb.inSuper ? superMayGo(r.question) : isFullOuterComb(r.question, combAt(r, comb.position));
        return !mayGo || taken(harvest, comb.position);
    });
    std::stable_sort(free.begin(), free.end(), [](const stores::HarvestComb& a, const stores::HarvestComb& b) {
        return a.inSuper != b.inSuper ? a.inSuper : a.inSuper && a.honey > b.honey;
    });
    for (const auto& comb : stores::takeUpTo(free, toSpare - harvest.combsHold)) take(r, harvest, comb);
}

// How many supers these are all combs of; 0 where other combs are among them.
int onlySupers(const ColonyQuestion& q, const std::vector<int>& taken) {
    std::map<int, int> left; // by box: combs that stay
    for (const int position : taken) left[q.combs[static_cast<std::size_t>(position)].box] = 0;
    for (std::size_t i = 0; i < q.combs.size(); ++i) {
        const bool stays = std::find(taken.begin(), taken.end(), static_cast<int>(i)) == taken.end();
        if (const auto box = left.find(q.combs[i].box); box != left.end()) box->second += stays;
    }
    const bool whole = std::all_of(left.begin(), left.end(),
                                   [&](const auto& box) { return box.second == 0 && isSuper(q, box.first); });
    return whole ? static_cast<int>(left.size()) : 0;
}

std::optional<HarvestAdvice> worthIt(const AdviceBasis& r, HarvestAdvice harvest) {
    if (harvest.combs.empty() || harvest.combsHold.value() < r.rules().harvestLeast) return std::nullopt;
    harvest.upTo = harvest.combsHold;
    harvest.wholeSupers = onlySupers(r.question, harvest.combs);
    std::sort(harvest.combs.begin(), harvest.combs.end());
    return harvest;
}

// Combs not listed cannot be named; the amount is told to the half kilogram below.
std::optional<HarvestAdvice> unnamed(const AdviceBasis& r, Mass toSpare) {
    const ColonyQuestion& q = r.question;
    bool free = true;
    for (std::size_t box = 0; box < q.boxes.size(); ++box) free = free && boxIsFree(q, r.days, static_cast<int>(box));
    const Mass amount = kilograms(std::floor(2 * toSpare.value()) / 2);
    if (!mayBeHoney(r) || !free || tooLittleCapped(q) || amount.value() < r.rules().harvestLeast) return std::nullopt;
    return HarvestAdvice{amount, {}, kilograms(0), 0, amount};
}

} // namespace

double mostWater(const ColonyQuestion& q) {
    return q.answers.honeyKind == HoneyKind::Heather ? q.decisions.mostWaterHeather : q.decisions.mostWater;
}

bool mayBeHoney(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    return !q.trouble && !q.joined && !r.estimate.contradictory && q.setAside.empty() &&
           q.moisturePercent.value_or(0) <= mostWater(q);
}

bool wasFed(const ColonyQuestion& q, const PhaseDays& days) {
    const bool comb = std::any_of(q.combs.begin(), q.combs.end(), [](const stores::Comb& each) { return each.fed; });
    const Date lastForage = lastSpringForage(q, days);
    return comb || std::any_of(q.feeds.begin(), q.feeds.end(),
                               [&](const GivenFeed& feed) { return !feed.date || *feed.date >= lastForage; });
}

bool boxIsFree(const ColonyQuestion& q, const PhaseDays& days, int box) {
    const auto at = static_cast<std::size_t>(box);
    const auto putOn = at < q.boxUses.size() ? q.boxUses[at].putOn : std::nullopt;
    const auto afterwards = [&](const std::optional<Date>& day) { return putOn && day && *putOn > *day; };
    for (const auto& comb : q.combs)
        if (comb.fed && !afterwards(q.feeds.empty() ? std::nullopt : q.feeds.back().date)) return false;
    const Date lastForage = lastSpringForage(q, days);
    for (const auto& feed : q.feeds)
        if ((!feed.date || *feed.date >= lastForage) && !afterwards(feed.date)) return false;
    for (const auto& medicine : q.treatments)
        if (!afterwards(medicine.until.value_or(medicine.date))) return false;
    return !q.treatedWithoutDay && q.answers.fedOrTreated != true;
}

std::vector<stores::HarvestComb> combsToTake(const AdviceBasis& r) { return freeCombs(r); }

std::optional<HarvestAdvice> wholeSupers(const AdviceBasis& r, Mass toSpare) {
    HarvestAdvice harvest;
    takeWholeSupers(r, freeCombs(r), toSpare, harvest);
    return worthIt(r, std::move(harvest));
}

Mass honeyToSpare(const AdviceBasis& r) {
    const auto shortWithout = [&](double taken) {
        const Mass left = std::max(kilograms(0), r.today.mean - kilograms(taken));
        return winter::shareShort(r.withoutFlow.largest, left, r.today.sd, r.today.reserve, winter::Short::Undercut)
            .share;
    };
    double most = r.target.toSpare.value(), least = 0;
    if (most <= 0 || shortWithout(most) <= r.today.shortRisk) return r.target.toSpare;
    constexpr int halvings = 16; // to a gram
    for (int i = 0; i < halvings; ++i) {
        const double middle = (least + most) / 2;
        (shortWithout(middle) <= r.today.shortRisk ? least : most) = middle;
    }
    return kilograms(least);
}

bool tooLittleCapped(const ColonyQuestion& q) { return q.quick && q.quick->cappedShare < stores::leastCapped; }

std::optional<Decided> harvestRule(const AdviceBasis& r) {
    const Mass toSpare = honeyToSpare(r);
    const bool apart = !supersCount(r.question);
    const bool spares = r.target.toSpare >= r.target.deadBand && !apart;
    if (r.phase != Phase::Closing || (!spares && !apart)) return std::nullopt;
    std::optional<HarvestAdvice> harvest;
    if (r.question.combs.empty()) {
        harvest = unnamed(r, toSpare);
    } else {
        HarvestAdvice named;
        const auto free = freeCombs(r);
        takeWholeSupers(r, free, toSpare, named);
        if (spares) takeCombs(r, free, toSpare, named);
        harvest = worthIt(r, std::move(named));
    }
    if (!harvest) return std::nullopt;
    return Decided{.verdict = Verdict::Harvest, .by = DecidedBy::Harvest, .harvest = std::move(harvest)};
}

} // namespace winterlarder::advice
