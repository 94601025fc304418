// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/data_folder.h"
#include "answer/day_said.h"
#include "cli/command_line.h"

#include <cstdlib>
#include <ctime>
#include <iostream>
#include <malloc.h>
#include <pwd.h>
#include <stdexcept>
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

std::string userName() {
    for (const char* name : {"LOGNAME", "USER"})
        if (const char* user = std::getenv(name); user && *user) return user;
    const passwd* entry = getpwuid(getuid());
    return entry && entry->pw_name ? entry->pw_name : "keeper";
}

std::string machineName() {
    char name[256] = {};
    return gethostname(name, sizeof name - 1) == 0 ? name : "this machine";
}

winterlarder::Date dayOfClock(std::time_t now) {
    std::tm local{};
    localtime_r(&now, &local);
    const auto today = winterlarder::Date::of(local.tm_year + 1900, local.tm_mon + 1, local.tm_mday);
    if (!today || !today->inKnownYears()) throw std::runtime_error("the clock shows no day of this calendar");
    return *today;
}

winterlarder::cli::Moment moment(std::optional<winterlarder::Date> today) {
    const std::time_t now = std::time(nullptr);
    return {{now}, today ? *today : dayOfClock(now), userName(), machineName()};
}

} // namespace

int main(int count, char** given) {
    keepMemory();
    std::ios::sync_with_stdio(false);
    std::cin.tie(nullptr);
    try {
        const std::vector<std::string> arguments(given + 1, given + count);
        const auto today = winterlarder::answer::daySaid("winterlarder-cli");
        if (!today) {
            std::cerr << describe(today.problems().front()) << '\n';
            return static_cast<int>(winterlarder::cli::Status::WrongInput);
        }
        const int status = winterlarder::cli::run(arguments, {std::cin, std::cout, std::cerr, environmentFolder(),
                                                              winterlarder::answer::executableFile(), colourWanted(),
                                                              cores(), moment(*today)});
        if (std::cout.flush()) return status;
        std::cerr << "standard output: cannot be written\n";
        return static_cast<int>(winterlarder::cli::Status::FileTrouble);
    } catch (const std::exception& broken) {
        std::cerr << "winterlarder-cli: a fault of the program: " << broken.what() << "; please report it\n";
        return static_cast<int>(winterlarder::cli::Status::OurFault);
    }
}
