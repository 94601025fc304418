// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/decision_constants.h"
#include "stores/evidence.h"
#include "stores/tare.h"
#include "support/choices.h"

#include <optional>
#include <vector>

namespace winterlarder::stores {

//! How a hive was weighed, and so what the reading is: a scale's gross weight, the sum of two opposite sides lifted one
//! after the other, or one side doubled.
enum class WeighingKind { Scale, TwoSidedLift, OneSidedLift };

//! What is in or on a weighed hive that is not stores.
struct HiveLoad {
    Tare tare;
    BeeCount bees;                  //!< adults on the day of the weighing
    Mass beeMass;                   //!< of one adult, the model's m_b
    BeeCount broodCells;            //!< on that day; what is not known must be modelled, not left 0
    Mass beeBread = kilograms(0.7); //!< 0.1-2 kg where not recorded
    Mass waxNotInTare{0};           //!< of combs the tare was taken without; 0 where the hive was weighed with them
};

//! The error of a scale's weight [kg]: the tare's SD, weighedTareSd at the least.
Mass scaleSd(const Tare& tare);
//! An error [kg] in two parts whose squares add up to that of its SD: what is the same each time, and what is new each time.
struct SplitSd {
    Mass lasting{0}, fresh{0};
};
//! Of the tare (weighedTareSd where the keeper weighed it) scaleReadingSd at the most is new at each weighing by it.
SplitSd splitTareSd(const Tare& tare, const ModelConstants& constants);
//! What lifting one side adds to a scale's error, a share of the gross weight, and a heft's error, a share of what the word stands for: of
//! their variance lastingErrorShare lasts.
SplitSd splitOneSideSd(Mass gross, bool longHive, const ModelConstants& constants);
SplitSd splitHeftSd(Mass standsFor, const ModelConstants& constants);

//! Stores from a weighing: gross - tare - bees - brood - bee bread - wax outside the tare; may come out below 0.
//! SD: 1.0 kg with a weighed tare, the tare's own else. Two sides lifted read 2 % low (corrected) and add 0.7 kg; one
//! side doubled adds 11 % of the gross weight, 5 % where a long hive is lifted at front and back: F = W (1/2 + e/L),
//! centre of mass e = 25 mm off the middle, L = 460 mm between the points. All in quadrature. Tested:
//! tests/stores/weighing_test.cpp.
Evidence evidenceOfWeighing(WeighingKind kind, Mass reading, const HiveLoad& load, bool longHive,
                            const ModelConstants& constants, Date date);

//! The error of a scale's weight where the keeper weighed the empty hive: pollen, wood and wax that change, reading.
inline constexpr Mass weighedTareSd = kilograms(1);
//! Two sides lifted one after the other read so much of the weight.
inline constexpr double twoSidesRead = 0.98;

//! Brood [kg]: 120 g per dm2 of comb, 800 cells with both faces, so 0.15 g a cell. Derived for sealed brood; open brood
//! is lighter, by less than the weighing's spread.
Mass broodMass(BeeCount cells);

//! Bee bread [kg] from recorded pollen: 95 g per dm2 of one face (measured), two faces. Nothing where no comb has any:
//! not recorded. Never counted as honey. Tested: tests/stores/weighing_test.cpp.
std::optional<Mass> beeBreadOnCombs(const std::vector<Comb>& combs);

//! A hive lifted and judged.
using winterlarder::HeftWord;
//! Share of the usual winter stores the word stands for: 0.5, 0.9, 1.3 (judgement).
double heftFactor(HeftWord word);
//! Share of what is wanted from the day of the lift on that the word stands for: heftLight, heftFair, heftHeavy. Tested:
//! tests/stores/weighing_test.cpp.
double heftShare(HeftWord word, const DecisionConstants& rules);
//! The word whose share is nearest, by ratio: between two words the geometric mean of theirs divides; on it the heavier one.
HeftWord heftNearest(double share, const DecisionConstants& rules);

//! Usual winter stores [kg]: 0.6 x honey per dm2 (phi 0.78) x comb area x combs x boxes; of a box with 16 combs or more
//! ten count (judgement). Boxes with combsPerBox = places. Tested: tests/stores/weighing_test.cpp.
Mass usualWinterStores(const std::vector<hive::CombFormat>& boxes);

//! A heft word: factor x usual stores, 35 % (judgement).
Evidence evidenceOfHeft(double heftFactor, Mass usualStores, const ModelConstants& constants, Date date);

} // namespace winterlarder::stores
