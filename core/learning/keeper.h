// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/season.h"
#include "learning/evidence.h"

#include <cstdint>
#include <map>
#include <vector>

namespace winterlarder::learning {

//! One colony's winter in one yard, and what it says.
struct ColonyWinter {
    std::uint64_t yard = 0, colony = 0; //!< ids of the keeper's own records
    WinterEvidence evidence;
};

//! A lasting multiplier as it is believed: normal on the logarithm.
struct Lasting {
    double logMean = 0, logSd = 0;
    double median() const;
};
struct LastingPair {
    Lasting use, death;
};

//! Everything learned of one keeper, as plain values that can be shown, kept or thrown away. Switched off or reset is no value at all:
//! nothing is hidden in the models.
struct KeeperLearned {
    int winters = 0;                               //!< that said anything
    LastingPair keeper;                            //!< what all colonies have in common
    LastingPair anywhere;                          //!< of a colony never seen, in a yard never seen
    std::map<std::uint64_t, LastingPair> yards;    //!< of a colony never seen in that yard
    std::map<std::uint64_t, LastingPair> colonies; //!< of a colony, in the yard of its last winter

    //! For a colony of a yard; what is not known falls back on the yard, then the keeper. Nothing where no winter said anything.
    std::optional<winter::LearnedMultipliers> multipliers(std::uint64_t yard, std::uint64_t colony) const;
};

//! Learns from winters, in the order they came. ln multiplier = keeper + yard + colony, normal, with shares lastingKeeperShare and
//! lastingYardShare of the lasting variance and the colony the rest; every winter's evidence is of that sum (conjugate, one linear
//! system). Tested: tests/learning/keeper_test.cpp, coverage_test.cpp.
KeeperLearned learn(const std::vector<ColonyWinter>& winters, const ModelConstants& constants);

//! A year's first forage of a yard as it was, with one standard deviation.
struct ForageSeen {
    SeasonDay day;
    double sdDays = 0;
};
//! The day a hive's weight turned: the lowest of the weighings after the winter solstice, if a later one is at least a kilogram
//! heavier. Its SD: forageSeenSd and a quarter of the time between the weighings before and after, in quadrature.
struct DayWeight {
    SeasonDay day;
    Mass gross{0};
};
std::optional<ForageSeen> forageTurn(const std::vector<DayWeight>& weighings, const ModelConstants& constants);

//! How much later than its rule first forage comes in a yard, lastingly [d]: normal, SD lastingForageSd before anything is seen. Each
//! year adds the yearly spread: the rule's SD without the lasting part, and the season's offset through springShift.
struct ForageShift {
    double meanDays = 0, sdDays = 0;
    int years = 0;
};
ForageShift learnForage(const std::vector<ForageSeen>& seen, const climate::SeasonDates& season, double seasonOffsetSdK,
                        const ModelConstants& constants);

//! The season with a learned shift laid in: first forage moved by it (never to within a week of build-up), its spread the yearly one
//! and what is still open of the shift. A given forage date stays. Nothing learned: the season as it is, to the last digit.
climate::SeasonDates withForage(climate::SeasonDates season, const ForageShift& shift, const ModelConstants& constants);

} // namespace winterlarder::learning
