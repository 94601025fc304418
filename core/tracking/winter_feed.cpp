// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/keepers_days.h"
#include "feeding/portions.h"
#include "feeding/syrup.h"
#include "tracking/food_ahead.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr double stepKg = 0.1;

double medianBees(const FollowBasis& r, SeasonDay day) {
    const auto& belief = r.tracked.belief;
    std::vector<std::pair<double, double>> bees;
    for (std::size_t p = 0; p < belief.particles(); p += static_cast<std::size_t>(belief.nodes)) {
        double weight = 0;
        for (std::size_t n = 0; n < static_cast<std::size_t>(belief.nodes); ++n) weight += belief.weight[p + n];
        bees.emplace_back(r.tracked.paths->bees(day, belief.winterOf(p)), weight);
    }
    std::sort(bees.begin(), bees.end());
    double below = 0;
    for (const auto& [count, weight] : bees) {
        below += weight;
        if (below >= 0.5) return count;
    }
    return bees.back().first;
}

// ---- syrup -----------------------------------------------------------------------------------------------------------------

bool fedToday(const FollowQuestion& q) {
    return std::any_of(q.steps.begin(), q.steps.end(), [&](const KnownStep& step) {
        return step.kind == KnownStep::Kind::Feed && step.day == q.today;
    });
}

feeding::PortionDays portionDays(const FollowQuestion& q) {
    return {q.days.late, q.days.quietFrom, q.days.portionsInWinter};
}

feeding::FeedingQuestion feedingQuestion(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    feeding::FeedingQuestion asked{
        kilograms(1), q.year, std::min(feeding::firstVisit(q.today, fedToday(q), q.visitEveryDays), lastSimulatedDay)};
    asked.curve = &q.winter.curve;
    asked.season = q.winter.season;
    asked.bees = {medianBees(r, r.tracked.paths->within(q.today))};
    asked.feeder = q.feeder;
    asked.visitEveryDays = q.visitEveryDays;
    asked.visitWeekdays = q.visitWeekdays;
    asked.diurnalHalfRange = kelvins(r.constants.diurnalHalfRange);
    return asked;
}

std::optional<Mass> roomNow(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    if (!q.freeRoom) return std::nullopt;
    double room = q.freeRoom->value() + r.following.now.lost.typical.value();
    for (const auto& step : q.steps)
        if (step.kind != KnownStep::Kind::Equipment && step.day <= q.today) room -= step.change.value();
    return kilograms(std::max(0.0, room));
}

Mass sugarFor(const FollowBasis& r, Mass stores) {
    return feeding::sugarFor(stores, feeding::storesPerKgSugarToday(feedingQuestion(r), r.question.days.closing),
                             roomNow(r), r.question.bought.sugar);
}

bool portionsAreTaken(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    return q.today > q.days.closing && feeding::portionTaken(feedingQuestion(r), q.today, portionDays(q), q.decisions);
}

std::optional<WinterFeed> planned(const FollowBasis& r, feeding::FeedingPlan plan) {
    if (plan.visits.empty() || plan.stores.value() <= 0) return std::nullopt;
    WinterFeed feed;
    feed.stores = plan.stores;
    feed.by = plan.visits.front().day;
    feed.until = std::max(r.question.today, r.following.now.forage.high);
    feed.plan = std::move(plan);
    return feed;
}

std::optional<WinterFeed> usualSyrup(const FollowBasis& r, Mass stores) {
    const FollowQuestion& q = r.question;
    return planned(r,
                   feeding::planSyrup(feedingQuestion(r), sugarFor(r, stores), q.bought.sugar, q.days.closing, true));
}

std::optional<WinterFeed> smallPortions(const FollowBasis& r, Mass stores) {
    const FollowQuestion& q = r.question;
    return planned(r, feeding::smallPortions(feedingQuestion(r), sugarFor(r, stores), q.bought.sugar, portionDays(q),
                                             q.decisions));
}

// ---- fondant -----------------------------------------------------------------------------------------------------------------

feeding::FondantVisits visitsOf(const FollowQuestion& q) {
    return feeding::fondantVisits(q.decisions, q.nucleus, q.bought.fondant);
}

Mass fondantOf(const FollowQuestion& q, Mass stores) { return feeding::fondantFor(stores, visitsOf(q)); }

WinterFeed oneVisit(const FollowBasis& r, SeasonDay day, SeasonDay by, Mass fondant) {
    WinterFeed feed;
    feed.fondant = fondant;
    feed.stores = fondant * feeding::storesPerKgFondant;
    feed.drySugar = kilograms(std::ceil(feed.stores.value() / feeding::storesPerKgDrySugar / stepKg - 1e-6) * stepKg);
    const SeasonDay asked = std::min(day, lastSeasonDay);
    feed.lots.push_back({asked, r.question.year.date(asked), fondant});
    feed.by = std::max(asked, by);
    feed.until = std::max(r.question.today, r.following.now.forage.high);
    return feed;
}

WinterFeed visitToday(const FollowBasis& r, Mass fondant) {
    return oneVisit(r, r.question.today, r.question.today, fondant);
}

// The keeper's first day of the week before it is needed; one that cannot wait is not kept for a weekday.
SeasonDay visitBefore(const FollowQuestion& q, SeasonDay needed) {
    const SeasonDay earliest = std::max(q.today, needed - static_cast<int>(q.decisions.dueDays));
    const auto day = feeding::KeepersDays(q.year, q.visitWeekdays).onOrAfter(earliest);
    return day && *day <= needed ? *day : earliest;
}

