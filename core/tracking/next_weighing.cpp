// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/normal.h"
#include "tracking/answer_parts.h"
#include "winter/draws.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace winterlarder::tracking {

namespace {

constexpr int everyDays = 7;
constexpr std::size_t groups = 10;
constexpr std::uint32_t noiseIndex = 1u << 17;

std::vector<SeasonDay> candidates(const FollowBasis& r) {
    std::vector<SeasonDay> days;
    const SeasonDay last = std::min(r.following.now.forage.typical - everyDays, r.tracked.paths->last());
    for (SeasonDay day = r.question.today + everyDays; day <= last; day = day + everyDays) days.push_back(day);
    return days;
}

struct Decision {
    double living = 0, touching = 0;
    void add(double weight, bool touches) {
        living += weight;
        touching += touches ? weight : 0;
    }
    bool feed(double risk) const { return touching > risk * living; }
};

// What a scale would show of each particle: its stores, the tare's lasting error, the reading's own.
std::vector<float> shown(const FollowBasis& r, const Outlook& outlook) {
    const auto& belief = r.tracked.belief;
    const double fresh = tareError(r.question.tare, r.constants).freshSd;
    std::vector<float> result(outlook.stores.size());
    for (std::size_t p = 0; p < result.size(); ++p) {
        const double noise =
            winter::normal(1, winter::Luck::Colony, r.question.winter.colonyStream, static_cast<std::uint32_t>(p),
                           noiseIndex + static_cast<std::uint32_t>(outlook.day.w + 400));
        result[p] = static_cast<float>(std::max(0.0, static_cast<double>(outlook.stores[p])) + belief.tareError()[p] +
                                       fresh * noise);
    }
    return result;
}

// Share of what lives on that day whose group would decide otherwise than all together.
double changedShare(const FollowBasis& r, const Outlook& outlook) {
    const auto& belief = r.tracked.belief;
    const auto reading = shown(r, outlook);
    std::vector<std::size_t> order;
    Decision all;
    const auto touches = [&](std::size_t p) {
        return static_cast<double>(outlook.least[p]) < r.question.reserve.value();
    };
    for (std::size_t p = 0; p < reading.size(); ++p) {
        if (belief.weight[p] <= 0 || outlook.stores[p] <= 0) continue;
        order.push_back(p);
        all.add(belief.weight[p], touches(p));
    }
    if (all.living <= 0) return 0;
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return reading[a] < reading[b]; });
    double changed = 0, passed = 0;
    Decision group;
    for (std::size_t p : order) {
        group.add(belief.weight[p], touches(p));
        passed += belief.weight[p];
        const double done = all.living / static_cast<double>(groups);
        if (group.living < done && passed < all.living - 1e-12) continue;
        if (group.feed(r.question.shortRisk) != all.feed(r.question.shortRisk)) changed += group.living;
        group = {};
    }
    return changed / all.living;
}

std::optional<NextWeighing> worthIt(const FollowBasis& r) {
    const auto days = candidates(r);
    for (const Outlook& outlook : outlooks(r.question, r.tracked, days)) {
        const double changed = changedShare(r, outlook);
        if (changed >= worthWeighing) return NextWeighing{outlook.day, r.question.year.date(outlook.day), changed};
    }
    return std::nullopt;
}

// Fondant is laid on one visit at a time, the next after a weighing; where some is likely to be wanted later, it begins with one.
std::optional<SeasonDay> weighForVisit(const FollowBasis& r) {
    const auto& feed = r.following.feed;
    const auto& later = r.following.expectedLater;
    const SeasonDay today = r.question.today;
    std::optional<SeasonDay> day;
    if (feed && !feed->lots.empty())
        day = feed->begins() > today ? feed->begins() : today + static_cast<int>(r.question.decisions.fondantLastsDays);
    else if (later && later->fondant.high.value() > 0) day = later->from;
    return day && *day > today && *day < r.tracked.paths->last() ? day : std::nullopt;
}

} // namespace

std::optional<NextWeighing> nextWeighing(const FollowBasis& r) {
    if (r.following.light) {
        const int days = lightAlone(r.following) ? static_cast<int>(r.question.decisions.lookSoonDays) : 0;
        const SeasonDay day = r.question.today + days;
        return NextWeighing{day, r.question.year.date(std::min(day, lastSeasonDay)), 1, true};
    }
    const auto worth = worthIt(r);
    const auto visit = weighForVisit(r);
    if (!visit || (worth && worth->day <= *visit)) return worth;
    const auto then = outlooks(r.question, r.tracked, {*visit});
    return NextWeighing{*visit, r.question.year.date(*visit), then.empty() ? 0 : changedShare(r, then.front()), true};
}

} // namespace winterlarder::tracking
