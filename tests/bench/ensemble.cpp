// SPDX-License-Identifier: GPL-3.0-or-later
// Speed of the ensemble on one core: colony-days a second, and how cost grows with winters and days.
//   bench_ensemble [--benchmark_filter=...]
#include "climate/season.h"
#include "climate/site.h"
#include "reference/reference.h"
#include "winter/larder.h"

#include <benchmark/benchmark.h>
#include <stdexcept>

namespace {

using namespace winterlarder;

const ReferenceData& shipped() {
    static const ReferenceData data = [] {
        auto loaded = loadReference(SHARED_FOLDER);
        if (!loaded) throw std::runtime_error(describe(loaded.problems().front()));
        return std::move(loaded).value();
    }();
    return data;
}

winter::WinterQuestion question(int start) {
    const auto site = climate::siteAtStation(*shipped().station("ca-halifax"), std::nullopt).value();
    winter::WinterQuestion asked{{start}, climate::deriveSeason(site.curve, shipped().constants), site.curve};
    asked.bees = {15000};
    asked.colonyStream = winter::colonyStream("bench");
    return asked;
}

// Arguments: winters, start day.
void simulation(benchmark::State& state) {
    const auto asked = question(static_cast<int>(state.range(1)));
    const int winters = static_cast<int>(state.range(0));
    double days = 0;
    for (auto step : state) {
        static_cast<void>(step);
        const auto ensemble = winter::simulate(asked, shipped().constants, {1, winters}, 1);
        benchmark::DoNotOptimize(ensemble->netLoss(ensemble->lastDay()).data());
        days += static_cast<double>(ensemble->days()) * winters;
    }
    state.counters["colony-days/s"] = benchmark::Counter(days, benchmark::Counter::kIsRate);
}
BENCHMARK(simulation)
    ->ArgsProduct({{500, 2500, 10000}, {-92}})
    ->ArgsProduct({{2500}, {-120, -30, 40}})
    ->Unit(benchmark::kMillisecond);

void losses(benchmark::State& state) {
    const auto ensemble = winter::simulate(question(-92), shipped().constants, {1, 2500}, 1);
    for (auto step : state) {
        static_cast<void>(step);
        benchmark::DoNotOptimize(winter::lossesFrom(*ensemble, {-92}, {0.1, std::nullopt, kilograms(5)}));
    }
}
BENCHMARK(losses)->Unit(benchmark::kMillisecond);

void oneOption(benchmark::State& state) {
    const auto ensemble = winter::simulate(question(-92), shipped().constants, {1, 2500}, 1);
    const auto lost = winter::lossesFrom(*ensemble, {-92}, {});
    for (auto step : state) {
        static_cast<void>(step);
        benchmark::DoNotOptimize(winter::follow(lost, kilograms(18), kilograms(2), kilograms(4)));
    }
}
BENCHMARK(oneOption)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
