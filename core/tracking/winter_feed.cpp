// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/keepers_days.h"
#include "feeding/syrup.h"
#include "tracking/answer_parts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr double lotKg = 2.5;  // National Bee Unit, March
constexpr int lotEveryDays = 15; // western Switzerland
constexpr double stepKg = 0.1;
constexpr double fondantStepKg = 0.5; // as it is sold and cut

double medianBees(const Reckoned& r, SeasonDay day) {
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

bool syrupPossible(const FollowQuestion& q) {
    const auto& last = q.winter.season.syrupDeadline;
    return !last || q.today <= last->day;
}

feeding::FeedingPlan planNow(const Reckoned& r, Mass stores) {
    const FollowQuestion& q = r.question;
    feeding::FeedingQuestion asked{stores, q.year, q.today};
    asked.curve = &q.winter.curve;
    asked.season = q.winter.season;
    asked.bees = {medianBees(r, q.today)};
    asked.feeder = q.feeder;
    if (q.freeRoom) {
        double room = q.freeRoom->value() + r.following.now.lost.typical.value();
        for (const auto& step : q.steps)
            if (step.kind != KnownStep::Kind::Equipment && step.day <= q.today) room -= step.change.value();
        asked.freeRoom = kilograms(std::max(0.0, room));
    }
    asked.visitEveryDays = q.visitEveryDays;
    asked.visitWeekdays = q.visitWeekdays;
    asked.diurnalHalfRange = kelvins(r.constants.diurnalHalfRange);
    return feeding::planFeeding(asked);
}

void layLots(const Reckoned& r, WinterFeed& feed) {
    const FollowQuestion& q = r.question;
    const int daysLeft = std::max(0, feed.until - q.today);
    const int slots = 1 + daysLeft / lotEveryDays;
    const int wanted = static_cast<int>(std::ceil(feed.fondant.value() / lotKg - 1e-9));
    const int lots = std::clamp(wanted, 1, slots);
    const double each = std::ceil(feed.fondant.value() / lots / fondantStepKg - 1e-9) * fondantStepKg;
    double left = feed.fondant.value();
    const feeding::KeepersDays comes(q.year, q.visitWeekdays);
    for (int i = 0; i < lots && left > 1e-9; ++i) {
        const SeasonDay wish = std::min(q.today + i * lotEveryDays, lastSeasonDay);
        const SeasonDay day = i == 0 ? q.today : comes.onOrAfter(wish).value_or(wish); // the first cannot wait for a weekday
        const double lot = std::min(each, left);
        feed.lots.push_back({day, q.year.date(day), kilograms(lot)});
        left -= lot;
    }
}

} // namespace

Mass missingNow(const Reckoned& r) {
    const auto ahead = outlooks(r.question, r.tracked, {r.question.today});
    if (ahead.empty()) return kilograms(0);
    const auto& belief = r.tracked.belief;
    std::vector<std::pair<double, double>> shortBy; // of those that live today
    double living = 0;
    for (std::size_t p = 0; p < belief.particles(); ++p) {
        if (belief.outDay[p] != Belief::neverOut || belief.weight[p] <= 0) continue;
        shortBy.emplace_back(r.question.reserve.value() - static_cast<double>(ahead.front().least[p]), belief.weight[p]);
        living += belief.weight[p];
    }
    if (living <= 0) return kilograms(0);
    std::sort(shortBy.begin(), shortBy.end(), std::greater<>());
    double touching = 0;
    for (const auto& [kg, weight] : shortBy) {
        if (touching + weight > r.question.shortRisk * living) return kilograms(std::ceil(std::max(0.0, kg) / stepKg - 1e-6) * stepKg);
        touching += weight;
    }
    return kilograms(0);
}

WinterFeed feedNow(const Reckoned& r, Mass stores) {
    const FollowQuestion& q = r.question;
    WinterFeed feed;
    feed.stores = stores;
    feed.until = std::max(q.today, r.following.now.forage.high);
    const auto& reserveBy = r.following.now.reserveBy.low;
    feed.by = reserveBy ? std::max(q.today, *reserveBy - 7) : q.today + 7;
    if (syrupPossible(q)) {
        feed.plan = planNow(r, stores);
        feed.fondant = feed.plan->fondant;
        return feed;
    }
    feed.fondant = kilograms(std::ceil(stores.value() / feeding::storesPerKgFondant / fondantStepKg - 1e-6) * fondantStepKg);
    feed.drySugar = kilograms(std::ceil(stores.value() / feeding::storesPerKgDrySugar / stepKg - 1e-6) * stepKg);
    layLots(r, feed);
    return feed;
}

} // namespace winterlarder::tracking
