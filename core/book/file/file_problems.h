// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/outcome.h"

#include <exception>
#include <filesystem>
#include <string>

namespace winterlarder::book {

Problem fileProblem(const std::filesystem::path& file, std::string what, std::string remedy);

//! What a failure of the file means for the keeper. `systemError` is the system's own (errno) where it is known: SQLite tells some
//! full disks only that way.
Problem problemOf(const std::exception& error, const std::filesystem::path& file, int systemError = 0);

//! True for an error that says no room is left: a full disk, or a quota that is used up.
bool isDiskFull(int systemError);

//! True where SQLite says that a change which was interrupted must be taken back before anything can be read.
bool saysInterrupted(const std::exception& error);

} // namespace winterlarder::book
