// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/drawn_colonies.h"
#include "advice/phases.h"

#include <cmath>

//! Two colonies that differ by a gram of stores are asked for the same, to one step of what is bought or taken.
namespace winterlarder::advice::grams_apart {

constexpr double gramKg = 0.001, aboveStep = 1.01;
inline const winter::Sampling few{1, 60};

//! What is asked of the keeper: sugar and fondant to give, honey to take.
struct Asked {
    double sugar = 0, fondant = 0, honey = 0, missing = 0;
    DecidedBy by = DecidedBy::CannotSay;
    std::vector<int> combs;
    bool contradictory = false;
};

inline Asked askedOf(const ColonyQuestion& q) {
    const auto a = weigh(q, constants(), few)->advice;
    Asked asked;
    asked.by = a.decidedBy;
    asked.missing = a.missing->typical.value();
    asked.contradictory = a.estimate->contradictory;
    if (a.feed) asked.sugar = a.feed->syrup.sugar.value(), asked.fondant = a.feed->fondant.value();
    if (a.harvest) asked.honey = a.harvest->upTo.value(), asked.combs = a.harvest->combs;
    return asked;
}

//! A colony whose stores can be moved by grams: one weight on a scale, which the tare of the question turns into stores.
class Scale {
public:
    explicit Scale(ColonyQuestion question) : question_(std::move(question)) {
        if (!question_.weighings.empty()) return;
        question_.combs.clear();
        question_.quick.reset();
        question_.weighings = {onScale(question_, kilograms(0))};
    }
    const ColonyQuestion& at(double grossKg) {
        for (auto& weighing : question_.weighings) weighing.reading = kilograms(grossKg);
        return question_;
    }

private:
    ColonyQuestion question_;
};

//! Nothing, or one amount fixed beforehand: while two kinds of evidence contradict each other, and while disease or uniting is waited for (three weeks of
//! food, in whole portions).
inline bool fixedPortion(DecidedBy by) {
    return by == DecidedBy::Contradiction || by == DecidedBy::Disease || by == DecidedBy::NoQueen ||
           by == DecidedBy::Weak;
}
inline bool portionBegins(const Asked& a, const Asked& b) {
    return fixedPortion(a.by) && (a.sugar + a.fondant == 0) != (b.sugar + b.fondant == 0);
}

//! Half a kilogram where combs are not listed, else a whole comb.
inline double stepOfHoney(const ColonyQuestion& q) {
    double most = 0.5;
    if (const auto combs = stores::storesOfCombs(q.combs, stores::openFactor(q.freshlyFilled));
        combs && !q.combs.empty())
        for (const auto& comb : *combs) most = std::max(most, comb.total().value());
    return most;
}

//! A super goes as a whole or in some of its combs: an edge as well.
inline bool wholeSuperMore(const ColonyQuestion& q, const std::vector<int>& less, const std::vector<int>& more) {
    const auto fromSuper = [&](int position) { return q.combs[static_cast<std::size_t>(position)].inSuper; };
    const auto inSupers = [&](const std::vector<int>& combs) {
        return std::count_if(combs.begin(), combs.end(), fromSuper);
    };
    return std::abs(inSupers(less) - inSupers(more)) > 1;
}

//! One step: of sugar or fondant as bought, of honey (stepOfHoney); a decision that changes is an edge with a name (DecidedBy): the dead band, a full
//! hive, the safety of summer, three weeks of food, the reserve of a visit, a contradiction, a weak colony. There only what is missing is held.
inline void expectOneStep(const ColonyQuestion& q, const Asked& less, const Asked& more, const std::string& what) {
    if (less.contradictory == more.contradictory)
        EXPECT_NEAR(less.missing, more.missing, q.steps.sugar.value()) << what << ": missing";
    if (less.by != more.by || portionBegins(less, more)) return;
    EXPECT_LE(std::abs(less.sugar - more.sugar), aboveStep * q.steps.sugar.value())
        << what << ": sugar " << less.sugar << ", " << more.sugar;
    EXPECT_LE(std::abs(less.fondant - more.fondant), aboveStep * q.steps.fondant.value())
        << what << ": fondant " << less.fondant << ", " << more.fondant;
    if (wholeSuperMore(q, less.combs, more.combs)) return;
    EXPECT_LE(std::abs(less.honey - more.honey), aboveStep * stepOfHoney(q))
        << what << ": honey " << less.honey << ", " << more.honey;
}

inline bool differ(const Asked& a, const Asked& b) {
    return a.by != b.by || std::abs(a.sugar - b.sugar) > 1e-6 || std::abs(a.fondant - b.fondant) > 1e-6 ||
           std::abs(a.honey - b.honey) > 1e-6;
}

//! Halves the way between two weights whose answers differ until a gram is left between them.
inline void expectSmallStepBetween(Scale& scale, double low, double high, const Asked& atLow, const Asked& atHigh,
                                   const std::string& what) {
    if (!differ(atLow, atHigh)) return;
    if (high - low <= gramKg)
        return expectOneStep(scale.at(low), atLow, atHigh, what + ", at " + std::to_string(low) + " kg");
    const double middle = (low + high) / 2;
    const Asked between = askedOf(scale.at(middle));
    expectSmallStepBetween(scale, low, middle, atLow, between, what);
    expectSmallStepBetween(scale, middle, high, between, atHigh, what);
}

//! A random colony, on every second day of the weeks in which most is decided.
inline Drawn colonyToMove(unsigned seed) {
    ColonyDraw draw(seed);
    const char* place = draw.station();
    const Drawn first = draw.colonyAt(place);
    if (seed % 2 == 0) return first;
    const auto days = phaseDays(first.question.season, first.question.decisions);
    return draw.colonyAt(place, SeasonDay{draw.whole(std::max(-150, days.summer.w - 20), days.late.w + 20)});
}

//! The random colony of a seed, on a scale from empty to more than full; tells how often the answer changed on the way.
inline int expectNoJumps(unsigned seed, double stepKg) {
    const Drawn drawn = colonyToMove(seed);
    Scale scale(drawn.question);
    const double empty = drawn.question.tare.value(),
                 full = empty + 45.0 * static_cast<double>(drawn.question.boxes.size());
    Asked before = askedOf(scale.at(empty));
    int changes = 0;
    for (double gross = empty; gross + stepKg <= full; gross += stepKg) {
        Asked now = askedOf(scale.at(gross + stepKg));
        changes += differ(before, now);
        expectSmallStepBetween(scale, gross, gross + stepKg, before, now, drawn.what);
        before = now;
    }
    return changes;
}

} // namespace winterlarder::advice::grams_apart
