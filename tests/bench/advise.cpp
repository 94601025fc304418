// SPDX-License-Identifier: GPL-3.0-or-later
// Time and memory of whole processes of winterlarder-cli: one colony's advice, and a batch of different colonies.
//   bench_advise [COLONIES]     (default 1000)
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fmt/format.h>
#include <fstream>
#include <string>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

std::string program() { return std::string(BUILD_FOLDER) + "/winterlarder-cli"; }

std::string caseLine(int i) {
    std::string combs;
    for (int comb = 0; comb < 10; ++comb)
        combs +=
            fmt::format("{}{{\"capped\": {:.2f}, \"open\": 0.05, \"brood\": {:.2f}, \"pollen\": 0.03}}",
                        comb ? ", " : "", 0.2 + 0.05 * ((i * 7 + comb * 3) % 11), comb > 3 && comb < 7 ? 0.15 : 0.0);
    return fmt::format(
        "{{\"case\": 1, \"colony\": \"Colony {}\", \"as_of\": \"2026-09-{:02}\", \"site\": {{\"station\": \"ca-halifax\", "
        "\"autumn_flow\": \"trickle\"}}, \"hive\": {{\"format\": \"langstroth-deep\", \"boxes\": 1}}, "
        "\"bees\": {{\"covered_combs\": {:.1f}}}, \"combs\": [{}]}}\n",
        i, 10 + i % 18, 5 + 0.5 * (i % 9), combs);
}

struct Run {
    double seconds, mostMegabytes;
    int status;
};

Run run(const std::string& arguments) {
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child == 0) {
        execl("/bin/sh", "sh", "-c", (program() + " " + arguments + " > /dev/null").c_str(),
              static_cast<char*>(nullptr));
        _exit(127);
    }
    int status = 0;
    struct rusage usage {};
    wait4(child, &status, 0, &usage);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    return {seconds, static_cast<double>(usage.ru_maxrss) / 1024, WEXITSTATUS(status)};
}

int report(const char* what, const Run& result) {
    std::printf("%-46s %8.3f s  %6.0f MB  status %d\n", what, result.seconds, result.mostMegabytes, result.status);
    return result.status;
}

} // namespace

int main(int count, char** arguments) {
    const int colonies = count > 1 ? std::atoi(arguments[1]) : 1000;
    const std::string one = "/tmp/bench_advise_one.json", many = "/tmp/bench_advise_many.jsonl";
    std::ofstream(one) << caseLine(0);
    std::ofstream batch(many);
    for (int i = 0; i < colonies; ++i) batch << caseLine(i);
    batch.close();
    int status = report("--version (start of the process)", run("--version"));
    status |= report("advise, one colony, one thread", run("advise --json --threads 1 " + one));
    status |= report("advise, one colony, all cores", run("advise --json " + one));
    status |= report(("advise -, " + std::to_string(colonies) + " colonies").c_str(), run("advise --json - < " + many));
    std::remove(one.c_str());
    std::remove(many.c_str());
    return status;
}
