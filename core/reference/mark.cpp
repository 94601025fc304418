// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/mark.h"

#include <algorithm>
#include <array>

namespace winterlarder {

namespace {

constexpr std::array<std::string_view, 8> words = {"measured", "handbook",        "published", "derived",
                                                   "fitted",   "common practice", "memory",    "judgement"};

} // namespace

std::string_view name(Mark mark) { return words.at(static_cast<std::size_t>(mark)); }

const std::vector<std::string>& markNames() {
    static const std::vector<std::string> names(words.begin(), words.end());
    return names;
}

std::optional<Mark> markFrom(std::string_view word) {
    const auto found = std::find(words.begin(), words.end(), word);
    if (found == words.end()) return std::nullopt;
    return static_cast<Mark>(found - words.begin());
}

} // namespace winterlarder
