// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/outcome.h"

#include <fmt/format.h>

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

} // namespace winterlarder
