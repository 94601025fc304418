// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/followed_winter.h"

namespace winterlarder::desk {

namespace {

constexpr SeasonDay november{-61};

} // namespace

bool followLeads(const answer::FollowReading& reading) {
    return reading.asOf > reading.decided && mayLead(reading.winter, reading.asOf);
}

bool mayLead(const Winter& winter, Date asOf) {
    return winter.contains(asOf) && winter.seasonDay(asOf) >= november;
}

} // namespace winterlarder::desk
