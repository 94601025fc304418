// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <optional>
#include <string>
#include <vector>

//! Times as they are measured and as they are shown.
namespace winterlarder::bench {

using Clock = std::chrono::steady_clock;

inline double millisecondsSince(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

//! Time this thread has computed so far; less than has passed where other programs had the core.
inline double millisecondsComputed() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

//! The value that a share of all lie at or under; 0 of none.
inline double quantile(std::vector<double> values, double share) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[std::min(values.size() - 1, static_cast<std::size_t>(share * static_cast<double>(values.size())))];
}

inline double median(std::vector<double> values) { return quantile(std::move(values), 0.5); }

//! One line of the table: what, how much, what it should stay under.
inline void show(const std::string& what, double measured, const char* unit, std::optional<double> aim = {}) {
    std::printf("%-64s %9.1f %-3s", what.c_str(), measured, unit);
    if (aim) std::printf("  aim %6.0f   %s", *aim, measured <= *aim ? "ok" : "over");
    std::printf("\n");
    std::fflush(stdout);
}

} // namespace winterlarder::bench
