// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"
#include "reference/reference.h"

#include <optional>
#include <span>
#include <vector>

//! What keepers near a place are told to leave for winter, and which flows may still come there.
namespace winterlarder::advice {

//! Whose figure is asked for.
struct UsualAsked {
    Whereabouts place;
    climate::WinterClass winterClass = climate::WinterClass::NotDerivable;
    HiveSize size = HiveSize::OneBox; //!< never Any
    bool moreThanTwoBoxes = false;    //!< asked as two boxes; said in the answer
    Mass withoutStores{
        0}; //!< this hive with bees, bee bread and brood, but no stores: turns a gross figure into stores
};

//! The size a hive counts as: kept small, one box, two, or more (supers do not count). Long hives are one box.
struct SizeOfHive {
    HiveSize size = HiveSize::OneBox;
    bool moreThanTwoBoxes = false;
};
SizeOfHive sizeOfHive(const ColonyQuestion& question);

struct UsualFigure {
    enum class From { Region, Country, RegionOfOtherWinter, Neighbour, ClassMedian };
    From from = From::ClassMedian;
    const UsualStores* row = nullptr; //!< none behind a median
    std::optional<double> distanceKm; //!< to the row's region; none behind a median or a whole country
    Mass low{0}, high{0};             //!< stores in the hive
    bool fromGross = false;           //!< a hive's weight was published, and made into stores
    bool forAnySize = false;          //!< published for any hive
    bool twoBoxesForMore = false;     //!< this hive is larger than the figure's
    bool holdsBackHarvest = false;    //!< may keep honey from being taken: published by an official body or better
    //! further figures of the place, to be shown with their meaning, nearest first
    std::vector<const UsualStores*> shown;
};

//! The figure for a place, by the first rule that finds a row fit to be a target, for this size of hive (else, but for a nucleus, for
//! any): the nearest regional row of the country within usualRegionKm and of the same winter; the whole country's, both first of what is
//! published and then of what keepers say (quality C); the country's nearest regional row within usualRegionKm of the other winter, confined
//! or flying (a place on the border of the two is told its own country's figure before a foreign one); the nearest of the same hemisphere
//! and winter within usualNeighbourKm; the median of that winter's rows. Of equally near rows stores come before gross weights, then the
//! better quality. Nothing where no rule finds one. Judgement. Tested: tests/advice/usual_here_test.cpp.
std::optional<UsualFigure> usualHere(const UsualAsked& asked, std::span<const UsualStores> rows,
                                     const ModelConstants& constants);

//! Where a figure was published for: its region and country ("Atlantic provinces, Canada"), or the country; empty for a median.
//! Countries are named as the shipped stations of the country are, else by their code.
std::string placeOf(const UsualFigure& usual, std::span<const Station> stations);

//! A flow that is usual near a place.
struct NearFlow {
    const LateFlow* flow = nullptr;
    std::optional<double> distanceKm; //!< nothing for a whole country's
};

//! Flows (or, with LateFlow::Typical::None, known dearths) within lateFlowKm of the place, and those of its whole country, that run on
//! some day of `from`..`to`; nearest first, each plant once. Without a longitude only the country's. Tested: tests/advice/usual_here_test.cpp.
std::vector<NearFlow> lateFlowsNear(const Whereabouts& place, Date from, Date to, std::span<const LateFlow> flows,
                                    const ModelConstants& constants);

} // namespace winterlarder::advice
