// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/demand.h"

#include "support/require.h"
#include "winter/draws.h"
#include "winter/ensemble_writer.h"
#include "winter/kernel.h"
#include "winter/seen_brood.h"
#include "winter/weather.h"
#include "winter/winter_dates.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <exception>
#include <mutex>
#include <thread>

namespace winterlarder::winter {

std::uint64_t colonyStream(std::string_view name) {
    std::uint64_t hash = 14695981039346656037ULL;
    for (char c : name) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    return hash;
}

double yearlySd(double all, double lasting) { return std::sqrt(std::max(0.0, all * all - lasting * lasting)); }

WinterLuck drawnLuck(std::uint64_t seed, std::uint64_t stream, std::uint32_t winter) {
    const auto weather = [&](std::uint32_t index) { return normal(seed, Luck::Weather, 0, winter, index); };
    const auto colony = [&](std::uint32_t index) { return normal(seed, Luck::Colony, stream, winter, index); };
    return {{colony(beesIndex), colony(heatIndex), colony(broodIndex), colony(deathIndex), colony(broodStopIndex),
             colony(broodRestartIndex), weather(seasonOffsetIndex), weather(springEarlinessIndex), weather(forageIndex),
             colony(lastingUseIndex), colony(lastingDeathIndex)}};
}

SeasonDay runEnd(const WinterQuestion& question, const ModelConstants& constants) {
    const int past = question.season.forage->day.w + static_cast<int>(constants.daysPastForage);
    return {std::min(lastSimulatedDay.w, std::max(past, question.start.w))};
}

DemandEnsemble::DemandEnsemble(SeasonDay first, int days, int winters, bool keepBrood)
    : first_(first), days_(days), winters_(winters), keepsBrood_(keepBrood), means_(static_cast<std::size_t>(days)),
      draws_(static_cast<std::size_t>(winters)) {
    const std::size_t matrices = Brood + (keepBrood ? 1 : 0);
    cells_ = std::make_unique_for_overwrite<float[]>(matrices * matrixSize());
}

std::span<const float> DemandEnsemble::brood(SeasonDay day) const {
    require(keepsBrood(), "the brood of these winters was not kept");
    return row(Brood, day);
}

std::span<const float> DemandEnsemble::row(Matrix matrix, SeasonDay day) const {
    require(covers(day), "day {} is outside the simulated days {}..{}", day.w, first_.w, lastDay().w);
    const auto width = static_cast<std::size_t>(winters_);
    return {cells(matrix) + static_cast<std::size_t>(day - first_) * width, width};
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
    require(!q.brood || (q.brood->count >= 0 && std::isfinite(q.brood->count)), "{} brood cells",
            q.brood.value_or(BeeCount{0}).count);
    require(!q.seenOn || (*q.seenOn >= q.start && *q.seenOn <= lastSimulatedDay),
            "seen on day {}, simulated from day {}", q.seenOn.value_or(q.start).w, q.start.w);
    for (std::size_t i = 0; i < q.weatherSoFar.size(); ++i) {
        const MeasuredDay& day = q.weatherSoFar[i];
        require(std::isfinite(day.meanC), "a measured temperature that is no number");
        require(i == 0 || q.weatherSoFar[i - 1].day < day.day, "measured day {} comes twice or too late", day.day.w);
    }
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
    s.bees = beesAtStart(q, constants);
    if (q.brood) s.seen = seenBrood(q, constants);
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

// Luck of laying once brood was seen, from its logarithm before.
double luckOnceSeen(const KernelSetting& setting, double logBefore) {
    return setting.seen ? std::exp(setting.seen->logShift + setting.seen->zScale * logBefore) : std::exp(logBefore);
}

// A colony seen to have stopped laying stops that day at the latest in every winter, whatever was drawn.
void takeSeenStop(const KernelSetting& setting, WinterDraw& draw) {
    if (setting.seen && setting.seen->stopped && setting.broodless) draw.broodStop = setting.seen->day;
}

// Luck of the colony in one winter: what it draws, on top of what lasts where that was learned.
void takeColonyLuck(const WinterQuestion& q, const ModelConstants& k, const KernelSetting& setting, const WinterLuck& z,
                    std::size_t lane, BlockLuck& luck, WinterDraw& draw) {
    const bool learned = q.learned.has_value();
    const auto yearly = [&](double all, double lasting) { return learned ? yearlySd(all, lasting) : all; };
    if (learned) {
        draw.lastingUse = q.learned->use * std::exp(q.learned->useLogSd * z[WinterLuck::LastingUse]);
        draw.lastingDeath = q.learned->death * std::exp(q.learned->deathLogSd * z[WinterLuck::LastingDeath]);
    }
    luck.use[lane] = draw.lastingUse;
    luck.heat[lane] = std::exp(yearly(k.heatSd, k.lastingUseSd) * z[WinterLuck::Heat]);
    const double logBrood = yearlyBroodSd(q, k) * z[WinterLuck::Brood];
    luck.brood[lane] = std::exp(logBrood);
    luck.broodSeen[lane] = luckOnceSeen(setting, logBrood);
    luck.death[lane] = draw.lastingDeath * std::exp(yearly(k.deathSd, k.lastingDeathSd) * z[WinterLuck::Death]);
}

// One winter made of its luck: dates, factors, offset.
WinterDraw makeWinter(const WinterQuestion& q, const ModelConstants& k, const KernelSetting& setting,
                      const SeasonOffset& offset, const WinterLuck& z, std::uint64_t seed, std::uint32_t winter,
                      std::size_t lane, BlockLuck& luck) {
    WinterDraw draw;
    draw.beesFactor = std::exp(q.beesLogSd * z[WinterLuck::Bees]);
    draw.seasonOffsetK = offset.meanK + offset.sdK * z[WinterLuck::SeasonOffset];
    drawDates(q, k,
              {draw.seasonOffsetK, z[WinterLuck::SpringEarliness], z[WinterLuck::Forage],
               normal(seed, Luck::Weather, 0, winter, lastIncomeIndex), z[WinterLuck::BroodStop],
               z[WinterLuck::BroodRestart]},
              draw);
    takeDates(draw, lane, luck);
    takeColonyLuck(q, k, setting, z, lane, luck, draw);
    takeSeenStop(setting, draw);
    luck.burst[lane] = uniform(seed, Luck::Colony, q.colonyStream, winter, burstIndex) < k.burstShare ? 1 : 0;
    return draw;
}

} // namespace

// Knows where in the ensemble a block writes.
class BlockRun {
public:
    BlockRun(const WinterQuestion& q, const ModelConstants& k, Sampling sampling, std::span<const WinterLuck> given,
             DemandEnsemble& ensemble)
        : question_(q), constants_(k), sampling_(sampling), given_(given), offset_(seasonOffset(q)),
          setting_(settingFor(q, k)), writer_(ensemble, q.season.forage->day, k.autumnTrickle) {}

