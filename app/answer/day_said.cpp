// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/day_said.h"

#include "calendar/other_date_forms.h"

#include <cstdlib>

namespace winterlarder::answer {

Outcome<std::optional<Date>> daySaid(const std::string& program) {
    const char* said = std::getenv("WINTERLARDER_TODAY");
    if (!said || !*said) return std::optional<Date>();
    if (const auto day = Date::parse(said)) return day;
    return Problem{ProblemKind::Input, {program, 0, 0}, std::string("WINTERLARDER_TODAY is ") + said, dateMeant(said)};
}

} // namespace winterlarder::answer
