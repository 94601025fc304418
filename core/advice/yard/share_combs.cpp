// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/yard/share_combs.h"

#include "advice/outer_combs.h"
#include "advice/reserve.h"
#include "stores/cluster.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

// A comb that may leave, or the place of one it takes: nobody's where the place is free.
struct CombOf {
    std::optional<int> position;
    Mass honey{0};
    double fromMiddle = 0;
    bool inSuper = false;
    hive::Outline outline;
};

struct Donor {
    std::size_t place;
    const ColonyQuestion* question;
    std::vector<CombOf> combs; //!< in the order to give them
    Mass spare{0};
};

struct Receiver {
    std::size_t place;
    const ColonyQuestion* question;
    std::vector<CombOf> slots; //!< the emptiest first
    Mass missing{0}, enough{0};
};

bool wellKnown(const YardColony& colony) {
    return colony.advice->estimate && !colony.advice->estimate->contradictory && !setsAside(*colony.advice);
}

bool warmEnough(const ColonyQuestion& q) {
    return q.site && q.site->curve.normal(q.asOf).value() >= q.decisions.uniteColdest;
}

// Nothing but what it has beyond its own needs was decided of it.
bool hasPlenty(DecidedBy by) {
    return by == DecidedBy::Harvest || by == DecidedBy::SummerHarvest || by == DecidedBy::SummerSafe ||
           by == DecidedBy::Enough || by == DecidedBy::Full;
}

// Short of stores, for which it is fed or would be if it still took syrup.
bool isShort(const Advice& advice) {
    switch (advice.decidedBy) {
    case DecidedBy::SummerPortion:
    case DecidedBy::Feed:
    case DecidedBy::SmallPortions:
    case DecidedBy::Board:
    case DecidedBy::LateBoard: return true;
    case DecidedBy::ActNow:
    case DecidedBy::ShortLater: return advice.phase && *advice.phase <= Phase::Late;
    default: return false;
    }
}

// In summer what is fed now, else what is missing for winter.
Mass missingOf(const Advice& advice) {
    if (advice.decidedBy == DecidedBy::SummerPortion) return advice.feed ? advice.feed->stores : kilograms(0);
    return std::max(kilograms(0), advice.missing->typical);
}

CombOf combOf(const ColonyQuestion& q, std::size_t position, Mass honey) {
    const auto& comb = q.combs[position];
    return {static_cast<int>(position), honey, stores::fromMiddle(comb, q.boxes), comb.inSuper, comb.format.outline};
}

bool mayGive(const ColonyQuestion& q, const stores::Comb& comb) {
    if (!comb.lookedAt() || comb.built < 1 || comb.brood > 0) return false;
    if (!comb.inSuper) return mayGoToBees(q, comb);
    return supersCount(q) && comb.capped + comb.open >= q.decisions.harvestCombFull;
}

std::vector<CombOf> combsToGive(const ColonyQuestion& q) {
    std::vector<CombOf> combs;
    const auto honey = stores::storesOfCombs(q.combs, stores::openFactor(q.freshlyFilled));
    if (!honey) return combs;
    for (std::size_t i = 0; i < q.combs.size(); ++i)
        if (mayGive(q, q.combs[i])) combs.push_back(combOf(q, i, (*honey)[i].total()));
    const double middle = stores::findCluster(q.combs, q.boxes, q.coveredCombs).middle;
    std::stable_sort(combs.begin(), combs.end(), [&](const CombOf& a, const CombOf& b) {
        if (a.inSuper != b.inSuper) return a.inSuper;
        return std::abs(a.fromMiddle - middle) > std::abs(b.fromMiddle - middle);
    });
    return combs;
}

// Whether a comb hangs beside the nest, not in it; where no brood was seen, beyond what the bees cover.
bool besideNest(const ColonyQuestion& q, const stores::Comb& comb) {
    if (comb.inSuper || comb.brood > 0 || !comb.lookedAt()) return false;
    const double place = stores::fromMiddle(comb, q.boxes);
    bool left = false, right = false, anywhere = false;
    for (const auto& other : q.combs) {
        if (other.brood <= 0) continue;
        anywhere = true;
        if (other.box != comb.box) continue;
        (stores::fromMiddle(other, q.boxes) < place ? left : right) = true;
    }
    if (anywhere) return !(left && right);
    const auto cluster = stores::findCluster(q.combs, q.boxes, q.coveredCombs);
    return std::abs(place - cluster.middle) > cluster.width / 2;
}

