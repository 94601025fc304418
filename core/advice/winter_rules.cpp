// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/winter_rules.h"

#include "advice/options.h"
#include "advice/portions.h"
#include "feeding/portions.h"
#include "stores/cluster.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

// Bees do not move across empty combs.
bool inCold(const AdviceBasis& r) {
    return r.question.site->curve.normal(r.question.asOf).value() + r.constants.diurnalHalfRange <
           r.rules().clusteredBelow;
}

Decided oneVisit(DecidedBy by, feeding::FeedingPlan plan) {
    return {.verdict = Verdict::Feed, .by = by, .feed = std::move(plan)};
}

// What is fed where it cannot wait: on a warm day of a dearth syrup, else fondant.
feeding::FeedingPlan atOnce(const AdviceBasis& r, Mass stores) {
    return r.days.portionsInWinter && takesPortions(r) ? smallPortions(r, stores) : fondantVisit(r, stores);
}

Mass missingNow(const AdviceBasis& r) { return std::max(kilograms(0), r.target.missing.typical); }

bool mostlyStarves(const AdviceBasis& r) { return leaveOption(r).runOut.share > r.rules().lateBoardStarve; }

// Locked in for long, it gets a board by its last day; for some weeks more where it would starve else, for a late board is better than none.
std::optional<Decided> boardRule(const AdviceBasis& r) {
    const auto& rules = r.rules();
    const auto& deadline = r.question.season.syrupDeadline;
    const SeasonDay last = (deadline ? deadline->day : r.days.closing) + static_cast<int>(rules.lateDays);
    const bool inTime = r.question.asOf <= last;
    const bool stillHelps = r.question.asOf <= last + static_cast<int>(rules.lateBoardDays) && mostlyStarves(r);
    if (r.lockedInDays <= rules.lockedInBoard || r.question.nucleus || !(inTime || stillHelps)) return std::nullopt;
    return oneVisit(
        inTime ? DecidedBy::Board : DecidedBy::LateBoard,
        feeding::planFondant(feedingQuestion(r), feeding::boardFor(missingNow(r), rules, r.question.steps.fondant)));
}

bool visitIsDue(const AdviceBasis& r) { return r.stores() - hardUseOf(r, r.rules().dueDays) <= r.today.reserve; }

} // namespace

std::optional<Mass> foodInReach(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    if (q.combs.empty()) return std::nullopt;
    const bool seen = stores::findCluster(q.combs, q.boxes, q.coveredCombs).seen;
    const auto reach = stores::clusterReach(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
    return seen && reach ? std::optional(reach->within) : std::nullopt;
}

std::optional<Decided> noFoodInReachRule(const AdviceBasis& r) {
    if (r.phase < Phase::Late || !inCold(r)) return std::nullopt;
    const auto within = foodInReach(r);
    const bool seenShort = within && *within < hardUseOf(r, r.rules().actNowDays) &&
                           r.stores() - *within >= kilograms(r.rules().deadLeast);
    if (!seenShort && r.question.answers.foodBeside != false) return std::nullopt;
    return oneVisit(DecidedBy::NoFoodInReach, fondantVisit(r, kilograms(r.rules().fondantVisit)));
}

std::optional<Decided> actNowRule(const AdviceBasis& r) {
    if (r.phase < Phase::Late || missingFor(r, r.rules().actNowDays).value() <= 0) return std::nullopt;
    return oneVisit(DecidedBy::ActNow, atOnce(r, missingNow(r)));
}

std::optional<Decided> winterFeedRule(const AdviceBasis& r) {
    if (r.phase != Phase::Winter && r.phase != Phase::Spring) return std::nullopt;
    const bool missing = r.target.missing.typical > r.target.deadBand;
    const Decided later{.verdict = Verdict::Leave, .by = missing ? DecidedBy::ShortLater : DecidedBy::Enough};
    if (r.question.asOf > r.days.quietFrom) return later;
    if (missing && takesPortions(r)) return oneVisit(DecidedBy::SmallPortions, smallPortions(r, missingNow(r)));
    if (auto board = missing ? boardRule(r) : std::nullopt) return board;
    if (!visitIsDue(r)) return later;
    return oneVisit(DecidedBy::WinterVisit, fondantVisit(r, missingNow(r)));
}

std::optional<Decided> lateFeedRule(const AdviceBasis& r) {
    if (r.phase != Phase::Late || r.target.missing.typical <= r.target.deadBand) return std::nullopt;
    if (takesPortions(r)) {
        auto plan = smallPortions(r, missingNow(r));
        if (feedsAnything(plan)) return oneVisit(DecidedBy::SmallPortions, std::move(plan));
    }
    if (auto board = boardRule(r)) return board;
    return Decided{.verdict = Verdict::Leave, .by = DecidedBy::ShortLater};
}

bool hardlyLives(const AdviceBasis& r, const Decided& decided) {
    return decided.by == DecidedBy::ShortLater && !r.days.portionsInWinter && r.question.asOf <= climate::solstice &&
           mostlyStarves(r);
}

} // namespace winterlarder::advice
