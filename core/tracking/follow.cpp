// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/follow.h"

#include "support/require.h"
#include "tracking/answer_parts.h"

#include <algorithm>

namespace winterlarder::tracking {

namespace {

constexpr double leastFeedKg = 0.5;
constexpr int reserveUrgentDays = 21, outUrgentDays = 42;
constexpr double fasterBelow = 0.2, slowerAbove = 0.8;

const Observation* deadOut(const FollowQuestion& q) {
    for (const auto& seen : q.observations)
        if (isDead(seen) && seen.day <= q.today) return &seen;
    return nullptr;
}

bool inDoubt(const Following& f) {
    return std::any_of(f.judged.begin(), f.judged.end(), [](const Judged& each) { return each.contradicts && !each.confirmed; });
}

bool within(const std::optional<SeasonDay>& day, SeasonDay today, int days) { return day && *day <= today + days; }

bool urgent(const FollowQuestion& q, const Following& f) {
    if (!f.feed) return false;
    return f.now.today.typical < q.reserve || within(f.now.reserveBy.low, q.today, reserveUrgentDays) ||
           within(f.now.outBy.low, q.today, outUrgentDays);
}

FollowState stateOf(const FollowQuestion& q, const Following& f) {
    if (f.fitsNoWinter || inDoubt(f)) return FollowState::CannotSay;
    if (urgent(q, f)) return FollowState::ActNow;
    if (f.position < fasterBelow) return FollowState::EatingFaster;
    return f.position > slowerAbove ? FollowState::EatingSlower : FollowState::OnCourse;
}

// Where today's likely stores lie in what the autumn expected for today.
double positionOf(const FollowQuestion& q, const Tracked& planned, Mass likely) {
    WeightedKilograms expected;
    const auto& belief = planned.belief;
    double changed = 0;
    for (std::size_t p = 0; p < belief.particles(); ++p) {
        changed = 0;
        for (const auto& change : belief.changes) changed += change.day < q.today ? change.kg[p] : 0;
        const SeasonDay yesterday = planned.paths->within(q.today) - 1;
        const double loss = static_cast<double>(planned.paths->lossUntil(yesterday, belief.winterOf(p)));
        expected.add(std::max(0.0, belief.stores()[p] + changed - loss), belief.weight[p]);
    }
    return q.today <= q.decided && q.observations.empty() ? 0.5 : expected.shareBelow(likely.value());
}

void requireInOrder(const FollowQuestion& q) {
    require(q.decided >= q.winter.start && q.today >= q.decided, "decided on day {}, asked on day {}, simulated from day {}",
            q.decided.w, q.today.w, q.winter.start.w);
}

} // namespace

std::optional<Following> follow(const FollowQuestion& given, const ModelConstants& constants, winter::Sampling sampling,
                                int threads, std::stop_token stop) {
    requireInOrder(given);
    const FollowQuestion question = withinRun(given, constants);
    const auto tracked = track(question, constants, sampling, threads, stop);
    if (!tracked) return std::nullopt;
    const auto planned = trackPlan(question, constants, sampling, *tracked, threads, stop);
    if (!planned) return std::nullopt;
    Following f;
    f.winters = sampling.winters;
    f.effectiveWinters = tracked->belief.effectiveWinters;
    f.drawnAgain = tracked->drawnAgain;
    f.judged = tracked->belief.judged;
    f.fitsNoWinter = tracked->belief.fitsNoWinter;
    f.autumn = forecastOf(question, *planned, question.today);
    f.now = f.fitsNoWinter ? f.autumn : forecastOf(question, *tracked, question.today);
    f.position = positionOf(question, *planned, f.now.today.typical);
    const Reckoned reckoned{question, constants, *planned, *tracked, f};
    const bool living = !deadOut(given) && !f.fitsNoWinter;
    f.seen = seenStores(reckoned);
    if (const Mass missing = living ? missingNow(reckoned) : kilograms(0); missing.value() >= leastFeedKg)
        f.feed = feedNow(reckoned, missing);
    if (living) {
        f.nextWeighing = nextWeighing(reckoned);
        f.spring = springAdvice(reckoned);
    }
    f.state = deadOut(given) ? FollowState::Dead : stateOf(question, f);
    f.reasons = followReasons(reckoned);
    f.cautions = followCautions(reckoned);
    return f;
}

} // namespace winterlarder::tracking
