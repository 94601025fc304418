// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

namespace winterlarder::scale {

//! From this moment on (UTC) clocks are so many seconds ahead of UTC.
struct OffsetChange {
    std::int64_t from = 0;
    std::int32_t offset = 0;
    bool operator==(const OffsetChange&) const = default;
};

//! How the clocks of a place are set. Plain values: whoever knows the rules of the world's clocks hands them in.
//! Tested: tests/scale/time_zone_test.cpp.
class TimeZone {
public:
    //! Clocks that never change.
    static TimeZone fixed(std::int32_t offset) { return TimeZone(offset, {}); }
    //! `before` holds until the first change; ContractViolation where the changes do not follow each other in time.
    TimeZone(std::int32_t before, std::vector<OffsetChange> changes);

    std::int32_t offsetAt(std::int64_t moment) const;
    //! The moment at which a clock shows this. Of the two of an hour that comes twice, the earlier; for an hour that is left out, the
    //! moment it would be had the clock not been put forward yet.
    std::int64_t momentOf(std::int64_t local) const;

private:
    std::int32_t before_;
    std::vector<OffsetChange> changes_;
};

} // namespace winterlarder::scale