std::optional<WinterFeed> visitInTime(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    if (q.today > q.days.quietFrom) return std::nullopt;
    const auto needed = neededBy(r, q.days.quietFrom);
    if (!needed) return std::nullopt;
    return oneVisit(r, visitBefore(q, *needed), *needed, fondantOf(q, r.following.missing));
}

std::optional<WinterFeed> board(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    if (!q.days.boardUntil || q.today > *q.days.boardUntil || q.nucleus) return std::nullopt;
    return visitToday(r, feeding::boardFor(r.following.missing, q.decisions, q.bought.fondant));
}

// ---- by state and time of year -------------------------------------------------------------------------------------------------

std::optional<WinterFeed> atOnce(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    const auto fondant = [&] { return visitToday(r, fondantOf(q, r.following.missing)); };
    const Mass wanted = std::max(kilograms(q.decisions.summerPortionLeast), r.following.missing);
    std::optional<WinterFeed> syrup;
    if (q.today <= q.days.closing)
        syrup = usualSyrup(r, q.today <= q.days.summer ? kilograms(q.decisions.summerPortionLeast) : wanted);
    else if (q.days.portionsInWinter && portionsAreTaken(r)) syrup = smallPortions(r, wanted);
    return syrup ? syrup : std::optional(fondant());
}

// How much is missing a lift does not tell: what may lie on a cluster at a time.
std::optional<WinterFeed> forLight(const FollowBasis& r) {
    const Mass most = visitsOf(r.question).most;
    if (r.question.days.portionsInWinter && portionsAreTaken(r))
        if (auto portions = smallPortions(r, most * feeding::storesPerKgFondant)) return portions;
    return visitToday(r, most);
}

std::optional<WinterFeed> inGoodTime(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    if (q.today <= q.days.summer || r.following.missing < kilograms(q.decisions.deadLeast)) return std::nullopt;
    if (q.today <= q.days.closing) return usualSyrup(r, r.following.missing);
    if (portionsAreTaken(r))
        if (auto portions = smallPortions(r, r.following.missing)) return portions;
    if (auto laid = board(r)) return laid;
    return q.today <= q.days.late && !q.days.portionsInWinter ? std::nullopt : visitInTime(r);
}

} // namespace

Mass missingNow(const FollowBasis& r) {
    const auto ahead = outlooks(r.question, r.tracked, {r.question.today});
    if (ahead.empty()) return kilograms(0);
    const auto& belief = r.tracked.belief;
    std::vector<std::pair<double, double>> shortBy; // of those that live today
    double living = 0;
    for (std::size_t p = 0; p < belief.particles(); ++p) {
        if (belief.outDay[p] != Belief::neverOut || belief.weight[p] <= 0) continue;
        shortBy.emplace_back(r.question.reserve.value() - static_cast<double>(ahead.front().least[p]),
                             belief.weight[p]);
        living += belief.weight[p];
    }
    if (living <= 0) return kilograms(0);
    std::sort(shortBy.begin(), shortBy.end(), std::greater<>());
    double touching = 0;
    for (const auto& [kg, weight] : shortBy) {
        if (touching + weight > r.question.shortRisk * living)
            return kilograms(std::ceil(std::max(0.0, kg) / stepKg - 1e-6) * stepKg);
        touching += weight;
    }
    return kilograms(0);
}

std::optional<WinterFeed> feedNow(const FollowBasis& r) {
    switch (r.following.state) {
    case FollowState::Dead:
    case FollowState::MoreThanNeeded: return std::nullopt;
    case FollowState::CannotSay:
        if (foodRunsShort(r)) return atOnce(r);
        return lightAlone(r.following) ? forLight(r) : std::nullopt;
    case FollowState::FoodOutOfReach: return visitToday(r, visitsOf(r.question).most);
    case FollowState::ActNow: return lightAlone(r.following) ? forLight(r) : atOnce(r);
    default: return r.following.light ? std::nullopt : inGoodTime(r); // weighed again first
    }
}

std::optional<LaterFeed> expectedLater(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    if (r.following.state == FollowState::CannotSay || r.following.state == FollowState::MoreThanNeeded)
        return std::nullopt;
    const auto& feed = r.following.feed;
    const Mass given = feed ? feed->stores : kilograms(0);
    const bool summer = q.today <= q.days.summer;
    if (!summer && q.today >= q.days.quietFrom) return std::nullopt;
    const double gives =
        summer ? feeding::storesPerKgSugarToday(feedingQuestion(r), q.days.closing) : feeding::storesPerKgFondant;
    const auto wanted = wantedBy(
        r, summer ? q.days.quietFrom + static_cast<int>(q.decisions.quietBeforeForage) : q.days.quietFrom, given);
    const Spread<Mass> amount{wanted.low / gives, wanted.typical / gives, wanted.high / gives};
    if (amount.high < kilograms(q.decisions.laterLeast)) return std::nullopt;
    if (summer) return LaterFeed{amount, {}, q.days.summer + 1, q.days.closing};
    const auto laidOn = feed ? std::optional(feed->begins()) : std::nullopt;
    const SeasonDay from = feeding::fondantFrom(q.today, laidOn, q.today <= q.days.late, q.decisions);
    return LaterFeed{{}, amount, std::min(from, q.days.quietFrom), q.days.quietFrom};
}

} // namespace winterlarder::tracking