    void operator()(int block) {
        BlockLuck luck{};
        const int first = block * laneCount;
        const int lanes = std::min(laneCount, sampling_.winters - first);
        for (int i = 0; i < laneCount; ++i) {
            const auto winter = static_cast<std::uint32_t>(first + i);
            const WinterDraw draw = makeWinter(question_, constants_, setting_, offset_, luckOf(winter), sampling_.seed,
                                               winter, static_cast<std::size_t>(i), luck);
            if (i < lanes) writer_.draw(first + i) = draw;
        }
        drawWeather(question_, setting_, sampling_.seed, static_cast<std::uint32_t>(first), luck);
        BlockOutput output = writer_.output(first, lanes);
        runBlock(setting_, luck, output);
        writer_.finish(block, first, std::move(output));
    }

    void complete() { writer_.complete(); }

private:
    WinterLuck luckOf(std::uint32_t winter) const {
        return winter < given_.size() ? given_[winter] : drawnLuck(sampling_.seed, question_.colonyStream, winter);
    }

    const WinterQuestion& question_;
    const ModelConstants& constants_;
    Sampling sampling_;
    std::span<const WinterLuck> given_; //!< empty: all are drawn
    SeasonOffset offset_;
    KernelSetting setting_;
    EnsembleWriter writer_;
};

namespace {

// The first exception of any thread ends the run and is thrown here, on the calling thread.
void runBlocks(BlockRun& run, int blocks, int threads, const std::stop_token& stop, const ProgressSink& progress) {
    std::atomic<int> next{0}, done{0};
    std::exception_ptr broken;
    std::once_flag brokenOnce;
    const auto work = [&] {
        try {
            for (int block = next++; block < blocks && !stop.stop_requested(); block = next++) {
                run(block);
                const int finished = ++done;
                if (progress) progress(static_cast<double>(finished) / blocks);
            }
        } catch (...) {
            std::call_once(brokenOnce, [&] { broken = std::current_exception(); });
            next = blocks; // nobody begins another block
        }
    };
    if (threads <= 0) threads = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    {
        std::vector<std::jthread> helpers;
        for (int i = 1; i < std::min(threads, blocks); ++i) helpers.emplace_back(work);
        work();
    }
    if (broken) std::rethrow_exception(broken);
}

std::optional<DemandEnsemble> run(const WinterQuestion& question, const ModelConstants& constants, Sampling sampling,
                                  std::span<const WinterLuck> given, int threads, const std::stop_token& stop,
                                  const ProgressSink& progress) {
    requireAnswerable(question);
    require(sampling.winters > 0, "{} winters", sampling.winters);
    const int days = runEnd(question, constants) - question.start + 1;
    DemandEnsemble ensemble(question.start, days, sampling.winters, question.keepBrood);
    BlockRun blockRun(question, constants, sampling, given, ensemble);
    const int blocks = (sampling.winters + laneCount - 1) / laneCount;
    runBlocks(blockRun, blocks, threads, stop, progress);
    if (stop.stop_requested()) return std::nullopt;
    blockRun.complete();
    return ensemble;
}

} // namespace

std::optional<DemandEnsemble> simulate(const WinterQuestion& question, const ModelConstants& constants,
                                       Sampling sampling, int threads, std::stop_token stop,
                                       const ProgressSink& progress) {
    return run(question, constants, sampling, {}, threads, stop, progress);
}

std::optional<DemandEnsemble> simulateWith(const WinterQuestion& question, const ModelConstants& constants,
                                           Sampling sampling, std::span<const WinterLuck> luck, int threads,
                                           std::stop_token stop) {
    require(luck.size() == static_cast<std::size_t>(std::max(0, sampling.winters)), "luck for {} of {} winters",
            luck.size(), sampling.winters);
    return run(question, constants, sampling, luck, threads, stop, {});
}

DemandEnsemble simulateCentral(const WinterQuestion& question, const ModelConstants& constants) {
    requireAnswerable(question);
    const KernelSetting setting = settingFor(question, constants);
    DemandEnsemble ensemble(question.start, setting.end - setting.start + 1, 1, question.keepBrood);
    EnsembleWriter writer(ensemble, question.season.forage->day, constants.autumnTrickle);
    WinterDraw& draw = writer.draw(0);
    draw.seasonOffsetK = question.offset.value();
    drawDates(question, constants, {draw.seasonOffsetK, 0, 0, 0, 0, 0}, draw);

    BlockLuck luck{};
    for (auto* ones : {&luck.bees, &luck.heat, &luck.brood, &luck.death, &luck.use}) ones->fill(1);
    luck.broodSeen.fill(luckOnceSeen(setting, 0));
    for (std::size_t i = 0; i < laneCount; ++i) takeDates(draw, i, luck);
    takeSeenStop(setting, draw);
    luck.weather.assign(setting.normalC.size(), Lanes{});
    BlockOutput output = writer.output(0, 1);
    runBlock(setting, luck, output);
    writer.finish(0, 0, std::move(output));
    writer.complete();
    return ensemble;
}

} // namespace winterlarder::winter
