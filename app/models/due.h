// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"

#include <optional>

namespace winterlarder::desk {

enum class DueKind { Syrup, Fondant, TakeHoney, Unite, Weigh, CountBees, RecordStores, Nothing };

//! What a colony wants next, and when.
struct Due {
    DueKind kind = DueKind::Nothing;
    std::optional<Date> date; //!< nothing: no day is pressing
};

//! Feed: the first dose; unite: before laying stops; harvest: while it is still mild, by the advised end of feeding; leave: weigh
//! when income ends; cannot say: whatever is not known. Tested: tests/app/models_test.cpp.
Due dueOf(const AnsweredColony& colony);

//! Order of urgency, smaller first: earliest due day, then feed, unite, cannot say, harvest, leave.
struct UrgencyKey {
    bool noDay = true;
    std::optional<Date> day;
    int rank = 0;
    auto operator<=>(const UrgencyKey&) const = default;
    static UrgencyKey last() { return {true, std::nullopt, 99}; } //!< of a colony without an answer
};
UrgencyKey urgencyOf(const AnsweredColony& colony);

} // namespace winterlarder::desk
