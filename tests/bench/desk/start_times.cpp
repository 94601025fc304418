// SPDX-License-Identifier: GPL-3.0-or-later
#include "start_times.h"

#include "figures.h"

#include <fcntl.h>
#include <sstream>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace winterlarder::bench {

namespace {

struct Program {
    std::string file;
    std::vector<std::string> arguments;
    int rows = 0; //!< of the list, once everything is there; 0: it has none
};

//! Milliseconds from exec.
struct Start {
    double painted = 0, listed = 0, ended = 0;
};

double millisecondsFrom(const timespec& start, long long nanoseconds) {
    return static_cast<double>(nanoseconds - (start.tv_sec * 1000000000LL + start.tv_nsec)) / 1e6;
}

[[noreturn]] void become(const Program& program, int pipe) {
    ::setenv("BENCH_PIPE", std::to_string(pipe).c_str(), 1);
    ::setenv("BENCH_ROWS", std::to_string(program.rows).c_str(), 1);
    std::vector<char*> words{const_cast<char*>(program.file.c_str())};
    for (const auto& argument : program.arguments) words.push_back(const_cast<char*>(argument.c_str()));
    words.push_back(nullptr);
    ::execv(program.file.c_str(), words.data());
    ::_exit(127);
}

std::string readAll(int pipe) {
    std::string all;
    char part[256];
    for (ssize_t got = 0; (got = ::read(pipe, part, sizeof part)) > 0;) all.append(part, static_cast<std::size_t>(got));
    return all;
}

Start startOnce(const Program& program) {
    int pipe[2];
    if (::pipe(pipe) != 0) throw std::runtime_error("no pipe");
    timespec start{};
    ::clock_gettime(CLOCK_MONOTONIC, &start);
    const pid_t child = ::fork();
    if (child == 0) become(program, pipe[1]);
    ::close(pipe[1]);
    std::istringstream told(readAll(pipe[0]));
    ::close(pipe[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    timespec end{};
    ::clock_gettime(CLOCK_MONOTONIC, &end);
    if (status != 0) throw std::runtime_error(program.file + " ended with status " + std::to_string(status));
    Start times;
    std::string what;
    for (long long at = 0; told >> what >> at;)
        (what == "listed" ? times.listed : times.painted) = millisecondsFrom(start, at);
    times.ended = millisecondsFrom(start, end.tv_sec * 1000000000LL + end.tv_nsec);
    return times;
}

//! The median of each over the starts; a first one warms up.
Start startOften(const Program& program, int times) {
    startOnce(program);
    std::vector<double> painted, listed, ended;
    for (int time = 0; time < times; ++time) {
        const auto one = startOnce(program);
        painted.push_back(one.painted);
        listed.push_back(one.listed);
        ended.push_back(one.ended);
    }
    return {median(painted), median(listed), median(ended)};
}

} // namespace

void showStart(const std::filesystem::path& book, int colonies, int times) {
    constexpr int demoColonies = 6;
    const std::string winterlarder = BUILD_FOLDER "/bench_desk_winterlarder";
    const auto empty = startOften({BUILD_FOLDER "/bench_desk_empty", {}, 0}, times);
    show("start: empty window of Qt, exec to painted", empty.painted, "ms");
    show("start: empty window of Qt, whole process", empty.ended, "ms");
    const auto demo = startOften({winterlarder, {"--demo"}, demoColonies + 1}, times);
    show("start: demo, exec to first painted window", demo.painted, "ms", 150);
    show("start: the same in lives of an empty window", demo.painted / empty.ended, "", 3);
    show("start: the same in paints of an empty window", demo.painted / empty.painted, "");
    show("start: demo, exec to its colonies painted", demo.listed, "ms");
    const auto large = startOften({winterlarder, {book.string()}, colonies + 1}, times);
    show("start: large book, exec to first painted window", large.painted, "ms", 150);
    show("start: large book, exec to its colonies painted", large.listed, "ms");
}

} // namespace winterlarder::bench
