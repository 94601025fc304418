// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace winterlarder::winter {

//! What one winter is dealt besides its days' weather, as independent standard normals. The last two count only where something
//! was learned (WinterQuestion::learned).
struct WinterLuck {
    enum Part : std::size_t {
        Bees,
        Heat,
        Brood,
        Death,
        BroodStop,
        BroodRestart,
        SeasonOffset,
        SpringEarliness,
        Forage,
        LastingUse,
        LastingDeath
    };
    static constexpr std::size_t parts = 11;
    std::array<double, parts> z{};
    double operator[](Part part) const { return z[part]; }
};

//! The luck that a winter has by the generator: a pure function of its arguments. Tested: tests/winter/learned_test.cpp.
WinterLuck drawnLuck(std::uint64_t seed, std::uint64_t colonyStream, std::uint32_t winter);

} // namespace winterlarder::winter
