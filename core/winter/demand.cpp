// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/demand.h"

#include "support/require.h"
#include "winter/draws.h"
#include "winter/ensemble_writer.h"
#include "winter/kernel.h"
#include "winter/normal.h"
#include "winter/winter_dates.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <thread>

namespace winterlarder::winter {

std::uint64_t colonyStream(std::string_view name) {
    std::uint64_t hash = 14695981039346656037ULL;
    for (char c : name) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return hash;
}

SeasonDay runEnd(const WinterQuestion& question, const ModelConstants& constants) {
    const int past = question.season.forage->day.w + static_cast<int>(constants.daysPastForage);
    return {std::min(lastSimulatedDay.w, std::max(past, question.start.w))};
}

DemandEnsemble::DemandEnsemble(SeasonDay first, int days, int winters)
    : first_(first), days_(days), winters_(winters), means_(static_cast<std::size_t>(days)),
      draws_(static_cast<std::size_t>(winters)) {
    const std::size_t cells = static_cast<std::size_t>(days) * static_cast<std::size_t>(winters);
    for (auto* matrix : {&netLoss_, &used_, &autumnIncome_, &bees_}) *matrix = std::make_unique_for_overwrite<float[]>(cells);
}

std::span<const float> DemandEnsemble::row(const Matrix& matrix, SeasonDay day) const {
    require(covers(day), "day {} is outside the simulated days {}..{}", day.w, first_.w, lastDay().w);
    const auto width = static_cast<std::size_t>(winters_);
    return {matrix.get() + static_cast<std::size_t>(day - first_) * width, width};
}

const DayMeans& DemandEnsemble::means(SeasonDay day) const {
    require(covers(day), "day {} is outside the simulated days {}..{}", day.w, first_.w, lastDay().w);
    return means_[static_cast<std::size_t>(day - first_)];
}

namespace {

void requireAnswerable(const WinterQuestion& q) {
    require(q.start >= firstSeasonDay && q.start <= lastSimulatedDay, "start day {} is outside -153..180", q.start.w);
    require(q.season.derivable(), "the season has no build-up or no forage date");
    require(q.bees.count >= 0 && std::isfinite(q.bees.count), "{} bees", q.bees.count);
    require(!q.brood || q.brood->count >= 0, "a negative number of brood cells");
}

KernelSetting settingFor(const WinterQuestion& q, const ModelConstants& constants) {
    KernelSetting s;
    s.constants = &constants;
    s.start = q.start.w;
    s.end = runEnd(q, constants).w;
    s.persistence = q.curve.dailyPersistence();
    for (int day = s.start; day <= s.end; ++day) {
        s.normalC.push_back(q.curve.normal({day}).value());
        s.dailySdK.push_back(q.curve.dailySd({day}).value());
    }
    s.bees = q.bees.count;
    s.broodSaid = q.brood.has_value();
    s.brood = q.brood ? q.brood->count : 0;
    s.broodless = q.season.broodless();
    s.dearth = q.season.winterClass == climate::WinterClass::Dearth;
    s.shell = q.shellFactor;
    s.race = q.raceFactor;
    return s;
}

void takeDates(const WinterDraw& draw, std::size_t lane, BlockLuck& luck) {
    luck.broodStop[lane] = draw.broodStop;
    luck.broodRestart[lane] = draw.broodRestart;
    luck.buildup[lane] = draw.buildup;
    luck.forage[lane] = draw.forage;
    luck.lastIncome[lane] = draw.lastIncome;
    luck.offsetK[lane] = draw.seasonOffsetK;
    luck.bees[lane] = draw.beesFactor;
}

// One winter's luck from the generator: dates, factors, offset.
WinterDraw drawWinter(const WinterQuestion& q, const ModelConstants& k, std::uint64_t seed, std::uint32_t winter,
                      std::size_t lane, BlockLuck& luck) {
    const auto weather = [&](std::uint32_t index) { return normal(seed, Luck::Weather, 0, winter, index); };
    const auto colony = [&](std::uint32_t index) {
        return normal(seed, Luck::Colony, q.colonyStream, winter, index);
    };
    WinterDraw draw;
    draw.beesFactor = std::exp(q.beesLogSd * colony(beesIndex));
    draw.seasonOffsetK = q.curve.variability().seasonOffsetSd * weather(seasonOffsetIndex);
    drawDates(q, k,
              {draw.seasonOffsetK, weather(springEarlinessIndex), weather(forageIndex), weather(lastIncomeIndex),
               colony(broodStopIndex), colony(broodRestartIndex)},
              draw);
    takeDates(draw, lane, luck);
    luck.heat[lane] = std::exp(k.heatSd * colony(heatIndex));
    luck.brood[lane] = std::exp(k.broodSd * colony(broodIndex));
    luck.death[lane] = std::exp(k.deathSd * colony(deathIndex));
    luck.burst[lane] = uniform(seed, Luck::Colony, q.colonyStream, winter, burstIndex) < k.burstShare ? 1 : 0;
    return draw;
}

// The day chain of the site's weather runs from the first season day whatever the start, so a later start meets the
// same weather. Two days come from one call of the generator.
void drawWeather(const KernelSetting& s, std::uint64_t seed, std::uint32_t firstWinter, BlockLuck& luck) {
    constexpr std::size_t lanes = laneCount;
    const double spread = std::sqrt(1 - s.persistence * s.persistence);
    Lanes z{};
    for (std::size_t i = 0; i < lanes; ++i)
        z[i] = uniform(seed, Luck::Weather, 0, firstWinter + static_cast<std::uint32_t>(i), firstWeatherIndex);
    inverseNormals(z.all());
    luck.weather.resize(static_cast<std::size_t>(s.end - s.start + 1));
    std::array<Lanes, 2> news{};
    for (int day = firstSeasonDay.w; day <= s.end; ++day) {
        if (day >= s.start) luck.weather[static_cast<std::size_t>(day - s.start)] = z;
        const auto index = dailyWeatherIndex + static_cast<std::uint32_t>(day - firstSeasonDay.w);
        if (index % 2 == 0) {
            for (std::size_t i = 0; i < lanes; ++i) {
                const auto pair =
                    uniformPair(seed, Luck::Weather, 0, firstWinter + static_cast<std::uint32_t>(i), index);
                news[0][i] = pair[0];
                news[1][i] = pair[1];
            }
            inverseNormals(news[0].all());
            inverseNormals(news[1].all());
        }
        for (std::size_t i = 0; i < lanes; ++i) z[i] = s.persistence * z[i] + spread * news[index % 2][i];
    }
}

} // namespace

// Knows where in the ensemble a block writes.
class BlockRun {
public:
    BlockRun(const WinterQuestion& q, const ModelConstants& k, Sampling sampling, DemandEnsemble& ensemble)
        : question_(q), constants_(k), sampling_(sampling), setting_(settingFor(q, k)), writer_(ensemble, q.season.forage->day) {}

