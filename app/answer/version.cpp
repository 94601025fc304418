// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/version.h"

#include <fmt/format.h>

namespace winterlarder::answer {

const char* const programVersion = WINTERLARDER_VERSION;

std::string versionInWords() {
    return *sourceRevision ? fmt::format("{} (revision {})", programVersion, sourceRevision) : programVersion;
}

} // namespace winterlarder::answer
