// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/health.h"

#include "advice/portions.h"
#include "hive/hive.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

double medianBees(const AdviceBasis& r, SeasonDay day) {
    const auto bees = r.ensemble.bees(std::min(day, r.ensemble.lastDay()));
    return winter::quantile({bees.begin(), bees.end()}, 0.5);
}

// Food for three weeks, no more than one portion of it now.
std::optional<feeding::FeedingPlan> keptAlive(const AdviceBasis& r) {
    const Mass missing = missingFor(r, r.rules().keepAliveDays);
    if (missing.value() <= 0) return std::nullopt;
    auto plan = onePortion(r, missing, kilograms(r.rules().keepAliveSugar));
    return feedsAnything(plan) ? std::optional(std::move(plan)) : std::nullopt;
}

Decided unitedFor(const AdviceBasis& r, DecidedBy by, SeasonDay last) {
    return {Verdict::Unite, by, keptAlive(r), std::nullopt,
            UniteAdvice{{}, r.on(last), nothingGoesOnTop(r.question), by == DecidedBy::NoQueen}};
}

} // namespace

bool nothingGoesOnTop(const ColonyQuestion& q) { return !q.boxes.empty() && hive::isHorizontal(q.boxes.front()); }

std::optional<Decided> diseaseRule(const AdviceBasis& r) {
    if (!r.question.trouble) return std::nullopt;
    return Decided{.verdict = Verdict::Leave, .by = DecidedBy::Disease, .feed = keptAlive(r)};
}

std::optional<Decided> noQueenRule(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    const bool noBrood = !q.brood || q.brood->count <= 0;
    if (q.queenSeen != false || q.eggsSeen != false || !noBrood || q.asOf > r.days.closing) return std::nullopt;
    const SeasonDay soon = q.asOf + static_cast<int>(r.rules().keepAliveDays); // later laying workers take over
    return unitedFor(r, DecidedBy::NoQueen, std::max(q.asOf, std::min(soon, lastDayToUnite(r).value_or(q.asOf))));
}

std::optional<Decided> weakRule(const AdviceBasis& r) {
    if (r.phase != Phase::Closing && r.phase != Phase::Late) return std::nullopt;
    const auto last = lastDayToUnite(r);
    if (!last || !tooWeak(r)) return std::nullopt;
    return unitedFor(r, DecidedBy::Weak, *last);
}

double beesThatDecide(const AdviceBasis& r) {
    SeasonDay day = r.days.closing;
    if (r.question.season.broodStop) day = std::min(day, r.question.season.broodStop->day);
    return medianBees(r, std::max(day, r.question.asOf));
}

bool tooWeak(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    if (q.nucleus || q.season.winterClass == climate::WinterClass::Dearth) return false;
    const bool early = q.asOf.w < static_cast<int>(r.rules().strongUntilDay);
    if (early && medianBees(r, q.asOf) >= r.rules().strongEnoughBees) return false;
    return beesThatDecide(r) < r.rules().weakBees;
}

std::optional<SeasonDay> lastDayToUnite(const AdviceBasis& r) {
    std::optional<SeasonDay> last;
    for (SeasonDay day = r.question.asOf; day <= r.days.late; day = day + 1) {
        if (r.question.site->curve.normal(day).value() < r.rules().uniteColdest) break;
        last = day;
    }
    return last;
}

} // namespace winterlarder::advice
