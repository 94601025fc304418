// SPDX-License-Identifier: GPL-3.0-or-later
// Making a place's curve and its season: far below a millisecond, so both may be done anew for every change in the window.
#include "climate/season.h"

#include "climate/site.h"
#include "support/require.h"

#include <benchmark/benchmark.h>

namespace {

using namespace winterlarder;

const ReferenceData& shipped() {
    static const ReferenceData data = loadReference(SHARED_FOLDER).value();
    return data;
}

void curve(benchmark::State& state) {
    const Station* station = shipped().station("gb-oxford");
    require(station != nullptr, "there is no station gb-oxford");
    for (auto _ : state) benchmark::DoNotOptimize(climate::siteAtStation(*station, 300.0));
}
BENCHMARK(curve);

void season(benchmark::State& state, const char* id) {
    const auto site = climate::siteAtStation(*shipped().station(id), std::nullopt);
    for (auto _ : state) benchmark::DoNotOptimize(climate::deriveSeason(site->curve, shipped().constants));
}
BENCHMARK_CAPTURE(season, oxford, "gb-oxford");
BENCHMARK_CAPTURE(season, lisbon, "pt-lisbon");
BENCHMARK_CAPTURE(season, winnipeg, "ca-winnipeg");

} // namespace

BENCHMARK_MAIN();
