// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/time_zone.h"

#include "support/require.h"

#include <algorithm>

namespace winterlarder::scale {

TimeZone::TimeZone(std::int32_t before, std::vector<OffsetChange> changes)
    : before_(before), changes_(std::move(changes)) {
    for (std::size_t i = 1; i < changes_.size(); ++i)
        require(changes_[i - 1].from < changes_[i].from, "the change of clocks at {} follows one at {}",
                changes_[i].from, changes_[i - 1].from);
}

std::int32_t TimeZone::offsetAt(std::int64_t moment) const {
    const auto next = std::upper_bound(changes_.begin(), changes_.end(), moment,
                                       [](std::int64_t at, const OffsetChange& change) { return at < change.from; });
    return next == changes_.begin() ? before_ : std::prev(next)->offset;
}

std::int64_t TimeZone::momentOf(std::int64_t local) const {
    // A change lies behind a clock time once the clock shows more than either offset would at that moment.
    std::int32_t offset = before_;
    for (const OffsetChange& change : changes_) {
        if (change.from + std::max(offset, change.offset) > local) break;
        offset = change.offset;
    }
    return local - offset;
}

std::int64_t TimeZone::laterMomentOf(std::int64_t local) const {
    std::int64_t moment = momentOf(local);
    for (const OffsetChange& change : changes_)
        if (local - change.offset >= change.from && offsetAt(local - change.offset) == change.offset)
            moment = std::max(moment, local - change.offset);
    return moment;
}

} // namespace winterlarder::scale
