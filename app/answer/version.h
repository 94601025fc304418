// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace winterlarder::answer {

//! Of the project, "0.1.0".
extern const char* const programVersion;
//! Of the sources: twelve digits of the commit, a plus after them where files were changed since; empty where they came without a
//! history. Written when it is built: resources/package/revision.cmake.
extern const char* const sourceRevision;

//! "0.1.0 (revision 0123456789ab)".
std::string versionInWords();

} // namespace winterlarder::answer
