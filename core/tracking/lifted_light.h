// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/follow_question.h"

#include <optional>

namespace winterlarder::tracking {

//! A hive that was light when it was lifted in winter.
struct LiftedLight {
    Date day;
    std::optional<Date>
        weighed{}; //!< a weighing of the fortnight before, or since: then it is weighed again and nothing is fed on its account
};

//! The last lift of the last fortnight (as long as a visit's fondant lasts), where it said light and nothing was fed from that day on; between late autumn and
//! the quiet time before spring forage. Nothing otherwise. Judgement. Tested: tests/tracking/lifted_light_test.cpp.
std::optional<LiftedLight> liftedLight(const FollowQuestion& question);

} // namespace winterlarder::tracking
