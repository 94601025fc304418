// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/limits.h"
#include "book/form/row.h"

#include <cstdint>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

//! Random but valid rows, from a seed: the same everywhere.
namespace winterlarder::book::support {

//! Small random numbers with the same results on every machine (the standard distributions differ between libraries).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : bits_(seed) {}
    std::uint64_t below(std::uint64_t count) {
        if (count == 0) throw std::logic_error("nothing to choose from");
        return bits_() % count;
    }
    bool once(std::uint64_t in) { return below(in) == 0; }
    double share() { return static_cast<double>(below(1000001)) / 1000000; }
    template <class T> const T& of(const std::vector<T>& choices) { return choices[below(choices.size())]; }

private:
    std::mt19937_64 bits_;
};

//! Ids that references may point to; nothing to point to = optional references stay empty.
struct Known {
    std::vector<std::int64_t> ids[kindCount];
    const std::vector<std::int64_t>& of(Kind kind) const { return ids[static_cast<std::size_t>(kind)]; }
    std::vector<std::int64_t>& of(Kind kind) { return ids[static_cast<std::size_t>(kind)]; }
};

std::string someText(Dice& dice);
//! A valid row of the kind; references point to what is known.
Row someRow(Dice& dice, Kind kind, const Limits& limits, const Known& known);

} // namespace winterlarder::book::support
