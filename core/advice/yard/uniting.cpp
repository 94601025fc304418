// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/yard/uniting.h"

#include "numerics/normal_law.h"
#include "stores/tare.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

using Places = std::vector<std::size_t>;

double winterBees(const YardColony& colony) { return colony.advice->strength->bees.count; }

bool onSameCombs(const YardColony& a, const YardColony& b) { return combsFit(a.question->boxes.front(), *b.question); }

// Finds who goes onto whom in one yard.
class Pairing {
public:
    explicit Pairing(const std::vector<YardColony>& yard) : yard_(yard) {
        for (std::size_t i = 0; i < yard.size(); ++i) {
            const auto& [question, advice] = yard[i];
            if (!advice->strength) continue;
            if (advice->verdict == Verdict::Unite) toUnite_.push_back(i);
            else if (advice->strength->enough && knownQueenright(*question) && !setsAside(*advice))
                strong_.push_back(i);
        }
        std::stable_sort(strong_.begin(), strong_.end(),
                         [&](auto a, auto b) { return winterBees(yard_[a]) < winterBees(yard_[b]); });
        std::stable_sort(toUnite_.begin(), toUnite_.end(),
                         [&](auto a, auto b) { return winterBees(yard_[a]) > winterBees(yard_[b]); });
    }

    std::vector<UnitedPair> pairs() {
        while (toUnite_.size() > strong_.size() && twoTogether()) {
        }
        const Places waiting = toUnite_;
        for (const std::size_t from : waiting) ontoStrong(from);
        while (twoTogether()) {
        }
        return std::move(pairs_);
    }

private:
    void settle(std::size_t from, std::size_t onto) {
        pairs_.push_back({from, onto});
        std::erase_if(toUnite_, [&](std::size_t place) { return place == from || place == onto; });
        std::erase(strong_, onto);
    }

    void ontoStrong(std::size_t from) {
        for (const std::size_t onto : strong_)
            if (onSameCombs(yard_[from], yard_[onto])) return settle(from, onto);
    }

    bool mayJoin(std::size_t from, std::size_t onto) const {
        const double together = winterBees(yard_[from]) + winterBees(yard_[onto]);
        return knownQueenright(*yard_[onto].question) && together > yard_[onto].question->decisions.unitedBees &&
               onSameCombs(yard_[from], yard_[onto]);
    }

    // The two with the most bees that make a colony; the one with more bees stays where it is, if it has a queen.
    bool twoTogether() {
        for (std::size_t more = 0; more < toUnite_.size(); ++more)
            for (std::size_t fewer = more + 1; fewer < toUnite_.size(); ++fewer) {
                const std::size_t a = toUnite_[more], b = toUnite_[fewer];
                if (!mayJoin(b, a) && !mayJoin(a, b)) continue;
                mayJoin(b, a) ? settle(b, a) : settle(a, b);
                return true;
            }
        return false;
    }

    const std::vector<YardColony>& yard_;
    Places toUnite_, strong_;
    std::vector<UnitedPair> pairs_;
};

stores::StoresEstimate together(const stores::StoresEstimate& onto, const stores::StoresEstimate& from) {
    stores::StoresEstimate sum = onto;
    sum.mean = std::max(kilograms(0), onto.mean) + std::max(kilograms(0), from.mean);
    sum.sd = kilograms(std::hypot(onto.sd.value(), from.sd.value()));
    const Mass half = sum.sd * tenthPercentile;
    sum.spread = {std::max(kilograms(0), sum.mean - half), sum.mean, sum.mean + half};
    return sum;
}

template <class Quantity>
std::optional<Quantity> sumIfKnown(const std::optional<Quantity>& a, const std::optional<Quantity>& b) {
    return a && b ? std::optional(Quantity(*a + *b)) : std::nullopt;
}

std::optional<BeeCount> broodOfBoth(const ColonyQuestion& a, const ColonyQuestion& b) {
    return a.brood && b.brood ? std::optional(BeeCount{a.brood->count + b.brood->count}) : std::nullopt;
}

} // namespace

bool combsFit(const hive::CombFormat& comb, const ColonyQuestion& into) {
    return std::any_of(into.boxes.begin(), into.boxes.end(),
                       [&](const hive::CombFormat& box) { return box.outline == comb.outline; });
}

bool knownQueenright(const ColonyQuestion& q) {
    if (q.queenSeen == true || q.eggsSeen == true) return true;
    return q.queenSeen != false && q.eggsSeen != false && q.brood && q.brood->count > 0;
}

std::vector<UnitedPair> pairsOf(const std::vector<YardColony>& yard) { return Pairing(yard).pairs(); }

ColonyQuestion unitedQuestion(const YardColony& onto, const YardColony& from) {
    ColonyQuestion both = *onto.question;
    const ColonyQuestion& other = *from.question;
    both.bees = BeeCount{both.bees->count * (1 + from.advice->bees->typical.count / onto.advice->bees->typical.count)};
    both.brood = broodOfBoth(both, other);
    both.beeBread = sumIfKnown(both.beeBread, other.beeBread);
    both.tare += std::max(kilograms(0), other.tare - stores::floorAndLids);
    both.tareSd = kilograms(std::hypot(both.tareSd.value(), other.tareSd.value()));
    both.stream = winter::colonyStream(both.colony + " + " + other.colony);
    both.joined = JoinedColony{other.colony, together(*onto.advice->estimate, *from.advice->estimate),
                               from.advice->capacity.value_or(kilograms(0))};
    return both;
}

} // namespace winterlarder::advice
