// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/targets.h"

#include <stdexcept>

namespace winterlarder::fuzz {

const std::vector<Target>& targets() {
    static const std::vector<Target> all{{"book_csv", bookCsv},
                                         {"book_file", bookFile},
                                         {"book_json", bookJson},
                                         {"calendar", calendarText},
                                         {"case", caseFile},
                                         {"combs", combsFile},
                                         {"dates", dates},
                                         {"json_lines", jsonLines},
                                         {"quantities", quantities},
                                         {"scale_log", scaleLog},
                                         {"temperatures", temperatures}};
    return all;
}

const Target& targetNamed(std::string_view name) {
    for (const Target& target : targets())
        if (target.name == name) return target;
    throw std::logic_error("no target " + std::string(name));
}

void hold(bool holds, const std::string& sentence) {
    if (!holds) throw std::logic_error(sentence);
}

void holdRefusal(const Problems& problems, const std::string& file) {
    hold(!problems.empty(), "a refusal without a problem");
    for (const auto& problem : problems) {
        hold(!problem.detail.empty(), "a problem that says nothing");
        hold(problem.kind != ProblemKind::Internal, "an error of the program: " + problem.detail);
        hold(file.empty() || problem.place.file == file, "a problem without its file: " + problem.detail);
    }
}

} // namespace winterlarder::fuzz
