// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

#include <vector>

namespace winterlarder::stores {

//! What a hive weighs with drawn combs and without honey, bees and brood; its wax is in it. SD 0: the keeper weighed
//! it.
struct Tare {
    Mass mass;
    Mass sd{0};
};

//! What the walls are made of, as far as their weight is known.
enum class Walls { Timber, Polystyrene, Other };

//! Everything the weight of an empty hive is guessed from.
struct TareQuestion {
    std::vector<hive::CombFormat> boxes; //!< from the floor up, with combsPerBox = places
    std::vector<Comb> combs;             //!< as listed; empty: every place holds a built comb
    Walls walls = Walls::Timber;
    bool nucleus = false; //!< kept small on purpose; at most six places make it a nucleus hive
};

//! Floor, inner cover and telescoping cover.
inline constexpr Mass floorAndLids = kilograms(1.8 + 0.8 + 3.9);

//! Weight of the empty hive from handbook figures. SD 2.0 kg where every box is on this list:
//!   floor, inner cover, telescoping cover 1.8 + 0.8 + 3.9 kg (for all but the German Normal: 3 x 1.5);
//!   Langstroth deep with frames 6.2 without wax; Langstroth medium with combs 4.7; Warre box with combs 4 (two weigh
//!   8); Dadant ten combs 20, twelve 23, with wood, wax and bees - 2 kg of bees are taken off; nucleus hive 12; German
//!   Normal box 3.2 and its combs in their frames; Langstroth deep in polystyrene 10 single, 17 double, 7 each further.
//! Else 6.5 kg + 0.09 kg per dm2 of one face of built comb, polystyrene 2 kg less, SD 3.0 kg (judgement). There the
//! wood of places without comb is counted only in boxes of 16 places and more (0.07 kg/dm2, from the Langstroth deep):
//! half-empty long hives are the rule, half-empty boxes are not. Combs missing from a box "with combs" take their wax
//! off. Wax: 12 g/dm2 new (supers), 19 more in an old nest comb, halfway where nothing is
//! said of a nest comb; both faces together. Tested: tests/stores/tare_test.cpp, comb_checks_test.cpp.
Tare tareFromParts(const TareQuestion& question);

//! Wax per dm2 of comb, both faces together [kg].
inline constexpr Mass newWax = grams(12);
inline constexpr Mass oldWax = grams(12 + 19);

//! A drawn comb in its frame [kg]: 0.40 light, 0.55 old for the Langstroth deep, by face area for any other.
enum class CombAge { Light, Old };
Mass drawnComb(Area face, CombAge age);

} // namespace winterlarder::stores
