// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/kernel.h"
#include "winter/question.h"

#include <cstdint>

namespace winterlarder::winter {

//! What is known of the season's offset O [K]: normal. Before anything is measured its mean is 0 and its SD that of the place.
struct SeasonOffset {
    double meanK = 0;
    double sdK = 0;
};

//! The offset given the weather so far: each measured anomaly is O + sd z, z the AR(1) chain of the model, so the steps of the
//! chain from one measured day to the next are normal and linear in O (conjugate update; a gap of k days has lag r^k and variance
//! 1 - r^2k). Tested: tests/winter/weather_test.cpp against quadrature.
SeasonOffset seasonOffset(const WinterQuestion& question);

//! Fills the standardised daily anomalies of a block from the start day to the end. The chain runs from the first season day
//! whatever the start, so a later start meets the same weather. Measured days are met exactly (luck.offsetK is needed); a day
//! before the next measured one is drawn from the chain's distribution between its neighbours, days after the last are drawn on
//! from it. Without measured days: the plain chain. Tested: tests/winter/weather_test.cpp.
void drawWeather(const WinterQuestion& question, const KernelSetting& setting, std::uint64_t seed,
                 std::uint32_t firstWinter, BlockLuck& luck);

} // namespace winterlarder::winter
