// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/data_folder.h"
#include "cli/command_line.h"

#include <cstdlib>
#include <iostream>
#include <malloc.h>
#include <string_view>
#include <thread>
#include <unistd.h>

namespace {

std::optional<std::filesystem::path> environmentFolder() {
    const char* folder = std::getenv("WINTERLARDER_DATA");
    return folder && *folder ? std::optional<std::filesystem::path>(folder) : std::nullopt;
}

bool colourWanted() {
    const char* refused = std::getenv("NO_COLOR");
    const char* terminal = std::getenv("TERM");
    const bool dumb = !terminal || std::string_view(terminal) == "dumb";
    return isatty(STDOUT_FILENO) && !(refused && *refused) && !dumb;
}

int cores() {
    const unsigned count = std::thread::hardware_concurrency();
    return count > 0 ? static_cast<int>(count) : 1;
}

// A batch makes and drops an ensemble a colony; giving the pages back and asking for them again costs more than the winters.
void keepMemory() {
    mallopt(M_MMAP_THRESHOLD, 32 << 20);
    mallopt(M_TRIM_THRESHOLD, 256 << 20);
}

} // namespace

int main(int count, char** given) {
    keepMemory();
    std::ios::sync_with_stdio(false);
    std::cin.tie(nullptr);
    try {
        const std::vector<std::string> arguments(given + 1, given + count);
        const int status =
            winterlarder::cli::run(arguments, {std::cin, std::cout, std::cerr, environmentFolder(),
                                               winterlarder::answer::executableFile(), colourWanted(), cores()});
        if (std::cout.flush()) return status;
        std::cerr << "standard output: cannot be written\n";
        return static_cast<int>(winterlarder::cli::Status::FileTrouble);
    } catch (const std::exception& broken) {
        std::cerr << "winterlarder-cli: a fault of the program: " << broken.what() << "; please report it\n";
        return 70;
    }
}
