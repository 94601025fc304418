// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/draws.h"

#include "numerics/normal.h"

#include <Random123/philox.h>

namespace winterlarder::winter {

namespace {

// Two steps: a shift by 64 - 53 and the middle of the cell, so that neither 0 nor 1 occurs.
double toUniform(std::uint32_t low, std::uint32_t high) {
    const std::uint64_t bits = (static_cast<std::uint64_t>(high) << 32) | low;
    return (static_cast<double>(bits >> 11) + 0.5) * 0x1.0p-53;
}

} // namespace

std::array<double, 2> uniformPair(std::uint64_t seed, Luck luck, std::uint64_t stream, std::uint32_t winter,
                                  std::uint32_t evenIndex) {
    const r123::Philox4x32::key_type key{{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32)}};
    const r123::Philox4x32::ctr_type counter{{winter, (evenIndex >> 1) | static_cast<std::uint32_t>(luck),
                                              static_cast<std::uint32_t>(stream),
                                              static_cast<std::uint32_t>(stream >> 32)}};
    const auto bits = r123::Philox4x32()(counter, key);
    return {toUniform(bits[0], bits[1]), toUniform(bits[2], bits[3])};
}

double uniform(std::uint64_t seed, Luck luck, std::uint64_t stream, std::uint32_t winter, std::uint32_t index) {
    return uniformPair(seed, luck, stream, winter, index & ~1u)[index & 1u];
}

double normal(std::uint64_t seed, Luck luck, std::uint64_t stream, std::uint32_t winter, std::uint32_t index) {
    return numerics::inverseNormal(uniform(seed, luck, stream, winter, index));
}

} // namespace winterlarder::winter
