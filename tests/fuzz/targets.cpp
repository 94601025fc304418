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

void hold(bool holds, const std::string& sentence) {
    if (!holds) throw std::logic_error(sentence);
}

} // namespace winterlarder::fuzz
