// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

#include <optional>
#include <vector>

namespace winterlarder::stores {

//! Share of the comb a cluster sits on that it keeps free to move and to ripen honey (judgement).
inline constexpr double clusterShare = 0.2;

//! What the room for more stores depends on.
struct RoomQuestion {
    const std::vector<Comb>& combs;
    double coveredCombs = 0;
    double openFactor = 0.65;
    std::optional<int> daysToSyrupDeadline; //!< nothing: syrup is taken all winter; a passed deadline counts as 0
};

//! Ripe stores the built combs can still take [kg], never below 0: sum over combs of honey per dm2 x area x (empty +
//! (1 - open factor) x open + brood x min(1, days to the syrup deadline / 21)), less the cluster's own room: clusterShare of
//! the covered combs, each taken as the mean comb of the list (judgement). Brood hatches in 21 days; nothing is built
//! after the last income. Combs not looked at get mean shares; nothing where no comb was looked at. Tested:
//! tests/stores/room_test.cpp.
std::optional<Mass> freeRoom(const RoomQuestion& question);

} // namespace winterlarder::stores