// A comb of another outline than its box's is not exchanged.
bool ofItsBox(const ColonyQuestion& q, const stores::Comb& comb) {
    return q.boxes[static_cast<std::size_t>(comb.box)].outline == comb.format.outline;
}

void addFreePlaces(const ColonyQuestion& q, std::vector<CombOf>& slots) {
    for (std::size_t box = 0; box < q.boxes.size(); ++box) {
        if (isSuper(q, static_cast<int>(box))) continue;
        const auto built = std::count_if(q.combs.begin(), q.combs.end(),
                                         [&](const stores::Comb& comb) { return comb.box == static_cast<int>(box); });
        for (auto place = built; place < q.boxes[box].combsPerBox; ++place)
            slots.push_back({.outline = q.boxes[box].outline});
    }
}

// Of combs nobody listed as many are taken for empty as there is empty comb.
void addUnlistedPlaces(const YardColony& colony, std::vector<CombOf>& slots) {
    const auto& q = *colony.question;
    const double empty = (colony.advice->room.value_or(kilograms(0)) / stores::quickFullComb(q.boxes.front())).value();
    for (int i = 0; i < static_cast<int>(empty); ++i) slots.push_back({.outline = q.boxes.front().outline});
}

std::vector<CombOf> slotsOf(const YardColony& colony) {
    const auto& q = *colony.question;
    std::vector<CombOf> slots;
    if (q.combs.empty()) {
        addUnlistedPlaces(colony, slots);
        return slots;
    }
    addFreePlaces(q, slots);
    if (const auto honey = stores::storesOfCombs(q.combs, stores::openFactor(q.freshlyFilled)))
        for (std::size_t i = 0; i < q.combs.size(); ++i)
            if (besideNest(q, q.combs[i]) && ofItsBox(q, q.combs[i]))
                slots.push_back(combOf(q, i, (*honey)[i].total()));
    std::stable_sort(slots.begin(), slots.end(), [](const CombOf& a, const CombOf& b) { return a.honey < b.honey; });
    return slots;
}

// The first place for a comb that is worth filling with it.
std::vector<CombOf>::iterator slotFor(Receiver& receiver, const CombOf& comb) {
    const Mass least = kilograms(receiver.question->decisions.giftCombLeast);
    return std::find_if(receiver.slots.begin(), receiver.slots.end(), [&](const CombOf& slot) {
        return slot.outline == comb.outline && comb.honey - slot.honey >= least;
    });
}

void add(CombGift& gift, const ColonyQuestion& from, const CombOf& comb, const CombOf& slot) {
    gift.combs.push_back(*comb.position);
    const auto& hangs = from.combs[static_cast<std::size_t>(*comb.position)];
    gift.places.push_back({hangs.box, hangs.place});
    if (slot.position) gift.back.push_back(*slot.position);
    gift.honey += comb.honey - slot.honey;
}

// Combs leave the giver until the other has enough or the giver has no more to spare.
CombGift giftFrom(Donor& donor, Receiver& receiver) {
    CombGift gift{donor.question->colony, receiver.question->colony, {}, kilograms(0)};
    gift.boxes = static_cast<int>(donor.question->boxes.size());
    for (auto comb = donor.combs.begin(); comb != donor.combs.end() && receiver.missing > receiver.enough;) {
        const auto slot = slotFor(receiver, *comb);
        const bool goes = slot != receiver.slots.end() && comb->honey - slot->honey <= donor.spare;
        if (!goes) {
            ++comb;
            continue;
        }
        const Mass gain = comb->honey - slot->honey;
        add(gift, *donor.question, *comb, *slot);
        donor.spare -= gain;
        receiver.missing -= gain;
        receiver.slots.erase(slot);
        comb = donor.combs.erase(comb);
    }
    return gift;
}

