// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/sheet.h"

#include <algorithm>

namespace winterlarder::report {

const Section* Sheet::section(std::string_view id) const {
    const auto found =
        std::find_if(sections.begin(), sections.end(), [id](const Section& each) { return each.id == id; });
    return found == sections.end() ? nullptr : &*found;
}

} // namespace winterlarder::report
