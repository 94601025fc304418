// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/outcome.h"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace winterlarder {

std::string describe(const Problem& problem) {
    std::string text = problem.place.file;
    if (problem.place.line > 0) text += fmt::format("{}{}", text.empty() ? "" : ":", problem.place.line);
    if (problem.place.line > 0 && problem.place.column > 0) text += fmt::format(":{}", problem.place.column);
    if (!text.empty()) text += ": ";
    text += problem.detail;
    if (!problem.remedy.empty()) text += "; " + problem.remedy;
    return text;
}

void sortByPlace(Problems& problems) {
    std::stable_sort(problems.begin(), problems.end(), [](const Problem& a, const Problem& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
}

} // namespace winterlarder