bool mayDonate(const YardColony& colony) {
    const auto& [question, advice] = colony;
    return wellKnown(colony) && hasPlenty(advice->decidedBy) && *advice->phase <= Phase::Late && warmEnough(*question);
}

std::vector<Donor> donorsOf(const std::vector<YardColony>& yard, const std::set<std::size_t>& apart) {
    std::vector<Donor> donors;
    for (std::size_t i = 0; i < yard.size(); ++i) {
        const auto& [question, advice] = yard[i];
        if (apart.contains(i) || !mayDonate(yard[i])) continue;
        const Mass spare = advice->toSpare.value_or(kilograms(0));
        if (spare >= advice->deadBand) donors.push_back({i, question, combsToGive(*question), spare});
    }
    std::stable_sort(donors.begin(), donors.end(), [](const Donor& a, const Donor& b) { return a.spare > b.spare; });
    return donors;
}

std::vector<Receiver> receiversOf(const std::vector<YardColony>& yard, const std::set<std::size_t>& apart) {
    std::vector<Receiver> receivers;
    for (std::size_t i = 0; i < yard.size(); ++i) {
        const auto& [question, advice] = yard[i];
        if (apart.contains(i) || !wellKnown(yard[i]) || !isShort(*advice) || !warmEnough(*question)) continue;
        const Mass enough = advice->decidedBy == DecidedBy::SummerPortion ? kilograms(0) : advice->deadBand;
        receivers.push_back({i, question, slotsOf(yard[i]), missingOf(*advice), enough});
    }
    std::stable_sort(receivers.begin(), receivers.end(),
                     [](const Receiver& a, const Receiver& b) { return a.missing > b.missing; });
    return receivers;
}

// Who is still short most once combs were shared.
std::optional<std::string> stillShort(std::vector<Receiver> receivers, const std::vector<SharedCombs>& shared) {
    const Receiver* most = nullptr;
    for (auto& receiver : receivers) {
        for (const auto& each : shared)
            if (each.to == receiver.place) receiver.missing -= each.gift.honey;
        if (receiver.missing > receiver.enough && (!most || receiver.missing > most->missing)) most = &receiver;
    }
    return most ? std::optional(most->question->colony) : std::nullopt;
}

std::optional<Remark> whyNoneGiven(const YardColony& colony, const std::string& receiver) {
    const auto& [question, advice] = colony;
    if (!mayDonate(colony) || !advice->missing || -advice->missing->typical < advice->deadBand) return std::nullopt;
    const bool usual = advice->toSpare.value_or(kilograms(0)) < advice->deadBand;
    const char* const id = usual                     ? "gives-none-usual"
                           : question->combs.empty() ? "gives-none-unlisted"
                                                     : "gives-none-combs";
    return Remark{id, {{"receiver", receiver}, {"kg", -advice->missing->typical}}};
}

} // namespace

std::map<std::size_t, Remark> whyNoneGiven(const std::vector<YardColony>& yard, const std::set<std::size_t>& apart,
                                           const std::vector<SharedCombs>& shared) {
    std::map<std::size_t, Remark> reasons;
    const auto receiver = stillShort(receiversOf(yard, apart), shared);
    if (!receiver) return reasons;
    std::set<std::size_t> others = apart;
    for (const SharedCombs& each : shared) others.insert(each.from);
    for (std::size_t place = 0; place < yard.size(); ++place)
        if (!others.contains(place))
            if (auto why = whyNoneGiven(yard[place], *receiver)) reasons.emplace(place, *std::move(why));
    return reasons;
}

std::vector<SharedCombs> combsToShare(const std::vector<YardColony>& yard, const std::set<std::size_t>& apart) {
    std::vector<SharedCombs> shared;
    auto donors = donorsOf(yard, apart);
    for (Receiver& receiver : receiversOf(yard, apart))
        for (Donor& donor : donors) {
            auto gift = giftFrom(donor, receiver);
            if (!gift.combs.empty()) shared.push_back({donor.place, receiver.place, std::move(gift)});
        }
    return shared;
}

} // namespace winterlarder::advice
