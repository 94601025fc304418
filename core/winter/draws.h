// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>

namespace winterlarder::winter {

//! Random numbers as a pure function of (seed, stream, winter, index): Philox 4x32-10 (Salmon et al. 2011), so that results do
//! not depend on threads, order or platform. The weather of a site and the luck of a colony have ranges of their own.
//! Tested: tests/winter/draws_test.cpp (published vectors).
enum class Luck : std::uint32_t {
    Weather = 0,
    Colony = 0x80000000u,
};

// Indices within the weather of the site.
inline constexpr std::uint32_t seasonOffsetIndex = 0;
inline constexpr std::uint32_t springEarlinessIndex = 1;
inline constexpr std::uint32_t forageIndex = 2;
inline constexpr std::uint32_t lastIncomeIndex = 3;
inline constexpr std::uint32_t firstWeatherIndex = 4;  //!< first value of the day chain
inline constexpr std::uint32_t dailyWeatherIndex = 16; //!< + (season day + 153)

// Indices within the luck of a colony.
inline constexpr std::uint32_t beesIndex = 0;
inline constexpr std::uint32_t heatIndex = 1;
inline constexpr std::uint32_t broodIndex = 2;
inline constexpr std::uint32_t deathIndex = 3;
inline constexpr std::uint32_t broodStopIndex = 4;
inline constexpr std::uint32_t broodRestartIndex = 5;
inline constexpr std::uint32_t burstIndex = 6;
inline constexpr std::uint32_t lastingUseIndex = 7; //!< counts only where something was learned
inline constexpr std::uint32_t lastingDeathIndex = 8;

//! Uniform on (0, 1), 53 bits.
double uniform(std::uint64_t seed, Luck luck, std::uint64_t stream, std::uint32_t winter, std::uint32_t index);
//! Uniforms of an even index and the one after it, from one call of the generator.
std::array<double, 2> uniformPair(std::uint64_t seed, Luck luck, std::uint64_t stream, std::uint32_t winter,
                                  std::uint32_t evenIndex);
//! Standard normal.
double normal(std::uint64_t seed, Luck luck, std::uint64_t stream, std::uint32_t winter, std::uint32_t index);

} // namespace winterlarder::winter
