// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/follow.h"

#include "reference/most_cautions.h"
#include "support/require.h"
#include "tracking/course.h"
#include "tracking/food_ahead.h"

#include <algorithm>

namespace winterlarder::tracking {

namespace {

const Observation* deadOut(const FollowQuestion& q) {
    for (const auto& seen : q.observations)
        if (isDead(seen) && seen.day <= q.today) return &seen;
    return nullptr;
}

// A weighing that contradicts is in doubt, unless another on its scale shows that it was eaten. A lift's word never does.
bool inDoubt(const FollowBasis& r) {
    const Following& f = r.following;
    return f.heavier || std::any_of(f.judged.begin(), f.judged.end(), [&](const Judged& each) {
               return each.contradicts && !each.confirmed && !(f.faster && f.faster->second == each.observation);
           });
}

FollowState stateOf(const FollowBasis& r) {
    const Following& f = r.following;
    if (f.fitsNoWinter || inDoubt(r)) return FollowState::CannotSay;
    if (f.outOfReach) return FollowState::FoodOutOfReach;
    if (foodRunsShort(r) || lightAlone(f)) return FollowState::ActNow;
    if (f.dwindled) return FollowState::Dwindling;
    if (!f.faster && lessThanThought(r)) return FollowState::LessThanThought;
    if (!r.question.unticked.empty()) return FollowState::FeedNotRecorded;
    if (f.faster) return FollowState::EatingFaster;
    return !f.light && moreThanNeeded(r) ? FollowState::MoreThanNeeded : FollowState::OnCourse;
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
    require(q.decided >= q.winter.start && q.today >= q.decided,
            "decided on day {}, asked on day {}, simulated from day {}", q.decided.w, q.today.w, q.winter.start.w);
}

void seeHow(const FollowBasis& r, Following& f) {
    f.missing = missingNow(r);
    f.fallsShort = f.now.touchReserve.share > r.question.shortRisk;
    f.outOfReach = foodOutOfReach(r.question, f.now.lost.typical);
    f.dwindled = dwindled(r);
    f.faster = eatenFaster(r);
    f.light = liftedLight(r.question);
    f.heavier = heavierThanExpected(r);
}

void sayWhatNext(const FollowBasis& r, Following& f) {
    f.feed = feedNow(r);
    f.expectedLater = expectedLater(r);
    f.nextWeighing = nextWeighing(r);
    f.spring = springAdvice(r);
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
    const FollowBasis basis{question, constants, *planned, *tracked, f};
    const bool living = !deadOut(given) && !f.fitsNoWinter;
    f.seen = seenStores(basis);
    if (living) seeHow(basis, f);
    f.state = deadOut(given) ? FollowState::Dead : stateOf(basis);
    if (living) sayWhatNext(basis, f);
    f.reasons = followReasons(basis);
    f.cautions = followCautions(basis);
    if (f.cautions.size() > mostCautions) {
        f.goodPractice.assign(f.cautions.begin() + static_cast<std::ptrdiff_t>(mostCautions), f.cautions.end());
        f.cautions.resize(mostCautions);
    }
    return f;
}

std::string_view word(FollowState state) {
    switch (state) {
    case FollowState::Dead: return "dead";
    case FollowState::CannotSay: return "cannot_say";
    case FollowState::FoodOutOfReach: return "food_out_of_reach";
    case FollowState::ActNow: return "act_now";
    case FollowState::Dwindling: return "dwindling";
    case FollowState::LessThanThought: return "less_than_thought";
    case FollowState::FeedNotRecorded: return "feed_not_recorded";
    case FollowState::EatingFaster: return "eating_faster";
    case FollowState::MoreThanNeeded: return "more_than_needed";
    case FollowState::OnCourse: return "on_course";
    }
    return "";
}

} // namespace winterlarder::tracking
