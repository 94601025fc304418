// SPDX-License-Identifier: GPL-3.0-or-later
// Reading shared/ is part of every start of a program.
#include "reference/reference.h"

#include <benchmark/benchmark.h>

namespace {

void loadEverything(benchmark::State& state) {
    for (auto _ : state) {
        auto loaded = winterlarder::loadReference(SHARED_FOLDER);
        if (!loaded) state.SkipWithError("shared/ does not load");
        benchmark::DoNotOptimize(loaded);
    }
}
BENCHMARK(loadEverything)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
