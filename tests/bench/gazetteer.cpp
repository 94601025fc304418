// SPDX-License-Identifier: GPL-3.0-or-later
// A place is searched with every key stroke: the aim is below 5 ms on all places.
#include "climate/gazetteer.h"

#include <benchmark/benchmark.h>

namespace {

using winterlarder::climate::Gazetteer;

const winterlarder::ReferenceData& reference() {
    static const auto loaded = winterlarder::loadReference(SHARED_FOLDER);
    return loaded.value();
}

void loadPlaces(benchmark::State& state) {
    const auto& data = reference();
    for (auto _ : state) {
        auto loaded = Gazetteer::load(SHARED_FOLDER, data);
        if (!loaded) state.SkipWithError("the places do not load");
        benchmark::DoNotOptimize(loaded);
    }
}
BENCHMARK(loadPlaces)->Unit(benchmark::kMillisecond);

void keyStroke(benchmark::State& state, const char* typed) {
    static const auto places = Gazetteer::load(SHARED_FOLDER, reference());
    for (auto _ : state) benchmark::DoNotOptimize(places->find(typed, 8));
}
BENCHMARK_CAPTURE(keyStroke, one_letter, "s")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(keyStroke, name, "springfield")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(keyStroke, name_and_state, "Springfield IL")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(keyStroke, accents_and_country, "São Paulo, Brasil")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(keyStroke, nothing_found, "the yard behind the old school house")->Unit(benchmark::kMillisecond);

void nearSpelling(benchmark::State& state) {
    static const auto places = Gazetteer::load(SHARED_FOLDER, reference());
    for (auto _ : state) benchmark::DoNotOptimize(places->spelledLike("Halifaks", 3));
}
BENCHMARK(nearSpelling)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
