// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/time_zone.h"

#include "support/require.h"

#include <algorithm>

namespace winterlarder::scale {

TimeZone::TimeZone(std::int32_t before, std::vector<OffsetChange> changes)
    : before_(before), changes_(std::move(changes)) {
    for (std::size_t i = 1; i < changes_.size(); ++i)
        require(changes_[i - 1].from < changes_[i].from, "the change of clocks at {} follows one at {}", changes_[i].from,
                changes_[i - 1].from);
}

std::int32_t TimeZone::offsetAt(std::int64_t moment) const {
    const auto next = std::upper_bound(changes_.begin(), changes_.end(), moment,
                                       [](std::int64_t at, const OffsetChange& change) { return at < change.from; });
    return next == changes_.begin() ? before_ : std::prev(next)->offset;
}

std::int64_t TimeZone::momentOf(std::int64_t local) const {
    // The first change that lies ahead of this clock time under the offset that held until it.
    std::int32_t offset = before_;
    const auto changed = std::partition_point(changes_.begin(), changes_.end(), [&](const OffsetChange& change) {
        const std::int32_t until = &change == changes_.data() ? before_ : (&change - 1)->offset;
        return change.from + std::max(until, change.offset) <= local;
    });
    if (changed != changes_.begin()) offset = std::prev(changed)->offset;
    // Between change and change + gap, both offsets are thinkable: the one before is the earlier moment of a doubled hour.
    return local - offset;
}

} // namespace winterlarder::scale
