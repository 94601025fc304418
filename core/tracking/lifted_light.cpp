// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/lifted_light.h"

#include <algorithm>

namespace winterlarder::tracking {

namespace {

int fortnight(const FollowQuestion& q) { return static_cast<int>(q.decisions.fondantLastsDays); }

const Observation* lastLift(const FollowQuestion& q) {
    const Observation* last = nullptr;
    for (const auto& seen : q.observations)
        if (std::holds_alternative<HeftSeen>(seen.what) && seen.day <= q.today && q.today - seen.day <= fortnight(q) &&
            (!last || seen.day >= last->day))
            last = &seen;
    return last;
}

bool fedFrom(const FollowQuestion& q, SeasonDay day) {
    return std::any_of(q.steps.begin(), q.steps.end(), [&](const KnownStep& step) {
        return step.kind == KnownStep::Kind::Feed && step.day >= day && step.day <= q.today;
    });
}

// On a scale, from a fortnight before the lift to today.
std::optional<Date> weighedAround(const FollowQuestion& q, SeasonDay lift) {
    std::optional<Date> last;
    for (const auto& seen : q.observations)
        if (std::holds_alternative<WeightSeen>(seen.what) && lift - seen.day <= fortnight(q) && seen.day <= q.today)
            last = std::max(last, std::optional(seen.date));
    return last;
}

} // namespace

std::optional<LiftedLight> liftedLight(const FollowQuestion& q) {
    if (q.today <= q.days.late || q.today > q.days.quietFrom) return std::nullopt;
    const Observation* lift = lastLift(q);
    if (!lift || std::get<HeftSeen>(lift->what).word != stores::HeftWord::Light || fedFrom(q, lift->day))
        return std::nullopt;
    return LiftedLight{lift->date, weighedAround(q, lift->day)};
}

} // namespace winterlarder::tracking
