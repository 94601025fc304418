// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/input_limits.h"

#include <fmt/format.h>

namespace winterlarder::limits {

std::string bytesInWords(std::size_t bytes) {
    if (bytes % mebi == 0) return fmt::format("{} MiB", bytes / mebi);
    return bytes % kibi == 0 ? fmt::format("{} KiB", bytes / kibi) : fmt::format("{} bytes", bytes);
}

Problem tooLarge(Place place, const TextSize& most) {
    return {ProblemKind::Input, std::move(place), fmt::format("this is larger than {} may be", most.what),
            fmt::format("at most {}", bytesInWords(most.bytes))};
}

} // namespace winterlarder::limits