    void operator()(int block) {
        BlockLuck luck{};
        const int first = block * laneCount;
        const int lanes = std::min(laneCount, sampling_.winters - first);
        for (int i = 0; i < laneCount; ++i) {
            const WinterDraw draw = drawWinter(question_, constants_, sampling_.seed, static_cast<std::uint32_t>(first + i),
                                               static_cast<std::size_t>(i), luck);
            if (i < lanes) writer_.draw(first + i) = draw;
        }
        drawWeather(setting_, sampling_.seed, static_cast<std::uint32_t>(first), luck);
        BlockOutput output = writer_.output(first, lanes);
        runBlock(setting_, luck, output);
        writer_.finish(block, first, std::move(output));
    }

    void complete() { writer_.complete(); }

private:
    const WinterQuestion& question_;
    const ModelConstants& constants_;
    Sampling sampling_;
    KernelSetting setting_;
    EnsembleWriter writer_;
};

namespace {

void runBlocks(BlockRun& run, int blocks, int threads, const std::stop_token& stop, const ProgressSink& progress) {
    std::atomic<int> next{0}, done{0};
    const auto work = [&] {
        for (int block = next++; block < blocks && !stop.stop_requested(); block = next++) {
            run(block);
            const int finished = ++done;
            if (progress) progress(static_cast<double>(finished) / blocks);
        }
    };
    if (threads <= 0) threads = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    std::vector<std::jthread> helpers;
    for (int i = 1; i < std::min(threads, blocks); ++i) helpers.emplace_back(work);
    work();
}

} // namespace

std::optional<DemandEnsemble> simulate(const WinterQuestion& question, const ModelConstants& constants, Sampling sampling,
                                       int threads, std::stop_token stop, const ProgressSink& progress) {
    requireAnswerable(question);
    require(sampling.winters > 0, "{} winters", sampling.winters);
    const int days = runEnd(question, constants) - question.start + 1;
    DemandEnsemble ensemble(question.start, days, sampling.winters);
    BlockRun run(question, constants, sampling, ensemble);
    const int blocks = (sampling.winters + laneCount - 1) / laneCount;
    runBlocks(run, blocks, threads, stop, progress);
    if (stop.stop_requested()) return std::nullopt;
    run.complete();
    return ensemble;
}

DemandEnsemble simulateCentral(const WinterQuestion& question, const ModelConstants& constants) {
    requireAnswerable(question);
    const KernelSetting setting = settingFor(question, constants);
    DemandEnsemble ensemble(question.start, setting.end - setting.start + 1, 1);
    EnsembleWriter writer(ensemble, question.season.forage->day);
    WinterDraw& draw = writer.draw(0);
    draw.seasonOffsetK = question.offset.value();
    drawDates(question, constants, {draw.seasonOffsetK, 0, 0, 0, 0, 0}, draw);

    BlockLuck luck{};
    for (auto* ones : {&luck.bees, &luck.heat, &luck.brood, &luck.death}) ones->fill(1);
    for (std::size_t i = 0; i < laneCount; ++i) takeDates(draw, i, luck);
    luck.weather.assign(setting.normalC.size(), Lanes{});
    BlockOutput output = writer.output(0, 1);
    runBlock(setting, luck, output);
    writer.finish(0, 0, std::move(output));
    writer.complete();
    return ensemble;
}

} // namespace winterlarder::winter
