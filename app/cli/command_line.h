// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/commands.h"

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace winterlarder::cli {

//! What surrounds the program, so that it can be run in a test.
struct Surroundings {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    std::optional<std::filesystem::path> dataFromEnvironment;
    std::filesystem::path executable;
    bool colour = false; //!< standard output is a terminal and NO_COLOR is not set
    int cores = 1;
    Moment moment;
};

//! Runs the program with its arguments (without its name); the exit status.
int run(const std::vector<std::string>& arguments, const Surroundings& surroundings);

} // namespace winterlarder::cli
